using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>Coefficients of moisture diffusion of a wood at fiber saturation and 20 C, fitted to published drying periods, in the yard and in the kiln apart.</summary>
/// <remarks>
/// <para>The same board model serves both, but one coefficient does not meet both published periods, so each is fitted to its own: the yard to the air-drying
/// periods of 1 in lumber, the kiln to the kiln periods, green to 6 % and 20 to 6 %.</para>
/// <para>A wood with only one of the two takes the other through the typical ratio of the woods that have both. A wood with neither takes both from its
/// specific gravity by the regression over the fitted woods. The spread grows with each step away from a published period.</para>
/// </remarks>
/// <source id="fpl-technical-note-233" locator="table 1"/>
/// <source id="peck-1957"/>
/// <method page="docs/methods/board-drying.md"/>
public sealed record DryingCoefficients
{
    private static readonly Dictionary<string, DryingCoefficients> Rows = DryingData.Read("drying-coefficients.csv").ToDictionary(
        row => row.Text("drying_time_group"),
        row => new DryingCoefficients
        {
            AirM2PerS = row.Needed("air_1e_12_m2_per_s") * 1e-12,
            AirSpread = row.Needed("air_spread"),
            KilnM2PerS = row.Needed("kiln_1e_12_m2_per_s") * 1e-12,
            KilnSpread = row.Needed("kiln_spread"),
            Origin = row.Text("origin"),
            Mark = row.Text("mark"),
        });

    /// <summary>In the yard, m²/s.</summary>
    public required double AirM2PerS { get; init; }

    /// <summary>Standard deviation of the logarithm of the yard coefficient.</summary>
    public required double AirSpread { get; init; }

    /// <summary>In the kiln, m²/s.</summary>
    public required double KilnM2PerS { get; init; }

    /// <summary>Standard deviation of the logarithm of the kiln coefficient.</summary>
    public required double KilnSpread { get; init; }

    /// <summary>What they were fitted to.</summary>
    public required string Origin { get; init; }

    /// <summary>M fitted to periods remembered from their source, P fitted to periods seen in print, C by rule.</summary>
    public required string Mark { get; init; }

    /// <summary>The coefficients of a wood; every species has some.</summary>
    public static DryingCoefficients For(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return species.DryingTimeGroup is { } group && Rows.TryGetValue(group, out var row) ? row : ByGravity(species.BasicSpecificGravity);
    }

    // Regression of the logarithm over the fitted woods.
    internal static DryingCoefficients ByGravity(double basicSpecificGravity) => new()
    {
        AirM2PerS = AirAtHalf * Math.Exp(AirSlope * (basicSpecificGravity - 0.5)),
        AirSpread = 0.45,
        KilnM2PerS = KilnAtHalf * Math.Exp(KilnSlope * (basicSpecificGravity - 0.5)),
        KilnSpread = 0.45,
        Origin = "no published period: from specific gravity by the regression over the woods that have one",
        Mark = "C",
    };

    internal const double AirAtHalf = 4.76e-11;
    internal const double AirSlope = -2.56;
    internal const double KilnAtHalf = 7.16e-11;
    internal const double KilnSlope = -0.54;
}
