using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Moisture of a stack that waits in the yard, day by day from the plan's first day.</summary>
internal sealed class PlanMoisture
{
    private const double TenPercentQuantile = 1.2815515655446004;
    private const double MeterErrorPoints = 1.0;
    private const double WetErrorShare = 0.05;

    private readonly Func<int, (MoistureContent Likely, double ErrorPoints)> on;

    private PlanMoisture(Func<int, (MoistureContent Likely, double ErrorPoints)> on) => this.on = on;

    /// <summary>The stack's own forecast with all its readings; where the yard has no weather for one, its newest reading stands.</summary>
    public static PlanMoisture Of(YardState state, BookState.Stack stack, BookState.MoistureReading reading)
    {
        if (StackForecast.Of(state, stack.Tag) is Outcome<StackForecast>.Done(var forecast))
        {
            var ahead = forecast.Ahead;
            return new(day => Point(ahead[Math.Min(day, ahead.Count - 1)]));
        }

        return new(_ => (reading.Mean!.Value, ErrorPoints(reading)));
    }

    /// <summary>Likely moisture on a day of the plan, and its standard error in points.</summary>
    public (MoistureContent Likely, double ErrorPoints) On(int day) => on(day);

    private static (MoistureContent, double) Point(DryingDay day) => (day.P50, Math.Max(0.0, day.P90.Percent - day.P50.Percent) / TenPercentQuantile);

    // The mean of the boards read, and the method itself.
    private static double ErrorPoints(BookState.MoistureReading reading)
    {
        var ofMean = reading.SdPct is { } sd && reading.Boards is > 0 and var boards ? sd / Math.Sqrt(boards) : 0.0;
        var ofMethod = reading.Meter?.ErrorPoints ?? Math.Max(MeterErrorPoints, WetErrorShare * reading.Mean!.Value.Percent);
        return Math.Sqrt(ofMean * ofMean + ofMethod * ofMethod);
    }
}
