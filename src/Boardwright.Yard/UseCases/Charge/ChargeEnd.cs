using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>When a running charge is dry and when it may come out: by its samples or its condensate. Charge, kilns, sheet, boiler and plan all read it here.</summary>
/// <param name="From">Where the hours are counted from.</param>
/// <param name="Hours">Hours until it is dry: early, likely, late.</param>
/// <param name="Finish">Equalizing and conditioning on top, of its thickest wood.</param>
/// <param name="OutOn">The working day it is likely out: the first on which a crew that may unload is there once it is ready.</param>
public sealed record ChargeEnd(DateTime From, (double Early, double Likely, double Late) Hours, Elapsed Finish, DateOnly OutOn)
{
    private const int DaysLooked = 31;

    public DateTime DryEarly => From.AddHours(Hours.Early);

    public DateTime Dry => From.AddHours(Hours.Likely);

    public DateTime DryLate => From.AddHours(Hours.Late);

    /// <summary>Likely dry and finished: from then on it may come out, on <see cref="OutOn"/>.</summary>
    public DateTime Out => Dry.AddHours(Finish.Hours);

    /// <summary>Hours until it may come out, likely and late.</summary>
    internal TimeBand Left => new TimeBand(Elapsed.FromHours(Hours.Likely), Elapsed.FromHours(Hours.Late)).Plus(Finish);

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

    internal static ChargeEnd? Of(YardState state, Charge charge, ChargeRun? run) => run is { Forecast: Outcome<KilnForecast>.Done(var forecast) }
        ? Of(state, charge, run.ClockFrom, (forecast.HoursP10, forecast.HoursP50, forecast.HoursP90)) : null;

    internal static ChargeEnd? Of(YardState state, Charge charge, ChargeVacuum? vacuum) => vacuum is null ? null : Of(state, charge, charge.LoadedAt, vacuum.Hours);

    private static ChargeEnd Of(YardState state, Charge charge, DateTime from, (double Early, double Likely, double Late) hours)
    {
        var finish = FinishOf(state, charge);
        return new(from, hours, finish, WorkingDay(state, from.AddHours(hours.Likely + finish.Hours), state.Kilns[charge.Kiln].Installed.UnloadHours));
    }

    // What is past its time comes out from today; where no working day is written in, any day is one.
    private static DateOnly WorkingDay(YardState state, DateTime ready, double unloadHours)
    {
        var first = ready.Day() < state.Today ? state.Today.ToDateTime(TimeOnly.MinValue) : ready;
        return Enumerable.Range(0, DaysLooked).Select(first.Day().AddDays).Cast<DateOnly?>()
            .FirstOrDefault(day => PlanYard.LoadingHours(state, day!.Value) is { } hours && (day > first.Day() || first.AddHours(unloadHours) <= day.Value.ToDateTime(hours.To))) ?? first.Day();
    }

    private static Elapsed FinishOf(YardState state, Charge charge) => PlanFigures.Of(state).FinishPerInch * charge.Stacks.Max(tag => state.Stacks[tag].Thickness.Inches);
}
