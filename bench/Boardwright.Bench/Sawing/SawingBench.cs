using System.Diagnostics;
using Boardwright.Quantities;
using Boardwright.Sawing;

namespace Boardwright.Bench.Sawing;

/// <summary>Cutting plans: time of one log and of many against the same recurrence written plainly, growth with size, and value against simpler practice. Times are processor time: the machine is shared.</summary>
internal static class SawingBench
{
    private const int Seed = 20261102;
    private static readonly SawingRules Rules = new();
    private static readonly string[] Practices = ["fixed opening face, 4/4 alone", "greedy, largest first", "live, not turned, exact", "best of all patterns, 36 turns"];

    public static void Run(int logs, int valued, string? picture)
    {
        OneLog();
        Plain();
        Growth(picture);
        FaceSteps(Math.Min(20, valued));
        Value(valued);
        ManyLogs(logs);
    }

    /// <summary>One log alone: processor time, and time by the clock, least of several.</summary>
    public static void OneLog()
    {
        Print("| log | turns that differ | live, ms | cant, ms | quarter, ms | best of all, ms | best of all, by the clock, ms |");
        Print("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (var (name, log) in new[]
        {
            ("round 16 in, 8 ft 5 in", RandomLogs.Swept(16, 18, 8.42, 0)), ("oval 16 in, 8 ft 5 in", RandomLogs.Swept(16, 18, 8.42, 0, 1.1)), ("swept 2 in, 16 in, 8 ft 5 in", RandomLogs.Swept(16, 18, 8.42, 2)),
            ("swept 2 in, 16 in, 12 ft 5 in", RandomLogs.Swept(16, 18, 12.42, 2)), ("crooked 16 in, 8 ft 5 in", Crooked()),
        })
        {
            double Time(SawPattern? pattern) => Least(3, () => CuttingPlanner.Plan(log, Rules, RandomLogs.Prices, pattern));
            Print($"| {name} | {new CuttingSpace(log, Rules, RandomLogs.Prices).Turns.Count} | {Time(SawPattern.Live):0} | {Time(SawPattern.Cant):0} | {Time(SawPattern.Quarter):0} | {Time(null):0} | {Clock(12, () => CuttingPlanner.Plan(log, Rules, RandomLogs.Prices)):0} |");
        }
    }

    private static void Plain()
    {
        Print("\n| log, live, all 36 turns | plain, ms | ours, ms | ratio | value, plain | value, ours |");
        Print("| --- | ---: | ---: | ---: | ---: | ---: |");
        foreach (var (name, log) in new[] { ("oval 12 in, 8 ft 5 in", RandomLogs.Swept(12, 13.5, 8.42, 0, 1.1)), ("swept 2 in, 12 in, 8 ft 5 in", RandomLogs.Swept(12, 13.5, 8.42, 2)) })
        {
            var space = new CuttingSpace(log, Rules, RandomLogs.Prices);
            var (plainBest, oursBest) = (0.0, 0.0);
            var plain = Least(1, () => plainBest = new PlainLive(log, Rules, RandomLogs.Prices, space.GridMm).Best(Enumerable.Range(0, 36).Select(i => i * 10.0)));
            var ours = Least(3, () => oursBest = RandomLogs.Done(CuttingPlanner.Plan(log, Rules, RandomLogs.Prices, SawPattern.Live)).ValueMoney);
            Print($"| {name} | {plain:0} | {ours:0.0} | {plain / ours:0} | {plainBest:0.0000} | {oursBest:0.0000} |");
        }
    }

    private static void Growth(string? picture)
    {
        Print("\n| small end, in | length, ft | step, in | D L / g | live, 36 turns, ms | ns per unit of N T (S + W) |");
        Print("| ---: | ---: | ---: | ---: | ---: | ---: |");
        var points = new List<(double Size, double Ms, double LengthFt)>();
        foreach (var (inches, feet, step) in new[] { (8, 8, 0.01), (16, 8, 0.01), (32, 8, 0.01), (16, 12, 0.01), (16, 16, 0.01), (16, 8, 0.02), (32, 16, 0.01), (48, 8, 0.01) })
        {
            var log = RandomLogs.Swept(inches, inches + 2, feet + 0.42, 1.5);
            var rules = Rules with { GridStep = Length.FromInches(step) };
            var ms = Least(3, () => CuttingPlanner.Plan(log, rules, RandomLogs.Prices, SawPattern.Live));
            var space = new CuttingSpace(log, rules, RandomLogs.Prices);
            var windows = space.Stations.Families.Sum(family => Enumerable.Range(0, family.Length).Sum(k => Math.Max(0, family.Length - k - space.Stations.StepsMin)));
            var unit = space.Turns.Sum(turn => (double)space.Lie(turn).Count) * space.PitchSteps.Length * (space.Stations.Count + windows);
            points.Add((inches * feet * 12 / step, ms, feet));
            Print($"| {inches} | {feet} | {step} | {inches * feet * 12 / step:0} | {ms:0.0} | {ms * 1e6 / unit:0.00} |");
        }

        if (picture is not null)
            File.WriteAllText(picture, GrowthPicture.Svg(points));
    }

