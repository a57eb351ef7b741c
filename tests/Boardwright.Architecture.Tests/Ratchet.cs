using Boardwright.Testing;

namespace Boardwright.Architecture.Tests;

/// <summary>Offenders that are allowed, each with its reason, in allowed.csv (rule,offender,reason). The list may only grow shorter.</summary>
internal static class Ratchet
{
    private static readonly Lazy<IReadOnlyList<IReadOnlyList<string>>> Rows = new(() =>
        [.. Checkout.Lines("tests/Boardwright.Architecture.Tests/allowed.csv").Skip(1).Where(line => line.Length > 0).Select(PublishedTable.Fields)]);

    /// <summary>Lists every offender at once, with what is accepted.</summary>
    public static void Holds(string rule, IEnumerable<string> offenders, string accepted)
    {
        Assert.All(Rows.Value, row => Assert.True(row.Count == 3 && row[2].Length > 0, $"allowed.csv: \"{string.Join(',', row)}\" needs rule, offender, reason"));
        var allowed = Rows.Value.Where(row => row[0] == rule).Select(row => row[1]).ToHashSet(StringComparer.Ordinal);

        var left = offenders.Where(offender => !allowed.Contains(offender)).Distinct().ToList();
        Assert.True(left.Count == 0, $"{rule}: accepted: {accepted}. Offenders:{Environment.NewLine}{string.Join(Environment.NewLine, left)}");
    }
}
