using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>A load the book knows without the worked plan: in its kiln, or planned by hand.</summary>
/// <param name="Tag">The charge.</param>
/// <param name="Kiln">The kiln.</param>
/// <param name="In">Loaded, or to be loaded.</param>
/// <param name="Out">Expected out; null where nobody said.</param>
/// <param name="Stacks">The stacks.</param>
/// <param name="Runs">True while it is in the kiln.</param>
/// <param name="InTheWay">What stands in the way of a load planned by hand; null where nothing does.</param>
public sealed record KnownLoad(string Tag, string Kiln, DateOnly In, DateOnly? Out, IReadOnlyList<string> Stacks, bool Runs, string? InTheWay = null);

/// <summary>A line of an order by the owner's own loads.</summary>
/// <param name="Order">The order.</param>
/// <param name="Customer">Who it is for.</param>
/// <param name="Goods">What is asked.</param>
/// <param name="Due">Its day.</param>
/// <param name="Out">The last of its wood out of a kiln by the owner's loads; null where none has it.</param>
/// <param name="IsDry">Named wood has left the kiln, or is to stay out of it: no load is waited for.</param>
public sealed record KnownPromise(string Order, string Customer, string Goods, DateOnly Due, DateOnly? Out, bool IsDry)
{
    /// <summary>Days the wood is out after the day; null where no load has it.</summary>
    public int? LateDays => Out is { } day ? Math.Max(0, day.DayNumber - Due.DayNumber) : null;
}

/// <summary>What is known of the season while no plan is worked: charges that run, loads planned by hand, open promises.</summary>
public sealed record KnownSeason(IReadOnlyList<KnownLoad> Loads, IReadOnlyList<KnownPromise> Promises)
{
    /// <summary>Said beside it.</summary>
    public const string Words = "By your own plan and the charges that run; the worked plan is not ready yet.";

    /// <summary>From the book alone.</summary>
    public static KnownSeason Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return new(
        [
            .. state.Charges.Values.Where(charge => charge.IsRunning).Select(charge => new KnownLoad(charge.Tag, charge.Kiln, charge.LoadedAt.Day(), charge.ExpectedOutOn, charge.Stacks, true))
                .Concat(state.PlannedCharges.Values.Where(planned => !state.Charges.ContainsKey(planned.Tag) && OwnLoad.Waiting(state, planned).Count > 0).Select(planned => new KnownLoad(planned.Tag, planned.Kiln, planned.InOn, planned.OutOn, OwnLoad.Waiting(state, planned), false, LoadInTheWay.Of(state, planned))))
                .OrderBy(load => load.In).ThenBy(load => load.Tag, StringComparer.Ordinal),
        ],
        [
            .. state.Orders.Values.Where(order => order.IsOpen).SelectMany(order => order.Lines.Where(line => !line.IsFilled && line.Asked.Unit != Book.Facts.OrderUnit.M3Loose && line.Answer != Book.Facts.Answer.No).Select(line => new KnownPromise(order.Tag, order.Customer, line.Asked.Goods, line.Asked.DueOn, PromisesAtRisk.OutOn(state, line.Asked), line.Asked.NeverKiln || line.Asked.Stacks.Any(tag => state.Stacks.GetValueOrDefault(tag)?.Stage is Book.State.StackStage.KilnDried or Book.State.StackStage.Dressed))))
                .OrderBy(promise => promise.Due).ThenBy(promise => promise.Order, StringComparer.Ordinal),
        ]);
    }
}
