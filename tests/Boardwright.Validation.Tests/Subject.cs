using Boardwright.Testing;

namespace Boardwright.Validation.Tests;

/// <summary>Published values of one kind, and how ours are found for them.</summary>
/// <param name="Name">Name of its plot.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Method">Page of docs/methods that says how ours are computed.</param>
/// <param name="Table">Table of tests/published.</param>
/// <param name="Quantities">Quantities of the table; none for all.</param>
/// <param name="Logarithmic">The plot has logarithmic axes: values of many sizes, none of them zero or less.</param>
/// <param name="Of">Ours for a row.</param>
internal sealed record Subject(string Name, string Title, string Method, string Table, string[] Quantities, bool Logarithmic, Func<PublishedRow, Ours> Of)
{
    /// <summary>Every subject, in the order of the job: wood, air, yard, kiln, vacuum, treatment, heat.</summary>
    public static IReadOnlyList<Subject> All { get; } = [.. WoodSubjects.All, .. DryingSubjects.All, .. HeatSubjects.All];

    /// <summary>All of them computed once.</summary>
    public static IReadOnlyList<(Subject Subject, IReadOnlyList<Check> Checks)> Run { get; } = [.. All.Select(subject => (subject, (IReadOnlyList<Check>)subject.Checks()))];

    private Check[] Checks()
    {
        var rows = PublishedTable.Rows(Table).Where(row => Quantities.Length == 0 || Quantities.Contains(row.Quantity)).ToList();
        var checks = new Check[rows.Count];
        Parallel.For(0, rows.Count, i => checks[i] = new(rows[i], Of(rows[i])));
        return checks;
    }
}
