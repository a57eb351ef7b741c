using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Heat of one day: what the boilers give, what the shop takes first, what the running kilns want.</summary>
public sealed record HeatDay(DateOnly Date, double OutsideC, double CapacityKw, double ShopKw, double KilnsKw, bool Forecast)
{
    public double SpareKw => CapacityKw - ShopKw;

    public double ShortKw => Math.Max(0.0, KilnsKw + ShopKw - CapacityKw);
}

/// <summary>Heat by day, from the weather and the state of boilers and kilns.</summary>
public static class BoilerSheet
{
    private const double ShopKwPerKelvin = 0.55;
    private const double ShopBaseC = 16.0;

    public static IReadOnlyList<HeatDay> Days(YardState state, int count)
    {
        ArgumentNullException.ThrowIfNull(state);
        var perKelvin = state.Setting("shop_heat") ?? ShopKwPerKelvin;
        var baseC = state.Setting("shop_heat_below") ?? ShopBaseC;
        return [.. Enumerable.Range(0, count).Select(state.Today.AddDays).Select(day =>
        {
            var weather = state.Weather.GetValueOrDefault(day);
            var outside = weather?.MeanC ?? state.Normals.GetValueOrDefault(day.Month)?.MeanC ?? 0.0;
            return new HeatDay(day, outside, Capacity(state, day), perKelvin * Math.Max(0.0, baseC - outside), Kilns(state, outside), weather is not { Observed: true });
        })];
    }

    /// <summary>Boilers that are up, or whose likely return lies before the day.</summary>
    public static double Capacity(YardState state, DateOnly day) =>
        state.Boilers.Values.Where(boiler => boiler.Down is not { } down || down.BackExpectedOn is { } back && back <= day).Sum(boiler => boiler.Installed.SteadyOutputKw);

    private static double Kilns(YardState state, double outside) => state.Kilns.Values.Where(kiln => kiln.Installed.HeatAtWaterC is not null).Sum(kiln => Holding(kiln, outside));

    // The holding heat seen last winter, straight between the outside temperatures it was noted at.
    private static double Holding(Kiln kiln, double outside)
    {
        var points = kiln.Installed.HoldingHeat.OrderBy(point => point.OutsideC).ToList();
        if (points.Count == 0)
        {
            return 0.0;
        }

        if (outside <= points[0].OutsideC || points.Count == 1)
        {
            return points[0].HeatKw;
        }

        for (var index = 1; index < points.Count; index++)
        {
            if (outside <= points[index].OutsideC)
            {
                var share = (outside - points[index - 1].OutsideC) / (points[index].OutsideC - points[index - 1].OutsideC);
                return points[index - 1].HeatKw + share * (points[index].HeatKw - points[index - 1].HeatKw);
            }
        }

        return points[^1].HeatKw;
    }
}
