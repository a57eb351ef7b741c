using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Equipment that is down: what it costs should it come back on its late day.</summary>
internal static class BoilersToChase
{
    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        foreach (var boiler in state.Boilers.Values)
        {
            if (boiler.Down is not { } down)
                continue;
            if (season.Sheet is { } sheet)
            {
                yield return ByPlan(state, boiler, down, sheet);
                continue;
            }

            var late = BoilerSheet.Days(Late(state, boiler, down), SheetSettings.HeatDays).FirstOrDefault(day => day.ShortKw > 0.0);
            var much = late is null
                ? Missing(state, boiler, down)
                : HeatShort.Figure(state, late) with { Basis = $"short on {DayWords.Of(late.Date, state.Today)}, should it come late and were all kilns held hot" };
            yield return Ring(state, boiler, down, late is null ? "" : $" The cold day is {DayWords.Of(late.Date, state.Today)}, {HeatShort.Celsius(late.OutsideC)}.", much);
        }
    }

    // What the plan runs, should everything that is down come back on its late day.
    private static DayTask ByPlan(YardState state, Boiler boiler, Outage down, SeasonSheet sheet) => sheet.ShortDays.Where(day => day.OnlyIfLate).MaxBy(day => day.ShortKw) is { } worst
        ? Ring(state, boiler, down, $" Should it come late, the season’s plan is short of heat on {sheet.ShortDays.Count(day => day.OnlyIfLate)} days.", HeatShort.Figure(state, sheet, worst) with { Basis = $"short on {DayWords.Of(worst.Day, state.Today)} by the season’s plan, should it come late" })
        : Ring(state, boiler, down, sheet.ShortDays.Count == 0 ? " Until then the season’s plan has heat enough without it." : "", Missing(state, boiler, down));

    private static Traced Missing(YardState state, Boiler boiler, Outage down) => new("Output missing", $"{boiler.Installed.SteadyOutputKw:0}", "kW", $"since {DayWords.Of(down.From, state.Today)}") { Source = $"entry {down.Entry}" };

    private static DayTask Ring(YardState state, Boiler boiler, Outage down, string more, Traced much) => new(
        boiler.Name, $"Ring about {boiler.Name}: {down.Why}.", $"Promised {Day(down.BackExpectedOn, state.Today)}, at the latest {Day(down.BackLateOn, state.Today)}.{more}", much,
        new(HeatShort.Margin(state), Math.Max(1, (down.BackExpectedOn ?? state.Today).DayNumber - state.Today.DayNumber), "a day of all heated kilns, at the kiln-day margin"), Duties.Office, $"/write/entry/equipment_promised?equipment={Uri.EscapeDataString(boiler.Name)}", "Write what they say");

    private static YardState Late(YardState state, Boiler boiler, Outage down) => state with
    {
        Boilers = state.Boilers.SetItem(boiler.Name, boiler with { Outages = boiler.Outages.Replace(down, down with { BackExpectedOn = down.BackLateOn }) }),
    };

    private static string Day(DateOnly? day, DateOnly today) => day is { } known ? DayWords.Of(known, today) : "no day named";
}
