using System.Globalization;
using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>When a running charge is dry and when it may come out: by its samples or its condensate. Charge, kilns, sheet, boiler and plan all read it here.</summary>
/// <param name="From">Where the hours are counted from.</param>
/// <param name="Hours">Hours until it is dry: early, likely, late.</param>
/// <param name="Left">Hours until it is equalized and conditioned as well and may come out: likely and late.</param>
/// <param name="FinishWords">What comes on top of drying, a sentence without its stop.</param>
/// <param name="OutOn">The working day it is likely out: the first on which a crew that may unload is there once it is ready.</param>
/// <param name="WaitWords">Why that is not the day it is ready, a sentence; empty where it is.</param>
/// <remarks>Where the air that is set does not bring it to the target, the end is that of the schedule's air, set now: <see cref="IfSet"/> says so.</remarks>
public sealed record ChargeEnd(DateTime From, (double Early, double Likely, double Late) Hours, TimeBand Left, string FinishWords, DateOnly OutOn, string WaitWords)
{
    private const int DaysLooked = 31;

    /// <summary>Bulbs that have to be set for it, "150 / 103"; null where the air that is set does it.</summary>
    public string? IfSet { get; init; }

    /// <summary>", if 150 / 103 °F is set now: in the air that is set it does not get dry"; empty where the air that is set does it.</summary>
    public string IfSetWords => IfSet is { } bulbs ? $", if {bulbs} °F is set now: in the air that is set it does not get dry" : "";

    public DateTime DryEarly => From.AddHours(Hours.Early);

    public DateTime Dry => From.AddHours(Hours.Likely);

    public DateTime DryLate => From.AddHours(Hours.Late);

    /// <summary>Likely dry and finished: from then on it may come out, on <see cref="OutOn"/>.</summary>
    public DateTime Out => From.AddHours(Left.Half.Hours);

    /// <summary>"Equalizing and conditioning take 24 h on top: ready about 12 Nov 14:00. Unloading takes 3 h and the crew of that day leaves at 16:00: out from about 13 Nov".</summary>
    public string OutWords(DateOnly today) => $"{FinishWords}: ready about {ReadyWords(today)}{(WaitWords.Length > 0 ? $". {WaitWords}: " : ", ")}out from about {DayWords.Of(OutOn, today)}{IfSetWords}";

    /// <summary>", by the season’s plan on 16 Nov": where the plan unloads it later, its crew being at another kiln; empty where not.</summary>
    public string LaterWords(SeasonNow season, string charge, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(season);
        return season.UnloadsLater(charge, OutOn) is { } later ? $", by the season’s plan on {DayWords.Of(later, today)}" : "";
    }

    private string ReadyWords(DateOnly today) => Out.AddMinutes(30.0) is var near ? $"{DayWords.Of(near.Day(), today)} {near.ToString("HH", CultureInfo.InvariantCulture)}:00" : "";

    /// <summary>The end of a charge; null where nothing forecasts it, and for one that is out.</summary>
    public static ChargeEnd? Of(YardState state, Charge charge, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        if (!charge.IsRunning)
            return null;
        return state.Kilns[charge.Kiln].Installed.Type == KilnType.RadioFrequencyVacuum
            ? Of(state, charge, (ChargeVacuum.Of(state, charge) as Outcome<ChargeVacuum>.Done)?.Value)
            : Of(state, charge, (ChargeRun.Of(state, charge, now) as Outcome<ChargeRun>.Done)?.Value);
    }

    /// <summary>Day a charge is likely out: the working day after it is ready, else as was expected when it was loaded; null where neither is known.</summary>
    public static DateOnly? OutDay(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        return Of(state, charge, state.Today.ToDateTime(TimeOnly.MinValue))?.OutOn ?? charge.ExpectedOutOn;
    }

    /// <summary>Day a charge is likely ready to come out, worked or not; else as was expected when it was loaded.</summary>
    internal static DateOnly? ReadyOn(YardState state, Charge charge) => Of(state, charge, state.Today.ToDateTime(TimeOnly.MinValue))?.Out.Day() ?? charge.ExpectedOutOn;

