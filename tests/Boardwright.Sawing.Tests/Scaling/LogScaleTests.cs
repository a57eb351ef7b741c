using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;
using CsCheck;

namespace Boardwright.Sawing.Tests.Scaling;

public sealed class LogScaleTests
{
    private const string Table = "log-rules";

    public static IEnumerable<object[]> Cubic => PublishedTable.Theory(Table, "smalian_ft3", "huber_ft3", "newton_ft3");

    public static IEnumerable<object[]> Metric => PublishedTable.Theory(Table, "smalian_m3");

    public static IEnumerable<object[]> Culls => PublishedTable.Theory(Table, "cull_fraction_length", "cull_fraction_wedge", "cull_fraction_sweep", "cull_fraction_interior", "squared_defect_bf");

    public static IEnumerable<object[]> Nominal => PublishedTable.Theory(Table, "nominal_length_ft");

    public static IEnumerable<object[]> Barked => PublishedTable.Theory(Table, "green_log_with_bark_lb");

    [Theory, MemberData(nameof(Cubic))]
    public void Cubic_volume_agrees(PublishedRow row)
    {
        var log = new MeasuredLog(In(row, "small_end_in") ?? Expect.Inches(10), Expect.Feet(row["length_ft"])) { LargeEnd = In(row, "large_end_in"), Middle = In(row, "mid_in") };

        row.Agrees(Expect.Done(LogScale.Of(LogRuleTests.RuleOf(row.Quantity, "_ft3"), log)).Volume.CubicFeet);
    }

    [Theory, MemberData(nameof(Metric))]
    public void Smalian_agrees_in_metres(PublishedRow row) => row.Agrees(CubicVolume.Smalian(row["small_dib_cm"] / 100, row["large_dib_cm"] / 100, row["length_m"]));

    [Theory, MemberData(nameof(Culls))]
    public void Share_lost_agrees(PublishedRow row) => row.Agrees(row.Quantity switch
    {
        "cull_fraction_length" => LogDeductions.LengthShare(row["defect_length_ft"], row["log_length_ft"]),
        "cull_fraction_wedge" => LogDeductions.WedgeShare(row["angle_deg"], row["defect_length_ft"], row["log_length_ft"]),
        "cull_fraction_sweep" => LogDeductions.SweepShare(row["departure_in"], row["diameter_in"]),
        "cull_fraction_interior" => LogDeductions.InteriorShare(row["major_in"], row["minor_in"], row["diameter_in"], row["defect_length_ft"], row["log_length_ft"]),
        _ => LogDeductions.SquaredDefect(row["width_in"], row["height_in"], row["length_ft"]),
    });

    [Theory, MemberData(nameof(Nominal))]
    public void Nominal_length_agrees(PublishedRow row) =>
        row.Agrees(NominalLength.Of(Expect.Feet(row["actual_length_ft"]), Expect.Inches(row["trim_in"]), Expect.Feet(row["step_ft"])).Feet);

    [Theory, MemberData(nameof(Barked))]
    public void Weight_with_bark_agrees(PublishedRow row)
    {
        var species = Expect.Species(row.Text("species"));
        var volume = Volume.FromCubicFeet(row["wood_ft3"]);

        // The species table rounds the moisture content to a percent; the source's own total uses the unrounded one.
        row.Agrees(WoodWeight.Of(species, MoistureContent.FromPercent(row["mc_pct"]), volume).Pounds + Expect.Done(LogWeight.OfBark(species, volume)).Pounds);
        Assert.Equal(row["mc_pct"], species.GreenMoistureAverage!.Value.Percent, 0.5);
    }

    [Fact]
    public void Tables_would_notice_a_one_percent_error() => Expect.NoticesOnePercent(
        Table, "smalian_ft3", "huber_ft3", "newton_ft3", "smalian_m3", "cull_fraction_length", "cull_fraction_wedge", "cull_fraction_sweep", "cull_fraction_interior", "squared_defect_bf",
        "nominal_length_ft", "green_log_with_bark_lb");

    [Fact]
    public void Sweep_and_a_lost_length_are_added_and_taken_off()
    {
        var log = new MeasuredLog(Expect.Inches(16), Expect.Feet(16)) { Sweep = Expect.Inches(5), Defects = [Defect("length:4ft")] };

        var scaled = Expect.Done(LogScale.Of(LogRule.Doyle, log));

        Assert.Equal(144, scaled.Gross!.Value.Count);
        Assert.Equal(144 * (3.0 / 16 + 0.25), scaled.DeductionBoardFeet, 1e-9);
        Assert.Equal(81, scaled.Net!.Value.Count);
        Assert.Equal(2, scaled.Deductions.Count);
    }

    [Fact]
    public void Rot_all_round_scales_the_log_inside_it()
    {
        var log = new MeasuredLog(Expect.Inches(20), Expect.Feet(12)) { Defects = [Defect("sap:1in")] };

        Assert.Equal(147, Expect.Done(LogScale.Of(LogRule.Doyle, log)).Net!.Value.Count);
    }

    [Theory]
    [InlineData("rot:8inx6in,8ft", 192 * 48.0 / 361 * 8 / 12)]
    [InlineData("wedge:60deg,12ft", 192 / 6.0)]
    public void Defect_is_taken_from_the_gross(string defect, double lost)
    {
        var log = new MeasuredLog(Expect.Inches(20), Expect.Feet(12)) { Defects = [Defect(defect)] };

        Assert.Equal(lost, Expect.Done(LogScale.Of(LogRule.Doyle, log)).DeductionBoardFeet, 1e-9);
    }

