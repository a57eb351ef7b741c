using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What the next reading of a stack should show.</summary>
/// <param name="Last">The reading before; null when there is none.</param>
/// <param name="Low">Corrected moisture, from here.</param>
/// <param name="High">To here.</param>
/// <param name="Wood">The wood is taken to be as cold as the day's air.</param>
/// <param name="ShownLow">What the meter shows at the low end in such wood.</param>
/// <param name="ShownHigh">And at the high end.</param>
public sealed record StackExpected(MoistureReading? Last, MoistureContent Low, MoistureContent High, Temperature Wood, MoistureContent ShownLow, MoistureContent ShownHigh)
{
    private const double MeterPoints = 1.0;

    /// <summary>What is expected; no answer where nothing is forecast.</summary>
    public static Outcome<StackExpected> Of(YardState state, string tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        return StackForecast.Of(state, tag).Then<StackExpected>(drying =>
        {
            var low = MoistureContent.FromPercent(Math.Max(0.0, drying.Now.P10.Percent - MeterPoints));
            var high = MoistureContent.FromPercent(drying.Now.P90.Percent + MeterPoints);
            var wood = Temperature.FromCelsius(state.Weather.GetValueOrDefault(state.Today)?.MeanC ?? state.Normals.GetValueOrDefault(state.Today.Month)?.MeanC ?? 10.0);
            return new StackExpected(drying.Stack.Moisture, low, high, wood, Shown(low, wood), Shown(high, wood));
        });
    }

    /// <summary>What a meter shows on wood of a moisture and temperature, by the trade's rule.</summary>
    public static MoistureContent Shown(MoistureContent moisture, Temperature wood) => MeterTemperature.Shown(moisture, wood, MeterTemperatureRule.OnePerTwentyFahrenheit);
}
