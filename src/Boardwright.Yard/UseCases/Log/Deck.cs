using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Which log of a deck is sawn for which order.</summary>
public static class LogDeckCommand
{
    public static Command Command { get; } = Command.Of("log", "deck", "Which log of a deck to saw for which order, and what could be missed at most", Run) with
    {
        Argument = new("FILE", $"the logs as JSON: logs:[{{name, and of each {LogFile.Keys}}}]"),
        Options =
        [
            Option.Required("prices", "FILE", $"a table with the header {PriceFile.Header}"),
            Option.Required("orders", "FILE", $"open order lines, a table with the header {PriceFile.OrdersHeader}"),
            Option.Optional("pattern", "PATTERN", "live, cant, quarter, boule or best (default)"),
            Option.Optional("kerf", "L", "wood lost to each cut (default 0.055in)"),
            Option.Optional("turns", "N", "turns tried round each log, 1 to 36 (default 12): a deck is planned some twenty times over"),
        ],
        Examples = ["log deck demo/examples/deck-red-oak.json --prices demo/examples/prices-red-oak.csv --orders demo/examples/orders-red-oak.csv"],
    };

    public sealed record OfLog(string Log, string? Pattern, double? RotationDeg, double ValueMoney, double VolumeBf, string? Orders);

    public sealed record Answer(double ValueMoney, double BoundMoney, double GapPct, IReadOnlyList<OfLog> Logs, IReadOnlyList<LogSawCommand.Filled> Orders, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        var (prices, orders) = (ask.File("prices"), ask.File("orders"));
        var pattern = ask.Choice("pattern", "best", "live", "cant", "quarter", "boule", "best");
        var turns = ask.Number("turns", 12.0);
        if (turns is < 1.0 or > 36.0 || turns != Math.Floor(turns))
            ask.Refuse("turns", ask.Text("turns"), "a whole number from 1 to 36");
        var rules = new SawingRules { TurnCount = Math.Clamp((int)turns, 1, 36) };
        rules = rules with { Kerf = ask.Length("kerf", rules.Kerf) };
        if (ask.Refuses)
            return ask.Refused<Answer>();

        return InputFile.Read<DeckFile>("FILE", text).Then(deck => Read(deck, rules, prices, orders).Then(read =>
            ask.Named(DeckPlanner.Plan([.. read.Select(one => one.Log)], [.. read.SelectMany(one => one.Lines).DistinctBy(line => line.Name)], pattern == "best" ? null : Enum.Parse<SawPattern>(pattern, ignoreCase: true)))
                .Then<Answer>(plan => Show([.. read.Select(one => one.Name)], plan))));
    }

    private static Outcome<IReadOnlyList<(string Name, DeckLog Log, IReadOnlyList<OpenLine> Lines)>> Read(DeckFile deck, SawingRules rules, string prices, string orders)
    {
        var read = new List<(string Name, DeckLog Log, IReadOnlyList<OpenLine> Lines)>();
        foreach (var (log, i) in (deck.Logs ?? []).Select((log, i) => (log, i)))
        {
            var one = log.KnownSpecies().Then(species => log.Shape().Then(shape => PriceFile.Read("--prices", prices, species).Then(rows => PriceFile.Orders("--orders", orders, species).Then<(DeckLog Log, IReadOnlyList<OpenLine> Lines)>(lines =>
                (new DeckLog(shape, rules, [.. rows, .. lines.Select(line => line.Row)]), [.. lines.Select(line => line.Line).Distinct()])))));
            if (one is not Outcome<(DeckLog Log, IReadOnlyList<OpenLine> Lines)>.Done(var (ready, wanted)))
                return one.Then<IReadOnlyList<(string Name, DeckLog Log, IReadOnlyList<OpenLine> Lines)>>(_ => read);
            read.Add((string.IsNullOrWhiteSpace(log.Name) ? $"{i + 1}" : log.Name, ready, wanted));
        }

        return read.Count > 0 ? read : new Refusal("FILE, logs", "none", "one log or more");
    }

    private static Outcome<Answer> Show(IReadOnlyList<string> names, DeckPlan deck) => new Answer(
        deck.ValueMoney, deck.BoundMoney, deck.Gap.Percent,
        [.. names.Zip(deck.Plans, (name, plan) => new OfLog(
            name, plan?.Pattern.ToString().ToLowerInvariant(), plan is null ? null : Math.Round(plan.Rotation.Degrees, 6), plan?.ValueMoney ?? 0.0, plan?.Footage.Count ?? 0.0,
            plan is null || plan.Boards.All(board => board.Order is null) ? null : string.Join(", ", plan.Boards.Where(board => board.Order is not null).Select(board => board.Order).Distinct())))],
        [.. deck.Fills.Select(fill => new LogSawCommand.Filled(fill.Line.Name, fill.Filled.Count, fill.Line.Open.Count, fill.PremiumMoney))],
        "A board that fills an open line is worth its price until the line is full, the list's price beyond. The bound is what no choice of plans can pass; see log saw for the cuts of one log.");
}

/// <summary>Logs of a deck in a file.</summary>
internal sealed record DeckFile
{
    public IReadOnlyList<LogFile>? Logs { get; init; }
}
