using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>What one stack or charge showed of its rate: compare its spread with the one it was begun with to see how much that was.</summary>
/// <param name="Tag">Its tag, to be shown and left out by.</param>
/// <param name="Species">The wood.</param>
/// <param name="Place">Yard row, shed or kiln.</param>
/// <param name="Found">Rate found from its readings when it was begun with the usual rate and spread of its wood.</param>
public readonly record struct RateFound(string Tag, string Species, string Place, DryingRate Found);

/// <summary>What earlier stacks or charges tell the next one: how fast its wood and its row or kiln dry here against the printed rate.</summary>
/// <remarks>
/// <para>The logarithm of a factor is the sum of a part of its species, a part of its place, a part of the yard as a whole and a part of its own, each
/// normal with mean 0; the parts share the variance of the printed rate as 0.4, 0.15, 0.15 and 0.3 (common practice). Given what the stacks showed, the parts are normal
/// too and found by taking in one stack after the other (Gaussian conditioning), in any order. Another wood in the same row learns from the row and the yard,
/// the same wood elsewhere from the wood and the yard; the next stack's own part stays as wide as it was. Charges teach charges in the same way, with the kiln
/// for the row; stacks and charges do not teach each other.</para>
/// <para>A stack whose readings told nothing (a spread as wide as the usual) moves nothing. What was learned is no more than the list of stacks: leave one out, or
/// all, and it is forgotten.</para>
/// </remarks>
/// <method page="docs/methods/air-drying.md"/>
public static class RateHistory
{
    private const double SpeciesShare = 0.4;
    private const double RowShare = 0.15;
    private const double YardShare = 0.15;
    private const double OwnShare = 0.3;
    private const double ToldNothing = 0.98;

    /// <summary>The rate a stack of a species in a row is begun with.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="row">Yard row or shed.</param>
    /// <param name="found">What earlier stacks showed.</param>
    public static DryingRate InYard(Species species, string row, IReadOnlyList<RateFound> found)
    {
        ArgumentNullException.ThrowIfNull(species);
        return For(DryingCoefficients.For(species).AirSpread, species.CommonName, row, found);
    }

    /// <summary>The rate a charge of a species in a kiln is begun with.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="kiln">The kiln.</param>
    /// <param name="found">What earlier charges showed.</param>
    public static DryingRate InKiln(Species species, string kiln, IReadOnlyList<RateFound> found)
    {
        ArgumentNullException.ThrowIfNull(species);
        return For(DryingCoefficients.For(species).KilnSpread, species.CommonName, kiln, found);
    }

    /// <summary>The rate a vacuum charge is begun with.</summary>
    /// <param name="usual">Spread of its forecast: <see cref="Vacuum.CondensateFilter.UsualRate"/>.</param>
    /// <param name="species">The wood.</param>
    /// <param name="kiln">The kiln.</param>
    /// <param name="found">What earlier vacuum charges showed.</param>
    public static DryingRate InVacuum(double usual, Species species, string kiln, IReadOnlyList<RateFound> found)
    {
        ArgumentNullException.ThrowIfNull(species);
        return For(usual, species.CommonName, kiln, found);
    }

    /// <summary>True when the readings narrowed the rate: only such a stack teaches.</summary>
    /// <param name="usual">Spread of the printed rate of its wood.</param>
    /// <param name="found">What it showed.</param>
    public static bool Teaches(double usual, DryingRate found) => found.Spread < ToldNothing * usual;

    private static DryingRate For(double usual, string species, string place, IReadOnlyList<RateFound> found)
    {
        ArgumentNullException.ThrowIfNull(found);
        var informing = found.Where(one => Teaches(usual, one.Found)).ToList();
        var next = new RateFound("", species, place, default);
        List<RateFound> all = [.. informing, next];

        // Covariances of the logarithms of all stacks, the next one last; each stack that told something is conditioned on.
        var mean = new double[all.Count];
        var covariance = new double[all.Count, all.Count];
        for (var i = 0; i < all.Count; i++)
        {
            for (var j = 0; j < all.Count; j++)
            {
                covariance[i, j] = usual * usual * (YardShare
                    + (all[i].Species == all[j].Species ? SpeciesShare : 0.0)
                    + (all[i].Place == all[j].Place ? RowShare : 0.0)
                    + (i == j ? OwnShare : 0.0));
            }
        }

        for (var stack = 0; stack < informing.Count; stack++)
        {
            TakeIn(mean, covariance, stack, informing[stack].Found, usual);
        }

        return new DryingRate(Math.Exp(mean[^1]), Math.Sqrt(covariance[all.Count - 1, all.Count - 1]));
    }

    // What a stack showed is its prior times its readings; the readings alone have this mean and variance.
    private static void TakeIn(double[] mean, double[,] covariance, int stack, DryingRate found, double usual)
    {
        var posterior = found.Spread * found.Spread;
        var error = 1.0 / (1.0 / posterior - 1.0 / (usual * usual));
        var read = Math.Log(found.Factor) * error / posterior;
        var total = covariance[stack, stack] + error;
        var gain = new double[mean.Length];
        for (var i = 0; i < mean.Length; i++)
        {
            gain[i] = covariance[i, stack] / total;
        }

        var innovation = read - mean[stack];
        var row = Enumerable.Range(0, mean.Length).Select(j => covariance[stack, j]).ToArray();
        for (var i = 0; i < mean.Length; i++)
        {
            mean[i] += gain[i] * innovation;
            for (var j = 0; j < mean.Length; j++)
            {
                covariance[i, j] -= gain[i] * row[j];
            }
        }
    }
}
