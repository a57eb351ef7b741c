using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Lineage;

namespace Boardwright.Yard.UseCases;

/// <summary>One form of the wood in a history.</summary>
/// <param name="Step">The form.</param>
/// <param name="PartBf">How much of it belongs to this history, board feet.</param>
/// <param name="Level">Its place in the chain, 0 the earliest.</param>
/// <param name="IsSelf">True for what was asked about.</param>
/// <param name="Words">What it is, in a few words.</param>
/// <param name="Path">Its page.</param>
/// <param name="MoneyPerBf">What a board foot has cost by then; null where nothing is known.</param>
public sealed record HistoryStep(WoodStep Step, double PartBf, int Level, bool IsSelf, string Words, string Path, double? MoneyPerBf);

/// <summary>Where a log, stack, charge, pack, table or load came from, and what it became, with footage, moisture, days and cost at each step.</summary>
public sealed record WoodHistory(
    string Tag, string Title, string Under, IReadOnlyList<HistoryStep> Steps, IReadOnlyList<WoodFlow> Flows, IReadOnlyList<Traced> Figures, CostAccount Cost, double CostBf)
{
    /// <summary>The history of a tag.</summary>
    public static Outcome<WoodHistory> Of(YardState state, string tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        var way = WoodWay.Of(state);
        var self = way.Of(tag ?? "");
        return self.Count == 0
            ? new Refusal("tag", tag ?? "", $"a log, stack, charge, pack, table or load of the book: {NearestNames.Of(tag ?? "", [.. way.Steps.Values.Select(step => step.Tag).Distinct()])}")
            : CostRates.Of(state).Then<WoodHistory>(rates => new HistoryMaker(state, way, new WoodCost(state, way, rates), tag!, self).Make());
    }
}

/// <summary>Shapes one history from the way of the wood.</summary>
internal sealed class HistoryMaker(YardState state, WoodWay way, WoodCost cost, string tag, IReadOnlyList<WoodStep> self)
{
    private readonly HashSet<string> selfKeys = self.Select(step => step.Key).ToHashSet(StringComparer.Ordinal);
    private readonly Dictionary<string, int> levels = new(StringComparer.Ordinal);
    private IReadOnlyDictionary<string, double> back = null!;
    private IReadOnlyDictionary<string, double> forward = null!;
    private HashSet<string> all = [];

    public WoodHistory Make()
    {
        back = way.Back(selfKeys);
        forward = way.Forward(selfKeys);
        all = [.. back.Keys, .. forward.Keys];
        var steps = all.Select(Step).OrderBy(step => step.Level).ThenBy(step => step.Step.At).ThenBy(step => step.Step.Key, StringComparer.Ordinal).ToList();
        var flows = way.Flows.Where(flow => all.Contains(flow.From) && all.Contains(flow.To)).Select(flow => flow with { Bf = flow.Bf * Part(flow) }).ToList();

        // What is asked about, in its last form; a charge is all of its stacks.
        var last = self.GroupBy(step => step.Tag).Select(group => group.Last()).ToList();
        var account = last.Aggregate(CostAccount.None, (sum, step) => sum.Plus(cost.Of(step.Key)));
        var costBf = last.Sum(step => step.Bf);
        return new(tag, Title(), Under(steps), steps, flows, [.. Figures(steps, account, costBf)], account, costBf);
    }

    private double Part(WoodFlow flow) => back.TryGetValue(flow.To, out var part) && (selfKeys.Contains(flow.To) || !forward.ContainsKey(flow.To)) ? part : forward.GetValueOrDefault(flow.From);

    private HistoryStep Step(string key)
    {
        var step = way.Steps[key];
        var part = selfKeys.Contains(key) ? 1.0 : back.TryGetValue(key, out var backPart) ? backPart : forward[key];
        return new(step, step.Bf * part, Level(key), selfKeys.Contains(key), Words(step), Path(step), CostRules.PerBoardFoot(cost.Of(key).Money, step.Bf));
    }

    private int Level(string key)
    {
        if (levels.TryGetValue(key, out var level))
            return level;
        return levels[key] = way.Into(key).Where(flow => all.Contains(flow.From)).Select(flow => Level(flow.From) + 1).DefaultIfEmpty(0).Max();
    }

    private string Title()
    {
        var step = self[^1];
        var species = step.Species?.CommonName is { } name && self.All(one => one.Species == step.Species) ? $", {name}" : "";
        return $"History of {tag}{species}";
    }

    private static string Under(List<HistoryStep> steps)
    {
        var logs = steps.Count(step => step.Step.Form == WoodForm.Log);
        var loads = steps.Count(step => step.Step.Form == WoodForm.Shipped);
        return $"{(logs == 0 ? "No log on record" : logs == 1 ? "From one log" : $"From {logs} logs")}; {(loads == 0 ? "nothing of it has left the yard" : loads == 1 ? "one load has left" : $"{loads} loads have left")}. Shares by footage: boards of a stack are not told apart by log.";
    }

