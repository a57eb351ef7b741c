using System.Globalization;

namespace Boardwright.Testing;

/// <summary>One checked value: what it is, what goes in, what must come out, how near, and which source says so.</summary>
/// <remarks>
/// Mark: P printed source seen, M from memory of the source, C common practice without source, computed from a formula that
/// carries its own mark, I invented for the demonstration. Tolerance is absolute in the unit of the value; where it is wider than the rounding
/// of the print, <see cref="ToleranceReason"/> says why. <see cref="MissReason"/> says why ours is not the value, where it is not.
/// </remarks>
public sealed record PublishedRow(
    string Id, string Quantity, IReadOnlyDictionary<string, string> Inputs, string Expected, double Tolerance, string Unit, string Source, string Mark)
{
    public string ToleranceReason { get; init; } = "";

    public string MissReason { get; init; } = "";

    public double ExpectedNumber => Number(Expected);

    public double Low => ExpectedNumber - Tolerance;

    public double High => ExpectedNumber + Tolerance;

    public double this[string input] => Number(Text(input));

    public string Text(string input) =>
        Inputs.TryGetValue(input, out var text) ? text : throw new KeyNotFoundException($"{Id}: no input '{input}' among {string.Join(", ", Inputs.Keys)}");

    public bool Has(string input) => Inputs.ContainsKey(input);

    public override string ToString() => $"{Id} {Quantity} {string.Join(' ', Inputs.Select(i => $"{i.Key}={i.Value}"))} -> {Expected} {Unit} ({Mark}, {Source})";

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