    [Fact]
    public void Net_is_never_negative_nor_above_the_gross() => Gen.Select(Gen.Int[6, 30], Gen.Int[4, 20], Gen.Double[0, 20], Gen.Double[0.1, 1]).Always((diameter, length, sweep, part) =>
    {
        var log = new MeasuredLog(Expect.Inches(diameter), Expect.Feet(length))
        {
            Sweep = Expect.Inches(sweep),
            Defects = [new LogDefect.LostLength(Expect.Feet(length * part)), new LogDefect.SapRot(Expect.Inches(1))],
        };

        var scaled = Expect.Done(LogScale.Of(LogRule.Scribner, log));

        Assert.InRange(scaled.Net!.Value.Count, 0.0, scaled.Gross!.Value.Count);
        Assert.InRange(scaled.DeductionBoardFeet, 0.0, scaled.Gross!.Value.Count);
    });

    [Fact]
    public void Newton_lies_between_Huber_and_Smalian_for_every_taper() => Gen.Select(Gen.Double[6, 30], Gen.Double[0, 10], Gen.Double[0, 1]).Always((small, more, at) =>
    {
        var (middle, large) = (small + at * more, small + more);

        var newton = CubicVolume.Newton(small, middle, large, 100);

        Assert.InRange(newton, Math.Min(CubicVolume.Huber(middle, 100), CubicVolume.Smalian(small, large, 100)) - 1e-9, Math.Max(CubicVolume.Huber(middle, 100), CubicVolume.Smalian(small, large, 100)) + 1e-9);
    });

    [Fact]
    public void Large_end_not_measured_is_assumed_and_named()
    {
        var scaled = Expect.Done(LogScale.Of(LogRule.Doyle, new MeasuredLog(Expect.Inches(16), Expect.Feet(8))));

        Assert.Equal("large end 17 in: small end + 1/8 in per foot of length", scaled.Assumed);
        Assert.Null(Expect.Done(LogScale.Of(LogRule.Doyle, new MeasuredLog(Expect.Inches(16), Expect.Feet(8)) { LargeEnd = Expect.Inches(18) })).Assumed);
    }

    [Fact]
    public void Cubic_rule_leaves_the_board_feet_open()
    {
        var scaled = Expect.Done(LogScale.Of(LogRule.Huber, new MeasuredLog(Expect.Inches(16), Expect.Feet(8))));

        Assert.Null(scaled.Gross);
        Assert.Null(scaled.Net);
        Assert.Contains("middle 16.5 in", scaled.Assumed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5.0, "6 to 40 in")]
    [InlineData(41.0, "6 to 40 in")]
    [InlineData(16.5, "round to the inch first")]
    public void Scribner_refuses_what_its_table_does_not_hold(double diameterIn, string reason) => Assert.Contains(
        reason, Expect.Refused(LogScale.Of(LogRule.Scribner, new MeasuredLog(Expect.Inches(diameterIn), Expect.Feet(12)))).Accepted, StringComparison.Ordinal);

    [Fact]
    public void Roy_has_no_answer_until_its_table_is_held() =>
        Assert.Contains("table", Expect.NoAnswer(LogScale.Of(LogRule.Roy, new MeasuredLog(Expect.Inches(16), Expect.Feet(12)))), StringComparison.Ordinal);

    [Fact]
    public void Decimal_C_says_when_its_exceptions_are_not_held()
    {
        Assert.Contains("differ by 10 bf", Expect.Done(LogScale.Of(LogRule.ScribnerDecimalC, new MeasuredLog(Expect.Inches(16), Expect.Feet(13)))).Note, StringComparison.Ordinal);
        Assert.Null(Expect.Done(LogScale.Of(LogRule.ScribnerDecimalC, new MeasuredLog(Expect.Inches(16), Expect.Feet(12)))).Note);
    }

    [Theory]
    [InlineData("hole:3in")]
    [InlineData("length")]
    [InlineData("rot:8in,8ft")]
    [InlineData("length:0ft")]
    [InlineData("wedge:60,12ft")]
    public void Defect_that_is_not_understood_is_refused(string text) => Expect.Refused(LogDefect.Read("defect", text));

    [Theory]
    [InlineData("length:13ft")]
    [InlineData("rot:21inx6in,8ft")]
    [InlineData("sap:8in")]
    public void Defect_larger_than_the_log_is_refused(string text) =>
        Expect.Refused(LogScale.Of(LogRule.Doyle, new MeasuredLog(Expect.Inches(16), Expect.Feet(12)) { Defects = [Defect(text)] }));

    [Fact]
    public void Deduction_under_a_cubic_rule_is_refused() =>
        Expect.Refused(LogScale.Of(LogRule.Smalian, new MeasuredLog(Expect.Inches(16), Expect.Feet(12)) { Sweep = Expect.Inches(4) }));

    [Fact]
    public void Scaling_diameter_follows_the_convention()
    {
        Assert.Equal(16, ScalingDiameter.Of(Expect.Inches(15), Expect.Inches(16), ScalingDiameter.Convention.MeanHalfUp).Inches, 1e-9);
        Assert.Equal(15, ScalingDiameter.Of(Expect.Inches(15), Expect.Inches(16), ScalingDiameter.Convention.MeanHalfDown).Inches, 1e-9);
        Assert.Equal(15, ScalingDiameter.Of(Expect.Inches(15.9), Expect.Inches(18), ScalingDiameter.Convention.Shortest).Inches, 1e-9);
    }

    private static Length? In(PublishedRow row, string name) => row.Has(name) && row.Text(name).Length > 0 ? Expect.Inches(row[name]) : null;

    private static LogDefect Defect(string text) => Expect.Done(LogDefect.Read("defect", text));
}