    private IEnumerable<Traced> Figures(List<HistoryStep> steps, CostAccount account, double costBf)
    {
        var logs = steps.Where(step => step.Step.Form == WoodForm.Log).ToList();
        var sawn = logs.Sum(step => step.PartBf);
        var scaled = logs.Sum(step => Scale(step.Step) * (step.Step.Bf > 0.0 ? step.PartBf / step.Step.Bf : 1.0));
        if (logs.Count > 0)
        {
            var lost = LostBefore(sawn);
            yield return new("Sawn", Number(sawn), "bf", $"from {Number(scaled)} bf scaled, International 1/4 in, gross{(lost.Count > 0 ? $"; since then {string.Join(", ", lost.Select(one => $"{Number(Math.Abs(one.Bf))} bf {one.Words}"))}" : "")}")
            {
                Method = "log-scale",
                Source = "the yard’s own intake sheets and sawing day sheets",
                Inputs = [("logs", $"{logs.Count}"), ("scaled", Number(scaled) + " bf"), ("sawn for one scaled", sawn > 0.0 ? (sawn / scaled).ToString("0.00", CultureInfo.InvariantCulture) : "not sawn yet"), .. lost.Select(one => (one.Words, Number(Math.Abs(one.Bf)) + " bf"))],
            };
        }

        var balance = FootageBalance.Of(way, selfKeys);
        var (here, gone) = (balance.Stacked + balance.Packed, balance.Gone);
        yield return new("Here and gone", $"{Number(here)} bf here, {Number(gone)} gone", "", $"net as last measured; of {Number(balance.Start)} bf at first{Losses(balance)}")
        {
            Method = "cost-so-far",
            Source = "the yard’s own tallies",
            Inputs =
            [
                ("at first", Number(balance.Start) + " bf"), ("on stacks and in tables", Number(balance.Stacked) + " bf"), ("in packs here", Number(balance.Packed) + " bf"), ("left", Number(balance.Gone) + " bf"),
                ("shrunk and fell down in kilns", Number(balance.Dried) + " bf"), ("lost in planing", Number(balance.Planed) + " bf"), ("written off at counts", Number(balance.WrittenOff) + " bf"), ("unexplained", Number(Math.Abs(balance.Open)) + " bf"),
            ],
        };

        var first = steps.Min(step => step.Step.At);
        var end = here > 0.5 || gone <= 0.0 ? state.Today : DateOnly.FromDateTime(steps.Max(step => step.Step.At));
        yield return new("Days so far", $"{Math.Max(end.DayNumber - DateOnly.FromDateTime(first).DayNumber, 0)}", "days", $"{first:d MMM yyyy} to {end:d MMM yyyy}");
        yield return Cost(account, costBf);
        if (Price(account, costBf) is { } price)
            yield return price;
    }

    // Sawn for it and held by it at first differ by what drying, planing and counts took before: each is named, so that no foot is missing between two figures of a page.
    private List<(string Words, double Bf)> LostBefore(double sawn)
    {
        var start = FootageBalance.Of(way, selfKeys).Start;
        if (self[0].Form == WoodForm.Log || back.Keys.Any(key => !way.Into(key).Any() && way.Steps[key].Form != WoodForm.Log))
            return [];
        var (dried, planed) = (LostInto(WoodForm.FromKiln), LostInto(WoodForm.Dressed));
        var counted = sawn - start - dried - planed;
        return [.. new[] { ("lost in drying", dried), ("lost in planing", planed), (counted > 0.0 ? "less at counts" : "more at counts", counted) }.Where(one => Math.Abs(one.Item2) >= 0.05)];

        double LostInto(WoodForm form) => back.Where(pair => way.Steps[pair.Key].Form == form && !(selfKeys.Contains(pair.Key) && way.Into(pair.Key).Any(flow => selfKeys.Contains(flow.From)))).Sum(pair => way.LostInto(pair.Key) * pair.Value);
    }

    private static string Losses(FootageBalance balance)
    {
        List<string> lost = [];
        if (balance.Dried >= 0.5)
            lost.Add($"{Number(balance.Dried)} lost in drying");
        if (balance.Planed >= 0.5)
            lost.Add($"{Number(balance.Planed)} in planing");
        if (Math.Abs(balance.WrittenOff) >= 0.5)
            lost.Add(balance.WrittenOff > 0.0 ? $"{Number(balance.WrittenOff)} written off at counts" : $"{Number(-balance.WrittenOff)} found at counts");
        return lost.Count == 0 ? "" : ": " + string.Join(", ", lost);
    }

