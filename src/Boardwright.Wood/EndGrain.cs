using System.Collections.Frozen;

namespace Boardwright.Wood;

/// <summary>How the large pores lie in a ring.</summary>
public enum PoreZone
{
    /// <summary>Large pores in rows at the ring's start, small ones after.</summary>
    Ring,

    /// <summary>Large at the start, smaller by degrees.</summary>
    Semi,

    /// <summary>All about one size.</summary>
    Diffuse,
}

/// <summary>What a ten-power lens shows on a clean cut across the end, as far as it tells one hardwood of a yard from another.</summary>
/// <param name="Species">Common name.</param>
/// <param name="Pores">Zone of the large pores.</param>
/// <param name="LargeRows">Rows of large pores at the ring's start; 0 for none.</param>
/// <param name="Latewood">Small pores: solitary, flame, dashes, waves, lines, groups, even.</param>
/// <param name="Tyloses">Plugs in the large pores of the heartwood: none, few, some, many.</param>
/// <param name="Rays">fine, clear, two (widths), broad (with fine), mixed, many (broad ones).</param>
/// <param name="RingLine">How plain the rings are: clear or faint.</param>
/// <param name="Heart">Colour of fresh heartwood.</param>
/// <param name="Sap">Sapwood.</param>
/// <param name="Tell">What tells it from its likeliest neighbours.</param>
/// <remarks>A help for the eye, not a proof: single trees differ, stain and light change colours, and the red oaks or the white oaks cannot be told apart among themselves. Where money or law depends on it, send a piece to a laboratory.</remarks>
/// <source id="wood-anatomy-texts" locator="hand-lens features, from memory"/>
/// <method page="docs/methods/end-grain.md"/>
public sealed record EndGrain(string Species, PoreZone Pores, int LargeRows, string Latewood, string Tyloses, string Rays, string RingLine, string Heart, string Sap, string Tell)
{
    private static readonly FrozenDictionary<string, EndGrain> ByName = DataTable.Read("end-grain.csv").Select(row => new EndGrain(
        row.Text("species"), Enum.Parse<PoreZone>(row.Text("pores"), ignoreCase: true), (int)row.Number("large_rows")!.Value, row.Text("latewood"), row.Text("tyloses"), row.Text("rays"), row.Text("ring_line"),
        row.Text("heart"), row.Text("sap"), row.Text("tell"))).ToFrozenDictionary(one => one.Species, StringComparer.Ordinal);

    /// <summary>Every species of the key.</summary>
    public static IReadOnlyCollection<EndGrain> All => ByName.Values;

    /// <summary>The end grain of a species; null where the key has none.</summary>
    public static EndGrain? Of(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return ByName.GetValueOrDefault(species.CommonName);
    }

    /// <summary>Its features in words, what is looked at first coming first.</summary>
    public IReadOnlyList<(string Feature, string Words)> Features =>
    [
        ("Pores", Pores switch { PoreZone.Ring => $"ring-porous, {(LargeRows == 1 ? "one row" : LargeRows == 2 ? "one to three rows" : "two to four rows")} of large ones", PoreZone.Semi => "large at the ring’s start, smaller by degrees", _ => "all small, spread evenly" }),
        ("Latewood", Latewood switch { "solitary" => "single pores", "flame" => "tiny pores in flames", "dashes" => "few pores with short pale dashes", "waves" => "pores in wavy bands", "lines" => "fine pale lines across the rays", "groups" => "pores in small groups", _ => "pores even" }),
        ("Rays", Rays switch { "broad" => "some broad, seen from afar", "mixed" => "some broad, most too fine to see", "many" => "nearly all broad, close together", "clear" => "clear, without a lens", "two" => "two widths, the wide ones clear", _ => "fine, hardly seen without a lens" }),
        ("Plugs in pores", Tyloses == "none" ? "no large pores" : $"{Tyloses} (tyloses)"),
        ("Rings", RingLine),
        ("Heartwood", Heart),
        ("Sapwood", Sap),
    ];

    /// <summary>The features in which two woods differ, in the order they are looked at.</summary>
    public IReadOnlyList<(string Feature, string Here, string There)> Differences(EndGrain other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return [.. Features.Zip(other.Features, (one, two) => (one.Feature, one.Words, two.Words)).Where(pair => pair.Item2 != pair.Item3)];
    }
}
