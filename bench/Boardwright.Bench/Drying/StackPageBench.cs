using System.Diagnostics;
using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.UseCases;

namespace Boardwright.Bench.Drying;

/// <summary>What the page of a stack waits for: its forecast with weather, readings, hindsight and curve, worked out anew, and taken from those kept.</summary>
internal static class StackPageBench
{
    private const int Runs = 5;

    public static void Run()
    {
        var yard = DemonstrationYard.State;
        var first = Stopwatch.StartNew();
        var forecasts = yard.Stacks.Keys.Select(tag => StackForecast.Of(yard, tag)).OfType<Outcome<StackForecast>.Done>().Select(done => done.Value).ToList();
        var all = first.Elapsed;
        var anew = forecasts.Select(one => (one.Stack.Tag, one.Input.Readings.Count, one.Input.HorizonDays, Ms: Quickest(() => AirDrying.Forecast(one.Input)))).OrderBy(one => one.Ms).ToList();
        var kept = forecasts.Select(one => Quickest(() => StackForecast.Of(yard, one.Stack.Tag))).Order().ToList();
        Console.WriteLine("| stack | readings | days looked at | ms, worked out anew |");
        Console.WriteLine("| --- | ---: | ---: | ---: |");
        foreach (var one in anew)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {one.Tag} | {one.Count} | {one.HorizonDays} | {one.Ms:0.0} |"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{forecasts.Count} stacks: middle {anew[anew.Count / 2].Ms:0.0}, slowest {anew[^1].Ms:0.0} ms; kept: middle {kept[kept.Count / 2]:0.00}, slowest {kept[^1]:0.00} ms; all for the first time, code not compiled yet and what earlier stacks teach included, {all.TotalMilliseconds:0} ms"));
    }

    private static double Quickest(Action run) => Enumerable.Range(0, Runs).Min(_ =>
    {
        var from = Stopwatch.GetTimestamp();
        run();
        return Stopwatch.GetElapsedTime(from).TotalMilliseconds;
    });
}
