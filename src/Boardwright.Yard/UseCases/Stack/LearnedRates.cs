using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What the readings of earlier stacks tell the next one of its rate: see <see cref="RateHistory"/>.</summary>
/// <remarks>
/// Every earlier stack teaches, unless the house decides by the setting learn_air_rates_since, a day as 20260401: stacks sawn on and after it teach, earlier ones are
/// forgotten; with 0 every stack begins with the printed rate of its wood. learn_air_rates_since_sugar_maple or _row_b says the same of one wood or one place alone, beside it. Only readings taken outdoors count, two or more a stack.
/// </remarks>
/// <method page="docs/methods/air-drying.md"/>
public static class LearnedRates
{
    internal const string Setting = "learn_air_rates_since";
    private const int ReadingsMin = 2;

    /// <summary>Every stack that was read often enough outdoors, with the rate it showed and the number of its readings.</summary>
    internal static IEnumerable<(Stack Stack, RateFound Rate, int Readings)> Shown(YardState state)
    {
        foreach (var stack in state.Stacks.Values.Where(one => one.FromStack is null && one.Proven))
        {
            IReadOnlyList<StackReading> readings = [.. Outdoors(state, stack).Select(ReadingError.For).OfType<StackReading>()];
            if (readings.Count >= ReadingsMin && StackForecast.AsRead(state, stack, readings) is { } input && ForecastCache.Of(input) is Outcome<AirDryingForecast>.Done(var forecast))
                yield return (stack, new RateFound(stack.Tag, stack.Species.CommonName, FirstPlace(state, stack), forecast.Rate), readings.Count);
        }
    }

    /// <summary>Stacks sawn before this one that teach it, each with the rate it showed.</summary>
    internal static IReadOnlyList<RateFound> Before(YardState state, Stack stack) => Since(state, Setting) is not null && Begins(state, Setting, stack.Species.CommonName, FirstPlace(state, stack))
        ? [.. Shown(state).Where(shown => shown.Stack.Tag != stack.Tag && shown.Stack.SawnOn < stack.SawnOn && Teaches(state, Setting, shown.Rate.Species, shown.Rate.Place, shown.Stack.SawnOn)).Select(shown => shown.Rate)]
        : [];

    /// <summary>The place a stack was built in: its row.</summary>
    internal static string FirstPlace(YardState state, Stack stack) =>
        stack.History.Select(state.Entry).Select(entry => entry.Fact).OfType<StackBuilt>().FirstOrDefault()?.Place ?? stack.Place;

    /// <summary>The first day that counts, the first of all where the house has not decided; null where it begins with the printed rates.</summary>
    internal static DateOnly? Since(YardState state, string setting)
    {
        if (state.Setting(setting) is not { } day)
            return DateOnly.MinValue;

        return DateOnly.TryParseExact(day.ToString("0", CultureInfo.InvariantCulture), "yyyyMMdd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var since) ? since : null;
    }

    /// <summary>The setting of one wood or place: learn_air_rates_since_sugar_maple; of all where none is named.</summary>
    internal static string SettingOf(string setting, string? of) =>
        string.IsNullOrWhiteSpace(of) ? setting : $"{setting}_{string.Concat(of.Trim().ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '_'))}";

    /// <summary>True where no day of the house, of the wood or of the place leaves out what was begun that day; no day of the house at all leaves out nothing here.</summary>
    internal static bool Teaches(YardState state, string setting, string species, string place, DateOnly on) =>
        on >= (Since(state, setting) ?? DateOnly.MinValue) && new[] { species, place }.All(of => Since(state, SettingOf(setting, of)) is { } since && on >= since);

    /// <summary>True where neither wood nor place has been told to begin with the printed rate.</summary>
    internal static bool Begins(YardState state, string setting, string species, string place) => new[] { species, place }.All(of => Since(state, SettingOf(setting, of)) is not null);

    private static IEnumerable<MoistureReading> Outdoors(YardState state, Stack stack)
    {
        var loaded = stack.Charges.Select(tag => state.Charges.GetValueOrDefault(tag)?.LoadedAt).Min();
        return stack.Readings.Where(reading => reading.Method is not (MoistureMethod.InKiln or MoistureMethod.AtUnloading) && !(reading.At >= loaded));
    }
}
