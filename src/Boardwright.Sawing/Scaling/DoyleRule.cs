namespace Boardwright.Sawing;

/// <summary>Doyle: slab of 4 in, kerf of 5/16 in, no taper.</summary>
/// <remarks>
/// <para>Equation: (D - 4)² L/16 board feet, D the small-end diameter inside bark in inches, L the length in feet. Rounded to the board foot, halves up.</para>
/// <para>Below 4 in the square would turn positive again; the rule gives nothing there.</para>
/// </remarks>
/// <source id="chase-1913" locator="Doyle table, p. 11"/>
/// <source id="doyle-buyer-table" locator="whole table"/>
/// <method page="docs/methods/log-scale.md"/>
public static class DoyleRule
{
    /// <summary>Board feet before rounding.</summary>
    public static double BoardFeet(double diameterIn, double lengthFt)
    {
        var inside = Math.Max(0.0, diameterIn - 4.0);
        return inside * inside * lengthFt / 16.0;
    }
}
