using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How much the last reading of a stack counted against what air and earlier readings had likely: the forecast weighs both by their errors, so that the likely moisture need not be what was read.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="ErrorPoints">How far its mean may be off either way, 8 times in 10: method and scatter of the boards read.</param>
/// <param name="Without">Likely on the evening of the reading without it.</param>
/// <param name="With">The same with it.</param>
/// <param name="Now">Likely this evening.</param>
/// <param name="AirSince">What the air since then held wood at, on average; null for a reading of today.</param>
public sealed record ReadingWeight(MoistureReading Reading, double ErrorPoints, MoistureContent Without, MoistureContent With, MoistureContent Now, MoistureContent? AirSince)
{
    private const double StandardErrorsIn8Of10 = 1.2816;
    private const double ApartPoints = 0.5; // nearer than that a share of the way says nothing

    /// <summary>The weight; null where no reading is used, and for wood that does not dry outdoors.</summary>
    public static ReadingWeight? Of(YardState state, StackForecast drying)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(drying);
        var stack = drying.Stack;
        if (stack.Readings.LastOrDefault() is not { } last || ReadingError.For(last) is not { } read)
            return null;
        var before = state with { Stacks = state.Stacks.SetItem(stack.Tag, stack with { Readings = stack.Readings.RemoveAt(stack.Readings.Count - 1) }) };
        return StackForecast.Of(before, stack.Tag) is Outcome<StackForecast>.Done(var without) && On(without, read.Date) is { } was && On(drying, read.Date) is { } now
            ? new(last, StandardErrorsIn8Of10 * read.TotalErrorPercent, was, now, drying.Now.P50, Air(drying, read.Date)) : null;
    }

    /// <summary>Share of the way from what was likely without it to what was read; null where the two are too near to tell.</summary>
    public double? Share => Reading.Mean!.Value.Percent - Without.Percent is var apart && Math.Abs(apart) < ApartPoints ? null : Math.Clamp((With.Percent - Without.Percent) / apart, 0.0, 1.0);

    /// <summary>In a sentence.</summary>
    public string Words => Share is { } share
        ? FormattableString.Invariant($"The reading of {Reading.At:d MMM}, {Reading.Mean!.Value.Percent:0.0} %, is good to {ErrorPoints:0.0} either way; by air and readings before it {Without.Percent:0.0} % was likely that evening. Weighed by their errors it counts {10.0 * share:0} parts in 10: {With.Percent:0.0} % then{Since}.")
        : FormattableString.Invariant($"The reading of {Reading.At:d MMM}, {Reading.Mean!.Value.Percent:0.0} %, good to {ErrorPoints:0.0} either way, agrees with the {Without.Percent:0.0} % that was likely that evening by air and readings before it{Since}.");

    private string Since => AirSince is not { } air ? "" : FormattableString.Invariant($", {Now.Percent:0.0} % this evening: the air since then held wood at {air.Percent:0.0} %");

    private static MoistureContent? Air(StackForecast drying, DateOnly day) => drying.Past.Where(one => one.Date > day.AddDays(1)).Select(one => one.Emc.Fraction).DefaultIfEmpty(double.NaN).Average() is var mean && double.IsNaN(mean) ? null : MoistureContent.FromFraction(mean);

    // Days are told by their evening.
    private static MoistureContent? On(StackForecast drying, DateOnly day) => drying.Past.LastOrDefault(one => one.Date <= day.AddDays(1)) is { Date.Year: > 1 } known ? known.P50 : null;
}
