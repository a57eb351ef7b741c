using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Casting.Tests.Cure;

public sealed class SlabCureTests(ITestOutputHelper output)
{
    public static IEnumerable<object[]> Rows(params string[] quantities) => PublishedTable.Theory("casting-cure", quantities);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "reference_slab_peak", "reference_slab_peak_hour" } })]
    public void Slab_between_faces_held_at_one_temperature_peaks_as_computed_independently(PublishedRow row) =>
        Peak_is(row, Held(row["T0_c"], row["thickness_mm"]));

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "reference_on_hdpe_peak", "reference_on_hdpe_peak_hour" } })]
    public void Pour_on_a_mould_bottom_peaks_as_computed_independently(PublishedRow row) =>
        Peak_is(row, OnHdpe(row["T0_c"], row["epoxy_mm"]));

    [Theory]
    [InlineData(18.0)]
    [InlineData(21.0)]
    [InlineData(24.0)]
    public void A_pour_of_75_mm_runs_away(double celsius) =>
        Assert.True(SlabCure.Run(OnHdpe(celsius, 75.0), hoursMax: 40.0).PeakCelsius > 170.0);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "textbook_slab_temperature", "textbook_slab_conversion" } })]
    public void Textbook_slab_between_hot_walls_is_reproduced(PublishedRow row)
    {
        // Second-order cure written as an order-two law; the composite's effective properties per volume.
        var kinetics = new AutocatalyticKinetics
        {
            FirstFactorPerSecond = 2.0 * 0.5,
            FirstActivationJoulesPerMole = 1000.0 * CureKinetics.GasConstant,
            SecondFactorPerSecond = 0.0,
            SecondActivationJoulesPerMole = 0.0,
            ReactionOrder = 1.0,
            DepletionOrder = 2.0,
        };
        var resin = new CuringResin(kinetics, 0.6 * 1200.0 * 280_000.0 / 1304.0, 1304.0, 1000.0, 0.3);
        var section = new CureSection
        {
            Resin = resin,
            Layers = [new(Length.FromMillimetres(20.0), default, Temperature.FromCelsius(20.0))],
            Shop = ShopTemperature.Constant(Temperature.FromCelsius(120.0)),
            BelowWattsPerSquareMetreKelvin = double.PositiveInfinity,
            AboveWattsPerSquareMetreKelvin = double.PositiveInfinity,
            CellMetres = 20e-3 / 81,
            StepSecondsMax = 0.1,
        };

        var end = SlabCure.Run(section, hoursMax: row["t_s"] / 3600.0, hoursMin: 1.0).Curve[^1];

        output.WriteLine($"{row.Id} {end.CentreCelsius} {end.CentreConversion} expected {row.Expected}");
        Assert.InRange(row.Quantity == "textbook_slab_temperature" ? end.CentreCelsius : end.CentreConversion, row.Low, row.High);
    }

    private void Peak_is(PublishedRow row, CureSection section)
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var run = SlabCure.Run(section, hoursMax: 40.0);

        output.WriteLine($"{row} ours {run.PeakCelsius} at {run.PeakHour} balance {run.BalanceError} {clock.ElapsedMilliseconds} ms");
        Assert.InRange(row.Unit == "C" ? run.PeakCelsius : run.PeakHour, row.Low, row.High);
        Assert.InRange(run.BalanceError, 0.0, 1e-9);
    }

    internal static CureSection Held(double celsius, double thicknessMm) => new()
    {
        Resin = ResinTable.Reference.Curing!,
        Layers = [new(Length.FromMillimetres(thicknessMm), default)],
        Shop = ShopTemperature.Constant(Temperature.FromCelsius(celsius)),
        BelowWattsPerSquareMetreKelvin = double.PositiveInfinity,
        AboveWattsPerSquareMetreKelvin = double.PositiveInfinity,
    };

    internal static CureSection OnHdpe(double celsius, double thicknessMm) => new()
    {
        Resin = ResinTable.Reference.Curing!,
        Layers = [new(Length.FromMillimetres(thicknessMm), default)],
        Wall = Assert.IsType<Outcome<MouldWall>.Done>(MouldWall.Of("wall", "HDPE", Length.FromMillimetres(12.7))).Value,
        Shop = ShopTemperature.Constant(Temperature.FromCelsius(celsius)),
    };
}
