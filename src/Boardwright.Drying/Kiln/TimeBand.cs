using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>A time that is enough as often as not, and one that is enough nine times in ten.</summary>
/// <param name="Half">Enough as often as not (p50).</param>
/// <param name="Most">Enough nine times in ten (p90).</param>
public readonly record struct TimeBand(Elapsed Half, Elapsed Most)
{
    /// <summary>Both later by a time that is certain.</summary>
    public TimeBand Plus(Elapsed certain) => new(Half + certain, Most + certain);

    /// <summary>Between this and another, straight, by a share from 0 to 1.</summary>
    public TimeBand Towards(TimeBand other, double share) => new(
        Elapsed.FromHours(Half.Hours + share * (other.Half.Hours - Half.Hours)), Elapsed.FromHours(Most.Hours + share * (other.Most.Hours - Most.Hours)));
}
