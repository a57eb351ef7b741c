using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Sawing.Tests.Scaling;

/// <summary>The log yard of the demonstration: forty logs under three rules .</summary>
public sealed class DemoLogTests
{
    public static IEnumerable<object[]> Logs => PublishedTable.Theory("sawing-demo-logs", "demo_log");

    [Theory, MemberData(nameof(Logs))]
    public void Log_scales_as_listed(PublishedRow row)
    {
        var log = Scaling(row);

        Assert.Equal(row["doyle_bf"], Scaled(LogRule.Doyle, log).GrossUnrounded!.Value, 0.051);
        Assert.Equal(row["international_formula_bf"], Scaled(LogRule.InternationalQuarter, log).GrossUnrounded!.Value, 0.2);   // listed with 0.905, 0.026 % above the statute's factor
        row.Agrees(Scaled(LogRule.InternationalQuarter, log).Gross!.Value.Count);
        Assert.Equal(row["smalian_m3"], Solid(row).CubicMetres, 0.00051);
    }

    [Fact]
    public void Forty_logs_come_to_the_expected_sums()
    {
        var rows = PublishedTable.Rows("sawing-demo-logs");

        Assert.Equal(40, rows.Count);
        Assert.Equal(6300, rows.Sum(row => Scaled(LogRule.Doyle, Scaling(row)).GrossUnrounded!.Value), 1.0);
        Assert.Equal(6871.3, rows.Sum(row => Scaled(LogRule.InternationalQuarter, Scaling(row)).GrossUnrounded!.Value), 0.1);
        Assert.Equal(6880, rows.Sum(row => Scaled(LogRule.InternationalQuarter, Scaling(row)).Gross!.Value.Count), 2.0);
        Assert.Equal(30.00, rows.Sum(row => Solid(row).CubicMetres), 0.01);
        Assert.InRange(rows.Sum(Weight), 0.9 * 26900, 1.1 * 26900);
    }

    // L-037 was typed 51 from a centimetre tape: 20 in scales 137.3 bf, 51 in would scale 980.
    [Fact]
    public void Centimetres_read_as_inches_are_not_taken_silently()
    {
        var asMeant = new MeasuredLog(Expect.Inches(20), Expect.Feet(8));
        var asTyped = new MeasuredLog(Expect.Inches(51), Expect.Feet(8));

        Assert.Equal(137.3, Scaled(LogRule.InternationalQuarter, asMeant).GrossUnrounded!.Value, 0.5);
        Assert.Equal(980, Scaled(LogRule.InternationalQuarter, asTyped).GrossUnrounded!.Value, 0.5);
        Assert.Contains("51 cm", Scaled(LogRule.InternationalQuarter, asTyped).Note, StringComparison.Ordinal);
        Assert.Contains("51 cm = 20.1 in?", Expect.Refused(LogIntake.Diameter("small end", Expect.Inches(51), Expect.Inches(36))).Accepted, StringComparison.Ordinal);
    }

    internal static MeasuredLog Scaling(PublishedRow row) => new(
        ScalingDiameter.Of(Expect.Inches(row["a_in"]), Expect.Inches(row["b_in"]), ScalingDiameter.Convention.MeanHalfUp), Expect.Feet(row["scale_length_ft"]));

    internal static ScaledLog Scaled(LogRule rule, MeasuredLog log) => Expect.Done(LogScale.Of(rule, log));

    private static Volume Solid(PublishedRow row) => Scaled(
        LogRule.Smalian, new MeasuredLog(Scaling(row).SmallEnd, Expect.Inches(row["actual_length_in"])) { LargeEnd = Expect.Inches(row["large_in"]) }).Volume;

    private static double Weight(PublishedRow row) => Expect.Done(LogWeight.OfWood(Expect.Species(row.Text("species")), Solid(row))).Kilograms;
}
