using System.Globalization;
using Boardwright.Drying;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What the readings of earlier stacks tell the next one of its rate: see <see cref="AirRateHistory"/>.</summary>
/// <remarks>
/// The house decides by the setting learn_air_rates_since, a day as 20260401: stacks sawn on and after it teach, earlier ones are forgotten; without the setting
/// every stack begins with the printed rate of its wood. Only readings taken outdoors count, two or more a stack.
/// </remarks>
/// <method page="docs/methods/air-drying.md"/>
public static class LearnedRates
{
    private const string Setting = "learn_air_rates_since";
    private const int ReadingsMin = 2;

    /// <summary>Stacks sawn before this one that teach it, each with the rate it showed.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="stack">The stack to begin.</param>
    /// <param name="ask">The question of a stack as it was outdoors, with these readings; null where it cannot be asked.</param>
    internal static IReadOnlyList<AirRateFound> Found(YardState state, Stack stack, Func<Stack, IReadOnlyList<StackReading>, AirDryingInput?> ask)
    {
        if (Since(state) is not { } since)
            return [];

        var found = new List<AirRateFound>();
        foreach (var earlier in state.Stacks.Values.Where(one => one.Tag != stack.Tag && one.SawnOn >= since && one.SawnOn < stack.SawnOn && one.FromStack is null))
        {
            IReadOnlyList<StackReading> readings = [.. Outdoors(state, earlier).Select(ReadingError.For).OfType<StackReading>()];
            if (readings.Count >= ReadingsMin && ask(earlier, readings) is { } input && ForecastCache.Of(input) is Quantities.Outcome<AirDryingForecast>.Done(var forecast))
                found.Add(new AirRateFound(earlier.Tag, earlier.Species.CommonName, FirstPlace(state, earlier), forecast.Rate));
        }

        return found;
    }

    /// <summary>The place a stack was built in: its row.</summary>
    internal static string FirstPlace(YardState state, Stack stack) =>
        stack.History.Select(state.Entry).Select(entry => entry.Fact).OfType<StackBuilt>().FirstOrDefault()?.Place ?? stack.Place;

    private static IEnumerable<MoistureReading> Outdoors(YardState state, Stack stack)
    {
        var loaded = stack.Charges.Select(tag => state.Charges.GetValueOrDefault(tag)?.LoadedAt).Min();
        return stack.Readings.Where(reading => reading.Method is not (MoistureMethod.InKiln or MoistureMethod.AtUnloading) && !(reading.At >= loaded));
    }

    private static DateOnly? Since(YardState state) =>
        state.Setting(Setting) is { } day && DateOnly.TryParseExact(day.ToString("0", CultureInfo.InvariantCulture), "yyyyMMdd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var since) ? since : null;
}
