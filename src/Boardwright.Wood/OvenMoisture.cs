using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Moisture content from weights: of a piece dried in an oven, and of a piece whose dry weight is known.</summary>
/// <remarks>
/// <para>Equation: M = 100 (wet/dry - 1), percent of the oven-dry mass. It may exceed 100 %.</para>
/// <para>Oven-dry means no appreciable loss between weighings some hours apart at 103 C; not for treated or resinous wood,
/// which loses more than water.</para>
/// </remarks>
/// <source id="fpl-wood-handbook-2010" locator="eq. 4-1"/>
/// <source id="astm-d4442" locator="methods A and B"/>
/// <method page="docs/methods/moisture-content.md"/>
public static class OvenMoisture
{
    /// <summary>Moisture content of a piece that weighs <paramref name="wet"/> and would weigh <paramref name="dry"/> out of the oven.</summary>
    /// <param name="wetName">The field or option that holds the wet weight, for a refusal.</param>
    /// <param name="wet">Mass as it is.</param>
    /// <param name="dryName">The field or option that holds the dry weight, for a refusal.</param>
    /// <param name="dry">Oven-dry mass, above 0.</param>
    /// <returns>The moisture content, or a refusal when the dry weight is nothing, or the wet weight is below it or above six times that.</returns>
    public static Outcome<MoistureContent> Of(string wetName, Mass wet, string dryName, Mass dry)
    {
        if (dry.Grams <= 0.0)
            return new Refusal(dryName, Grams(dry), "an oven-dry weight above 0 g");

        var fraction = wet / dry - 1.0;
        return MoistureContent.Accepts(fraction)
            ? MoistureContent.FromFraction(fraction)
            : new Refusal(wetName, Grams(wet), $"at least the oven-dry weight of {Grams(dry)} and at most 6 times that");
    }

    /// <summary>Oven-dry mass of a piece of known mass and moisture content.</summary>
    public static Mass DryMass(Mass wet, MoistureContent moisture) => Mass.Trusted(wet.Kilograms / (1.0 + moisture.Fraction));

    /// <summary>Water as a share of the wet mass, the basis of the fuel wood trade: M/(1 + M).</summary>
    public static Share WetBasis(MoistureContent moisture) => Share.Trusted(moisture.Fraction / (1.0 + moisture.Fraction));

    /// <summary>Moisture content on the oven-dry basis from water as a share of the wet mass, up to 83 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Above 5/6, which would be more than 500 % of the oven-dry mass.</exception>
    public static MoistureContent FromWetBasis(Share waterOfWetMass) => MoistureContent.FromFraction(waterOfWetMass.Fraction / (1.0 - waterOfWetMass.Fraction));

    internal static string Grams(Mass mass) => string.Create(CultureInfo.InvariantCulture, $"{mass.Grams:0.##} g");
}
