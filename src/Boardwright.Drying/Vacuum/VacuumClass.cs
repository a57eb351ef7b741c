using Boardwright.Wood;

namespace Boardwright.Drying.Vacuum;

/// <summary>How easily steam passes along the grain of a species.</summary>
/// <param name="Name">As in the species table.</param>
/// <param name="PermeabilitySquareMetres">Likely value along the grain.</param>
/// <param name="DecadesOfSpread">Standard deviation of its logarithm to base ten.</param>
/// <param name="Mark">M from memory of the source, C common practice.</param>
/// <source id="siau-1984" locator="longitudinal permeability classes"/>
/// <method page="docs/methods/vacuum-drying.md"/>
public sealed record VacuumClass(string Name, double PermeabilitySquareMetres, double DecadesOfSpread, string Mark)
{
    private static readonly VacuumClass[] Classes =
    [
        new("heat-limited", 1.8e-10, 0.5, "M"),
        new("permeable", 1.8e-12, 0.5, "M"),
        new("nearly-impermeable", 1.8e-15, 0.5, "M"),

        // Between the permeable and the close woods: no source speaks of walnut, cherry, ash or elm, so their band is the widest;
        // the middle is set so that 8/4 green to 8 % takes the four to ten days of common practice.
        new("unknown", 1.2e-12, 0.7, "C"),
    ];

    /// <summary>Class of a species; species no source speaks of are "unknown".</summary>
    public static VacuumClass Of(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return Classes.FirstOrDefault(known => known.Name == species.VacuumClass) ?? Classes[^1];
    }
}
