using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Boilers to stoke: every so many hours, by the boiler's own setting, from the first round of the day.</summary>
internal static class FiresToStoke
{
    private static readonly TimeOnly FirstWithoutRounds = new(6, 0);

    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        var heated = state.Charges.Values.Where(charge => charge.IsRunning && state.Kilns.GetValueOrDefault(charge.Kiln)?.Installed.HeatAtWaterC is not null).ToList();
        var margin = (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * heated.Sum(charge => charge.FootageIn.Count) / 1000.0);
        var down = state.Boilers.Values.Where(boiler => boiler.Down is not null).Select(boiler => $"{boiler.Name} is down.");
        // The boiler's own page shows the same figure under the same name.
        var today = season.Sheet is { HeatShown.Count: > 0 } sheet ? BoilerPlanned.LeftToday(sheet) : BoilerSheet.LeftToday(state, BoilerSheet.Days(state, 1)[0]);
        foreach (var boiler in state.Boilers.Values.Where(boiler => boiler.Down is null))
        {
            if (boiler.Installed.StokedEveryHours is not > 0.0)
                continue;
            var hours = Hours(state, boiler);
            yield return new(string.Join(" ", hours.Select(hour => $"{hour:HH:mm}")), $"Stoke {boiler.Name}.", $"{hours.Count} times today, every {boiler.Installed.StokedEveryHours:0.#} hours. {string.Join(" ", down)}".Trim(),
                today with { Inputs = [.. today.Inputs, ("stoking takes", $"{state.Setting("stoking") ?? 0.0:0.##} h each")] },
                new(margin, 1, "a day of the heated charges, at the kiln-day margin"), Duties.Kilns, $"/write/entry/boiler_stoked?boiler={Uri.EscapeDataString(boiler.Name)}", "Write it stoked");
        }
    }

    /// <summary>Hours to stoke on a day: from the first round named in a kiln hand's role, every so often.</summary>
    private static List<TimeOnly> Hours(YardState state, Boiler boiler)
    {
        var first = state.People.Values.Where(person => Roles.Of(person).HasFlag(Duties.Kilns)).SelectMany(Roles.Rounds).DefaultIfEmpty(FirstWithoutRounds).Min();
        var every = boiler.Installed.StokedEveryHours ?? 24.0;
        return [.. Enumerable.Range(0, (int)Math.Ceiling((24.0 - first.ToTimeSpan().TotalHours) / every)).Select(times => first.Add(TimeSpan.FromHours(times * every)))];
    }
}
