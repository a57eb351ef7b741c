using Boardwright.Numerics;

namespace Boardwright.Drying.Treatment;

/// <summary>Heating of the centre of a long rectangular piece whose surface is held at one temperature.</summary>
/// <remarks>
/// <para>Equation: (T - Ts)/(T0 - Ts) = S(alpha t/a²) S(alpha t/b²), S(F) = (4/pi) sum over k of (-1)^k/(2k+1) exp(-(2k+1)² pi² F);
/// a thickness, b width, alpha thermal diffusivity across the grain. An endless width has S = 1.</para>
/// <para>Shape: scalar. The series is cut when its terms fall under 1e-16; before F = 1e-3 the centre has not changed to twelve digits.</para>
/// </remarks>
/// <source id="fpl-wood-handbook-2010" locator="eq. 20-4"/>
/// <method page="docs/methods/heat-treatment.md"/>
public static class RectangleHeating
{
    /// <summary>Share of the first difference between centre and surface that is left after a time, 1 at the start, 0 at the end.</summary>
    /// <param name="diffusivityM2PerS">Thermal diffusivity, m²/s.</param>
    /// <param name="seconds">Time since the surface took its temperature.</param>
    /// <param name="thicknessM">Thickness, m.</param>
    /// <param name="widthM">Width, m; infinity for a wide board.</param>
    public static double Remaining(double diffusivityM2PerS, double seconds, double thicknessM, double widthM) =>
        Slab(diffusivityM2PerS * seconds / (thicknessM * thicknessM)) * Slab(diffusivityM2PerS * seconds / (widthM * widthM));

    /// <summary>Seconds until the share left has fallen to <paramref name="remaining"/> (0 to 1, exclusive).</summary>
    public static double SecondsUntil(double remaining, double diffusivityM2PerS, double thicknessM, double widthM)
    {
        // The slab alone is the slowest case; its first term bounds the time from above.
        var slowest = thicknessM * thicknessM / (diffusivityM2PerS * Math.PI * Math.PI) * Math.Log(4.0 / (Math.PI * remaining)) + thicknessM * thicknessM / diffusivityM2PerS;
        return Root.Between(seconds => Remaining(diffusivityM2PerS, seconds, thicknessM, widthM) - remaining, 0.0, slowest, 1e-6)
            ?? throw new InvalidOperationException($"Heating to {remaining} left was not bracketed.");
    }

    private static double Slab(double fourier)
    {
        if (fourier < 1e-3)
            return 1.0;

        var sum = 0.0;
        for (var k = 0; k < 200; k++)
        {
            var odd = 2 * k + 1;
            var term = Math.Exp(-odd * odd * Math.PI * Math.PI * fourier) / odd;
            sum += k % 2 == 0 ? term : -term;
            if (term < 1e-16)
                break;
        }

        return 4.0 / Math.PI * sum;
    }
}
