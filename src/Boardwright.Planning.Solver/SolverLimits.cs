namespace Boardwright.Planning.Solver;

/// <summary>How long and how hard the solver may work.</summary>
/// <param name="Seconds">Wall-clock seconds in all.</param>
/// <param name="Workers">Threads; best as many as the machine has cores.</param>
/// <param name="RepeatableWork">
/// Null: the wall clock ends the search and two runs may differ. A number: an amount of work for each level, in the solver's own
/// deterministic time, after which the search ends; two runs then give the same plan if <paramref name="Seconds"/> is not reached.
/// </param>
/// <param name="Seed">Seed of the search.</param>
public sealed record SolverLimits(double Seconds, int Workers, double? RepeatableWork = null, int Seed = 1)
{
    /// <summary>
    /// New charges in each kiln, at most; fewer make the search much quicker. Bounds then hold for plans with no more. The plan the search starts
    /// from is never cut.
    /// </summary>
    public int ChargesEachKiln { get; init; } = int.MaxValue;

    /// <summary>
    /// A plan to begin from, such as yesterday's: what of it can still be done is kept where it helps. Null for none. The same book may then have two plans,
    /// one for each way it was come to.
    /// </summary>
    public Plan? Start { get; init; }

    /// <summary>A plan found later takes the place of <see cref="Start"/> only when it makes lateness less, or risk and cost together by this many cents: people set themselves to a plan.</summary>
    public long ChangeWorthCents { get; init; }

    /// <summary>The search ends once lateness is proven to be within this share of the least, percent of what the plan counts; null: it goes on to its other limits.</summary>
    public double? EnoughGapPercent { get; init; }

    /// <summary>Whether lateness is near enough to its bound.</summary>
    internal bool IsEnough(long late, long bound) => EnoughGapPercent is { } gap && 100.0 * (late - bound) <= gap * late;

    internal string Parameters(double seconds)
    {
        var common = FormattableString.Invariant($"max_time_in_seconds:{seconds},num_workers:{Workers},random_seed:{Seed}");
        return RepeatableWork is { } work
            ? FormattableString.Invariant($"{common},interleave_search:{(Workers > 1 ? "true" : "false")},max_deterministic_time:{work}")
            : common;
    }
}
