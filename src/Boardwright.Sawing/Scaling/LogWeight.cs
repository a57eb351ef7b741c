using System.Collections.Frozen;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Sawing;

/// <summary>Weight of a green log, with or without its bark.</summary>
/// <remarks>
/// Wood: volume x green density at the species' average green moisture content. Bark: pounds of green bark per cubic foot of wood, from the ratio of bark to
/// wood volume, bark density and bark moisture of the same table. Single logs differ by a tenth or more; the bark of a winter log has often gone.
/// </remarks>
/// <source id="usfs-fiadb-ref-species-2021" locator="bark volume percent of wood volume, bark specific gravity and moisture"/>
/// <method page="docs/methods/log-volume-and-weight.md"/>
public static class LogWeight
{
    private const double KilogramsPerCubicMetre = 16.018463373960142;            // of one lb/ft³

    private static readonly FrozenDictionary<string, double> BarkPoundsPerCubicFoot =
        DataTable.Read("bark.csv", typeof(LogWeight).Assembly).ToFrozenDictionary(
            row => row.Text("species"), row => row.Number("with_bark_lb_per_ft3_of_wood")!.Value - row.Number("wood_lb_per_ft3")!.Value, StringComparer.Ordinal);

    /// <summary>Weight of the green wood of a log.</summary>
    /// <returns>The mass; no answer where no green moisture content is known.</returns>
    public static Outcome<Mass> OfWood(Species species, Volume volume)
    {
        ArgumentNullException.ThrowIfNull(species);
        return species.GreenMoistureAverage is { } moisture
            ? WoodWeight.Of(species, moisture, volume)
            : new Outcome<Mass>.NoAnswer($"No average green moisture content is known for {species.CommonName}.");
    }

    /// <summary>Weight of the green bark on a log of this volume inside bark.</summary>
    /// <returns>The mass; no answer where the bark of the species is not known.</returns>
    public static Outcome<Mass> OfBark(Species species, Volume insideBark)
    {
        ArgumentNullException.ThrowIfNull(species);
        return BarkPoundsPerCubicFoot.TryGetValue(species.CommonName, out var pounds)
            ? Mass.FromKilograms(pounds * KilogramsPerCubicMetre * insideBark.CubicMetres)
            : new Outcome<Mass>.NoAnswer($"No figures for the bark of {species.CommonName} are held; ask without bark and add 10 to 20 % by volume.");
    }
}
