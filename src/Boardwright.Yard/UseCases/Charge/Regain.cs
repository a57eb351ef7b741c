using System.Globalization;
using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A dry stack in store: what it has regained by reading or forecast, and the two-step redry that brings it back.</summary>
public sealed record StackRedry
{
    private const double RegainedPoints = 1.0;
    private const int DaysAhead = 90;
    private const int DaysMost = 1400;

    public required Stack Stack { get; init; }

    /// <summary>Moisture it came out of its kiln to have.</summary>
    public required MoistureContent Target { get; init; }

    /// <summary>The last reading.</summary>
    public required MoistureReading Reading { get; init; }

    /// <summary>Likely moisture today: the reading, carried on in the air of an unheated store.</summary>
    public required MoistureContent Now { get; init; }

    /// <summary>The band of it, 8 times in 10.</summary>
    public required (MoistureContent Low, MoistureContent High) Band { get; init; }

    /// <summary>True when the reading itself says so.</summary>
    public bool ByReading => Reading.Mean!.Value.Percent > Target.Percent + RegainedPoints;

    /// <summary>True when it is more than a point over its target, by reading or by forecast.</summary>
    public bool Regained => ByReading || Now.Percent > Target.Percent + RegainedPoints;

    /// <summary>Day on which it likely passes a point over its target; null when that is past or not in sight.</summary>
    public DateOnly? PassesOn { get; init; }

    /// <summary>The two steps; no answer while it is near its target.</summary>
    public required Outcome<Redry> Steps { get; init; }

    /// <summary>The kiln reckoned with; null where the yard has none that dries with air.</summary>
    public Kiln? Kiln { get; init; }

    /// <summary>Days and money of the redry, each with what it rests on; empty without steps.</summary>
    public IReadOnlyList<Traced> Figures { get; init; } = [];

