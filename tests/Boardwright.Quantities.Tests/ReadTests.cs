using Boardwright.Quantities.Reading;

namespace Boardwright.Quantities.Tests;

public sealed class ReadTests
{
    [Theory]
    [InlineData("99999in", "0 to 39,370.1 in")]
    [InlineData("-1 ft", "0 to 3,280.8 ft")]
    [InlineData("8ft 99999⅛ in", "0 to 39,370.1 in")]
    [InlineData("5000m", "0 to 1,000 m")]
    public void A_length_out_of_range_is_refused_in_the_unit_it_was_written_in(string text, string accepted) =>
        Assert.Equal(accepted, Assert.Single(Assert.IsType<Outcome<Length>.Refused>(Read.Length("--width", text)).Reasons).Accepted);

    [Theory]
    [InlineData("4/4", 25.4)]
    [InlineData("5/4", 31.75)]
    [InlineData("1.125in", 28.575)]
    [InlineData("1-1/8in", 28.575)]
    [InlineData("1 1/8 in", 28.575)]
    [InlineData("1⅛ in", 28.575)]
    [InlineData("5/8in", 15.875)]
    [InlineData("28.6mm", 28.6)]
    [InlineData("8ft", 2438.4)]
    [InlineData("8ft6in", 2590.8)]
    [InlineData("12ft2in", 3708.4)]
    [InlineData("8ft3in", 2514.6)]
    [InlineData("8 ft 6 in", 2590.8)]
    [InlineData("8' 6\"", 2590.8)]
    [InlineData("2.44m", 2440.0)]
    [InlineData("2.44 M", 2440.0)]
    public void Lengths_are_read_with_any_usual_unit(string text, double millimetres) =>
        Assert.Equal(millimetres, Done(Read.Length("length", text)).Millimetres, 9);

    [Theory]
    [InlineData("8")]
    [InlineData("8.6")]
    [InlineData("")]
    [InlineData("ft")]
    [InlineData("8ft6")]
    [InlineData("8lb")]
    [InlineData("-1m")]
    [InlineData("1e9m")]
    [InlineData("nan m")]
    [InlineData("2m3")]
    [InlineData("1/0in")]
    public void A_length_without_a_unit_or_out_of_range_is_refused_with_what_was_given(string text)
    {
        var refused = Assert.IsType<Outcome<Length>.Refused>(Read.Length("small-end", text));

        var reason = Assert.Single(refused.Reasons);
        Assert.Equal("small-end", reason.What);
        Assert.Equal(text, reason.Given);
        Assert.NotEmpty(reason.Accepted);
    }

    [Theory]
    [InlineData("68F", 20.0)]
    [InlineData("68 °F", 20.0)]
    [InlineData("20C", 20.0)]
    [InlineData("293.15K", 20.0)]
    [InlineData("-5C", -5.0)]
    [InlineData("−5C", -5.0)]
    public void Temperatures_are_points_on_the_scale(string text, double celsius) =>
        Assert.Equal(celsius, Done(Read.Temperature("t", text)).Celsius, 9);

    [Theory]
    [InlineData("45deg", 45.0)]
    [InlineData("45°", 45.0)]
    [InlineData("45 degrees", 45.0)]
    public void Angles_may_carry_the_degree_sign_alone(string text, double degrees) =>
        Assert.Equal(degrees, Done(Read.Angle("angle", text)).Degrees, 9);

    [Theory]
    [InlineData("45°")]
    [InlineData("45")]
    public void A_degree_sign_alone_is_no_temperature(string text) =>
        Assert.IsType<Outcome<Temperature>.Refused>(Read.Temperature("t", text));

    [Fact]
    public void A_temperature_difference_has_no_offset() =>
        Assert.Equal(10.0 / 1.8, Done(Read.TemperatureDifference("depression", "10F")).Kelvins, 12);

    [Theory]
    [InlineData("101.3kPa", 101300.0)]
    [InlineData("60mbar", 6000.0)]
    [InlineData("1.77inHg", 5993.9)]
    public void Pressures_are_absolute(string text, double pascals) => Assert.Equal(pascals, Done(Read.Pressure("p", text)).Pascals, 0.1);

    [Theory]
    [InlineData("964bf", 2.2747867)]
    [InlineData("2.3m3", 2.3)]
    [InlineData("6.5L", 0.0065)]
    public void Footage_given_as_a_volume_means_its_nominal_volume(string text, double cubicMetres) =>
        Assert.Equal(cubicMetres, Done(Read.Volume("v", text)).CubicMetres, 1e-7);

    [Theory]
    [InlineData("12%", 12.0)]
    [InlineData("12 %", 12.0)]
    [InlineData("12", 12.0)]
    [InlineData("0", 0.0)]
    [InlineData("120%", 120.0)]
    public void Percentages_may_drop_their_sign(string text, double percent) =>
        Assert.Equal(percent, Done(Read.MoistureContent("mc", text)).Percent, 9);

    [Theory]
    [InlineData("0.12")]
    [InlineData("-3%")]
    [InlineData("501%")]
    public void A_percentage_that_could_be_a_fraction_or_is_out_of_range_is_refused(string text) =>
        Assert.IsType<Outcome<MoistureContent>.Refused>(Read.MoistureContent("mc", text));

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;
}
