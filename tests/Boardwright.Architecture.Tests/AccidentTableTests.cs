using System.Text.RegularExpressions;

namespace Boardwright.Architecture.Tests;

/// <summary>The table of accidents names tests; each must exist, and each accident must be in it.</summary>
public sealed partial class AccidentTableTests
{
    private static readonly string[] Rows = [.. Checkout.Lines("docs/accidents.md").Where(line => RowPattern().IsMatch(line))];

    [Fact]
    public void Every_accident_is_listed_once() =>
        Assert.Equal(Enumerable.Range(1, 24), Rows.Select(row => int.Parse(RowPattern().Match(row).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void Every_test_named_exists()
    {
        var methods = Checkout.Files("tests/", ".cs").SelectMany(path => MethodPattern().Matches(Checkout.Read(path)).Select(match => match.Groups[1].Value)).ToHashSet(StringComparer.Ordinal);

        Assert.All(Rows.SelectMany(row => NamePattern().Matches(row).Select(match => match.Groups[1].Value)), name => Assert.Contains(name, methods));
    }

    [Fact]
    public void What_is_done_names_a_test() =>
        Assert.All(Rows.Where(row => !row.Contains("| not yet |", StringComparison.Ordinal)), row => Assert.Matches(NamePattern(), row));

    [GeneratedRegex(@"^\| (\d+) \|")]
    private static partial Regex RowPattern();

    [GeneratedRegex("`([A-Za-z0-9_]+)`")]
    private static partial Regex NamePattern();

    [GeneratedRegex(@"public (?:async )?(?:void|Task) ([A-Za-z0-9_]+)\(")]
    private static partial Regex MethodPattern();
}
