using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Resin mixed for a pour that is not in its mould: still liquid, or set in the bucket.</summary>
/// <remarks>The label's gel time is that of a layer; a full bucket heats itself and sets sooner. Past it nothing in a bucket can be poured.</remarks>
/// <param name="Liquid">Mixes younger than the gel time.</param>
/// <param name="Set">Mixes older than it.</param>
public sealed record PourBucket(IReadOnlyList<Mix> Liquid, IReadOnlyList<Mix> Set)
{
    /// <summary>Both parts of what can still be poured.</summary>
    public Mass LiquidMass => Mass.FromKilograms(Liquid.Sum(mix => mix.PartA.Kilograms + mix.PartB.Kilograms));

    /// <summary>What stands in buckets at a time.</summary>
    public static PourBucket Of(YardState state, Pour pour, DateTime at)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pour);
        var last = pour.Layers.LastOrDefault();
        var waiting = pour.Mixes.Where(mix => last is null || mix.At > last.At || (mix.At == last.At && mix.Entry > last.Entry));
        var gel = TimeSpan.FromHours(state.Resins[pour.Plan.Resin].Label.GelHours);
        var parted = waiting.ToLookup(mix => at - mix.At > gel);
        return new([.. parted[false]], [.. parted[true]]);
    }
}
