using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Casting.Tests.Cure;

/// <summary>The conduction half of the scheme against series solutions, and the order of accuracy of the whole.</summary>
public sealed class ConductionTests(ITestOutputHelper output)
{
    private const double HalfMetres = 0.025;
    private const double Conductivity = 0.20;
    private const double HeatCapacity = 1100.0 * 1900.0;
    private const double Diffusivity = Conductivity / HeatCapacity;

    public static IEnumerable<object[]> Rows(params string[] quantities) => PublishedTable.Theory("casting-conduction", quantities);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "step_cooling_centre" } })]
    public void Hot_slab_cools_as_the_series_says(PublishedRow row)
    {
        var biot = row.Text("Bi") == "inf" ? double.PositiveInfinity : row["Bi"];
        var surface = biot * Conductivity / HalfMetres;

        var end = CentreAt(row["Fo"], Slab(new SteadyKinetics(0.0), heat: 1.0, start: 80.0, air: 20.0, surface));

        Assert.InRange((end - 20.0) / 60.0, row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "uniform_source_centre" } })]
    public void Steady_source_between_held_faces_warms_as_the_series_says(PublishedRow row)
    {
        const double Rate = 1e-6;
        const double Heat = 1e5;

        var end = CentreAt(row["Fo"], Slab(new SteadyKinetics(Rate), Heat, start: 20.0, air: 20.0, double.PositiveInfinity));

        Assert.InRange((end - 20.0) * Conductivity / (1100.0 * Heat * Rate * HalfMetres * HalfMetres), row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "decaying_source_centre" } })]
    public void First_order_reaction_between_held_faces_warms_as_the_series_says(PublishedRow row)
    {
        const double Heat = 1e4;
        var rate = row["K"] * Diffusivity / (HalfMetres * HalfMetres);
        var firstOrder = new AutocatalyticKinetics
        {
            FirstFactorPerSecond = rate,
            FirstActivationJoulesPerMole = 0.0,
            SecondFactorPerSecond = 0.0,
            SecondActivationJoulesPerMole = 0.0,
            ReactionOrder = 1.0,
            DepletionOrder = 1.0,
        };

        var end = CentreAt(row["Fo"], Slab(firstOrder, Heat, start: 20.0, air: 20.0, double.PositiveInfinity));

        Assert.InRange((end - 20.0) * Conductivity / (1100.0 * Heat * rate * HalfMetres * HalfMetres), row.Low, row.High);
    }

    [Fact]
    public void The_table_would_notice_a_one_percent_error() => Assert.All(
        PublishedTable.Rows("casting-conduction").GroupBy(row => row.Quantity),
        quantity => Assert.Contains(quantity, row => Math.Abs(row.ExpectedNumber) * 0.01 > row.Tolerance));

    [Fact]
    public void Error_falls_with_the_square_of_the_cell()
    {
        const double Rate = 1e-6;
        const double Heat = 1e7;
        double Error(int cells)
        {
            var section = Slab(new SteadyKinetics(Rate), Heat, 20.0, 20.0, double.PositiveInfinity) with { CellMetres = 2.0 * HalfMetres / cells, StepSecondsMax = 2.0 };
            return CentreAt(0.5, section) - 20.0 - 0.3497272648 * 1100.0 * Heat * Rate * HalfMetres * HalfMetres / Conductivity;
        }

        var (coarse, fine, finest) = (Error(9), Error(27), Error(81));

        output.WriteLine($"{coarse} {fine} {finest}");
        Assert.InRange(Math.Log(coarse / fine, 3.0), 1.9, 2.1);
        Assert.InRange(Math.Log(fine / finest, 3.0), 1.9, 2.1);
    }

    [Fact]
    public void Error_falls_with_the_square_of_the_step()
    {
        double Centre(double seconds) => SlabCure.Run(
            SlabCureTests.Held(25.0, 50.0) with { CellMetres = 5e-3, StepSecondsMax = seconds, ConversionPerStep = 1.0 }, hoursMax: 14.0, hoursMin: 14.0).Curve[^1].CentreCelsius;
        var limit = Centre(7.5);

        var (coarse, fine) = (Centre(225.0) - limit, Centre(75.0) - limit);

        output.WriteLine($"{coarse} {fine}");
        Assert.InRange(Math.Log(coarse / fine, 3.0), 1.8, 2.2);
    }

    private static double CentreAt(double fourier, CureSection section)
    {
        var hours = fourier * HalfMetres * HalfMetres / Diffusivity / 3600.0;
        return SlabCure.Run(section, hours, hours).Curve[^1].CentreCelsius;
    }

    private static CureSection Slab(CureKinetics kinetics, double heat, double start, double air, double surface) => new()
    {
        Resin = new(kinetics, heat, 1100.0, 1900.0, Conductivity),
        Layers = [new(Length.FromMetres(2.0 * HalfMetres), default, Temperature.FromCelsius(start))],
        Shop = ShopTemperature.Constant(Temperature.FromCelsius(air)),
        BelowWattsPerSquareMetreKelvin = surface,
        AboveWattsPerSquareMetreKelvin = surface,
        CellMetres = 2.0 * HalfMetres / 151.0,
        StepSecondsMax = 5.0,
    };

    private sealed record SteadyKinetics(double PerSecond) : CureKinetics
    {
        public override double RatePerSecond(double conversion, double kelvins) => PerSecond;
    }
}
