using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How to open a log for the most value.</summary>
public static class LogSawCommand
{
    /// <summary>Without a price list every board foot counts one, from the smallest board the trade sells.</summary>
    private static readonly (Length Width, Length Length) SmallestBoard = (Length.FromInches(3.0), Length.FromFeet(4.0));

    public static Command Command { get; } = Command.Of("log", "saw", "How to open a log for the most value: boards, blade heights and how near it is to its ceiling", Run) with
    {
        Argument = new("FILE", $"the log as JSON: {LogFile.Keys}"),
        Options =
        [
            Option.Optional("prices", "FILE", $"a table with the header {PriceFile.Header}; left out: 4/4 only, every board foot counts 1"),
            Option.Optional("orders", "FILE", $"open order lines, a table with the header {PriceFile.OrdersHeader}: a board that fills one is worth its price until the line is full"),
            Option.Optional("pattern", "PATTERN", "live, cant, quarter, boule or best (default)"),
            Option.Optional("turn", "TURN", "the only turn tried: sweep-up, sweep-down, sweep-sideways (for a log given by its ends) or degrees clockwise from the unturned log; left out: 36 all round"),
            Option.Optional("blade-step", "L", "distance of blade heights the mill can set (default: a common step of all thicknesses, at most 1/64in)"),
            Option.Optional("kerf", "L", "wood lost to each cut (default 0.055in)"),
            Option.Many("green", "T=L", "green thickness of a nominal one, such as 4/4=1-1/16in (default: an eighth over)"),
            Option.Flag("cut-across", "let a flitch be cut across into several boards; left out: one length from a flitch"),
            Option.Flag("explain", "all patterns, the openings and the grid of the search"),
        ],
        Examples =
        [
            "log saw demo/examples/log-red-oak.json --prices demo/examples/prices-red-oak.csv",
            "log saw demo/examples/log-red-oak.json --prices demo/examples/prices-red-oak.csv --orders demo/examples/orders-red-oak.csv",
            "log saw demo/examples/log-white-oak-swept.json --prices demo/examples/prices-white-oak.csv --pattern quarter --explain",
        ],
    };

    public sealed record Board(
        double ThicknessMm, double WidthMm, double LengthM, string Grade, double Bf, double ValueMoney, int Number, int ThicknessQuarters, string Grain, string Edge, double TurnDeg, double LeftMm, double BottomMm, double FromM, string? Order = null);

    public sealed record Cut(double TurnDeg, double BladeHeightMm, string Part, IReadOnlyList<int> Frees);

    public sealed record OfPattern(string Pattern, double RotationDeg, double ValueMoney, double VolumeBf, int Boards, int Cuts);

    public sealed record Filled(string Order, double FilledBf, double OpenBf, double PremiumMoney);

    private sealed record OfLines(CuttingPlan Plan, IReadOnlyList<LineFill> Fills, double? BoundMoney);

    public sealed record Explanation(IReadOnlyList<OfPattern> Patterns, double ShareOfBoundPct, string Bound, string Edging, string HeightsFrom);

    public sealed record Answer(
        string Pattern, double RotationDeg, double ValueMoney, double VolumeBf, double RecoveryPct, double SawnSharePct, double UpperBoundMoney, IReadOnlyList<Board> Boards, IReadOnlyList<Cut> Cuts,
        double LogVolumeM3, double KerfMm, string? Assumed, string Note, string Caution, Explanation? Explain, IReadOnlyList<Filled>? Orders = null, double? OrdersBoundMoney = null);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        var prices = ask.Has("prices") ? ask.File("prices") : null;
        var orders = ask.Has("orders") ? ask.File("orders") : null;
        var pattern = ask.Choice("pattern", "best", "live", "cant", "quarter", "boule", "best");
        var rules = new SawingRules();
        rules = rules with { Kerf = ask.Length("kerf", rules.Kerf), Settings = Settings(ask), GridStep = ask.LengthOrNull("blade-step"), Turn = Turn(ask), CutsAcross = ask.Has("cut-across") };
        if (ask.Refuses)
            return ask.Refused<Answer>();

