using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Scaling;

public class RuleComparisonTests
{
    // Virginia Cooperative Extension (P): a 16 in, 16 ft log is 180 International, 160 Scribner, 144 Doyle.
    [Fact]
    public void One_log_by_three_rules_as_the_extension_service_prints_it()
    {
        var rows = RuleComparison.Of(new MeasuredLog(Length.FromInches(16.0), Length.FromFeet(16.0)), (190.0, 170.0, 210.0)).ToDictionary(row => row.Rule);

        Assert.Equal((180.0, 160.0, 144.0), (Net(LogRule.InternationalQuarter), Net(LogRule.ScribnerDecimalC), Net(LogRule.Doyle)));
        Assert.Equal(100.0 * 46.0 / 144.0, 100.0 * rows[LogRule.Doyle].Overrun!.Value.Likely, 9);
        Assert.Null(rows[LogRule.Roy].Scaled);
        Assert.Contains("table", rows[LogRule.Roy].Words, StringComparison.Ordinal);
        Assert.Null(rows[LogRule.Smalian].Overrun);
        Assert.Equal(Enum.GetValues<LogRule>().Length, rows.Count);

        double Net(LogRule rule) => rows[rule].Scaled!.Net!.Value.Count;
    }

    [Fact]
    public void Half_inches_are_read_at_the_next_whole_one_where_a_table_has_no_halves_and_that_is_said()
    {
        var row = RuleComparison.Of(new MeasuredLog(Length.FromInches(17.5), Length.FromFeet(12.0)), null).Single(one => one.Rule == LogRule.Scribner);

        Assert.StartsWith("at 18 in", row.Words, StringComparison.Ordinal);
        Assert.NotNull(row.Scaled);
    }

    // The figures of docs/methods/log-scale.md: why no figure is turned into another.
    [Theory, InlineData(10.0, 0.59), InlineData(32.0, 1.03)]
    public void The_ratio_of_two_rules_changes_with_the_log(double inches, double ratio)
    {
        var rows = RuleComparison.Of(new MeasuredLog(Length.FromInches(inches), Length.FromFeet(12.0)), null).ToDictionary(row => row.Rule);

        Assert.Equal(ratio, Math.Round(rows[LogRule.Doyle].Scaled!.GrossUnrounded!.Value / rows[LogRule.InternationalQuarter].Scaled!.GrossUnrounded!.Value, 2));
    }

    [Fact]
    public void Every_rule_takes_its_own_share_of_a_deduction()
    {
        var rows = RuleComparison.Of(new MeasuredLog(Length.FromInches(16.0), Length.FromFeet(16.0)) { Sweep = Length.FromInches(5.0) }, null);

        Assert.Equal(3, rows.Count(row => row.Scaled is { Gross: null, Volume.CubicMetres: > 0.3 }));

        Assert.All(rows.Where(row => row.Scaled?.Gross is not null), row => Assert.Equal(row.Scaled!.Gross!.Value.Count * 3.0 / 16.0, row.Scaled.DeductionBoardFeet, 9));
    }
}
