using Boardwright.Testing;

namespace Boardwright.Validation.Tests;

/// <summary>Published values against ours, and the page that shows them.</summary>
public sealed class ValidationTests
{
    private const int LeastPublished = 300;

    private static IEnumerable<Check> All => Subject.Run.SelectMany(one => one.Checks);

    [Fact]
    public void Every_value_agrees_within_its_tolerance_or_says_why_not() => Assert.Empty(
        All.Where(check => !check.Agrees && check.Row.MissReason.Length == 0).Select(check => $"{check.Row}: ours {string.Join(", ", check.Ours.Numbers)}{check.Ours.Word}"));

    [Fact]
    public void No_value_that_agrees_is_excused() => Assert.Empty(All.Where(check => check.Agrees && check.Row.MissReason.Length > 0).Select(check => check.Row.ToString()));

    [Fact]
    public void A_tolerance_wider_than_the_printed_rounding_has_its_reason_beside_it() => Assert.Empty(
        All.Where(check => check.IsWide && check.Row.ToleranceReason.Length == 0).Select(check => $"{check.Row}: tolerance {check.Row.Tolerance}"));

    // Tolerances as wide as the values would pass whatever we compute. Periods of weather and of vacuum charges are no better known.
    [Fact]
    public void An_error_of_one_percent_would_be_noticed_in_every_subject_but_those_of_printed_periods() => Assert.Equal(
        ["air-times", "outdoor-emc", "vacuum-times"],
        Subject.Run.Where(one => !one.Checks.Any(check => check.NoticesOnePercent)).Select(one => one.Subject.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Enough_values_are_published() => Assert.True(All.Count(check => check.Row.Mark is "P" or "M") >= LeastPublished);

    [Fact]
    public void Every_row_of_a_table_belongs_to_one_subject() => Assert.All(Subject.All.Select(subject => subject.Table).Distinct(), table => Assert.Equal(
        PublishedTable.Rows(table).Select(row => row.Id).Order(StringComparer.Ordinal),
        Subject.Run.Where(one => one.Subject.Table == table).SelectMany(one => one.Checks).Select(check => check.Row.Id).Order(StringComparer.Ordinal)));

    [Fact]
    public void The_pages_and_their_plots_are_those_of_a_fresh_run()
    {
        var written = Written(ValidationPage.Text(), "validation.md");
        foreach (var (subject, checks) in Subject.Run)
        {
            written |= Written(Plot.Svg(subject, checks), "validation", subject.Name + ".svg");
            written |= Written(ValidationPage.Of(subject, checks), "validation", subject.Name + ".md");
        }

        Assert.False(written, "docs/methods/validation.md, a page of a subject or a plot was stale and is written anew: look at it and commit it.");
    }

    private static bool Written(string text, params string[] name)
    {
        var path = Repository.PathOf(["docs", "methods", .. name]);
        if (File.Exists(path) && File.ReadAllText(path) == text)
            return false;

        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return true;
    }
}
