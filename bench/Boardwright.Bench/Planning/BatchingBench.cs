using System.Diagnostics;
using System.Globalization;
using Boardwright.Planning.Batching;
using Boardwright.Planning.Solver;
using Boardwright.Planning.Solver.Batching;
using Boardwright.Quantities;

namespace Boardwright.Bench.Planning;

/// <summary>Cost of our schedules over the best known ones, for the instances of a folder.</summary>
/// <remarks>The folder holds instances (*.dzn) whose names begin with their number, and best-known.csv with the columns instance and best_known. Not a timing: seconds are the limit given.</remarks>
internal static class BatchingBench
{
    private const int Workers = 2;

    public static void Run(string folder, double seconds, string pattern)
    {
        var best = BestKnown(Path.Combine(folder, "best-known.csv"));
        Console.WriteLine("| instance | jobs | cost | bound | best known | ratio | gap to bound, % | sound | s |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        foreach (var file in Directory.EnumerateFiles(folder, pattern).Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileNameWithoutExtension(file);
            var watch = Stopwatch.StartNew();
            var line = DznText.Read(name, File.ReadAllText(file)).Then(instance => BatchSolver.Solve(instance, new SolverLimits(seconds, Workers)).Then<string>(answer => Line(instance, answer, best.GetValueOrDefault(name.Split('-')[0].TrimStart('0')))));
            Console.WriteLine($"| {name} | {(line is Outcome<string>.Done(var found) ? found : $"{line}")} | {watch.Elapsed.TotalSeconds.ToString("0.0", CultureInfo.InvariantCulture)} |");
        }
    }

    private static string Line(BatchInstance instance, BatchAnswer answer, double bestKnown)
    {
        var cost = (double)answer.Cost / instance.Weights.Divisor;
        return string.Create(CultureInfo.InvariantCulture, $"{instance.Jobs.Count} | {cost:0.000000} | {(double)answer.Bound / instance.Weights.Divisor:0.000000} | {bestKnown:0.000000} | {cost / bestKnown:0.00000} | {answer.GapPercent:0.00} | {(BatchCheck.Faults(instance, answer.Batches).Count == 0 ? "yes" : "no")}");
    }

    private static Dictionary<string, double> BestKnown(string path)
    {
        var rows = File.ReadAllLines(path).Select(line => line.Split(',')).ToList();
        var (name, value) = (Array.IndexOf(rows[0], "instance"), Array.IndexOf(rows[0], "best_known"));
        return rows.Skip(1).Where(row => row.Length > value).ToDictionary(row => row[name], row => double.Parse(row[value], CultureInfo.InvariantCulture), StringComparer.Ordinal);
    }
}