        return InputFile.Read<LogFile>("FILE", text).Then(log => log.KnownSpecies().Then(species => log.Shape().Then(shape =>
            (prices is null ? FootageAlone() : PriceFile.Read("--prices", prices, species)).Then(rows => Lines(orders, species).Then(lines =>
            (lines.Count == 0
                ? ask.Named(CuttingPlanner.All(shape, rules, rows, Patterns(pattern, ask.Has("explain")))).Then<IReadOnlyList<OfLines>>(plans => plans.Select(plan => new OfLines(plan, [], null)).ToList())
                : ask.Named(ForOrders(new DeckLog(shape, rules, [.. rows, .. lines.Select(line => line.Row)]), [.. lines.Select(line => line.Line).Distinct()], Patterns(pattern, ask.Has("explain")))))
            .Then(plans => Show(log, rules, plans, pattern, ask.Has("explain"), prices is null)))))));
    }

    private static Outcome<IReadOnlyList<(OpenLine Line, BoardPrice Row)>> Lines(string? orders, Boardwright.Wood.Species? species) =>
        orders is null ? new Outcome<IReadOnlyList<(OpenLine Line, BoardPrice Row)>>.Done([]) : PriceFile.Orders("--orders", orders, species);

    private static Outcome<IReadOnlyList<OfLines>> ForOrders(DeckLog log, IReadOnlyList<OpenLine> lines, SawPattern[] patterns)
    {
        var plans = new List<OfLines>();
        Outcome<DeckPlan>? last = null;
        foreach (var pattern in patterns)
        {
            last = DeckPlanner.Plan([log], lines, pattern);
            if (last is Outcome<DeckPlan>.Done(var deck))
                plans.Add(new(deck.Plans[0]!, deck.Fills, deck.BoundMoney));
            else if (last is Outcome<DeckPlan>.Refused)
                break;
        }

        return plans.Count == 0 ? last!.Then<IReadOnlyList<OfLines>>(_ => plans) : plans;
    }

    private static Angle? Turn(Ask ask)
    {
        var text = ask.Has("turn") ? ask.Text("turn") : "";
        if (text.Length == 0)
            return null;
        double? degrees = text switch
        {
            "sweep-up" => 0.0,
            "sweep-down" => 180.0,
            "sweep-sideways" => 90.0,
            _ => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) <= 360.0 ? number : null,
        };
        if (degrees is null)
            ask.Refuse("turn", text, "sweep-up, sweep-down, sweep-sideways or degrees from -360 to 360");
        return degrees is { } turn ? Angle.FromDegrees(turn) : null;
    }

    private static SawPattern[] Patterns(string pattern, bool explain) =>
        pattern == "best" || explain ? Enum.GetValues<SawPattern>() : [Enum.Parse<SawPattern>(pattern, ignoreCase: true)];

    private static IReadOnlyList<GreenSetting> Settings(Ask ask)
    {
        var given = ask.Texts("green").Select(text => text.Split('=', 2) is [var nominal, var green]
            ? ask.Take("--green", Read.NominalThickness("--green", nominal).Then(quarters => Read.Length("--green", green).Then<GreenSetting>(length => new GreenSetting(quarters, length))))
            : Refused(ask, text)).OfType<GreenSetting>().ToList();
        return [.. GreenSetting.Usual.Where(usual => given.All(one => one.Nominal != usual.Nominal)), .. given];
    }

    private static GreenSetting? Refused(Ask ask, string text)
    {
        ask.Refuse("green", text, "a nominal thickness, an equals sign and its green thickness, such as 4/4=1-1/16in");
        return null;
    }

    private static Outcome<IReadOnlyList<BoardPrice>> FootageAlone() =>
        new Outcome<IReadOnlyList<BoardPrice>>.Done([new BoardPrice(NominalThickness.FromQuarters(4), "any", SmallestBoard.Width, SmallestBoard.Length, 1.0)]);

    private static Outcome<Answer> Show(LogFile log, SawingRules rules, IReadOnlyList<OfLines> plans, string pattern, bool explain, bool unpriced)
    {
        if (plans.Where(one => pattern == "best" || Name(one.Plan.Pattern) == pattern).MaxBy(one => one.Plan.ValueMoney) is not { } best)
            return new Outcome<Answer>.NoAnswer($"No board fits the pattern {pattern}.");

        var plan = best.Plan;

        return new Answer(
            Name(plan.Pattern), Degrees(plan.Rotation), plan.ValueMoney, plan.Footage.Count, plan.Recovery.Percent, plan.SawnShare.Percent, plan.UpperBoundMoney,
            [.. plan.Boards.Select(Show)],
            [.. plan.Openings.SelectMany(opening => opening.Cuts.Select(cut => new Cut(Degrees(opening.Turn), cut.Height.Millimetres, opening.Part, cut.Frees)))],
            plan.LogVolume.CubicMetres, rules.Kerf.Millimetres, log.Assumed,
            (unpriced ? "No prices: every board foot of 4/4 counts 1. " : "") + "Knots are not seen: a board takes the best priced row its size meets. recovery_pct is nominal board feet over the log's volume, sawn_share_pct wood in green boards over it.",
            log.NamesMetal
                ? "Metal is named in the file: do not open the log before it is out and scanned clear."
                : "Scan for metal before the first cut and after every few. Nobody in the plane of the blade; chock the log. The cuts assume a round, centred heart: look at both ends first.",
            explain ? Explain([.. plans.Select(one => one.Plan)], plan) : null,
            best.BoundMoney is null ? null : [.. best.Fills.Select(fill => new Filled(fill.Line.Name, fill.Filled.Count, fill.Line.Open.Count, fill.PremiumMoney))], best.BoundMoney);
    }

    private static Board Show(PlannedBoard board) => new(
        board.Green.Millimetres, board.Width.Millimetres, board.Length.Metres, board.Grade, board.Footage.Count, board.ValueMoney, board.Number, board.Thickness.Quarters,
        Name(board.Grain), board.Edge.ToString().ToLowerInvariant(), Math.Round(board.Place.TurnDegrees, 6), board.Place.LeftMm, board.Place.BottomMm, board.Place.FromMm / 1000.0, board.Order);

    private static Explanation Explain(IReadOnlyList<CuttingPlan> plans, CuttingPlan plan) => new(
        [.. plans.Select(one => new OfPattern(Name(one.Pattern), Degrees(one.Rotation), one.ValueMoney, one.Footage.Count, one.Boards.Count, one.Openings.Sum(opening => opening.Cuts.Count)))],
        100.0 * plan.ValueMoney / plan.UpperBoundMoney,
        "Ceiling: every line along the log gets the best price its clear length allows, as if boards with their kerf could be packed into the round without loss; no pattern can pass it.",
        "Boards are full rectangles but for the wane a price row allows, edged to a quarter inch, trimmed at whole feet from either end; slabs keep their edges and count by the mean of both faces at five places.",
        "Blade heights are the lower edge of the kerf above the bed, or above the sawn face that lies on it, with the log's centre line level; turns are clockwise, looking at the small end.");

    private static double Degrees(Angle angle) => Math.Round(angle.Degrees, 6);

    private static string Name(SawPattern pattern) => pattern.ToString().ToLowerInvariant();

    private static string Name(BoardGrain grain) => grain.ToString().ToLowerInvariant();
}
