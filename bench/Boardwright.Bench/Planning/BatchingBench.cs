using System.Diagnostics;
using System.Globalization;
using Boardwright.Planning.Batching;
using Boardwright.Planning.Solver;
using Boardwright.Planning.Solver.Batching;
using Boardwright.Quantities;

namespace Boardwright.Bench.Planning;

/// <summary>Cost of our schedules beside the best known ones, for the instances of a folder; beside it the schedule made in one pass.</summary>
/// <remarks>The folder holds instances (*.dzn) whose names begin with their number, and best-known.csv with the columns instance and best_known. Not a timing: seconds are the limit given.</remarks>
internal static class BatchingBench
{
    private const int Workers = 2;

    public static void Run(string folder, double seconds, string pattern)
    {
        var best = BestKnown(Path.Combine(folder, "best-known.csv"));
        Console.WriteLine("| instance | jobs | one pass | best known | ours | over best known, % | bound | gap to bound, % | sound | best after, s | ended after, s | processor, s |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        foreach (var file in Directory.EnumerateFiles(folder, pattern).Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileNameWithoutExtension(file);
            var line = DznText.Read(name, File.ReadAllText(file)).Then(instance => Line(instance, seconds, best.GetValueOrDefault(name.Split('-')[0].TrimStart('0'))));
            Console.WriteLine($"| {name} | {(line is Outcome<string>.Done(var found) ? found : $"{line}")} |");
        }
    }

    private static Outcome<string> Line(BatchInstance instance, double seconds, double bestKnown)
    {
        var (watch, processor, last) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime, 0.0);
        return BatchSolver.Solve(instance, new SolverLimits(seconds, Workers), TimeProvider.System, _ => last = watch.Elapsed.TotalSeconds).Then<string>(answer =>
        {
            var (ended, used) = (watch.Elapsed.TotalSeconds, (Environment.CpuUsage.TotalTime - processor).TotalSeconds);
            var (cost, bound) = ((double)answer.Cost / instance.Weights.Divisor, (double)answer.Bound / instance.Weights.Divisor);
            var pass = BatchStart.Build(instance) is { } first ? ((double)BatchCost.Of(instance, first) / instance.Weights.Divisor).ToString("0.000000", CultureInfo.InvariantCulture) : "none";
            var sound = BatchCheck.Faults(instance, answer.Batches).Count == 0 ? "yes" : "no";
            return string.Create(CultureInfo.InvariantCulture, $"{instance.Jobs.Count} | {pass} | {bestKnown:0.000000} | {cost:0.000000} | {100.0 * (cost / bestKnown - 1.0):0.000} | {bound:0.000000} | {answer.GapPercent:0.000} | {sound} | {last:0.0} | {ended:0.0} | {used:0}");
        });
    }

    private static Dictionary<string, double> BestKnown(string path)
    {
        var rows = File.ReadAllLines(path).Select(line => line.Split(',')).ToList();
        var (name, value) = (Array.IndexOf(rows[0], "instance"), Array.IndexOf(rows[0], "best_known"));
        return rows.Skip(1).Where(row => row.Length > value).ToDictionary(row => row[name], row => double.Parse(row[value], CultureInfo.InvariantCulture), StringComparer.Ordinal);
    }
}
