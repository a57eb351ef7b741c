using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Sawing.Tests.Scaling;

public sealed class LogRuleTests
{
    private const string Table = "log-rules";

    public static IEnumerable<object[]> Rounded => PublishedTable.Theory(Table, "doyle_bf", "scribner_bf", "scribner_decimal_c_bf", "international_quarter_bf");

    public static IEnumerable<object[]> Unrounded =>
        PublishedTable.Theory(Table, "doyle_unrounded_bf", "international_quarter_unrounded_bf", "international_eighth_unrounded_bf", "ontario_unrounded_bf");

    public static IEnumerable<object[]> Factors => PublishedTable.Theory(Table, "scribner_factor_bf_per_ft");

    public static IEnumerable<object[]> Crossings => PublishedTable.Theory(Table, "doyle_passes_international_in");

    public static IEnumerable<object[]> NotFollowed => PublishedTable.Theory(Table, "printed_cell_not_followed_bf");

    public static IEnumerable<object[]> Regressions => PublishedTable.Theory(Table, "scribner_regression_bf");

    [Theory, MemberData(nameof(Rounded))]
    public void Rule_agrees_with_the_table(PublishedRow row) => row.Agrees(Gross(RuleOf(row.Quantity, "_bf"), row["diameter_in"], row["length_ft"]));

    [Theory, MemberData(nameof(Unrounded))]
    public void Formula_agrees(PublishedRow row) => row.Agrees(Formula(RuleOf(row.Quantity, "_unrounded_bf"), row["diameter_in"], row["length_ft"]));

    [Theory, MemberData(nameof(Factors))]
    public void Scribner_factor_agrees(PublishedRow row) => row.Agrees(ScribnerRule.Factor((int)row["diameter_in"], row["length_ft"]));

    [Fact]
    public void Tables_would_notice_a_one_percent_error() => Expect.NoticesOnePercent(
        Table, "doyle_bf", "scribner_bf", "scribner_decimal_c_bf", "international_quarter_bf", "doyle_unrounded_bf", "international_quarter_unrounded_bf",
        "international_eighth_unrounded_bf", "ontario_unrounded_bf", "scribner_factor_bf_per_ft");

    [Theory, MemberData(nameof(Crossings))]
    public void Doyle_passes_International_at_the_published_diameter(PublishedRow row)
    {
        var first = Enumerable.Range(6, 40).First(diameter =>
            Formula(LogRule.Doyle, diameter, row["length_ft"]) > Formula(LogRule.InternationalQuarter, diameter, row["length_ft"]));

        row.Agrees(first);
    }

    // The three printed cells that the rule they belong to does not give, named one by one: we keep the rule.
    [Theory, MemberData(nameof(NotFollowed))]
    public void A_printed_cell_that_the_rule_does_not_give_is_not_followed(PublishedRow row)
    {
        var ours = Gross(Expect.Done(LogRules.Find("rule", row.Text("rule"))), row["diameter_in"], row["length_ft"]);

        Assert.Equal(row["ours"], ours);
        Assert.NotEqual(row.ExpectedNumber, ours);
    }

    // Another form of the rule as it is quoted, never used: near the factors, and not them.
    [Theory, MemberData(nameof(Regressions))]
    public void Scribner_by_regression_is_near_the_factors(PublishedRow row)
    {
        var (diameter, length) = (row["diameter_in"], row["length_ft"]);

        Assert.Equal(row.ExpectedNumber, ((0.79 * diameter * diameter) - (2.0 * diameter) - 4.0) * length / 16.0, 0.0051);
        Assert.InRange(Formula(LogRule.Scribner, diameter, length) / row.ExpectedNumber, 0.9, 1.06);
    }

    [Fact]
    public void Closed_forms_of_International_eighth_agree_with_the_sections()
    {
        (double Length, Func<double, double> Form)[] forms =
        [
            (4, d => 0.22 * d * d - 0.71 * d), (8, d => 0.44 * d * d - 1.20 * d - 0.30), (12, d => 0.66 * d * d - 1.47 * d - 0.79),
            (16, d => 0.88 * d * d - 1.52 * d - 1.36), (20, d => 1.10 * d * d - 1.35 * d - 1.90),
        ];

        foreach (var (length, form) in forms)
        {
            for (var diameter = 6; diameter <= 40; diameter++)
                Assert.Equal(form(diameter), InternationalRule.BoardFeet(diameter, length, InternationalRule.EighthInchKerf), 0.0051);
        }
    }

    [Fact]
    public void Part_section_is_straight_interpolation() => Gen.Select(Gen.Double[6, 40], Gen.Double[0, 1]).Always((diameter, part) =>
    {
        var low = InternationalRule.BoardFeet(diameter, 8, InternationalRule.QuarterInchKerf);
        var high = InternationalRule.BoardFeet(diameter, 12, InternationalRule.QuarterInchKerf);

        Assert.Equal(low + part * (high - low), InternationalRule.BoardFeet(diameter, 8 + 4 * part, InternationalRule.QuarterInchKerf), 1e-9);
    });

    [Fact]
    public void A_wider_or_longer_log_never_scales_less() => Gen.Select(Gen.Int[6, 39], Gen.Int[4, 39], Gen.Int[0, 4]).Always((diameter, length, which) =>
    {
        var rule = new[] { LogRule.Doyle, LogRule.Scribner, LogRule.InternationalQuarter, LogRule.InternationalEighth, LogRule.Ontario }[which];
        var here = Gross(rule, diameter, length);

        Assert.True(Gross(rule, diameter + 1, length) >= here);
        Assert.True(Gross(rule, diameter, length + 1) >= here);
    });

    [Fact]
    public void International_never_goes_below_five() => Assert.Equal(5.0, Gross(LogRule.InternationalQuarter, 4, 4));

    [Fact]
    public void Doyle_gives_nothing_below_four_inches() => Assert.Equal(0.0, Gross(LogRule.Doyle, 2, 16));

    internal static LogRule RuleOf(string quantity, string ending) =>
        Expect.Done(LogRules.Find("rule", quantity[..^ending.Length].Replace('_', '-')));

    private static ScaledLog Scaled(LogRule rule, double diameterIn, double lengthFt) =>
        Expect.Done(LogScale.Of(rule, new MeasuredLog(Expect.Inches(diameterIn), Expect.Feet(lengthFt))));

    private static double Gross(LogRule rule, double diameterIn, double lengthFt) => Scaled(rule, diameterIn, lengthFt).Gross!.Value.Count;

    private static double Formula(LogRule rule, double diameterIn, double lengthFt) => Scaled(rule, diameterIn, lengthFt).GrossUnrounded!.Value;
}
