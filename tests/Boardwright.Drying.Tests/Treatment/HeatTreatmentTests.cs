using Boardwright.Drying.Treatment;
using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Drying.Tests.Treatment;

public class HeatTreatmentTests
{
    [Fact]
    public void Wet_bulb_under_the_core_has_no_answer()
    {
        var row = PublishedTable.Rows("treatment").Single(row => row.Quantity == "wet_bulb_under_core");
        var depression = TemperatureDifference.FromFahrenheitDegrees(12.0);
        var medium = Temperature.FromFahrenheit(row["core_f"] + 10.0);

        var outcome = HeatTreatment.For(
            Given.Species("sugar maple"), Given.Thickness("1in"), null, Temperature.FromFahrenheit(60.0), Temperature.FromFahrenheit(row["core_f"]), medium, depression);

        Assert.IsType<Outcome<HeatTreatment>.NoAnswer>(outcome);
    }

    [Fact]
    public void Depression_beyond_the_measured_range_is_refused() => Assert.IsType<Outcome<HeatTreatment>.Refused>(HeatTreatment.For(
        Given.Species("sugar maple"), Given.Thickness("1in"), null, Temperature.FromFahrenheit(60.0), Temperature.FromFahrenheit(133.0),
        Temperature.FromFahrenheit(200.0), TemperatureDifference.FromFahrenheitDegrees(13.0)));

    [Fact]
    public void Hold_is_thirty_minutes_from_56_C_and_unknown_below()
    {
        Assert.Equal(PublishedTable.Rows("treatment").Single(row => row.Quantity == "hold_min").ExpectedNumber, Core(56.0).Hold!.Value.Minutes, 1e-9);
        Assert.Equal(Core(56.0).Heating.Minutes + 30.0, Core(56.0).Total!.Value.Minutes, 1e-9);
        Assert.Null(Core(55.5).Hold);
        Assert.Null(Core(55.5).Total);
    }

    [Theory]
    [InlineData(HeatAgainst.PowderpostBeetles, 130.0, 1.0, 600.0)]
    [InlineData(HeatAgainst.PowderpostBeetles, 130.0, 2.0, 720.0)]
    [InlineData(HeatAgainst.PowderpostBeetles, 130.0, 3.0, null)]
    [InlineData(HeatAgainst.PowderpostBeetles, 133.0, 3.0, 30.0)]
    [InlineData(HeatAgainst.PowderpostBeetles, 129.0, 1.0, null)]
    [InlineData(HeatAgainst.Fungi, 169.0, 1.0, null)]
    [InlineData(HeatAgainst.Fungi, 185.0, 1.0, 20.0)]
    [InlineData(HeatAgainst.Fungi, 215.0, 1.0, 5.0)]
    public void Hold_is_that_of_the_printed_row_it_has_reached(HeatAgainst against, double coreF, double inches, double? minutes) =>
        Assert.Equal(minutes, HeatHold.For(against, Temperature.FromFahrenheit(coreF), Length.FromInches(inches))?.Time.Minutes is { } held ? Math.Round(held, 9) : null);

    [Fact]
    public void Timber_heats_slower_from_colder_wood_and_in_drier_air_and_quicker_in_hotter()
    {
        double Minutes(double initialF, double depressionF, double mediumF) => Given.Done(HeatTreatment.For(
            Given.Species("eastern white pine"), Length.FromInches(6.0), Length.FromInches(6.0), Temperature.FromFahrenheit(initialF), Temperature.FromFahrenheit(133.0), Temperature.FromFahrenheit(mediumF),
            TemperatureDifference.FromFahrenheitDegrees(depressionF))).Heating.Minutes;

        Assert.True(Minutes(40.0, 4.0, 160.0) > Minutes(60.0, 4.0, 160.0));
        Assert.True(Minutes(60.0, 12.0, 160.0) > Minutes(60.0, 4.0, 160.0));
        Assert.True(Minutes(60.0, 4.0, 170.0) < Minutes(60.0, 4.0, 160.0));
        Assert.True(Minutes(20.0, 4.0, 160.0) > Minutes(40.0, 4.0, 160.0));
    }

    [Fact]
    public void Wood_already_hot_needs_only_the_hold() =>
        Assert.Equal(0.0, Given.Done(HeatTreatment.For(
            Given.Species("sugar maple"), Given.Thickness("1in"), null, Temperature.FromCelsius(60.0), Temperature.FromCelsius(56.0), Temperature.FromCelsius(70.0), default)).Heating.Seconds);

    [Fact]
    public void Wide_board_is_the_limit_of_growing_width()
    {
        double Minutes(Length? width) => Given.Done(HeatTreatment.For(
            Given.Species("sugar maple"), Given.Thickness("2in"), width, Temperature.FromFahrenheit(60.0), Temperature.FromFahrenheit(133.0), Temperature.FromFahrenheit(157.0), default)).Heating.Minutes;

        Assert.True(Minutes(Length.FromInches(4.0)) < Minutes(Length.FromInches(8.0)));
        Assert.Equal(Minutes(null), Minutes(Length.FromInches(100.0)), 1e-4);
        // One-dimensional half of the difference left: alpha t / a² = ln(8/pi) / pi² (first term of the series).
        var halfway = RectangleHeating.SecondsUntil(0.5, 1e-7, 0.05, double.PositiveInfinity);
        Assert.Equal(Math.Log(8.0 / Math.PI) / (Math.PI * Math.PI), 1e-7 * halfway / (0.05 * 0.05), 2e-4);
    }

    private static HeatTreatment Core(double celsius) => Given.Done(HeatTreatment.For(
        Given.Species("sugar maple"), Given.Thickness("2in"), Length.FromInches(6.0), Temperature.FromCelsius(10.0), Temperature.FromCelsius(celsius), Temperature.FromCelsius(70.0), default));
}
