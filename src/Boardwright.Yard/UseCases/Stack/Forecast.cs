using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How a stack has dried and will dry outdoors, with all its readings: the past in hindsight, today, the days ahead, the day it is dry enough.</summary>
public sealed record StackForecast
{
    private const double UsualTargetPercent = 20.0;
    private const int DaysAheadMax = 540;
    private const int DaysMax = 1500;
    private const int CurveDaysAhead = 80;
    private const int GainDays = 45;
    private const double GainPoints = 0.3;

    public required Stack Stack { get; init; }

    public required DateOnly Today { get; init; }

    /// <summary>Dry enough is at or under this.</summary>
    public required MoistureContent Target { get; init; }

    /// <summary>Where the target comes from.</summary>
    public required string TargetWhy { get; init; }

    public required AirDryingInput Input { get; init; }

    /// <summary>Earlier stacks whose readings set the rate it was begun with; empty where the printed rate of the wood was used.</summary>
    public required IReadOnlyList<RateFound> LearnedFrom { get; init; }

    public required AirDryingForecast Forecast { get; init; }

    /// <summary>From the start to this evening, with every reading known.</summary>
    public required IReadOnlyList<DryingDay> Past { get; init; }

    /// <summary>From this evening on, if it is left where it is.</summary>
    public required IReadOnlyList<DryingDay> Ahead { get; init; }

    /// <summary>What the outdoor air holds wood at, week by week: single days are too short for wood.</summary>
    public IReadOnlyList<(DateOnly Day, double Percent)> WeeklyAir => [.. Past.Concat(Ahead.Skip(1)).Chunk(7).Where(week => week.Length == 7).Select(week => (week[3].Date, week.Average(day => day.Emc.Percent)))];

    /// <summary>This evening.</summary>
    public DryingDay Now => Ahead[0];

    /// <summary>Forty-five days on, when the air until then holds wood wetter than it is and it will have gained; null while it dries or stands still.</summary>
    public DryingDay? Gain => Ahead.Count > GainDays && Ahead.Take(GainDays).Average(day => day.Emc.Percent) > Now.P50.Percent + GainPoints && Ahead[GainDays].P50 > Now.P50
        ? Ahead[GainDays] : null;

    /// <summary>True when it is as likely as not dry enough already: the likely moisture of this evening is the one judge, on every page.</summary>
    public bool IsReady => Now.P50 <= Target;

    /// <summary>Likely day it is dry enough, by the likely curve as it is drawn: since when it has been there, or when it comes there. Null when it is not in sight.</summary>
    public DateOnly? Likely => IsReady
        ? Earlier(Past.Reverse().TakeWhile(day => day.P50 <= Target).LastOrDefault(Now).Date, Today)
        : Ahead.FirstOrDefault(day => day.P50 <= Target) is { Date.Year: > 1 } first ? first.Date : Forecast.ReadyP90 is { } late ? Later(late, Now.Date) : null;

    /// <summary>Early day, one time in ten; never after the likely one.</summary>
    public DateOnly? Early => Forecast.ReadyP10 is { } day ? Earlier(day, Likely ?? day) : Likely;

    /// <summary>Late day, nine times in ten; never before the likely one. Null when it is not in sight.</summary>
    public DateOnly? Late => Forecast.ReadyP90 is { } day && Likely is { } likely ? Later(day, likely) : null;

    /// <summary>The ready day for a table: "since 12 Sep", "26 Apr to 20 May 2027", "not in sight".</summary>
    public string ReadyWords => IsReady ? $"since {DayWords.Of(Likely!.Value, Today)}" : Early is { } early && Late is { } late && early <= Today
        ? $"now to {DayWords.Of(late, Today)}" : DayWords.Band(Early, Late, Today);

    private static DateOnly Earlier(DateOnly one, DateOnly other) => one < other ? one : other;

    private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;

    /// <summary>The forecast of a stack.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="tag">The stack.</param>
    /// <param name="target">Moisture it is asked to reach, such as 18%; null for what its order or the house asks.</param>
    /// <param name="movedTo">Where it would lie from today on; null for where it lies.</param>
    /// <returns>The forecast; no answer for wood that is not drying outdoors.</returns>
    public static Outcome<StackForecast> Of(YardState state, string tag, string? target = null, StackPlace? movedTo = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Stacks.TryGetValue(tag, out var stack))
            return new Refusal("stack", tag, $"a stack of the book: {NearestNames.Of(tag, [.. state.Stacks.Keys])}");
        if (stack.Stage != StackStage.AirDrying)
            return new Outcome<StackForecast>.NoAnswer(NotOutdoors(stack));

