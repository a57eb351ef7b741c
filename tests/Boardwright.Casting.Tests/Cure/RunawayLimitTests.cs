using Boardwright.Casting.Cure;
using Boardwright.Testing;

namespace Boardwright.Casting.Tests.Cure;

public sealed class RunawayLimitTests
{
    public static IEnumerable<object[]> Rows(params string[] quantities) => PublishedTable.Theory("casting-cure", quantities);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "runaway_critical" } })]
    public void Critical_values_are_those_of_the_theory(PublishedRow row) => Assert.InRange(
        row.Text("geometry") switch
        {
            "slab" => RunawayLimit.SlabCritical,
            "cylinder" => RunawayLimit.CylinderCritical,
            "sphere" => RunawayLimit.SphereCritical,
            _ => RunawayLimit.StirredCritical,
        },
        row.Low, row.High);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "runaway_centre_rise" } })]
    public void Centre_rise_below_the_limit_is_the_lower_branch(PublishedRow row)
    {
        var rise = row.Text("geometry") switch
        {
            "slab" => RunawayLimit.SlabCentreRise(row["delta"]),
            "cylinder" => RunawayLimit.CylinderCentreRise(row["delta"]),
            _ => EmdenCentreRise(row["delta"]),
        };

        Assert.NotNull(rise);
        Assert.InRange(rise.Value, row.Low, row.High);
    }

    [Fact]
    public void Slab_constant_is_the_maximum_of_its_own_curve()
    {
        var most = Enumerable.Range(1, 300_000).Select(step => step * 1e-5).Max(theta => 2.0 * Math.Exp(-theta) * Math.Pow(Math.Acosh(Math.Exp(theta / 2.0)), 2.0));

        Assert.Equal(RunawayLimit.SlabCritical, most, 9);
        Assert.Null(RunawayLimit.SlabCentreRise(RunawayLimit.SlabCritical * 1.001));
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "runaway_slab_thickness" } })]
    public void Slab_thickness_at_the_limit(PublishedRow row)
    {
        var resin = ResinTable.Reference.Curing!;
        var rate = row.Text("rate") == "maximum"
            ? RunawayLimit.MaximumIsothermalRatePerSecond(resin.Kinetics, row["T0_c"])
            : resin.Kinetics.RatePerSecond(0.0, row["T0_c"] + 273.15);

        Assert.InRange(RunawayLimit.SlabThicknessMetres(resin, 56_000.0, rate, row["T0_c"]) * 1000.0, row.Low, row.High);
    }

    // Isothermal sphere: u'' + 2u'/x + delta e^u = 0, u'(0) = 0, u(1) = 0; the centre value on the lower branch by shooting.
    private static double? EmdenCentreRise(double delta) => Numerics.Root.Between(centre => EdgeOf(delta, centre), 0.0, 1.6);

    private static double EdgeOf(double delta, double centre)
    {
        const int Steps = 4000;
        const double H = 1.0 / Steps;
        var (u, v) = (centre, 0.0);
        (double U, double V) Slope(double x, double value, double slope) =>
            (slope, -delta * Math.Exp(value) - (x > 0.0 ? 2.0 * slope / x : -2.0 / 3.0 * delta * Math.Exp(value)));
        for (var step = 0; step < Steps; step++)
        {
            var x = step * H;
            var k1 = Slope(x, u, v);
            var k2 = Slope(x + H / 2, u + H / 2 * k1.U, v + H / 2 * k1.V);
            var k3 = Slope(x + H / 2, u + H / 2 * k2.U, v + H / 2 * k2.V);
            var k4 = Slope(x + H, u + H * k3.U, v + H * k3.V);
            u += H / 6 * (k1.U + 2 * k2.U + 2 * k3.U + k4.U);
            v += H / 6 * (k1.V + 2 * k2.V + 2 * k3.V + k4.V);
        }

        return u;
    }
}
