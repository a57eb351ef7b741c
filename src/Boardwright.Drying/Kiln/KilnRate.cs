using Boardwright.Drying.Board;
using Boardwright.Numerics;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>How fast a charge dries against its wood, learned from the samples weighed so far.</summary>
/// <remarks>
/// The middle board is stepped through the air that was held; the logarithm of the factor on its coefficient that ends at the moisture found is weighed against
/// the rate it was begun with (both normal): w = s²/(s² + e²), s its spread, e the error of the samples over the slope of the moisture. It is begun with the
/// usual rate and spread of its wood, or with what earlier charges taught (<see cref="RateHistory"/>). Validity: from 0.2 to 5 times.
/// </remarks>
/// <param name="Factor">On the coefficient of the wood; 1 where nothing was learned.</param>
/// <param name="Spread">Standard deviation of its logarithm that remains.</param>
/// <param name="Found">The factor that meets the samples exactly.</param>
/// <method page="docs/methods/kiln-time.md"/>
public sealed record KilnRate(double Factor, double Spread, double Found)
{
    private const double FactorMost = 5.0;
    private const double SamplesErrorPercent = 0.7;
    private const double SlopeStep = 0.1;

    /// <summary>Learns the rate of a charge.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="thickness">Rough thickness.</param>
    /// <param name="from">Mean moisture content when it was loaded.</param>
    /// <param name="held">The air held since, in order.</param>
    /// <param name="found">Mean moisture content of the samples at the end of it.</param>
    /// <param name="begun">The rate it was begun with; null for the usual one of its wood.</param>
    /// <returns>The rate; no answer where the charge has not dried, or no rate within the range explains it.</returns>
    public static Outcome<KilnRate> Learn(Species species, Length thickness, MoistureContent from, IReadOnlyList<KilnHold> held, MoistureContent found, DryingRate? begun = null)
    {
        ArgumentNullException.ThrowIfNull(held);
        if (found >= from || held.Count == 0)
            return new Outcome<KilnRate>.NoAnswer("The charge has not dried since it was loaded: no rate can be learned.");

        var coefficients = DryingCoefficients.For(species);
        double Percent(double log) => 100.0 * End(species, thickness, from, held, coefficients.KilnM2PerS * Math.Exp(log));
        var most = Math.Log(FactorMost);
        if (Root.Between(log => Percent(log) - found.Percent, -most, most, 1e-4) is not { } exact)
            return new Outcome<KilnRate>.NoAnswer("No rate from a fifth to five times the usual one explains the samples: look at the air, the samples and the meter.");

        var slope = (Percent(exact + SlopeStep) - Percent(exact - SlopeStep)) / (2.0 * SlopeStep);
        var error = SamplesErrorPercent / Math.Max(Math.Abs(slope), 1e-6);
        var (start, spread) = begun is { } rate ? (Math.Log(rate.Factor), rate.Spread) : (0.0, coefficients.KilnSpread);
        var weight = spread * spread / (spread * spread + error * error);
        return new KilnRate(Math.Exp(start + weight * (exact - start)), spread * Math.Sqrt(1.0 - weight), Math.Exp(exact));
    }

    private static double End(Species species, Length thickness, MoistureContent from, IReadOnlyList<KilnHold> held, double coefficient)
    {
        var set = new BoardSet(species, thickness, from, coefficient, 0.0, 1, 1);
        var hoursMost = Math.Max(0.5, thickness.Inches * thickness.Inches);
        foreach (var hold in held.Where(hold => hold.For.Hours > 0.0))
        {
            var steps = (int)Math.Ceiling(hold.For.Hours / hoursMost);
            var equilibrium = EquilibriumFraction(hold);
            for (var step = 0; step < steps; step++)
            {
                set.SetStep(0, BoardPhysics.DiffusionFactor(hold.DryBulb.Celsius), KilnDrying.SurfaceMetresPerSecond, set.SurfaceFactor(hold.DryBulb.Celsius), equilibrium, hold.For.Seconds / steps);
                set.Boards.Step();
            }
        }

        return set.Boards.Average[0];
    }

    private static double EquilibriumFraction(KilnHold hold) =>
        AirState.FromWetBulb(hold.DryBulb, hold.WetBulb, AirState.StandardPressure) is Outcome<AirState>.Done({ Emc: { } emc }) ? emc.Fraction : DiffusionLaw.FiberSaturationFraction;
}
