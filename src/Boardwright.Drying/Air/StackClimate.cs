using Boardwright.Drying.Board;
using Boardwright.Numerics;

namespace Boardwright.Drying;

/// <summary>What the weather and the model do not tell of a stack: sun on the pile, shelter, driven rain, an instrument that is off. Each board of the ensemble has its own.</summary>
/// <remarks>
/// The equilibrium moisture content departs by 1.5 points, carried over by 0.97 a day, so that a departure lasts about a month. The moisture itself wanders
/// by a hundredth of its value in a day, by the root of the days in more (both common practice).
/// </remarks>
internal sealed class StackClimate
{
    private const double Spread = 0.015;
    private const double Kept = 0.97;
    private const double Most = 3.0 * Spread;
    private const double EquilibriumMin = 0.02;
    private const double WanderShare = 0.01;

    private readonly double[] departure;
    private readonly double[] wander;
    private readonly RandomSequence chance;

    public StackClimate(int members, ulong seed)
    {
        departure = new double[members];
        wander = new double[members];
        chance = new RandomSequence(seed, 7);
        if (members > 1)
        {
            Scatter.Apart(members, seed, 6, 1, 2, 3).CopyTo(departure, 0);
            for (var m = 0; m < members; m++)
            {
                departure[m] *= Spread;
            }
        }
    }

    /// <summary>Departure of each board's equilibrium, fraction of dry mass.</summary>
    public ReadOnlySpan<double> Departure => departure;

    /// <summary>Moves on to the next day.</summary>
    public void Turn()
    {
        for (var m = 0; departure.Length > 1 && m < departure.Length; m++)
        {
            departure[m] = Kept * departure[m] + Math.Sqrt(1.0 - Kept * Kept) * Spread * chance.NextNormal();
        }
    }

    /// <summary>The day's wandering of each board, with no mean of its own.</summary>
    /// <param name="averages">Moisture of the boards, fraction.</param>
    /// <returns>Shifts, fraction; valid until the next call.</returns>
    public double[] Wander(ReadOnlySpan<double> averages)
    {
        if (wander.Length == 1)
            return wander;

        var mean = 0.0;
        for (var m = 0; m < wander.Length; m++)
        {
            wander[m] = WanderShare * averages[m] * chance.NextNormal();
            mean += wander[m] / wander.Length;
        }

        for (var m = 0; m < wander.Length; m++)
        {
            wander[m] -= mean;
        }

        return wander;
    }

    /// <summary>Equilibrium in the stack, where the weather alone would give this one.</summary>
    public double Equilibrium(int member, double weatherFraction) =>
        departure.Length == 1 ? weatherFraction : Math.Clamp(weatherFraction + departure[member], EquilibriumMin, Math.Max(weatherFraction, DiffusionLaw.FiberSaturationFraction));

    /// <summary>A reading says how far off a board's air was.</summary>
    public void Correct(int member, double fraction) => departure[member] = Math.Clamp(departure[member] + fraction, -Most, Most);
}
