using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>How fast a bubble rises in resin that does not move.</summary>
/// <remarks>
/// <para>Equation: v = 2/9 r² ρ g/μ, a small sphere with a stiff skin; a clean bubble with a mobile surface rises up to half as fast again (1/3 in place of 2/9).</para>
/// <para>Viscosity: 0.2 to 0.7 Pa s are usual for casting mixes at 25 °C (from memory), here 0.45; 5 °C colder nearly doubles it. Both are of the resin, so the hours are of the right size and no more.</para>
/// </remarks>
/// <source id="stokes-law" locator="creeping flow about a sphere"/>
/// <source id="casting-practice-notes" locator="viscosity halves with 5 °C"/>
/// <method page="docs/methods/casting-blemishes.md"/>
public static class BubbleRise
{
    private const double Gravity = 9.80665;
    private const double UsualPascalSeconds = 0.45;
    private const double UsualCelsius = 25.0;
    private const double HalvingKelvins = 5.0;

    /// <summary>Viscosity of a usual casting mix, Pa s, while it is fresh.</summary>
    public static double ViscosityAt(Temperature temperature) => UsualPascalSeconds * Math.Pow(2.0, (UsualCelsius - temperature.Celsius) / HalvingKelvins);

    /// <summary>Time a bubble takes up through a depth.</summary>
    /// <param name="diameter">Of the bubble, above 0.</param>
    /// <param name="depth">To the surface.</param>
    /// <param name="density">Of the mixed resin.</param>
    /// <param name="pascalSeconds">Viscosity, above 0.</param>
    public static Elapsed Through(Length diameter, Length depth, Density density, double pascalSeconds)
    {
        var radius = 0.5 * diameter.Metres;
        return Elapsed.FromSeconds(depth.Metres / (2.0 / 9.0 * radius * radius * density.KilogramsPerCubicMetre * Gravity / pascalSeconds));
    }
}
