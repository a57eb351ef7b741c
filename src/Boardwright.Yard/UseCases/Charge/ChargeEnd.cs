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
public sealed record ChargeEnd(DateTime From, (double Early, double Likely, double Late) Hours, Elapsed Finish)
{
    public DateTime DryEarly => From.AddHours(Hours.Early);

    public DateTime Dry => From.AddHours(Hours.Likely);

    public DateTime DryLate => From.AddHours(Hours.Late);

    /// <summary>Likely dry and finished: from then on it may come out, on the next working day by the plan.</summary>
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

    /// <summary>Day a charge is likely out: as it dries, else as was expected when it was loaded; null where neither is known.</summary>
    public static DateOnly? OutOn(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        return Of(state, charge, state.Today.ToDateTime(TimeOnly.MinValue))?.Out.Day() is not { } known ? charge.ExpectedOutOn : known < state.Today ? state.Today : known;
    }

    internal static ChargeEnd? Of(YardState state, Charge charge, ChargeRun? run) => run is { Forecast: Outcome<KilnForecast>.Done(var forecast) }
        ? new(run.ClockFrom, (forecast.HoursP10, forecast.HoursP50, forecast.HoursP90), FinishOf(state, charge)) : null;

    internal static ChargeEnd? Of(YardState state, Charge charge, ChargeVacuum? vacuum) => vacuum is null ? null : new(charge.LoadedAt, vacuum.Hours, FinishOf(state, charge));

    private static Elapsed FinishOf(YardState state, Charge charge) => PlanFigures.Of(state).FinishPerInch * charge.Stacks.Max(tag => state.Stacks[tag].Thickness.Inches);
}
