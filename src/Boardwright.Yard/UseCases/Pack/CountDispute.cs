using Boardwright.Sawing;

namespace Boardwright.Yard.UseCases;

/// <summary>A buyer's count against what was tallied and shipped.</summary>
/// <param name="DifferenceBf">Theirs less ours.</param>
/// <param name="DifferencePct">The same in percent of ours.</param>
/// <param name="IsWithinBlockTally">Whether a count by tiers may miss by as much, even in uniform packs.</param>
/// <param name="Words">What may be said to them.</param>
public sealed record CountDispute(double DifferenceBf, double DifferencePct, bool IsWithinBlockTally, string Words)
{
    public static CountDispute Of(double countedBf, double shippedBf)
    {
        var difference = countedBf - shippedBf;
        var share = shippedBf > 0.0 ? difference / shippedBf : 0.0;
        var within = Math.Abs(share) <= BlockTally.UsualErrorShare;
        return new(difference, 100.0 * share, within, within
            ? "That is inside what a count by tiers misses, 3 to 5 % even in uniform packs. Here is the piece tally; let us measure one pack together."
            : "That is more than a count by tiers misses. Measure one pack together, board by board, before anything is credited.");
    }
}