    internal static ChargeEnd? Of(YardState state, Charge charge, ChargeRun? run) => run switch
    {
        { Forecast: Outcome<KilnForecast>.Done(var forecast) } => Of(state, charge, run.ClockFrom, (forecast.HoursP10, forecast.HoursP50, forecast.HoursP90), run.Equalizing),
        { Listed: Outcome<KilnForecast>.Done(var listed) } => Of(state, charge, run.ClockFrom, (listed.HoursP10, listed.HoursP50, listed.HoursP90), null) with { IfSet = run.ListedWords },
        { Equalizing: { } equalizing } when run.Mean <= charge.Target => Of(state, charge, run.ClockFrom, (0.0, 0.0, 0.0), equalizing),
        _ => null,
    };

    internal static ChargeEnd? Of(YardState state, Charge charge, ChargeVacuum? vacuum) => vacuum is null ? null : Of(state, charge, charge.LoadedAt, vacuum.Hours, null);

    // Equalizing ends by samples: where the wettest comes late, conditioning waits for it, longer than the house reckons for both.
    private static ChargeEnd Of(YardState state, Charge charge, DateTime from, (double Early, double Likely, double Late) hours, ChargeEqualizing? equalizing)
    {
        var thickest = charge.Stacks.Select(tag => state.Stacks[tag]).MaxBy(stack => stack.Thickness.Quarters)!;
        var house = FinishHours(state, charge) ?? PlanFigures.Of(state).FinishPerInch * thickest.Thickness.Inches;
        var left = new TimeBand(Elapsed.FromHours(hours.Likely), Elapsed.FromHours(hours.Late)).Plus(house);
        var words = string.Create(CultureInfo.InvariantCulture, $"Equalizing and conditioning take {house.Hours:0} h on top");
        if (equalizing?.WettestThere is { } wettest && StressTest.UsualConditioning(thickest.SawnThickness ?? thickest.Thickness.Length) is var conditioning && wettest.Plus(conditioning) is var bySamples && bySamples.Half > left.Half)
        {
            words = string.Create(CultureInfo.InvariantCulture, $"The wettest sample is likely at {charge.Target.Percent:0.#} % on {DayWords.Of(from.AddHours(wettest.Half.Hours).Day(), state.Today)}, conditioning takes about {conditioning.Hours:0} h on top");
            left = new TimeBand(bySamples.Half, bySamples.Most > left.Most ? bySamples.Most : left.Most);
        }

        var (cold, coldMost) = NoHeat.Stands(state, state.Kilns[charge.Kiln]);
        if (cold > default(Elapsed))
        {
            words = string.Create(CultureInfo.InvariantCulture, $"No boiler runs: it stands {cold.Days:0.#} days until the first is expected back. {words}");
            hours = (hours.Early + cold.Hours, hours.Likely + cold.Hours, hours.Late + coldMost.Hours);
            left = new TimeBand(left.Half + cold, left.Most + coldMost);
        }

        var ready = from.AddHours(left.Half.Hours);
        var day = WorkingDay(state, ready, state.Kilns[charge.Kiln].Installed.UnloadHours);
        return new(from, hours, left, words, day, WaitOf(state, ready, day, state.Kilns[charge.Kiln].Installed.UnloadHours));
    }

    // Hours of equalizing and conditioning that the charge's own schedule names, both of them; null where it leaves them to the house.
    private static Elapsed? FinishHours(YardState state, Charge charge) =>
        charge.Schedule is { } own && state.Schedules.GetValueOrDefault(own) is { Equalize.Lasts: { } equalize, Condition.Lasts: { } condition } ? equalize + condition : null;

    // What is past its time comes out from today; where no working day is written in, any day is one.
    private static DateOnly WorkingDay(YardState state, DateTime ready, double unloadHours)
    {
        var first = ready.Day() < state.Today ? state.Today.ToDateTime(TimeOnly.MinValue) : ready;
        return Enumerable.Range(0, DaysLooked).Select(first.Day().AddDays).Cast<DateOnly?>()
            .FirstOrDefault(day => PlanYard.LoadingHours(state, day!.Value) is { } hours && (day > first.Day() || first.AddHours(unloadHours) <= day.Value.ToDateTime(hours.To))) ?? first.Day();
    }

    private static string WaitOf(YardState state, DateTime ready, DateOnly day, double unloadHours) => day <= ready.Day() || ready.Day() < state.Today ? ""
        : PlanYard.LoadingHours(state, ready.Day()) is { } hours
            ? string.Create(CultureInfo.InvariantCulture, $"Unloading takes {unloadHours:0.#} h and the crew of that day leaves at {hours.To:HH:mm}")
            : string.Create(CultureInfo.InvariantCulture, $"On {ready:dddd} {DayWords.Of(ready.Day(), state.Today)} no crew that may unload is there");
}
