using System.Diagnostics;
using System.Runtime.InteropServices;

using Google.OrTools.LinearSolver;

using LinearSolver = Google.OrTools.LinearSolver.Solver;

namespace Boardwright.Planning.Solver;

/// <summary>A linear program to be made least, its variables between 0 and 1, its rows at most a right-hand side, in whole numbers throughout.</summary>
/// <remarks>
/// The solver works in floating point, so its word is not taken for the bound: any prices of the rows that are not negative prove one, and
/// <see cref="Bound"/> works it out from the solver's prices in whole numbers, whatever state they are in.
/// </remarks>
internal sealed class LinearProgram
{
    private const int PriceBits = 24;
    private const int RoundsMost = 12;

    private readonly List<long> costs = [];
    private readonly List<(int Variable, long Factor)> terms = [];
    private readonly List<(int From, long Most)> rows = [];

    public int Variables => costs.Count;

    public int Rows => rows.Count;

    /// <summary>A new variable between 0 and 1.</summary>
    public int Variable(long cost = 0)
    {
        costs.Add(cost);
        return costs.Count - 1;
    }

    /// <summary>Demands that a sum is at most a value.</summary>
    public void AtMost(long most, IEnumerable<(int Variable, long Factor)> sum)
    {
        var from = terms.Count;
        terms.AddRange(sum);
        if (terms.Count > from)
        {
            rows.Add((from, most));
        }
    }

    /// <summary>A value that the least sum of costs is not below.</summary>
    /// <param name="seconds">Time for the solver; without an end in it there may be no bound but the trivial one.</param>
    /// <param name="more">Given the values of a solution, demands more of them; false when there is no more to demand.</param>
    /// <param name="cancel">Ends the search.</param>
    public double Bound(double seconds, Func<Func<int, double>, bool> more, CancellationToken cancel = default)
    {
        var watch = Stopwatch.StartNew();
        using var solver = LinearSolver.CreateSolver("GLOP");
        _ = solver.SetSolverSpecificParametersAsString("use_dual_simplex:true");
        var variables = costs.Select(_ => solver.MakeNumVar(0.0, 1.0, "")).ToArray();
        solver.Objective().SetMinimization();
        for (var v = 0; v < variables.Length; v++)
        {
            solver.Objective().SetCoefficient(variables[v], costs[v]);
        }

        var made = new List<Constraint>();
        var best = Proven(new double[rows.Count]);
        var rounds = 0;
        using (cancel.Register(() => solver.InterruptSolve()))
        {
            do
            {
                for (var row = made.Count; row < rows.Count; row++)
                {
                    var constraint = solver.MakeConstraint(double.NegativeInfinity, rows[row].Most, "");
                    foreach (var (variable, factor) in TermsOf(row))
                    {
                        constraint.SetCoefficient(variables[variable], factor);
                    }

                    made.Add(constraint);
                }

                solver.SetTimeLimit((long)Math.Max(1.0, 1000.0 * (seconds - watch.Elapsed.TotalSeconds)));
                if (solver.Solve() != LinearSolver.ResultStatus.OPTIMAL)
                {
                    break;
                }

                best = Math.Max(best, Proven([.. made.Select(row => Math.Max(0.0, -row.DualValue()))]));
            }
            while (++rounds < RoundsMost && !cancel.IsCancellationRequested && watch.Elapsed.TotalSeconds < seconds && more(variable => variables[variable].SolutionValue()));
        }

        return best;
    }

    // costs·x ≥ costs·x + Σ price·(row·x − most) for any x that keeps the rows, and each variable by itself is best at 0 or at 1.
    private double Proven(double[] prices)
    {
        var left = new Int128[costs.Count];
        for (var v = 0; v < left.Length; v++)
        {
            left[v] = (Int128)costs[v] << PriceBits;
        }

        Int128 sum = 0;
        for (var row = 0; row < rows.Count; row++)
        {
            var price = (Int128)Math.Round(prices[row] * (1 << PriceBits));
            if (price == 0)
            {
                continue;
            }

            sum -= price * rows[row].Most;
            foreach (var (variable, factor) in TermsOf(row))
            {
                left[variable] += price * factor;
            }
        }

        foreach (var one in left)
        {
            sum += one < 0 ? one : 0;
        }

        return (double)sum / (1 << PriceBits);
    }

    private Span<(int Variable, long Factor)> TermsOf(int row)
    {
        var from = rows[row].From;
        var to = row + 1 < rows.Count ? rows[row + 1].From : terms.Count;
        return CollectionsMarshal.AsSpan(terms)[from..to];
    }
}
