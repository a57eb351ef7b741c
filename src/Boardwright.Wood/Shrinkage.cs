using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Change of size with moisture content.</summary>
/// <remarks>
/// <para>Equation: shrinkage from green at moisture content M below the start of shrinkage Ms is S = S0 (1 - M/Ms), in percent of the
/// green size; between two moisture contents D2 = D1 (1 - S2/100)/(1 - S1/100). Above the start nothing moves.</para>
/// <para>Validity: oven-dry to green. Real curves bend near fibre saturation; the miss is about 5 % of the true change.</para>
/// <para>Ring angle a between growth rings and the wide face (0 flatsawn, 90 degrees quartersawn): width ST cos² a + SR sin² a, thickness
/// SR cos² a + ST sin² a (plane rotation of strain).</para>
/// </remarks>
/// <source id="fpl-wood-handbook-2021" locator="eq. 4-9"/>
/// <source id="fpl-wood-handbook-2010" locator="eqs 4-7, 13-3"/>
/// <source id="maclean-1945" locator="FPL R1473, ring angle"/>
/// <method page="docs/methods/shrinkage.md"/>
public static class Shrinkage
{
    /// <summary>Shrinkage from green to oven-dry in a direction, percent of the green size.</summary>
    /// <returns>The percentage, or no answer where no source prints it.</returns>
    public static Outcome<double> Total(Species species, ShrinkageDirection direction)
    {
        var percent = direction switch
        {
            ShrinkageDirection.Radial => species.ShrinkageRadialPercent,
            ShrinkageDirection.Tangential => species.ShrinkageTangentialPercent,
            ShrinkageDirection.Volumetric => species.ShrinkageVolumetricPercent,
            _ => throw new ArgumentOutOfRangeException(nameof(direction), direction, "Accepted: a direction of the list."),
        };
        return percent is { } known ? known : new Outcome<double>.NoAnswer($"No {direction.ToString().ToLowerInvariant()} shrinkage is known for {species.CommonName}.");
    }

    /// <summary>Total shrinkage of the width of a board whose rings meet the wide face at an angle: 0 flatsawn, 90 degrees quartersawn.</summary>
    public static Outcome<double> TotalOfWidth(Species species, Angle ringsToFace) => AtAngle(species, ringsToFace.Radians);

    /// <summary>Total shrinkage of the thickness of a board whose rings meet the wide face at an angle: 0 flatsawn, 90 degrees quartersawn.</summary>
    public static Outcome<double> TotalOfThickness(Species species, Angle ringsToFace) => AtAngle(species, ringsToFace.Radians + Math.PI / 2.0);

    /// <summary>How far a square cut at this ring angle goes out of square from green to oven-dry.</summary>
    public static Outcome<Angle> OutOfSquare(Species species, Angle ringsToFace) =>
        Total(species, ShrinkageDirection.Radial).Then<Angle>(radial => Total(species, ShrinkageDirection.Tangential).Then<Angle>(tangential =>
            Angle.FromRadians((tangential - radial) / 100.0 * Math.Sin(2.0 * ringsToFace.Radians))));

    /// <summary>Shrinkage between two moisture contents, percent of the size at the first; negative when the wood swells.</summary>
    public static Outcome<double> Percent(Species species, ShrinkageDirection direction, MoistureContent from, MoistureContent to) =>
        Total(species, direction).Then<double>(total => 100.0 * (1.0 - Ratio(total, species.ShrinkageStart, from, to)));

    /// <summary>Size at the second moisture content of a piece measured at the first, for a total shrinkage of <see cref="Total"/> or <see cref="TotalOfWidth"/>.</summary>
    public static Length Size(Length size, double totalPercent, MoistureContent start, MoistureContent from, MoistureContent to) =>
        size * Ratio(totalPercent, start, from, to);

    /// <summary>Size at the second moisture content over size at the first.</summary>
    /// <param name="totalPercent">Shrinkage green to oven-dry, percent of the green size.</param>
    /// <param name="start">Moisture content below which the wood shrinks, above 0.</param>
    /// <param name="from">Moisture content of the first size.</param>
    /// <param name="to">Moisture content of the second size.</param>
    public static double Ratio(double totalPercent, MoistureContent start, MoistureContent from, MoistureContent to) =>
        FractionOfGreen(totalPercent, start.Percent, to.Percent) / FractionOfGreen(totalPercent, start.Percent, from.Percent);

    /// <summary>Change in service per percent of moisture content, as a fraction of the size at 10 %, from the total shrinkage.</summary>
    /// <remarks>
    /// (S0/Ms)/(100 - S0 (1 - 10/Ms)), S0 and Ms in percent. Printed coefficients are this number rounded, except where the table lumps species or errs
    /// (black oak carries those of another oak); so they are computed, never looked up.
    /// </remarks>
    /// <source id="fpl-wood-handbook-2010" locator="eq. 13-2, table 13-5"/>
    /// <method page="docs/methods/shrinkage.md"/>
    public static double CoefficientPerPercent(double totalPercent, MoistureContent start) =>
        totalPercent / start.Percent / (100.0 - totalPercent * (1.0 - 10.0 / start.Percent));

    /// <summary>Kernel: size over green size at a moisture content, all in percent, unchecked.</summary>
    public static double FractionOfGreen(double totalPercent, double startPercent, double moisturePercent) =>
        1.0 - totalPercent / 100.0 * (1.0 - Math.Min(moisturePercent, startPercent) / startPercent);

    private static Outcome<double> AtAngle(Species species, double radians) =>
        Total(species, ShrinkageDirection.Radial).Then<double>(radial => Total(species, ShrinkageDirection.Tangential).Then<double>(tangential =>
            tangential * Math.Cos(radians) * Math.Cos(radians) + radial * Math.Sin(radians) * Math.Sin(radians)));
}
