using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A stack as it would dry if from today on it lay otherwise.</summary>
/// <param name="What">What would be done.</param>
/// <param name="Forecast">Its forecast then.</param>
public sealed record StackElsewhere(string What, StackForecast Forecast);

/// <summary>A stack as it would go into a kiln on a day.</summary>
/// <param name="When">Now, or when it is dry enough.</param>
/// <param name="On">The day.</param>
/// <param name="From">Its likely moisture then.</param>
/// <param name="Hours">Drying in the kiln, early, likely and late.</param>
public sealed record StackToKiln(string When, DateOnly On, MoistureContent From, (double Early, double Likely, double Late) Hours);

/// <summary>What if a stack were moved, covered or given a fan, and what kilning it now costs in days of kiln against waiting.</summary>
/// <param name="Places">Left as it is first.</param>
/// <param name="Kilns">Now, and when it is dry enough where that is in sight; empty for wood that must never see a kiln or has no schedule.</param>
/// <param name="Says">The answer in a sentence.</param>
public sealed record StackWhatIf(IReadOnlyList<StackElsewhere> Places, IReadOnlyList<StackToKiln> Kilns, string Says)
{
    /// <summary>Of a stack outdoors.</summary>
    /// <returns>The answer; no answer for wood that is not drying outdoors.</returns>
    public static Outcome<StackWhatIf> Of(YardState state, string tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        return StackForecast.Of(state, tag).Then<StackWhatIf>(left =>
        {
            List<StackElsewhere> places = [new("left where it lies", left)];
            foreach (var (what, place) in Choices(state, left.Stack))
            {
                if (StackForecast.Of(state, tag, movedTo: place) is Outcome<StackForecast>.Done(var there))
                    places.Add(new(what, there));
            }

            return new StackWhatIf(places, [.. ToKiln(state, left)], Words(places));
        });
    }

    // What the yard has: another kind of place, a cover off or on, the yard fan where the house has one.
    private static IEnumerable<(string What, StackPlace Place)> Choices(YardState state, Stack stack)
    {
        var inShed = state.Places.GetValueOrDefault(stack.Place)?.Type is PlaceKind.Shed or PlaceKind.Store or PlaceKind.Workshop;
        if (inShed)
            yield return ("moved to an open row, under a cover", StackPlace.Row);
        else if (state.Places.Values.Any(place => place.Type == PlaceKind.Shed))
            yield return ("moved to a shed", StackPlace.Shed);
        yield return (inShed ? "in a row without a cover" : "its cover taken off", StackPlace.OpenRow);
        if (state.Setting("fan_power") is not null)
            yield return ("where it lies, with the yard fan", (inShed ? StackPlace.Shed : StackPlace.Row) with { Fan = true, Name = inShed ? "shed, fan" : "row, covered, fan" });
    }

    private static IEnumerable<StackToKiln> ToKiln(YardState state, StackForecast left)
    {
        if (left.Stack.NeverKiln)
            yield break;
        var kiln = state.Kilns.Values.FirstOrDefault(one => one.Installed.Type != KilnType.RadioFrequencyVacuum);
        var target = new PlanTargets(state, PlanFigures.Of(state).HouseTarget).Of(left.Stack);
        if (kiln is null || Dried(state, left, kiln, left.Now.P50, target) is not { } now)
            yield break;
        yield return new("now", left.Today, left.Now.P50, now);
        if (!left.IsReady && left.Likely is { } day && left.Target > target && Dried(state, left, kiln, left.Target, target) is { } then)
            yield return new("when it is dry enough", day, left.Target, then);
    }

    private static (double, double, double)? Dried(YardState state, StackForecast left, Kiln kiln, MoistureContent from, MoistureContent target) => from > target && KilnDrying.Forecast(new()
    {
        Species = left.Stack.Species,
        Thickness = left.Stack.SawnThickness ?? left.Stack.Thickness.Length,
        From = from,
        To = target,
        Kiln = new(kiln.Name, Temperature.FromCelsius(kiln.Installed.DryBulbMaxC)),
        StepsBy = HouseRules.Steps(state),
    }) is Outcome<KilnForecast>.Done(var forecast) ? (forecast.HoursP10, forecast.HoursP50, forecast.HoursP90) : null;

    // Days are told apart only where they are: a day is within the luck of the weather.
    private static string Words(List<StackElsewhere> places)
    {
        var left = places[0].Forecast;
        if (left.IsReady)
            return "It is dry enough already: moving it changes little; into the kiln or under a roof with it.";
        var best = places.Skip(1).Where(one => one.Forecast.Likely is not null).MinBy(one => one.Forecast.Likely);
        return best?.Forecast.Likely is not { } day || left.Likely is { } stays && stays.DayNumber - day.DayNumber < LeastDays
            ? "Nothing here makes it ready sooner by more than a few days: leave it."
            : left.Likely is { } late ? $"{best.What[..1].ToUpperInvariant()}{best.What[1..]} it is likely dry enough {late.DayNumber - day.DayNumber} days sooner." : $"{best.What[..1].ToUpperInvariant()}{best.What[1..]} it comes to be dry enough; left where it lies that is not in sight.";
    }

    private const int LeastDays = 4;
}
