using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using static Boardwright.Casting.Tests.ClassTables;

namespace Boardwright.Casting.Tests.Cure;

public sealed class PourForecastTests
{
    private static CureSection Pour(double depthMm, double celsius) => new()
    {
        Resin = ResinTable.Class.Curing!,
        Layers = [new(Mm(depthMm), default)],
        Wall = Done(MouldWall.Of("wall", "hdpe", Mm(12.7))),
        Shop = ShopTemperature.Constant(Temperature.FromCelsius(celsius)),
    };

    [Fact]
    public void The_class_resin_agrees_with_its_label_within_two_hours()
    {
        // Invented label against the invented kinetics, computed independently: gel 23.4 h in the centre, 27.8 h at the top, peak 42.2 C at 23.8 h.
        var pour = Done(PourForecast.Of(Pour(40.0, 20.0), Mm(6.0)));

        Assert.Equal(42.2, pour.Centre.PeakCelsius, 0.1);
        Assert.Equal(23.8, pour.Centre.PeakHour, 0.1);
        Assert.Equal(23.4, pour.Centre.GelCentreHour!.Value, 0.1);
        Assert.Equal(27.8, pour.Centre.GelLastHour!.Value, 0.2);
        Assert.Equal(44.3, pour.GelEdgeHour!.Value, 0.2);
        Assert.Equal(ResinTable.Class.Label.Gel!.Value.Hours, pour.Centre.GelCentreHour.Value, 2.0);
    }

    [Fact]
    public void Margins_say_where_the_limit_is_crossed()
    {
        var pour = Done(PourForecast.Of(Pour(40.0, 20.0)));

        Assert.True(pour.IsSafe);
        Assert.InRange(pour.MarginKelvins, 1.5, 2.5);
        var warmer = Done(PourForecast.Of(Pour(40.0, 20.0 + pour.MarginKelvins + 0.2)));
        var deeper = Done(PourForecast.Of(Pour(40.0 + pour.MarginMillimetres + 0.5, 20.0)));
        Assert.False(warmer.IsSafe);
        Assert.False(deeper.IsSafe);
        Assert.True(warmer.MarginKelvins < 0.0 && deeper.MarginMillimetres < 0.0);
    }

    [Fact]
    public void A_deep_pour_is_told_to_be_split_into_pours_that_are_safe()
    {
        var pour = Done(PourForecast.Of(Pour(75.0, 21.0)));
        var advice = string.Join(' ', PourAdvice.For(pour, ResinTable.Class.Label));

        Assert.False(pour.IsSafe);
        Assert.Contains("Split the pour", advice, StringComparison.Ordinal);
        Assert.Contains("The label allows 50 mm", advice, StringComparison.Ordinal);
        Assert.True(Done(PourForecast.Of(Pour(Math.Floor(75.0 + pour.MarginMillimetres), 21.0))).IsSafe);
    }

    [Fact]
    public void A_cold_thin_edge_is_told_to_be_warmed_after_the_peak()
    {
        var pour = Done(PourForecast.Of(Pour(40.0, 14.0), Mm(6.0)));

        var advice = string.Join(' ', PourAdvice.For(pour, ResinTable.Class.Label));

        Assert.Contains("thin edge (6 mm) lags", advice, StringComparison.Ordinal);
        Assert.Contains("Holding 28 C", advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_pour_starts_uncured_on_the_first()
    {
        var layered = Pour(30.0, 20.0) with { Layers = [new(Mm(30.0), default), new(Mm(30.0), Elapsed.FromHours(60.0))] };

        var run = SlabCure.Run(layered);
        var single = SlabCure.Run(Pour(60.0, 20.0));

        Assert.True(run.PeakCelsius < 45.0 && single.PeakCelsius > 100.0);
        Assert.InRange(run.GelLastHour!.Value, 75.0, 110.0);
        Assert.InRange(run.BalanceError, 0.0, 1e-9);
    }

    [Fact]
    public void Conversion_never_falls_and_never_passes_one()
    {
        var run = SlabCure.Run(Pour(75.0, 24.0));

        Assert.All(run.Curve.Zip(run.Curve.Skip(1)), pair => Assert.True(pair.Second.CentreConversion >= pair.First.CentreConversion && pair.Second.LeastConversion <= 1.0));
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(400.0)]
    public void A_depth_no_one_pours_is_refused(double depthMm) => Assert.IsType<Outcome<PourForecast>.Refused>(PourForecast.Of(Pour(depthMm, 20.0)));

    [Fact]
    public void A_resin_fitted_to_a_cup_gels_in_that_cup_when_the_sheet_says()
    {
        var heat = ResinFit.HeatJoulesPerKilogram(190.0, 60.0);
        var resin = Done(ResinFit.FromCup(heat, Density.FromKilogramsPerCubicMetre(1100.0), Elapsed.FromHours(6.0), Mass.FromGrams(300.0), Temperature.FromCelsius(25.0)));

        var cup = BatchCure.Cup(resin, 0.3, 25.0);

        Assert.True(cup.RunToConversion(resin.GelConversion));
        Assert.Equal(6.0, cup.Seconds / 3600.0, 1e-4);
        Assert.NotNull(resin.FittedTo);
    }
}
