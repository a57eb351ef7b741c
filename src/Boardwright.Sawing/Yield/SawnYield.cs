namespace Boardwright.Sawing;

/// <summary>Learns what logs give over their scale, by wood and sawyer.</summary>
/// <remarks>
/// <para>Equation: ratio of a log = prior + mill + wood + sawyer + rest, each of the four normal about zero with the spread of <see cref="YieldPrior"/>. Given the logs sawn, the expectation of mill + wood + sawyer
/// is the best linear unbiased prediction: (X'X/s² + D⁻¹) θ = X'(ratio − prior)/s², its variance the same matrix's inverse. Few logs leave the prior standing, many replace it; a wood never sawn by
/// a hand takes what is known of both. The rest's spread s is the scatter within each wood and sawyer, pooled with the prior's as if that were some logs more.</para>
/// <para>Shape: one Cholesky factor of 1 + woods + sawyers rows. Deterministic: the order of the logs does not matter.</para>
/// </remarks>
/// <source id="henderson-1975" locator="mixed model equations"/>
/// <source id="buhlmann-1967" locator="credibility of one group, n/(n + k)"/>
/// <method page="docs/methods/sawn-yield.md"/>
public sealed class SawnYield
{
    private readonly YieldPrior prior;
    private readonly SawnRatio[] logs;
    private readonly List<string> species;
    private readonly List<string> sawyers;
    private readonly double[][] factor;
    private readonly double[] effects;

    private SawnYield(YieldPrior prior, SawnRatio[] logs)
    {
        (this.prior, this.logs) = (prior, logs);
        species = [.. logs.Select(log => log.Species).Distinct().Order(StringComparer.Ordinal)];
        sawyers = [.. logs.Select(log => log.Sawyer).Distinct().Order(StringComparer.Ordinal)];
        LogSd = Scatter(prior, logs);
        var size = 1 + species.Count + sawyers.Count;
        var (matrix, right) = (Enumerable.Range(0, size).Select(_ => new double[size]).ToArray(), new double[size]);
        for (var i = 0; i < size; i++)
            matrix[i][i] = 1.0 / Math.Pow(i == 0 ? prior.MillSd : i <= species.Count ? prior.SpeciesSd : prior.SawyerSd, 2.0);
        foreach (var log in logs)
        {
            int[] places = [0, 1 + species.IndexOf(log.Species), 1 + species.Count + sawyers.IndexOf(log.Sawyer)];
            foreach (var i in places)
            {
                right[i] += (log.Ratio - prior.Ratio) / (LogSd * LogSd);
                foreach (var j in places)
                    matrix[i][j] += 1.0 / (LogSd * LogSd);
            }
        }

        factor = Factor(matrix);
        effects = Solve(factor, right);
    }

    /// <summary>Logs that teach.</summary>
    public int Count => logs.Length;

    /// <summary>Standard deviation of one log from the next of the same wood and sawyer.</summary>
    public double LogSd { get; }

    /// <summary>Wood and sawyer of the logs that teach, in the order of their names.</summary>
    public IReadOnlyList<(string Species, string Sawyer)> Groups => [.. logs.Select(log => (log.Species, log.Sawyer)).Distinct().OrderBy(one => one.Species, StringComparer.Ordinal).ThenBy(one => one.Sawyer, StringComparer.Ordinal)];

    /// <summary>Learns from logs; those that do not teach are left out.</summary>
    /// <param name="prior">What is taken for true before.</param>
    /// <param name="sawn">Logs sawn, in any order.</param>
    public static SawnYield Of(YieldPrior prior, IEnumerable<SawnRatio> sawn)
    {
        ArgumentNullException.ThrowIfNull(prior);
        return new SawnYield(prior, [.. sawn.Where(log => log.Teaches).OrderBy(log => log.Species, StringComparer.Ordinal).ThenBy(log => log.Sawyer, StringComparer.Ordinal).ThenBy(log => log.Ratio)]);
    }

    /// <summary>What the next log gives.</summary>
    /// <param name="wood">Its wood; one never sawn takes what is known of the mill.</param>
    /// <param name="sawyer">Who saws it; null for anybody.</param>
    public YieldEstimate Next(string wood, string? sawyer)
    {
        var (ofWood, ofSawyer) = (species.IndexOf(wood), sawyer is null ? -1 : sawyers.IndexOf(sawyer));
        var chosen = new double[effects.Length];
        chosen[0] = 1.0;
        if (ofWood >= 0)
            chosen[1 + ofWood] = 1.0;
        if (ofSawyer >= 0)
            chosen[1 + species.Count + ofSawyer] = 1.0;

        var known = Dot(chosen, Solve(factor, chosen));
        var variance = known + (ofWood < 0 ? prior.SpeciesSd * prior.SpeciesSd : 0.0) + (ofSawyer < 0 ? prior.SawyerSd * prior.SawyerSd : 0.0);
        var before = (prior.MillSd * prior.MillSd) + (prior.SpeciesSd * prior.SpeciesSd) + (prior.SawyerSd * prior.SawyerSd);
        var own = logs.Where(log => log.Species == wood && (sawyer is null || log.Sawyer == sawyer)).ToList();
        return new(
            prior.Ratio + Dot(chosen, effects), Math.Sqrt(variance), LogSd, own.Count, own.Count == 0 ? null : own.Average(log => log.Ratio), Math.Clamp(1.0 - (variance / before), 0.0, 1.0));
    }

    private static double Scatter(YieldPrior prior, SawnRatio[] logs)
    {
        var groups = logs.GroupBy(log => (log.Species, log.Sawyer)).Select(group => group.Select(log => log.Ratio).ToList()).ToList();
        var squares = groups.Sum(group => group.Sum(ratio => Math.Pow(ratio - group.Average(), 2.0)));
        return Math.Sqrt(((prior.LogSdCount * prior.LogSd * prior.LogSd) + squares) / (prior.LogSdCount + logs.Length - groups.Count));
    }

    // Lower triangle of the Cholesky factor of a positive definite matrix.
    private static double[][] Factor(double[][] matrix)
    {
        var lower = matrix.Select(row => new double[row.Length]).ToArray();
        for (var i = 0; i < lower.Length; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var rest = matrix[i][j];
                for (var k = 0; k < j; k++)
                    rest -= lower[i][k] * lower[j][k];
                lower[i][j] = i == j ? Math.Sqrt(rest) : rest / lower[j][j];
            }
        }

        return lower;
    }

    private static double[] Solve(double[][] lower, double[] right)
    {
        var solved = (double[])right.Clone();
        for (var i = 0; i < solved.Length; i++)
        {
            for (var k = 0; k < i; k++)
                solved[i] -= lower[i][k] * solved[k];
            solved[i] /= lower[i][i];
        }

        for (var i = solved.Length - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < solved.Length; k++)
                solved[i] -= lower[k][i] * solved[k];
            solved[i] /= lower[i][i];
        }

        return solved;
    }

    private static double Dot(double[] left, double[] right) => left.Zip(right, (a, b) => a * b).Sum();
}
