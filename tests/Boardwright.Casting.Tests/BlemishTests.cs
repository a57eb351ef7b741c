using Boardwright.Quantities;

namespace Boardwright.Casting.Tests;

/// <summary>Bubbles and sinking: the rise of a bubble, and the ranking of causes.</summary>
public class BlemishTests
{
    private static readonly Density Resin = Density.FromKilogramsPerCubicMetre(1100.0);
    private static readonly BlemishFacts Plain = new(Length.FromMillimetres(40.0), Resin, Temperature.FromCelsius(22.0), 0.0, 23.0, Temperature.FromCelsius(42.0));

    // Stokes, worked by hand for 1100 kg/m3: 0.5 mm in 0.3 Pa s rises 0.50 mm/s, 50 mm in 1.7 min; 0.2 mm takes 10 min; 0.5 mm in 5 Pa s 28 min.
    [Theory]
    [InlineData(0.5, 0.3, 1.7, 0.05)]
    [InlineData(0.2, 0.3, 10.4, 0.1)]
    [InlineData(0.5, 5.0, 27.8, 0.3)]
    public void A_bubble_rises_as_stokes_has_it(double diameterMm, double pascalSeconds, double minutes, double within) =>
        Assert.Equal(minutes, BubbleRise.Through(Length.FromMillimetres(diameterMm), Length.FromMillimetres(50.0), Resin, pascalSeconds).Minutes, within);

    [Fact]
    public void Five_degrees_colder_is_twice_as_thick() =>
        Assert.Equal(2.0, BubbleRise.ViscosityAt(Temperature.FromCelsius(15.0)) / BubbleRise.ViscosityAt(Temperature.FromCelsius(20.0)), 1e-12);

    [Fact]
    public void Bubbles_without_anything_on_record_are_first_of_the_wood() =>
        Assert.StartsWith("Air out of the wood", First(Blemish.Bubbles, Plain), StringComparison.Ordinal);

    [Fact]
    public void What_the_record_shows_comes_first()
    {
        Assert.Contains("warmed by 4 °C", First(Blemish.Bubbles, Plain with { WarmedKelvins = 4.0 }), StringComparison.Ordinal);
        Assert.StartsWith("Stirred in, and too thick", First(Blemish.Bubbles, Plain with { Start = Temperature.FromCelsius(4.0) }), StringComparison.Ordinal);
        Assert.StartsWith("Too hot: 129 °C", First(Blemish.Bubbles, Plain with { Peak = Temperature.FromCelsius(129.0), WarmedKelvins = 4.0 }), StringComparison.Ordinal);
        Assert.False(BlemishCauses.Of(Blemish.Bubbles, Plain with { Peak = Temperature.FromCelsius(129.0) })[0].CanBeSaved);
    }

    // 3 to 5 % usual (memory), 7.55 % in one resin (Yang 2016): of 40 mm 1.2 to 2.0, at most 3.0 mm.
    [Fact]
    public void Sinking_says_how_much_the_cure_itself_explains()
    {
        var causes = BlemishCauses.Of(Blemish.Sinking, Plain);

        Assert.Equal(3, causes.Count);
        Assert.Contains("1.2 to 2.0 mm of 40 mm", causes[^1].Cause, StringComparison.Ordinal);
        Assert.Contains("more than 3.0 mm", causes[^1].Test, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_cause_has_a_test_of_its_own_and_something_to_do()
    {
        var causes = BlemishCauses.Of(Blemish.Bubbles, Plain with { WarmedKelvins = 4.0, Peak = Temperature.FromCelsius(129.0) }).Concat(BlemishCauses.Of(Blemish.Sinking, Plain)).ToList();

        Assert.Equal(causes.Count, causes.Select(cause => cause.Test).Distinct().Count());
        Assert.All(causes, cause => Assert.True(cause.Remedy.Length > 20));
    }

    private static string First(Blemish blemish, BlemishFacts facts) => BlemishCauses.Of(blemish, facts)[0].Cause;
}
