using System.Collections.Concurrent;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>Kiln times of one wood, thickness, kiln and final moisture content from any starting moisture content, for planning.</summary>
/// <remarks>
/// <para>Forecasts (<see cref="KilnDrying"/>) are made once on a grid of two percent and joined by straight lines; a starting moisture within half a point of the end counts as half a point above it.
/// The likely time differs from a forecast at the very moisture by under 2 %.</para>
/// <para>Not knowing the start exactly widens the band: ln(p90/p50)² = (of the kiln)² + (of the start)².</para>
/// </remarks>
/// <method page="docs/methods/kiln-time.md"/>
/// <param name="species">The wood.</param>
/// <param name="thickness">Rough thickness.</param>
/// <param name="to">Mean moisture content wanted.</param>
/// <param name="kiln">The kiln.</param>
/// <param name="stepsBy">Which samples lead through the schedule.</param>
public sealed class KilnTimes(Species species, Length thickness, MoistureContent to, KilnEquipment kiln, StepRule stepsBy = StepRule.WettestHalf)
{
    private const double GridPercent = 2.0;
    private const double LeastAbovePercent = 0.5;
    private const double TenPercentQuantile = 1.2815515655446004;

    private readonly ConcurrentDictionary<int, Outcome<KilnForecast>> grid = new();

    /// <summary>The time from a starting moisture content.</summary>
    /// <param name="from">Mean moisture content at the start.</param>
    /// <param name="errorPoints">Standard error of it, points of moisture content.</param>
    public Outcome<TimeBand> From(MoistureContent from, double errorPoints = 0.0) => Hours(from.Percent).Then(likely =>
        Hours(from.Percent + TenPercentQuantile * errorPoints).Then<TimeBand>(wetter =>
        {
            var spread = Math.Sqrt(Math.Pow(Math.Log(likely.Most / likely.Half), 2.0) + Math.Pow(Math.Log(wetter.Half / likely.Half), 2.0));
            return new TimeBand(Elapsed.FromHours(likely.Half), Elapsed.FromHours(likely.Half * Math.Exp(spread)));
        }));

    /// <summary>The forecast at the grid's moisture content nearest above a start: its schedule and steps.</summary>
    public Outcome<KilnForecast> ForecastNear(MoistureContent from) => At((int)Math.Ceiling(Above(from.Percent) / GridPercent));

    private Outcome<(double Half, double Most)> Hours(double fromPercent)
    {
        // The time from the end of drying itself is 0: below the grid's first point it falls straight to that.
        var place = Math.Max(fromPercent - to.Percent, LeastAbovePercent) / GridPercent;
        var low = (int)Math.Floor(place);
        return At(low + 1).Then(after => low == 0
            ? (Outcome<(double, double)>)(place * after.HoursP50, place * after.HoursP90)
            : At(low).Then<(double, double)>(before => (Between(before.HoursP50, after.HoursP50, place - low), Between(before.HoursP90, after.HoursP90, place - low))));
    }

    private double Above(double fromPercent) => Math.Max(fromPercent - to.Percent, LeastAbovePercent);

    private static double Between(double low, double high, double share) => low + share * (high - low);

    // Grid points lie above the end: to + 2 %, to + 4 % ...
    private Outcome<KilnForecast> At(int point) => grid.GetOrAdd(point, index => KilnDrying.Forecast(new KilnDryingInput
    {
        Species = species,
        Thickness = thickness,
        From = MoistureContent.FromPercent(to.Percent + index * GridPercent),
        To = to,
        Kiln = kiln,
        StepsBy = stepsBy,
    }));
}
