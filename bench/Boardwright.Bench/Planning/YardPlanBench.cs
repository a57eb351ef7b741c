using System.Diagnostics;
using Boardwright.Planning;
using Boardwright.Planning.Solver;
using Boardwright.Quantities;

namespace Boardwright.Bench.Planning;

/// <summary>Plans of invented yards against their bound, against two rules of thumb, and again with a boiler out: quality after a time, not time.</summary>
internal static class YardPlanBench
{
    private const int Workers = 2;

    public static void Run(int stacks, int kilns, int orders, int seconds, IEnumerable<int> seeds)
    {
        Console.WriteLine("| seed | first plan, s | processor, s | late, money | bound | gap, % | risk, gap % | cost, gap % | what-if, s | what-if gap, % | kiln-days | driest first: late | kiln-days | due first: late | kiln-days |");
        Console.WriteLine("| ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (var seed in seeds)
        {
            One(seed, RandomYards.Make(seed, stacks, kilns, orders), seconds);
        }
    }

    private static void One(int seed, PlanInput input, int seconds)
    {
        using var process = Process.GetCurrentProcess();
        var (watch, before) = (Stopwatch.StartNew(), process.TotalProcessorTime);
        double? first = null;
        var answer = Done(YardSolver.Solve(input, new(seconds, Workers), _ => first ??= watch.Elapsed.TotalSeconds));
        process.Refresh();
        var processor = (process.TotalProcessorTime - before).TotalSeconds;
        watch.Restart();
        var without = ((Outcome<PlanInput>.Done)new Interruption("B2", input.Calendar.FirstDay, input.Calendar.DateOf(9)).ApplyTo(input)).Value;
        var again = Done(YardSolver.Solve(without, new(5, Workers)));
        var whatIf = watch.Elapsed.TotalSeconds;
        var (dry, due) = (RuleOfThumb.FirstDryFirstLoaded(input), RuleOfThumb.EarliestDueDate(input));
        Console.WriteLine(FormattableString.Invariant(
            $"| {seed} | {first:0.0} | {processor:0} | {answer.Levels[0].Cents / 100.0:0} | {answer.Levels[0].BoundCents / 100.0:0} | {answer.Levels[0].GapPercent:0.0} | {answer.Levels[1].GapPercent:0.0} | {answer.Levels[2].GapPercent:0.0} | {whatIf:0.0} | {again.Levels[0].GapPercent:0.0} | {KilnDays(input, Sound(input, answer.Plan))} | {Late(input, dry)} | {KilnDays(input, dry)} | {Late(input, due)} | {KilnDays(input, due)} |"));
    }

    private static string Late(PlanInput input, Plan plan) => FormattableString.Invariant($"{PlanOutlook.Of(input, Sound(input, plan)).Score.LateCents / 100.0:0}");

    private static string KilnDays(PlanInput input, Plan plan) =>
        FormattableString.Invariant($"{PlanOutlook.Of(input, plan).Charges.Sum(charge => (double)(charge.EmptyAt - charge.Charge.LoadStep) / input.Calendar.StepsPerDay):0}");

    private static Plan Sound(PlanInput input, Plan plan) =>
        PlanCheck.Faults(input, plan, PlanOutlook.Of(input, plan)) is { Count: > 0 } faults ? throw new InvalidOperationException(string.Join("; ", faults.Select(fault => fault.Words))) : plan;

    private static PlanAnswer Done(Outcome<PlanAnswer> outcome) => outcome is Outcome<PlanAnswer>.Done(var answer) ? answer : throw new InvalidOperationException($"{outcome}");
}
