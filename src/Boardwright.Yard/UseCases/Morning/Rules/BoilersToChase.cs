using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Equipment that is down: what it costs should it come back on its late day.</summary>
internal static class BoilersToChase
{
    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var boiler in state.Boilers.Values)
        {
            if (boiler.Down is not { } down)
                continue;
            var late = BoilerSheet.Days(Late(state, boiler, down), SheetSettings.HeatDays).FirstOrDefault(day => day.ShortKw > 0.0);
            var much = late is null
                ? new Traced("Output missing", $"{boiler.Installed.SteadyOutputKw:0}", "kW", $"since {down.From:d MMM}") { Source = $"entry {down.Entry}" }
                : HeatShort.Figure(late) with { Basis = $"short on {late.Date:d MMM} should it come late" };
            yield return new(boiler.Name, $"Ring about {boiler.Name}: {down.Why}.", $"Promised {Day(down.BackExpectedOn)}, at the latest {Day(down.BackLateOn)}.{(late is null ? "" : $" The cold day is {late.Date:d MMM}, {late.OutsideC:0} °C.")}", much,
                new(HeatShort.Margin(state), Math.Max(1, (down.BackExpectedOn ?? state.Today).DayNumber - state.Today.DayNumber), "a day of all heated kilns, at the kiln-day margin"), Duties.Office, $"/write/entry/equipment_promised?equipment={Uri.EscapeDataString(boiler.Name)}", "Write what they say");
        }
    }

    private static YardState Late(YardState state, Boiler boiler, Outage down) => state with
    {
        Boilers = state.Boilers.SetItem(boiler.Name, boiler with { Outages = boiler.Outages.Replace(down, down with { BackExpectedOn = down.BackLateOn }) }),
    };

    private static string Day(DateOnly? day) => day is { } known ? $"{known:d MMM}" : "no day named";
}
