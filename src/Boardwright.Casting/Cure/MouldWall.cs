using Boardwright.Quantities;

namespace Boardwright.Casting.Cure;

/// <summary>The bottom of a mould, under the resin.</summary>
/// <param name="Name">As people write it.</param>
/// <param name="ConductivityWattsPerMetreKelvin">Heat conductivity.</param>
/// <param name="DensityKilogramsPerCubicMetre">Density.</param>
/// <param name="SpecificHeatJoulesPerKilogramKelvin">Specific heat.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Mark">How sure the properties are: P, M, C.</param>
/// <source id="hdpe-property-sheet" locator="conductivity 0.33 to 0.53, specific heat 1.8 to 2.7"/>
public sealed record MouldWall(
    string Name, double ConductivityWattsPerMetreKelvin, double DensityKilogramsPerCubicMetre, double SpecificHeatJoulesPerKilogramKelvin, Length Thickness, string Mark)
{
    private static readonly MouldWall[] Known =
    [
        new("hdpe", 0.45, 950.0, 1900.0, default, "P"),
        new("melamine board", 0.14, 700.0, 1700.0, default, "M"),
        new("plywood", 0.12, 550.0, 1700.0, default, "M"),
        new("steel", 50.0, 7850.0, 490.0, default, "M"),
        new("foam", 0.035, 30.0, 1400.0, default, "M"),
    ];

    /// <summary>Names <see cref="Of"/> knows.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Known.Select(wall => wall.Name)];

    /// <summary>A wall of a known material.</summary>
    /// <param name="what">The field, for the refusal.</param>
    /// <param name="material">One of <see cref="Names"/>, in any case.</param>
    /// <param name="thickness">Up to 100 mm; zero stands for no wall.</param>
    public static Outcome<MouldWall> Of(string what, string material, Length thickness)
    {
        var known = Known.FirstOrDefault(wall => string.Equals(wall.Name, material, StringComparison.OrdinalIgnoreCase));
        if (known is null)
        {
            return new Refusal(what, material, string.Join(", ", Names));
        }

        return thickness.Millimetres <= 100.0
            ? known with { Thickness = thickness }
            : new Refusal(what, $"{thickness.Millimetres:0.#} mm thick", "a wall up to 100 mm thick");
    }
}
