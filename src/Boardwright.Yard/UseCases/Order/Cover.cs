using System.Globalization;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Wood that could stand behind an order whose own wood may yield too little: one advice for the sheet, the order and the season.</summary>
/// <param name="Order">The order's line in the plan.</param>
/// <param name="Ready">The stack of the mill, as good as what the order names and kept for nobody, with its day by the worked plan.</param>
/// <param name="What">How much of what wood it is.</param>
public sealed record OrderCover(string Order, WorkedReady Ready, string What)
{
    private const double SureEnough = 0.85;
    private const double LeastBf = 1.0;

    /// <summary>The stack.</summary>
    public string Stack => Ready.Stack;

    /// <summary>The advice in one line: the stack, whether it meets the day, and whom else it serves.</summary>
    public string Do => $"Put {Stack} behind {Order}: {(Ready.LateDays > 0 ? $"what falls short then comes {PromisesByPlan.Days(Ready.LateDays)} late, the least late there is" : "in time")}{(Ready.InPlan ? "" : ", if a kiln is found for it")}{(Ready.Serves.Count > 0 ? $"; it serves {string.Join(", ", Ready.Serves)} too, so it is not kept whole: what they leave of it is there" : "")}.";

    /// <summary>True where the whole stack may be kept for the order: the plan serves no other from it.</summary>
    public bool MayBeKept => Ready.Serves.Count == 0;

    /// <summary>What it is, and when it is ready.</summary>
    public string Words => $"{What} {Ready.Words}{(Ready.LateDays > 0 ? " It covers the volume, not the day: say so to the customer." : "")}";

    /// <summary>What is said of an order that may fall short while no such stack is known.</summary>
    public static string Watch(string order) => $"Watch the volume of {order}: the wood may fall short.";

    /// <summary>The advice for each line of an order that may fall short, by the line's number in the plan; a stack is advised for one order only, the shakiest first.</summary>
    public static IReadOnlyDictionary<string, OrderCover> All(YardState state, PlanMade made, SeasonSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(sheet);
        var found = new Dictionary<string, OrderCover>(StringComparer.Ordinal);
        foreach (var promise in sheet.Promises)
        {
            if (Of(state, made, promise, found.Values.Select(cover => cover.Stack)) is { } cover)
                found[promise.Line.Id] = cover;
        }

        return found;
    }

    // What serves no other order; of those the least late; of those the one the plan dries anyway, then the largest.
    private static OrderCover? Of(YardState state, PlanMade made, SeasonPromise promise, IEnumerable<string> taken)
    {
        var index = Index(made, promise);
        if (!MayFallShort(state, made, index))
            return null;
        var ready = AsGood(state, made, index).Where(one => !promise.Stacks.Contains(one.Stack) && state.Stacks[one.Stack].ReservedFor is null && !taken.Contains(one.Stack))
            .Select(one => WorkedReady.Of(made, index, one)).Where(one => one.On is not null && one.SpareBf >= LeastBf)
            .OrderBy(one => one.Serves.Count > 0).ThenBy(one => one.LateDays).ThenByDescending(one => one.InPlan).ThenByDescending(one => one.SpareBf).FirstOrDefault();
        return ready is null ? null : new(promise.Line.Id, ready, string.Create(CultureInfo.InvariantCulture, $"{ready.SpareBf:#,0} bf of {state.Stacks[ready.Stack].Species.CommonName} {state.Stacks[ready.Stack].Thickness}, kept for nobody."));
    }

    // What the planner may take beside the wood named, and for an order by volume what is sawn like the wood named.
    private static IEnumerable<OrderWood> AsGood(YardState state, PlanMade made, int index)
    {
        var asked = made.Yard.Lines[index].Asked;
        var named = asked.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).FirstOrDefault(stack => stack is { Product: Product.Boards, Owner: "mill" });
        var alike = named is null || asked.NeverKiln || asked.CustomerWood ? [] : state.Stacks.Values.Where(stack => stack is { IsHere: true, NeverKiln: false, Proven: true, Product: Product.Boards, Owner: "mill" }
            && made.Yard.Yields.ContainsKey(stack.Tag) && !asked.Stacks.Contains(stack.Tag)
            && stack.Species.CommonName == named.Species.CommonName && stack.Thickness == named.Thickness && stack.SawnThickness == named.SawnThickness && stack.Grain == named.Grain
            && !(asked.PieceLengthMinM is { } least && stack.LongestPiece is { } longest && longest.Metres < least));
        return made.Input.Orders[index].Wood.Where(one => one.ExtraMoney > 0m)
            .Concat(alike.Select(stack => new OrderWood(stack.Tag, stack.Stage is StackStage.AirDrying or StackStage.InKiln, 0m))).DistinctBy(one => one.Stack);
    }

    /// <summary>True where the order's own wood may yield too little, by chance or with the worst falldown on record.</summary>
    public static bool MayFallShort(YardState state, PlanMade made, SeasonPromise promise)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(promise);
        return MayFallShort(state, made, Index(made, promise));
    }

    private static int Index(PlanMade made, SeasonPromise promise) => made.Input.Orders.ToList().FindIndex(order => order.Id == promise.Line.Id);

    internal static bool MayFallShort(YardState state, PlanMade made, int index)
    {
        var line = made.Yard.Lines[index];
        return made.Enough[index] < SureEnough
            || (!line.Asked.NeverKiln && !line.Asked.CustomerWood && PromisesAtRisk.Volume(state, line.Order, line.Asked) is { } band && band.Low < band.Sold);
    }

    /// <summary>Keeps a stack for an order.</summary>
    public static Outcome<IReadOnlyList<Entry>> Keep(YardBook book, string stack, string order, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        return string.IsNullOrWhiteSpace(by)
            ? new Refusal("who", "nobody", "the name of whoever says so")
            : key.Write(book, by, new StackReserved(stack, order, book.State.Stacks.TryGetValue(stack, out var known) && known.NeverKiln));
    }
}
