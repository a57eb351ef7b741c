using System.Globalization;
using System.Text;
using Boardwright.Testing;

namespace Boardwright.Validation.Tests;

/// <summary>The pages of every published value beside ours, written from a fresh run: one for all, with what misses, and one for each subject.</summary>
internal static class ValidationPage
{
    private const string Key =
        "Tolerance is half a unit of the last digit printed; where it is wider a letter leads to the reason. Marks: **P** printed source seen, **M** from memory of the source, not seen again, **C** common practice, "
        + "**=** worked out by another program from a printed formula. Of a printed range the difference is how far ours lies outside; two of ours are the stacks of a good and a bad season, or the two ends of a range. "
        + "In the plots a circle agrees, a cross misses, a bar is a printed range; on the dashed line ours is the printed value.";

    public static string Text()
    {
        var run = Subject.Run;
        var all = run.SelectMany(one => one.Checks).ToList();
        var page = new StringBuilder($"""
            # Validation: every published value beside ours

            **Question.** How do the numbers of wood, air, drying and heat agree with what is printed? This page and those it leads to, with every value and a plot, are written by `scripts/validation` from `tests/published/*.csv` and a fresh run; a test compares them with one, and fails where a value misses without a reason.

            {Counted(all)}

            {Key}

            | subject | values | seen in print | memory | practice | worked out | agree | miss |
            | --- | --- | --- | --- | --- | --- | --- | --- |

            """);
        foreach (var (subject, checks) in run)
        {
            page.Append(CultureInfo.InvariantCulture, $"| [{subject.Title}](validation/{subject.Name}.md) | {checks.Count} | {Marked(checks, "P")} | {Marked(checks, "M")} | {Marked(checks, "C")} | {Marked(checks, "computed")} | {checks.Count(check => check.Agrees)} | {checks.Count(check => !check.Agrees)} |\n");
        }

        page.Append("\n## Values that miss\n");
        Misses(page, run);
        return page.ToString();
    }

    /// <summary>The page of one subject: its plot, every value, its sources.</summary>
    public static string Of(Subject subject, IReadOnlyList<Check> checks)
    {
        var page = new StringBuilder();
        Section(page, subject, checks);
        return page.ToString();
    }

    private static string Counted(List<Check> all) => string.Create(CultureInfo.InvariantCulture,
        $"{all.Count} values, {all.Count(check => check.Row.Mark is "P" or "M")} of them published ({Marked(all, "P")} seen in print, {Marked(all, "M")} from memory): {all.Count(check => check.Agrees)} agree, {all.Count(check => !check.Agrees)} miss and are listed with the reason.");

    private static int Marked(IEnumerable<Check> checks, string mark) => checks.Count(check => check.Row.Mark == mark);

    private static void Misses(StringBuilder page, IReadOnlyList<(Subject Subject, IReadOnlyList<Check> Checks)> run)
    {
        var misses = run.SelectMany(one => one.Checks.Where(check => !check.Agrees)).GroupBy(check => check.Row.MissReason).ToList();
        foreach (var reason in misses)
        {
            page.Append(CultureInfo.InvariantCulture, $"- **{string.Join(", ", reason.Select(check => check.Row.Id))}**: {reason.Key}\n");
        }
    }

    private static void Section(StringBuilder page, Subject subject, IReadOnlyList<Check> checks)
    {
        var sources = checks.Select(check => check.Row.Source).Distinct().ToList();
        var reasons = checks.Where(check => check.Row.ToleranceReason.Length > 0).Select(check => check.Row.ToleranceReason).Distinct().ToList();
        page.Append(CultureInfo.InvariantCulture, $"# {subject.Title}\n\nMethod: [{subject.Method}](../{subject.Method}.md). Values: `tests/published/{subject.Table}.csv`. All subjects, and what misses: [validation](../validation.md).\n\n{Key}\n\n![{subject.Title}: ours against the published values]({subject.Name}.svg)\n\n");
        page.Append("| value | of | published | ours | difference | tolerance | verdict | source |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var check in checks)
        {
            var row = check.Row;
            var letter = row.ToleranceReason.Length > 0 ? " " + Letter(reasons.IndexOf(row.ToleranceReason)) : "";
            page.Append(CultureInfo.InvariantCulture, $"| {row.Id} | {Of(row)} | {row.Expected} {row.Unit} | {Numbers(check)} | {Difference(check)} | {row.Tolerance:G6}{letter} | {(check.Agrees ? "agrees" : "**misses**")} | {sources.IndexOf(row.Source) + 1} {Mark(row)} |\n");
        }

        page.Append('\n');
        for (var i = 0; i < reasons.Count; i++)
            page.Append(CultureInfo.InvariantCulture, $"- ({Letter(i)}) {reasons[i]}\n");

        for (var i = 0; i < sources.Count; i++)
            page.Append(CultureInfo.InvariantCulture, $"- source {i + 1}: {sources[i]}\n");
    }

    private static string Letter(int index) => ((char)('a' + index)).ToString();

    private static string Mark(PublishedRow row) => row.Mark == "computed" ? "=" : row.Mark;

    // Inputs carry their unit as the last part of their name.
    private static string Of(PublishedRow row) => $"{Named(row.Quantity).Name}: {string.Join(", ", row.Inputs.Select(input => Named(input.Key) is var (name, unit) ? $"{name} {input.Value}{unit}" : ""))}".Replace('|', '/');

    private static (string Name, string Unit) Named(string name)
    {
        var last = name.LastIndexOf('_');
        var unit = last < 0 ? "" : name[(last + 1)..] switch
        {
            "f" or "F" => " °F",
            "c" or "C" => " °C",
            "pct" => " %",
            "k" => " K",
            "pa" => " Pa",
            "in" or "ft" or "mm" or "m" or "g" or "kg" or "lb" or "h" => " " + name[(last + 1)..],
            _ => "",
        };
        return ((unit.Length > 0 ? name[..last] : name).Replace('_', ' '), unit);
    }

    private static string Numbers(Check check) => check.Ours.Numbers.Count == 0
        ? check.Ours.Word
        : string.Join(" and ", check.Ours.Numbers.Select(number => Rounded(number, check.Row, 1)));

    private static string Difference(Check check) => check.Difference is { } difference ? Rounded(difference, check.Row, 2) : "";

    // A digit or two more than is printed, and no more than two past the tolerance: what follows is the machine's.
    private static string Rounded(double number, PublishedRow row, int more)
    {
        var decimals = Printed.Decimals(row.Expected.Split('-')[^1].TrimStart('>', '=')) + more;
        if (row.Tolerance > 1e-8)
            decimals = Math.Min(decimals, (int)Math.Ceiling(-Math.Log10(row.Tolerance)) + 2);

        var text = number.ToString("F" + Math.Clamp(decimals, 0, 10), CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? "0" : text;
    }
}
