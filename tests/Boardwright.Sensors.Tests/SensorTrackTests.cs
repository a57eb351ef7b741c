using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Sensors.Tests;

/// <summary>What a sensor's words mean, and when it is not believed. Limits: common practice, no source.</summary>
public sealed class SensorTrackTests
{
    private static readonly DateTime Eight = new(2026, 11, 2, 8, 0, 0);
    private static readonly SensorPlaced DryBulb = new("kiln/K1/dry-bulb", "K1", SensorQuantity.DryBulb, "F");

    [Theory]
    [InlineData(SensorQuantity.DryBulb, "F", "140", 60.0)]
    [InlineData(SensorQuantity.WetBulb, "C", " 42.5 ", 42.5)]
    [InlineData(SensorQuantity.Core, "C", "104 F", 40.0)]
    [InlineData(SensorQuantity.Core, "K", "313.15", 40.0)]
    [InlineData(SensorQuantity.Pressure, "mbar", "60", 6000.0)]
    [InlineData(SensorQuantity.Pressure, "Pa", "6e3", 6000.0)]
    [InlineData(SensorQuantity.Pressure, "mbar", "6 kPa", 6000.0)]
    [InlineData(SensorQuantity.Condensate, "L", "181.25", 181.25)]
    public void A_word_is_a_number_in_the_sensors_unit_or_with_its_own(SensorQuantity quantity, string unit, string word, double expected) =>
        Assert.Equal(expected, Assert.IsType<Outcome<double>.Done>(SensorText.Value(new("t", "K1", quantity, unit), word)).Value, 9);

    [Theory]
    [InlineData(SensorQuantity.DryBulb, "C", "")]
    [InlineData(SensorQuantity.DryBulb, "C", "warm")]
    [InlineData(SensorQuantity.DryBulb, "C", "NaN")]
    [InlineData(SensorQuantity.DryBulb, "C", "1e999")]
    [InlineData(SensorQuantity.DryBulb, "C", "-127")]
    [InlineData(SensorQuantity.DryBulb, "C", "140")]
    [InlineData(SensorQuantity.DryBulb, "C", "60 kPa")]
    [InlineData(SensorQuantity.Pressure, "kPa", "600")]
    [InlineData(SensorQuantity.Condensate, "L", "-1")]
    public void Nonsense_is_refused_with_what_is_accepted(SensorQuantity quantity, string unit, string word)
    {
        var refused = Assert.IsType<Outcome<double>.Refused>(SensorText.Value(new("kiln/K1/x", "K1", quantity, unit), word));
        Assert.Contains($"in {unit}", refused.Reasons[0].Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sensor_is_silent_after_its_minutes_and_alive_again_with_a_word()
    {
        var track = new SensorTrack(Eight).Heard(60.0, Eight);

        Assert.Equal(SensorStanding.Alive, track.At(DryBulb, Eight.AddMinutes(15)).Standing);
        Assert.Equal((SensorStanding.Silent, "nothing since 2 Nov 08:00"), track.At(DryBulb, Eight.AddMinutes(15.1)));
        Assert.Equal(SensorStanding.Alive, track.Heard(61.0, Eight.AddMinutes(16)).At(DryBulb, Eight.AddMinutes(17)).Standing);
    }

    [Fact]
    public void A_sensor_never_heard_is_silent_only_after_its_minutes()
    {
        Assert.Equal(SensorStanding.Alive, new SensorTrack(Eight).At(DryBulb, Eight.AddMinutes(14)).Standing);
        Assert.Equal(SensorStanding.Silent, new SensorTrack(Eight).At(DryBulb, Eight.AddMinutes(16)).Standing);
    }

    [Fact]
    public void The_same_value_for_two_hours_stands_still_and_a_tremble_ends_it()
    {
        var track = Enumerable.Range(0, 25).Aggregate(new SensorTrack(Eight), (before, count) => before.Heard(60.0, Eight.AddMinutes(5 * count)));
        var now = Eight.AddHours(2);

        Assert.Equal(SensorStanding.Still, track.At(DryBulb, now).Standing);
        Assert.Equal(SensorStanding.Alive, track.At(DryBulb, now.AddMinutes(-1)).Standing);
        Assert.Equal(SensorStanding.Alive, track.At(DryBulb with { Quantity = SensorQuantity.Condensate }, now).Standing);
        Assert.Equal(SensorStanding.Alive, track.Heard(60.1, now).At(DryBulb, now).Standing);
    }

    [Fact]
    public void Few_words_do_not_make_a_sensor_stand_still()
    {
        var hourly = DryBulb with { SilentAfterMinutes = 90.0 };
        var track = Enumerable.Range(0, 5).Aggregate(new SensorTrack(Eight), (before, hour) => before.Heard(60.0, Eight.AddHours(hour)));

        Assert.Equal(SensorStanding.Alive, track.At(hourly, Eight.AddHours(4)).Standing);
    }

    [Fact]
    public void Nonsense_alone_keeps_nobody_alive_and_a_single_word_of_it_harms_nobody()
    {
        var bad = SensorText.Value(DryBulb, "-127");
        var once = new SensorTrack(Eight).Heard(60.0, Eight).Heard(bad, Eight.AddMinutes(5));

        Assert.Equal(SensorStanding.Alive, once.At(DryBulb, Eight.AddMinutes(10)).Standing);
        Assert.Equal(60.0, once.Value);
        var (standing, why) = once.At(DryBulb, Eight.AddMinutes(16));
        Assert.Equal(SensorStanding.Wild, standing);
        Assert.Contains("-127 is not a temperature from -40 to 130", why, StringComparison.Ordinal);
    }
}
