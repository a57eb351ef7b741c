namespace Boardwright.Web.Drawings;

/// <summary>What a hand lens shows on a species' end grain, as far as a drawing needs it. Lengths in drawing units.</summary>
/// <param name="Id">Names the flat pattern: <c>url(#wood-Id)</c>.</param>
/// <param name="RingStep">Distance of growth rings.</param>
/// <param name="PoreRadius">Pores in a row along the ring's start; 0 for none.</param>
/// <param name="PoreStep">Distance of those pores.</param>
/// <param name="RayLength">Share of a ring that a ray crosses; above 1 it runs through several; 0 for none.</param>
/// <param name="RayStep">Distance of rays.</param>
/// <param name="Waves">Late-wood pores in wavy bands.</param>
/// <param name="DotStep">Distance of scattered single pores; 0 for none.</param>
/// <param name="Dashes">Gum dashes.</param>
/// <remarks>Which feature belongs to which species is common knowledge of hand-lens identification (ring-porous oaks with broad rays, wavy
/// bands of elm and hackberry, dense rays of sycamore); the drawn sizes are ours.</remarks>
public sealed record WoodLook(
    string Id, double RingStep, double PoreRadius, double PoreStep, double RayLength, double RayStep, bool Waves, double DotStep, bool Dashes)
{
    private static readonly WoodLook Plain = new("plain", 0, 0, 0, 0, 0, false, 0, false);

    private static readonly Dictionary<string, WoodLook> ByName = new(StringComparer.OrdinalIgnoreCase)
    {
        ["northern red oak"] = new("red-oak", 8, 1.15, 3.4, .55, 14, false, 0, false),
        ["white oak"] = new("white-oak", 8, .75, 2.4, 3, 7, false, 0, false),
        ["white ash"] = new("white-ash", 9, .95, 2.6, 0, 0, false, 5, false),
        ["American elm"] = new("elm", 8, .6, 2, 0, 0, true, 0, false),
        ["hackberry"] = new("hackberry", 9, .95, 3.2, 0, 0, true, 0, false),
        ["black cherry"] = new("cherry", 6, 0, 0, 0, 0, false, 0, true),
        ["sugar maple"] = new("sugar-maple", 5, 0, 0, 0, 0, false, 0, false),
        ["silver maple"] = new("silver-maple", 7, 0, 0, 0, 0, false, 3.5, false),
        ["yellow birch"] = new("birch", 8, 0, 0, 0, 0, false, 9, false),
        ["American beech"] = new("beech", 8, 0, 0, .45, 4, false, 0, false),
        ["black walnut"] = new("walnut", 9, .7, 3, 0, 0, false, 4.5, false),
        ["sycamore"] = new("sycamore", 6, 0, 0, 9, 3, false, 0, false),
        ["basswood"] = new("basswood", 14, 0, 0, 0, 0, false, 0, false),
    };

    /// <summary>The looks that have a pattern of their own.</summary>
    public static IReadOnlyDictionary<string, WoodLook> All => ByName;

    /// <summary>The look of a species by its common name ("American basswood" and "basswood" alike); blank wood for one without its own.</summary>
    public static WoodLook Of(string? species) =>
        species is null ? Plain
        : ByName.TryGetValue(species, out var look) ? look
        : ByName.FirstOrDefault(pair => species.EndsWith(pair.Key, StringComparison.OrdinalIgnoreCase)
            || pair.Key.EndsWith(species, StringComparison.OrdinalIgnoreCase)).Value ?? Plain;

    /// <summary>The fill of a board's end.</summary>
    public static string Fill(string? species) => $"url(#wood-{Of(species).Id})";
}
