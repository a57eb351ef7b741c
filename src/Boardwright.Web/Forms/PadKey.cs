namespace Boardwright.Web.Forms;

/// <summary>A key of a pad.</summary>
/// <param name="Label">What stands on it, such as ¼.</param>
/// <param name="Value">What it posts, in the row's unit, such as 0.25.</param>
public sealed record PadKey(string Label, string Value)
{
    /// <summary>Keys whose label is their value.</summary>
    public static IReadOnlyList<PadKey> Whole(int from, int to, int step = 1) =>
        [.. Enumerable.Range(0, ((to - from) / step) + 1).Select(index => from + (index * step))
            .Select(value => value.ToString(System.Globalization.CultureInfo.InvariantCulture)).Select(text => new PadKey(text, text))];

    /// <summary>Whole inch and quarters, as boards are tallied.</summary>
    public static IReadOnlyList<PadKey> Quarters { get; } = [new("even", "0"), new("¼", "0.25"), new("½", "0.5"), new("¾", "0.75")];
}