    // What the list asks for the wood dry, beside what it has cost; the last form's own stack says what it is.
    private Traced? Price(CostAccount account, double costBf)
    {
        var tags = way.Back(selfKeys).Keys.Concat(selfKeys).Select(key => way.Steps[key].Tag).Concat(self[^1].Form == WoodForm.Log ? state.Logs[tag].Into.Select(into => into.Stack) : []);
        var stacks = tags.Distinct().Select(name => state.Stacks.GetValueOrDefault(name)).OfType<Book.State.Stack>().ToList();
        if (stacks.Count == 0 || stacks.Exists(stack => stack.Owner != "mill" || !stack.Proven) || CostRules.PerBoardFoot(account.Money, costBf) is not { } perBf || WoodWorth.PerBf(state, stacks[^1]) is not var (listed, basis))
            return null;
        return new("List price, dry", listed.ToString("0.00", CultureInfo.InvariantCulture), "a bf", $"{basis}; {listed - (decimal)perBf:0.00} above the cost so far, before what is still to come")
        {
            Method = "cost-so-far",
            Source = "the yard’s own prices",
            Inputs = [("cost so far", $"{perBf.ToString("0.00", CultureInfo.InvariantCulture)} a bf"), ("list price", basis)],
        };
    }

    private Traced Cost(CostAccount account, double costBf)
    {
        var perBf = CostRules.PerBoardFoot(account.Money, costBf);
        var whose = self[^1].Form is WoodForm.Stack or WoodForm.FromKiln or WoodForm.InKiln && state.Stacks[self[^1].Tag].Owner is var owner and not "mill" ? $"wood of {owner}: our work only; " : "";
        return new("Cost so far", perBf is { } money ? money.ToString("0.00", CultureInfo.InvariantCulture) : "–", "a bf",
            $"{whose}{(self[^1].Form == WoodForm.Log ? "up to the saw; stickers, kiln and packing come on top; " : "")}{account.Money:#,0} in all over {Number(costBf)} bf{Disputed()}{(account.Missing.Count > 0 ? "; not whole" : "")}")
        {
            Method = "cost-so-far",
            Source = "the yard’s own money tables",
            Inputs = [.. account.Lines.Select(line => (line.What, line.Money.ToString("#,0.00", CultureInfo.InvariantCulture))), .. account.Missing.Select(missing => ("not on record", missing))],
        };
    }

    // A cost over a count that may change says so.
    private string Disputed() => self.Where(step => step.Form == WoodForm.Pack && state.Packs[step.Tag].IsDisputed).Select(step => step.Tag).Distinct().ToList() is { Count: > 0 } packs
        ? $", by the first of the tallies of {string.Join(", ", packs)}, which differ and are not settled" : "";

    private double Scale(WoodStep step)
    {
        var log = state.Logs[step.Tag];
        return LogScale.Of(LogRule.InternationalQuarter, new MeasuredLog(log.ScalingDiameter, log.ScaleLength)) is Outcome<ScaledLog>.Done(var scaled) ? scaled.GrossUnrounded ?? 0.0 : 0.0;
    }

    private string Words(WoodStep step) => step.Form switch
    {
        WoodForm.Log => $"log from {step.Note}{(state.Logs[step.Tag].IsSawn ? $", sawn {state.Logs[step.Tag].SawnAt:d MMM yyyy}" : ", not sawn")}",
        WoodForm.Stack => $"boards on stickers{(step.Note is { } pack ? $" again, from {pack}" : "")}, {state.Stacks[step.Tag].Thickness}",
        WoodForm.InKiln => $"in kiln {state.Charges[step.Charge!].Kiln}, charge {step.Charge}",
        WoodForm.FromKiln => $"out of charge {step.Charge}",
        WoodForm.Dressed => $"planed{(step.Note is { } surfaces ? $", {surfaces}" : "")}",
        WoodForm.Pack => $"pack{(step.Note is { } order ? $" for {order}" : "")}",
        WoodForm.Pour => "wood in a table",
        WoodForm.Taken => $"taken{(step.Note is { } why ? $": {why}" : "")}",
        _ => $"left for {step.Note}",
    };

    private string Path(WoodStep step) => step.Form switch
    {
        WoodForm.Log => $"/logs/{step.Tag}",
        WoodForm.Pack => $"/tally/{step.Tag}",
        WoodForm.Pour => $"/pours/{step.Tag}",
        WoodForm.Shipped => $"/promises/{state.Shipments[step.Tag].Order}",
        WoodForm.InKiln => $"/charges/{step.Charge}",
        _ => $"/stacks/{step.Tag}",
    };

    // Below ten board feet a tenth still counts.
    private static string Number(double value) => value.ToString(value is > 0.05 and < 9.95 ? "0.0" : "#,0", CultureInfo.InvariantCulture);
}
