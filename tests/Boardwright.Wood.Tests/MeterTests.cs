using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Wood.Tests;

public sealed class MeterTests
{
    private static readonly Temperature Room = Temperature.FromFahrenheit(70);

    public static TheoryData<string> Groups => [.. MeterResistance.All.Select(row => row.Group)];

    [Theory, MemberData(nameof(Groups))]
    public void Resistance_falls_with_moisture_and_leads_back_to_it(string group)
    {
        var row = MeterResistance.Find(group)!;
        for (var percent = row.PercentMin; percent <= row.PercentMax - 0.25; percent += 0.25)
        {
            Assert.True(row.LogMegohms(percent + 0.25) < row.LogMegohms(percent));
            Assert.Equal(percent, row.Percent(row.LogMegohms(percent)!.Value)!.Value, 1e-9);
        }

        Assert.Null(row.LogMegohms(row.PercentMin - 0.1));
        Assert.Null(row.LogMegohms(row.PercentMax + 0.1));
        Assert.Null(row.Percent(6.0));
    }

    [Fact]
    public void Every_meter_group_of_the_species_has_a_row() => Assert.All(
        SpeciesTable.All.Where(species => species.MeterGroup is not null),
        species => Assert.NotNull(MeterResistance.Find(species.MeterGroup)));

    [Fact]
    public void A_meter_set_from_one_wood_to_another_and_back_reads_the_same() => Gen.Select(Gen.Double[9.0, 17.0], Gen.Int[0, 12], Gen.Int[0, 12]).Always(
        (percent, one, other) =>
        {
            var from = MeterResistance.All[one];
            var to = MeterResistance.All[other];
            if (from.LogMegohms(percent) is { } resistance && to.Percent(resistance) is { } there && to.LogMegohms(there) is { } again)
                Assert.Equal(percent, from.Percent(again)!.Value, 1e-9);
        },
        draws: 2000);

    [Fact]
    public void Cold_wood_is_wetter_than_it_reads_by_either_rule() => Gen.Select(Gen.Double[8.0, 25.0], Gen.Double[-20.0, 60.0], Gen.Enum<MeterTemperatureRule>()).Always(
        (reading, celsius, rule) => Assert.True(MeterTemperature.Percent(reading, celsius, rule) > MeterTemperature.Percent(reading, celsius + 1.0, rule)),
        draws: 1000);

    [Fact]
    public void A_meter_set_to_the_wood_is_corrected_for_temperature_only()
    {
        var read = Read(12, Temperature.FromFahrenheit(50), "sugar maple", "sugar maple");

        Assert.Equal(13.0, read.Corrected!.Value.Percent, 1e-9);
        Assert.Equal(read.TemperatureCorrected, read.Corrected);
        Assert.True(read.Usable);
        Assert.Equal("", read.Note);
        Assert.Equal(1.0, read.ErrorPoints);
    }

    [Fact]
    public void Temperature_comes_before_species()
    {
        var read = Read(11, Temperature.FromFahrenheit(50), "white oak", "Douglas-fir");

        Assert.Equal(12.0, read.TemperatureCorrected.Percent, 1e-9);
        Assert.Equal(11.46, read.Corrected!.Value.Percent, 0.02);
    }

    [Fact]
    public void Wood_without_a_row_has_no_species_correction_and_says_why()
    {
        var read = Read(15.5, Temperature.FromFahrenheit(42), "hackberry", "American elm");

        Assert.Equal(16.9, read.TemperatureCorrected.Percent, 1e-9);
        Assert.Null(read.Corrected);
        Assert.True(read.Usable);
        Assert.Equal(2.0, read.ErrorPoints);
        Assert.Contains("no resistance is published for hackberry", read.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_setting_without_a_row_is_named() =>
        Assert.Contains("published for black cherry", Read(12, Room, "white oak", "black cherry").Note, StringComparison.Ordinal);

    [Fact]
    public void A_reading_outside_the_resistances_is_not_extrapolated()
    {
        var read = Read(24, Room, "white oak", "douglas-fir");

        Assert.Null(read.Corrected);
        Assert.True(read.Usable);
        Assert.Contains("7 to 20 %", read.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(7.0, true)]
    [InlineData(6.9, false)]
    [InlineData(28.0, true)]
    [InlineData(28.1, false)]
    [InlineData(60.0, false)]
    public void Readings_are_usable_from_7_to_28_percent(double reading, bool usable) =>
        Assert.Equal(usable, Read(reading, Room, "white oak", "white oak").Usable);

    [Fact]
    public void A_low_reading_is_shown_as_under_7() =>
        Assert.Contains("under 7", Read(5.5, Room, "white oak", "white oak").Note, StringComparison.Ordinal);

    [Theory]
    [InlineData(28.0, "below freezing", 2.0)]
    [InlineData(42.0, "Cold wood", 1.0)]
    [InlineData(118.0, "Hot wood", 2.0)]
    public void Wood_that_is_not_at_room_temperature_gets_a_note(double fahrenheit, string note, double error)
    {
        var read = Read(14, Temperature.FromFahrenheit(fahrenheit), "white oak", "white oak");

        Assert.Contains(note, read.Note, StringComparison.Ordinal);
        Assert.Equal(error, read.ErrorPoints);
    }

    [Fact]
    public void A_meter_set_to_douglas_fir_is_known_in_any_case()
    {
        Assert.Same(MeterSetting.DouglasFir, Expect.Done(MeterSetting.Find("calibrated-for", "Douglas Fir")));
        Assert.Equal("calibrated-for", Expect.Refused(MeterSetting.Find("calibrated-for", "granite")).What);
    }

    [Fact]
    public void Wood_at_an_impossible_temperature_is_refused() => Assert.Equal("temperature", Expect.Refused(MeterReading.Correct(
        MoistureContent.FromPercent(12), Temperature.FromCelsius(150), Expect.Species("white oak"), MeterSetting.DouglasFir, MeterTemperatureRule.PfaffGarrahan)).What);

    private static MeterReading Read(double percent, Temperature wood, string species, string setTo) => Expect.Done(MeterReading.Correct(
        MoistureContent.FromPercent(percent), wood, Expect.Species(species), Expect.Done(MeterSetting.Find("calibrated-for", setTo)), MeterTemperatureRule.OnePerTwentyFahrenheit));

    [Theory]
    [InlineData(MeterTemperatureRule.OnePerTwentyFahrenheit)]
    [InlineData(MeterTemperatureRule.PfaffGarrahan)]
    public void Shown_is_what_is_corrected_back_to_the_moisture(MeterTemperatureRule rule)
    {
        var wood = Temperature.FromFahrenheit(28.0);
        var shown = MeterTemperature.Shown(MoistureContent.FromPercent(15.0), wood, rule);

        Assert.Equal(15.0, MeterTemperature.Correct(shown, wood, rule).Percent, 1e-9);
        Assert.InRange(shown.Percent, 12.0, 13.5);
    }
}
