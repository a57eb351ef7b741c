using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Board feet a stack gives once dry: shrunk from where its footage was counted, less the mill's own falldown. Sheet, promises, plan, logs and the stack's own page all read it here.</summary>
/// <param name="From">Moisture its footage was counted at: as it lies; in a kiln as it was loaded; out of one as it is wanted.</param>
/// <param name="To">Moisture it is dried to: the middle of what its order accepts, its charge's target, else the house's own. Wood that stays out of kilns shrinks no further.</param>
/// <param name="Shrunk">Footage after shrinking.</param>
/// <param name="Falldown">Lost to drying defects and trimming, percent; null where none is on record.</param>
public sealed record StackYield(MoistureContent From, MoistureContent To, double Shrunk, Band? Falldown)
{
    /// <summary>With the most that falls down.</summary>
    public double Low => Left(Falldown?.High);

    /// <summary>Likely.</summary>
    public double Likely => Left(Falldown?.Likely);

    /// <summary>With the least that falls down.</summary>
    public double High => Left(Falldown?.Low);

    /// <summary>The yield of a stack.</summary>
    /// <returns>The yield; null where neither a reading nor a target says how much it shrinks.</returns>
    public static StackYield? Of(YardState state, Stack stack)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Of(state, stack, new PlanTargets(state, PlanFigures.Of(state).HouseTarget));
    }

    internal static StackYield? Of(YardState state, Stack stack, PlanTargets targets)
    {
        ArgumentNullException.ThrowIfNull(stack);
        var target = targets.Of(stack);
        if ((stack.Stage is StackStage.KilnDried or StackStage.Dressed ? target : CountedAt(state, stack)) is not { } from)
            return null;
        var to = stack.NeverKiln || target > from ? from : target;
        return NetFootage.At(stack.Species, stack.Grain == Grain.Quarter, stack.Footage, from, to) is Outcome<BoardFeet>.Done(var shrunk) ? new(from, to, shrunk.Count, FalldownOf(state, stack)) : null;
    }

    // The footage of a stack in a kiln is that of its loading: so is the moisture it is counted from.
    private static MoistureContent? CountedAt(YardState state, Stack stack)
    {
        if (stack.Charge is not { } tag || !state.Charges.TryGetValue(tag, out var charge))
            return stack.Moisture?.Mean;
        var samples = charge.Samples.Where(sample => sample.Weighings.Count > 0 && (sample.Stack ?? stack.Tag) == stack.Tag).ToList();
        return samples.Count > 0 ? MoistureContent.FromFraction(samples.Average(sample => sample.Weighings[0].Moisture.Fraction))
            : (stack.Readings.LastOrDefault(reading => reading.Mean is not null && reading.At <= charge.LoadedAt.AddDays(1)) ?? stack.Moisture)?.Mean;
    }

    private static Band? FalldownOf(YardState state, Stack stack) => state.Prices.GetValueOrDefault(stack.Species.CommonName) is not { } priced ? null
        : stack.Product is Product.Boards or Product.Blocking ? priced.FalldownBoardsPct : priced.FalldownSlabsPct;

    private double Left(double? lostPct) => Shrunk * (1.0 - (lostPct ?? 0.0) / 100.0);
}
