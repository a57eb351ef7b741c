using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>A second equation for equilibrium moisture content, which the house may choose for the air of rooms and yards; all drying is reckoned by <see cref="Emc"/>, with which its coefficients were found.</summary>
/// <remarks>
/// <para>Equation, T in K: EMC = 100 [A T (1 - T/Tc)^B ln(1 - h)]^(C T^D) percent, A = -0.000612, B = 2.43, C = 0.0577, D = 0.430, Tc = 647.1 K.
/// It inverts in closed form: h = 1 - exp{ (1/(A T)) (1 - T/Tc)^(-B) (EMC/100)^(1/(C T^D)) }.</para>
/// <para>At 30 F and 65 % it stands 1.5 points above <see cref="Emc"/>, at 70 F 0.4 above, at 180 F the same.</para>
/// </remarks>
/// <source id="fpl-wood-handbook-2021" locator="eqs 4-6, 4-7"/>
/// <method page="docs/methods/emc.md"/>
public static class GlassEmc
{
    private const double A = -0.000612;
    private const double B = 2.43;
    private const double C = 0.0577;
    private const double D = 0.430;
    private const double CriticalKelvins = 647.1;

    // Over this the equation runs away: at saturation it has no value.
    private const double HumidityMost = 0.99;

    /// <summary>Equilibrium moisture content in air of this temperature and humidity; humidity over 99 % counts as 99 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -40 to 132.3 C.</exception>
    public static MoistureContent At(Temperature dryBulb, RelativeHumidity humidity) =>
        MoistureContent.Trusted(Percent(Emc.Checked(dryBulb), Math.Min(humidity.Fraction, HumidityMost)) / 100.0);

    /// <summary>Equilibrium moisture content, percent, at degrees Celsius and humidity as a fraction below 1, unchecked.</summary>
    public static double Percent(double celsius, double humidityFraction)
    {
        var kelvins = celsius + 273.15;
        return 100.0 * Math.Pow(Scale(kelvins) * Math.Log(1.0 - humidityFraction), C * Math.Pow(kelvins, D));
    }

    /// <summary>Relative humidity that holds wood at this moisture content.</summary>
    public static RelativeHumidity HumidityFor(Temperature dryBulb, MoistureContent moisture) => RelativeHumidity.FromFraction(
        1.0 - Math.Exp(Math.Pow(moisture.Fraction, 1.0 / (C * Math.Pow(dryBulb.Kelvins, D))) / Scale(dryBulb.Kelvins)));

    private static double Scale(double kelvins) => A * kelvins * Math.Pow(1.0 - kelvins / CriticalKelvins, B);
}
