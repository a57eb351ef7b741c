using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>What can be told of the season's plan now, for every page that says what kilns and promises do: one plan, so that no two pages differ.</summary>
/// <param name="Made">The plan worked to its end; null while there is none.</param>
/// <param name="Sheet">The same for a person.</param>
/// <param name="Ways">The first way out of each order the plan has late, at risk or not at all, by the line's number in the plan.</param>
/// <param name="Why">Why there is no plan, in a sentence; null where there is one, and where nobody asked for one.</param>
public sealed record SeasonNow(PlanMade? Made, SeasonSheet? Sheet, IReadOnlyDictionary<string, string> Ways, string? Why)
{
    /// <summary>What changed since an earlier plan, and why; null where there is no earlier plan.</summary>
    public PlanChanges? Changes { get; init; }

    /// <summary>Which plan it is, counted from the yard's first; 0 where there is none.</summary>
    public int Number { get; init; }

    /// <summary>True while a newer plan is being worked out: this one's loads stand meanwhile, under today's facts.</summary>
    public bool Carried { get; init; }

    /// <summary>Which plan it is, for every page that tells of it: "Plan 7".</summary>
    public string Name => Number == 0 ? "No plan yet" : $"Plan {Number}";

    /// <summary>Said beside it while a newer one is being worked out; null where it is the newest.</summary>
    public string? Newer => Carried ? $"{Name} under today’s facts. Plan {Number + 1} is being worked out; until it is there every page goes by this one." : null;

    /// <summary>Wood to put behind an order whose own may fall short, by the line's number in the plan.</summary>
    public IReadOnlyDictionary<string, OrderCover> Covers { get; init; } = new Dictionary<string, OrderCover>();

    /// <summary>The owner's plan beside it; null where no load is planned by hand.</summary>
    public PlansBeside? Beside { get; init; }

    /// <summary>Nobody asked for the plan.</summary>
    public static SeasonNow NotAsked { get; } = new(null, null, new Dictionary<string, string>(), null);

    /// <summary>The plan is still being worked out.</summary>
    public static SeasonNow StillWorked { get; } = NotAsked with { Why = "The season’s plan is still being worked out." };

    /// <summary>There is no plan, and why.</summary>
    public static SeasonNow Without(string why) => NotAsked with { Why = $"The season has no plan: {why}" };

    /// <summary>The plan of a yard.</summary>
    public static SeasonNow Of(YardState state, PlanMade made)
    {
        var sheet = SeasonSheet.Of(state, made);
        var covers = OrderCover.All(state, made, sheet);
        return new(made, sheet, sheet.Promises.Where(promise => promise.Standing != PromiseStanding.Safe).Select(promise => (promise.Line.Id, Way: Way(state, made, covers, promise)))
            .Where(one => one.Way is not null).ToDictionary(one => one.Id, one => one.Way!, StringComparer.Ordinal), null)
        { Covers = covers, Beside = PlansBeside.Of(state, made, sheet) };
    }

    /// <summary>How the plan has a line of an order; null where it does not plan it.</summary>
    public SeasonPromise? Of(string order, int line) => Sheet?.Promises.FirstOrDefault(promise => promise.Line.Order.Tag == order && promise.Line.Asked.Line == line);

    /// <summary>Where the plan puts a stack; null where it stays in the yard.</summary>
    public SeasonCharge? ChargeOf(string stack) => Sheet?.Kilns.SelectMany(row => row.Charges).FirstOrDefault(charge => charge.Stacks.Any(one => one.Tag == stack));

    /// <summary>Day on which the plan unloads a running charge, where that is later than the first day a crew may: the crew is at another kiln. Null where it is not later, and without a plan.</summary>
    public DateOnly? UnloadsLater(string charge, DateOnly outOn) =>
        Sheet?.Kilns.SelectMany(row => row.Charges).FirstOrDefault(one => one.Tag == charge) is { } planned && planned.Out.Day() > outOn ? planned.Out.Day() : null;

    private static string? Way(YardState state, PlanMade made, IReadOnlyDictionary<string, OrderCover> covers, SeasonPromise promise) =>
        promise.Standing == PromiseStanding.AtRisk && covers.GetValueOrDefault(promise.Line.Id) is { } cover ? cover.Do
        : WaysOut.Of(state, made, promise.Line.Id, covers) is [var first, ..] ? first.Do : null;
}
