using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

/// <summary>A likely moisture that is not what was read says how much the reading counted, and why.</summary>
public sealed class ReadingWeightTests
{
    [Theory]
    [InlineData("S-01")]
    [InlineData("S-03")]
    [InlineData("S-06")]
    [InlineData("S-11")]
    public void Likely_moisture_lies_between_what_was_likely_and_what_was_read(string tag)
    {
        var weight = ReadingWeight.Of(DemonstrationBook.Yard, Drying(tag))!;
        var (read, low) = (weight.Reading.Mean!.Value.Percent, Math.Min(weight.Without.Percent, weight.Reading.Mean.Value.Percent));

        Assert.InRange(weight.With.Percent, low, Math.Max(weight.Without.Percent, read));
        Assert.InRange(weight.Share!.Value, 0.5, 1.0); // a meter of a point or so against a forecast of two
        Assert.Contains($"counts {10.0 * weight.Share.Value:0} parts in 10", weight.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_of_the_red_oak_names_its_error_what_it_counted_and_the_air_since()
    {
        // Read 17.7 % in wood at 34 °F, 1.8 added; a meter's 5 % of the value and the scatter of 12 boards: 1.06 points standard error, 1.36 in 8 of 10.
        var drying = Drying("S-06");
        var weight = ReadingWeight.Of(DemonstrationBook.Yard, drying)!;

        Assert.Equal(1.2816 * Math.Sqrt((0.0025 * 19.5 * 19.5) + (1.4 * 1.4 / 12.0)), weight.ErrorPoints, 0.02);
        Assert.Equal(drying.Now.P50, weight.Now);
        Assert.EndsWith($"this evening: the air since then held wood at {weight.AirSince!.Value.Percent:0.0} %.", weight.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Band_of_a_reading_is_the_one_the_forecast_goes_by()
    {
        var figure = Assert.IsType<Outcome<StackSheet>.Done>(StackSheet.Of(DemonstrationBook.Yard, "S-06")).Value.Figures.Single(one => one.Label == "Moisture, last read");
        var half = ReadingWeight.Of(DemonstrationBook.Yard, Drying("S-06"))!.ErrorPoints / 1.2816 * 1.645;

        Assert.StartsWith($"{19.5 - half:0.0} to {19.5 + half:0.0}, 9 times in 10", figure.Basis, StringComparison.Ordinal);
    }

    private static StackForecast Drying(string tag) => Assert.IsType<Outcome<StackForecast>.Done>(StackForecast.Of(DemonstrationBook.Yard, tag)).Value;
}
