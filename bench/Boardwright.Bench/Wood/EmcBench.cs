using BenchmarkDotNet.Attributes;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Bench.Wood;

/// <summary>A year of hourly weather to equilibrium moisture. Plain: the kernel on bare numbers; typed: the same through the checked quantities.</summary>
public class EmcBench
{
    private const int Hours = 8760;
    private readonly double[] celsius = [.. Enumerable.Range(0, Hours).Select(h => 8.0 + (15.0 * Math.Sin(h / 1394.0)))];
    private readonly double[] humidity = [.. Enumerable.Range(0, Hours).Select(h => 0.75 + (0.15 * Math.Cos(h / 4.0)))];

    [Benchmark(Baseline = true)]
    public double Kernel()
    {
        var sum = 0.0;
        for (var i = 0; i < Hours; i++)
            sum += Emc.Percent(celsius[i], humidity[i]);

        return sum;
    }

    [Benchmark]
    public double Typed()
    {
        var sum = 0.0;
        for (var i = 0; i < Hours; i++)
            sum += Emc.At(Temperature.FromCelsius(celsius[i]), RelativeHumidity.FromPercent(100.0 * humidity[i])).Percent;

        return sum;
    }
}