    private static void FaceSteps(int count)
    {
        var logs = RandomLogs.Of(count, Seed + 1);
        Print($"\n| step of cant and block faces, {count} logs | value, best of all | of the finest | ms a log |");
        Print("| --- | ---: | ---: | ---: |");
        var finest = 0.0;
        foreach (var inches in new[] { 0.25, 0.5, 1.0 })
        {
            var (sum, before) = (0.0, Environment.CpuUsage.TotalTime);
            foreach (var log in logs)
                sum += RandomLogs.Done(CuttingPlanner.Plan(log, Rules with { FaceStep = Length.FromInches(inches) }, RandomLogs.Prices)).ValueMoney;
            finest = Math.Max(finest, sum);
            Print($"| {inches} in | {sum:0} | {100.0 * sum / finest:0.000} % | {(Environment.CpuUsage.TotalTime - before).TotalMilliseconds / count:0} |");
        }
    }

    /// <summary>Value against simpler practice alone.</summary>
    public static void Value(int count)
    {
        var logs = RandomLogs.Of(count, Seed);
        var sums = new double[4];
        foreach (var log in logs)
        {
            sums[0] += SimplePractice.FixedFace(log);
            sums[1] += SimplePractice.Greedy(log);
            sums[2] += RandomLogs.Done(CuttingPlanner.Plan(log, Rules with { Turn = Angle.FromDegrees(0) }, RandomLogs.Prices, SawPattern.Live)).ValueMoney;
            sums[3] += RandomLogs.Done(CuttingPlanner.Plan(log, Rules, RandomLogs.Prices)).ValueMoney;
        }

        Print($"\n| {count} random logs | value | best of all over it |");
        Print("| --- | ---: | ---: |");
        foreach (var (name, sum) in Practices.Zip(sums))
            Print($"| {name} | {sum:0} | +{100.0 * ((sums[3] / sum) - 1.0):0.0} % |");
    }

    /// <summary>Many logs on two cores.</summary>
    public static void ManyLogs(int count)
    {
        var logs = RandomLogs.Of(count, Seed);
        var (watch, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => CuttingPlanner.Plan(logs[i], Rules, RandomLogs.Prices));
        var spent = (Environment.CpuUsage.TotalTime - before).TotalSeconds;
        Print($"\n{count} logs, best of all: {spent:0.0} s of processor time, {spent / 2:0.0} s on two cores of its own; {watch.Elapsed.TotalSeconds:0.0} s by the clock here.");
    }

    private static LogShape Crooked() => RandomLogs.Done(LogShape.Measured(
    [
        new(default, Length.FromInches(15), Length.FromInches(16.5)), new(Length.FromFeet(3), Length.FromInches(15.6), Length.FromInches(17), 12, 9),
        new(Length.FromFeet(6), Length.FromInches(16.5), Length.FromInches(17.4), 4, -11), new(Length.FromFeet(8.42), Length.FromInches(17.6), Length.FromInches(18.2), -6, 5),
    ]));

    private static double Clock(int times, Action act)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < times; i++)
        {
            var watch = Stopwatch.StartNew();
            act();
            least = Math.Min(least, watch.Elapsed.TotalMilliseconds);
        }

        return least;
    }

    private static double Least(int times, Action act)
    {
        act();
        var least = double.PositiveInfinity;
        for (var i = 0; i < times; i++)
        {
            var before = Environment.CpuUsage.TotalTime;
            act();
            least = Math.Min(least, (Environment.CpuUsage.TotalTime - before).TotalMilliseconds);
        }

        return least;
    }

    // Written in the invariant culture: the project knows no other.
    private static void Print(string text) => Console.WriteLine(text);
}