        var (usual, why) = UsualTarget(state, stack);
        return (string.IsNullOrWhiteSpace(target) ? usual : Read.MoistureContent("target", target)).Then(wanted =>
        {
            var end = state.Today.AddDays(DaysAheadMax);
            return YardWeather.Series(state, stack.SawnOn, end).Then(weather => Run(state, stack, wanted, string.IsNullOrWhiteSpace(target) ? why : "asked for here", weather, movedTo));
        });
    }

    private static Outcome<StackForecast> Run(YardState state, Stack stack, MoistureContent target, string why, WeatherSeries weather, StackPlace? movedTo)
    {
        var learned = LearnedRates.Before(state, stack);
        var input = Question(state, stack, target, weather) with
        {
            Readings = [.. stack.Readings.Select(ReadingError.For).OfType<StackReading>()],
            Rate = learned.Count > 0 ? RateHistory.InYard(stack.Species, LearnedRates.FirstPlace(state, stack), learned) : null,
            CurveThrough = state.Today.AddDays(CurveDaysAhead),
            AskedOn = state.Today,
        };
        if (movedTo is not null)
            input = input with { Moves = [.. input.Moves, new(state.Today, movedTo)] };
        return ForecastCache.Of(input).Then<StackForecast>(forecast =>
        {
            var evening = state.Today.AddDays(1);
            IReadOnlyList<DryingDay> known = [.. forecast.Hindsight, .. forecast.Curve.Skip(forecast.Hindsight.Count)];
            return known[^1].Date < evening
                ? new Outcome<StackForecast>.NoAnswer($"{stack.Tag} has stood longer than is looked ahead, {DaysMax} days: read it.")
                : new StackForecast
                {
                    Stack = stack,
                    Today = state.Today,
                    Target = target,
                    TargetWhy = why,
                    Input = input,
                    LearnedFrom = learned,
                    Forecast = forecast,
                    Past = [.. known.TakeWhile(day => day.Date <= evening)],
                    Ahead = [.. known.SkipWhile(day => day.Date < evening)],
                };
        });
    }

    private static AirDryingInput Question(YardState state, Stack stack, MoistureContent target, WeatherSeries weather)
    {
        var (place, moves) = Places(state, stack);
        return new AirDryingInput
        {
            Species = stack.Species,
            Thickness = stack.SawnThickness ?? stack.Thickness.Length,
            From = GreenWood.Moisture(stack.Species),
            To = target,
            Start = stack.SawnOn,
            Weather = weather,
            Place = place,
            Moves = moves,
            WeatherKnownThrough = YardWeather.ObservedThrough(state),
            HorizonDays = Math.Clamp(weather.Last.DayNumber - stack.SawnOn.DayNumber, 1, DaysMax),
            Seed = SeedOf(stack.Tag),
        };
    }

    // Chance of its own for each stack: with one for all, the luck of a few seasons and boards would lean every band of the yard to the same side.
    private static ulong SeedOf(string tag) => tag.Aggregate(14695981039346656037UL, (hash, letter) => (hash ^ letter) * 1099511628211UL);

    /// <summary>The question of a stack as far as its readings go, for what they show of its rate; null where it cannot be asked.</summary>
    internal static AirDryingInput? AsRead(YardState state, Stack stack, IReadOnlyList<StackReading> readings)
    {
        var last = readings.Max(reading => reading.Date);
        return YardWeather.Series(state, stack.SawnOn, last) is Outcome<WeatherSeries>.Done(var weather) && last > stack.SawnOn
            ? Question(state, stack, MoistureContent.FromPercent(UsualTargetPercent), weather) with { Readings = readings, HorizonDays = Math.Min(last.DayNumber - stack.SawnOn.DayNumber + 1, DaysMax) }
            : null;
    }

    // What the order of a never-kiln stack takes at most, else the house's figure for air-dried wood.
    private static (MoistureContent Target, string Why) UsualTarget(YardState state, Stack stack)
    {
        var line = stack.ReservedFor is { } tag && state.Orders.TryGetValue(tag, out var order) ? order.Lines.FirstOrDefault(l => l.Asked.Stacks.Contains(stack.Tag)) : null;
        return stack.NeverKiln && line?.Asked.McHighPct is { } most
            ? (MoistureContent.FromPercent(most), $"{stack.ReservedFor} takes up to {most.ToString("0.#", CultureInfo.InvariantCulture)} %")
            : state.Setting("air_dry_target") is { } house
                ? (MoistureContent.FromPercent(house), "the house’s figure for air-dried wood")
                : (MoistureContent.FromPercent(UsualTargetPercent), "usual for air-dried wood before the kiln");
    }

    private static (StackPlace First, IReadOnlyList<StackMove> Moves) Places(YardState state, Stack stack)
    {
        var first = stack.Place;
        var moves = new List<StackMove>();
        foreach (var entry in stack.History.Select(state.Entry))
        {
            if (entry.Fact is StackBuilt built)
                first = built.Place;
            else if (entry.Fact is StackMoved moved)
                moves.Add(new(entry.HappenedAt.Day(), PlaceOf(state, moved.Place)));
        }

        return (PlaceOf(state, first), moves);
    }

    private static StackPlace PlaceOf(YardState state, string place) =>
        state.Places.GetValueOrDefault(place)?.Type is PlaceKind.Shed or PlaceKind.Store or PlaceKind.Workshop ? StackPlace.Shed : StackPlace.Row;

    private static string NotOutdoors(Stack stack) => stack.Stage switch
    {
        StackStage.InKiln => $"{stack.Tag} is in charge {stack.Charge}: its samples tell how it dries.",
        StackStage.Gone => $"{stack.Tag} is used up.",
        _ => $"{stack.Tag} is dry and out of the weather: nothing is forecast for it.",
    };
}