    /// <summary>True for dry wood whose own reading is more than a point over the target of its last charge.</summary>
    public static bool IsRegainedByReading(YardState state, Stack stack)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(stack);
        return stack is { Stage: StackStage.KilnDried, NeverKiln: false, Charges: [.., var last] } && stack.Moisture?.Mean is { } mean && mean.Percent > state.Charges[last].Target.Percent + RegainedPoints;
    }

    /// <summary>True when all wood of a charge had been kiln dried before: a redry.</summary>
    public static bool IsRedry(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        return charge.Stacks.All(tag => state.Stacks[tag].Charges.TakeWhile(other => other != charge.Tag).Any());
    }

    /// <summary>The answer for a stack.</summary>
    /// <returns>Done; a refusal of a stack that never was in a kiln; no answer where it was not read.</returns>
    public static Outcome<StackRedry> Of(YardState state, string tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Stacks.TryGetValue(tag, out var stack))
            return new Refusal("stack", tag, $"a stack of the book: {NearestNames.Of(tag, [.. state.Stacks.Keys])}");
        if (stack is not { Stage: StackStage.KilnDried or StackStage.Dressed, Charges: [.., var last] })
            return new Refusal("stack", tag, "a stack that was kiln dried and is in store");
        if (stack.Moisture is not { Mean: { } read } reading)
            return new Outcome<StackRedry>.NoAnswer($"{tag} was not read when it came out: read it.");

        var target = state.Charges[last].Target;
        var days = InStore(state, stack, reading, read);
        var today = days.LastOrDefault(day => day.Date <= state.Today.AddDays(1));
        var (now, low, high) = days.Count == 0 ? (read, read, read) : (today.P50, today.P10, today.P90);
        var kiln = state.Kilns.Values.Where(one => one.Installed.Type != KilnType.RadioFrequencyVacuum && KilnRoom.AsFourQuarter(stack.Footage, stack.Thickness).Count <= one.Installed.CapacityBf)
            .OrderBy(one => one.Charge is not null).ThenBy(one => one.Installed.CapacityBf).FirstOrDefault();
        var steps = kiln is null ? new Outcome<Redry>.NoAnswer("No kiln of the yard that dries with air takes it.") : Redry.For(Lot(stack, now, target, kiln));
        return new StackRedry
        {
            Stack = stack,
            Target = target,
            Reading = reading,
            Now = now,
            Band = (low, high),
            PassesOn = days.Where(day => day.Date > state.Today && day.P50.Percent > target.Percent + RegainedPoints).Select(day => (DateOnly?)day.Date).FirstOrDefault(),
            Steps = steps,
            Kiln = kiln,
            Figures = steps is Outcome<Redry>.Done(var redry) ? [.. Costs(state, stack, redry, kiln!)] : [],
        };
    }

    internal static KilnDryingInput Lot(Stack stack, MoistureContent now, MoistureContent target, Kiln kiln) => new()
    {
        Species = stack.Species,
        Thickness = stack.SawnThickness ?? stack.Thickness.Length,
        From = now,
        To = target,
        Kiln = new(kiln.Name, Temperature.FromCelsius(kiln.Installed.DryBulbMaxC)),
    };

    // Stickered in an unheated building it follows the season's air; a workshop is heated, and what was read too long ago is not carried on.
    private static IReadOnlyList<DryingDay> InStore(YardState state, Stack stack, MoistureReading reading, MoistureContent read)
    {
        var from = reading.At.Day();
        if (state.Places.GetValueOrDefault(stack.Place)?.Type == PlaceKind.Workshop || from > state.Today || state.Today.DayNumber - from.DayNumber > DaysMost
            || YardWeather.Series(state, from, state.Today.AddDays(DaysAhead)) is not Outcome<WeatherSeries>.Done(var weather))
        {
            return [];
        }

        return AirDrying.Forecast(new()
        {
            Species = stack.Species,
            Thickness = stack.SawnThickness ?? stack.Thickness.Length,
            From = read,
            To = read,
            Start = from,
            Weather = weather,
            Place = StackPlace.Shed,
            WeatherKnownThrough = YardWeather.ObservedThrough(state),
            CurveThrough = state.Today.AddDays(DaysAhead - 1),
            HorizonDays = state.Today.DayNumber - from.DayNumber + DaysAhead,
        }) is Outcome<AirDryingForecast>.Done(var forecast) ? forecast.Curve : [];
    }

    private static IEnumerable<Traced> Costs(YardState state, Stack stack, Redry redry, Kiln kiln)
    {
        yield return new("Redry takes", Words($"{redry.Likely.Days:0.0}"), "days", Words($"likely, {redry.Early.Days:0.0} to {redry.Late.Days:0.0} 8 times in 10, equalizing on top; {redry.AfterFirst.Percent:0.0} % after the first day"))
        {
            Method = "redry",
            Source = "two steps as printed (Wengert); hours by the kiln forecast in these airs",
            Inputs = [("first step", "18 to 24 h"), ("second step", Words($"{redry.SecondForecast.HoursP50:0} h likely")), ("from, to", Words($"{redry.AfterFirst.Percent:0.0} % after the first, to the target"))],
        };
        var aDay = (double)kiln.Installed.FixedPerDayMoney + (state.Setting("kiln_day_margin") ?? 0.0) * stack.Footage.Count / 1000.0;
        yield return new("Costs", Words($"{aDay * redry.Likely.Days:0}"), "money", Words($"{redry.Likely.Days:0.0} days of {kiln.Name} at {aDay:0} a day"))
        {
            Method = "redry",
            Source = $"what running {kiln.Name} takes, and the margin of a kiln day on {stack.Footage.Count.ToString("#,0", CultureInfo.InvariantCulture)} bf",
            Inputs = [("fixed a day", Words($"{kiln.Installed.FixedPerDayMoney:0}")), ("margin of 1,000 bf a day", Words($"{state.Setting("kiln_day_margin") ?? 0.0:0}"))],
        };
    }

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
