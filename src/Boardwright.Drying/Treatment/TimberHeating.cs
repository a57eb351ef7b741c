namespace Boardwright.Drying.Treatment;

/// <summary>Heating of the centre of a green square softwood timber in hot moist air, by the regression behind the printed table.</summary>
/// <remarks>
/// <para>Equation: ln t = 4.59073 + 1.61035 ln a + 0.20423 ln d - 0.52097 ln T0; t minutes to 133 F in air of 160 F, a side as named, in, d wet-bulb depression, F, T0 initial temperature, F. The constants are not
/// printed: they were found again from 44 printed cells, all of which it meets within 0.6 minute.</para>
/// <para>The 99 % bound is fitted in the same way and raised by 1.8 %, so that it covers every printed one.</para>
/// <para>Validity: sides 4 to 10 in, depression 2 to 12 F, initially 40 to 60 F; outside the nearest of these is taken. The time grows with a power 1.6 of the side, not 2: the surface of a small timber lags most.</para>
/// </remarks>
/// <source id="fpl-wood-handbook-2010" locator="table 20-8 (ponderosa pine timbers)"/>
/// <method page="docs/methods/heat-treatment.md"/>
public static class TimberHeating
{
    /// <summary>Air of the table, F.</summary>
    public const double MediumFahrenheit = 160.0;

    /// <summary>Core of the table, F.</summary>
    public const double CoreFahrenheit = 133.0;

    private const double CoverEveryPrintedBound = 1.018;

    /// <summary>Minutes until the centre is at 133 F.</summary>
    public static double Minutes(double inches, double depressionF, double initialF) => Regression(4.59073, 1.61035, 0.20423, -0.52097, inches, depressionF, initialF);

    /// <summary>Minutes that cover the printed 99 % bound.</summary>
    public static double UpperMinutes(double inches, double depressionF, double initialF) =>
        CoverEveryPrintedBound * Regression(4.94557, 1.61033, 0.20275, -0.51718, inches, depressionF, initialF);

    /// <summary>Diffusivity with which <see cref="RectangleHeating"/> gives the printed time at the printed temperatures, m²/s.</summary>
    internal static double DiffusivityM2PerS(double inches, double depressionF, double initialF)
    {
        var initial = Math.Clamp(initialF, 40.0, 60.0);
        var side = 0.0254 * Math.Clamp(inches, 4.0, 10.0);
        return RectangleHeating.SecondsUntil((MediumFahrenheit - CoreFahrenheit) / (MediumFahrenheit - initial), 1.0, side, side) / (60.0 * Minutes(inches, depressionF, initialF));
    }

    private static double Regression(double constant, double side, double depression, double initial, double inches, double depressionF, double initialF) => Math.Exp(
        constant + side * Math.Log(Math.Clamp(inches, 4.0, 10.0)) + depression * Math.Log(Math.Clamp(depressionF, 2.0, 12.0)) + initial * Math.Log(Math.Clamp(initialF, 40.0, 60.0)));
}
