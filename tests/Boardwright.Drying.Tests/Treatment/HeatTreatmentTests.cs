using Boardwright.Drying.Treatment;
using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Drying.Tests.Treatment;

public class HeatTreatmentTests
{
    private const double SquareMetresPerSquareInch = 0.0254 * 0.0254;

    public static IEnumerable<object[]> Equation => PublishedTable.Theory("treatment", "heating_conduction_min");

    public static IEnumerable<object[]> Calculated => PublishedTable.Theory("treatment", "heating_calculated_min");

    public static IEnumerable<object[]> Measured => PublishedTable.Theory("treatment", "heating_measured_min");

    public static IEnumerable<object[]> Bounds => PublishedTable.Theory("treatment", "heating_upper_min");

    [Theory, MemberData(nameof(Equation))]
    public void Rectangle_equation_gives_the_worked_time(PublishedRow row)
    {
        var seconds = RectangleHeating.SecondsUntil(
            (row["surface_F"] - row["target_F"]) / (row["surface_F"] - row["initial_F"]),
            row["alpha_in2_per_s"] * SquareMetresPerSquareInch, row["a_in"] * 0.0254, row["b_in"] * 0.0254);

        Assert.InRange(seconds / 60.0, row.Low, row.High);
    }

    [Theory, MemberData(nameof(Calculated))]
    public void Heating_time_agrees_with_the_handbooks_calculation(PublishedRow row) =>
        Assert.InRange(Treat(row).Heating.Minutes, row.Low, row.High);

    [Theory, MemberData(nameof(Measured))]
    public void Heating_time_lies_within_15_percent_of_the_measured_one(PublishedRow row) =>
        Assert.InRange(Treat(row).Heating.Minutes, row.Low, row.High);

    [Theory, MemberData(nameof(Bounds))]
    public void Upper_time_covers_the_printed_99_percent_bound(PublishedRow row) =>
        Assert.True(Treat(row).HeatingUpper.Minutes >= row.ExpectedNumber - 0.5, $"{Treat(row).HeatingUpper.Minutes}");

    [Fact]
    public void Table_would_notice_a_one_percent_error() =>
        Assert.Contains(PublishedTable.Rows("treatment"), row => row.Quantity == "heating_calculated_min" && row.ExpectedNumber * 0.01 > row.Tolerance);

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

    private static HeatTreatment Treat(PublishedRow row) => Given.Done(HeatTreatment.For(
        Given.Species(row.Text("species")), Length.FromInches(row["thickness_in"]), Length.FromInches(row["width_in"]), Temperature.FromFahrenheit(row["initial_f"]),
        Temperature.FromFahrenheit(row["core_f"]), Temperature.FromFahrenheit(row["medium_f"]), TemperatureDifference.FromFahrenheitDegrees(row["depression_f"])));
}
