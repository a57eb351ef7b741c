using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One sample of a charge as the next round finds it.</summary>
/// <param name="Sample">The sample.</param>
/// <param name="DailyLossPct">Loss a day between its last two weighings; null before the second one, or where wood was lost between them.</param>
/// <param name="LowG">The scale asks below this.</param>
/// <param name="HighG">The scale asks above this.</param>
public sealed record SampleRow(Sample Sample, double? DailyLossPct, double LowG, double HighG)
{
    private const double UsualLossPercent = 2.0;

    public Weighing Last => Sample.Weighings[^1];

    /// <summary>The rows of all samples that were ever weighed, in the order of their names.</summary>
    public static IReadOnlyList<SampleRow> Of(Charge charge, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(charge);
        return [.. charge.Samples.Where(sample => sample.Weighings.Count > 0).Select(sample =>
        {
            var loss = Loss(charge, sample);
            var last = sample.Weighings[^1];
            var (low, high) = SampleTrend.ExpectedWeight(sample.CalculatedDry, last.Moisture, loss ?? UsualLossPercent, (now - last.At).TotalDays);
            return new SampleRow(sample, loss, low.Grams, high.Grams);
        })];
    }

    private static double? Loss(Charge charge, Sample sample) => sample.Weighings.Count < 2 ? null
        : SampleTrend.DailyLossPercent(sample.Weighings[^2].Moisture, sample.Weighings[^1].Moisture, Between(sample.Weighings[^2].At, sample.Weighings[^1].At), StoodBetween(charge, sample.Weighings[^2].At, sample.Weighings[^1].At));

    /// <summary>Time in which a charge did not dry, inside a stretch of time.</summary>
    public static Elapsed Stood(Charge charge, DateTime from, DateTime to)
    {
        ArgumentNullException.ThrowIfNull(charge);
        return Elapsed.FromSeconds(charge.Gaps.Sum(gap => Math.Max(0.0, (Earlier(gap.To ?? to, to) - Later(gap.From, from)).TotalSeconds)));
    }

    /// <summary>The same between two weighings. A stop in which the later one falls is not taken off: what the wood lost in it is in that weight, and on fewer hours it would count as quicker drying.</summary>
    public static Elapsed StoodBetween(Charge charge, DateTime from, DateTime weighed)
    {
        ArgumentNullException.ThrowIfNull(charge);
        return Stood(charge with { Gaps = charge.Gaps.RemoveAll(gap => gap.From < weighed && (gap.To ?? DateTime.MaxValue) > weighed) }, from, weighed);
    }

    private static Elapsed Between(DateTime from, DateTime to) => Elapsed.FromSeconds(Math.Max(0.0, (to - from).TotalSeconds));

    private static DateTime Earlier(DateTime one, DateTime other) => one < other ? one : other;

    private static DateTime Later(DateTime one, DateTime other) => one > other ? one : other;
}
