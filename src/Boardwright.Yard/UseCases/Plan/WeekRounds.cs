using System.Globalization;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Work of a day that no plan of kilns names.</summary>
/// <param name="Day">Its day.</param>
/// <param name="At">Its hour; null for the whole day.</param>
/// <param name="What">What is done.</param>
/// <param name="Which">With what.</param>
public sealed record RoundOfWeek(DateOnly Day, TimeOnly? At, string What, string Which);

/// <summary>What comes round in a week whatever the plan is: rounds of the kilns and their fires, samples to weigh, stacks to read, days off, people away, equipment back, and orders due that wait for no kiln.</summary>
/// <remarks>Days past are left out. Kilns are watched while the season's plan has a charge in them; where there is no plan, running charges to the day they are likely out. Fires by each boiler's own hours; samples as they have been weighed so far; stacks by the house's days between readings.</remarks>
public static class WeekRounds
{
    private const int Days = 7;

    /// <summary>The work of seven days, day by day.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="monday">The first day.</param>
    /// <param name="season">The season's plan; null where there is none.</param>
    public static IReadOnlyList<RoundOfWeek> Of(YardState state, DateOnly monday, SeasonSheet? season = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. Enumerable.Range(0, Days).Select(monday.AddDays).Where(day => day >= state.Today).SelectMany(day => OfDay(state, day, season))];
    }

    private static IEnumerable<RoundOfWeek> OfDay(YardState state, DateOnly day, SeasonSheet? season)
    {
        if (state.Calendar.Closed.TryGetValue(day, out var closed))
        {
            yield return new(day, closed.From, closed.From is null ? "Closed" : "Closes early", closed.Why);
        }

        foreach (var away in state.Calendar.Away.Where(away => away.Day == day))
        {
            yield return new(day, null, $"{away.Person} away", away.Why);
        }

        foreach (var (name, down) in state.Boilers.Values.Select(boiler => (boiler.Name, boiler.Down)).Concat(state.Kilns.Values.Select(kiln => (kiln.Name, kiln.Down))).Where(one => one.Down?.BackExpectedOn == day))
        {
            yield return new(day, null, $"{name} back", $"expected{(down!.BackLateOn is { } late ? $"; at the worst {late:d MMM}" : "")}");
        }

        // What waits for a kiln is among the plan's own promises.
        foreach (var (order, line) in state.Orders.Values.Where(order => order.IsOpen).SelectMany(order => order.Lines.Where(line => !line.IsFilled && line.Asked.DueOn == day).Select(line => (order, line))))
        {
            if (season is not null && season.Promises.All(promise => promise.Line.Order.Tag != order.Tag || promise.Line.Asked.Line != line.Asked.Line))
                yield return new(day, null, $"{order.Tag} due", $"{order.Customer}: {line.Asked.Goods}");
        }

        var watched = season is null
            ? state.Charges.Values.Where(charge => charge.IsRunning && (ChargeEnd.OutDay(state, charge) is not { } end || day <= end)).Select(charge => (charge.Kiln, Running: (Charge?)charge)).ToList()
            : season.Kilns.SelectMany(row => row.Charges).Where(charge => charge.In.Day() <= day && day <= charge.Out.Day()).Select(charge => (charge.Kiln, Running: charge.Tag is { } tag ? state.Charges[tag] : null)).ToList();
        foreach (var charge in watched.Select(one => one.Running).OfType<Charge>().Where(charge => WeighingRhythm.IsDueOn(charge, day) is true))
        {
            yield return new(day, null, $"Weigh {charge.Tag}", $"{charge.SoundSamples.Count()} samples in {charge.Kiln}, then the setting");
        }

        if (Round(state, day, watched) is { } round)
        {
            yield return round;
        }

        if (ReadingsDue.On(state, day) is { Count: > 0 } stacks)
        {
            yield return new(day, null, "Read stacks", $"{string.Join(", ", stacks)}, with the wood’s own temperature");
        }
    }

    private static RoundOfWeek? Round(YardState state, DateOnly day, IReadOnlyList<(string Kiln, Charge? Running)> watched)
    {
        var fires = state.Boilers.Values.Where(boiler => boiler.Installed.StokedEveryHours is > 0.0 && (boiler.Down is null || boiler.Down.BackExpectedOn is { } back && back < day)).Select(boiler => string.Create(CultureInfo.InvariantCulture, $"stoke {boiler.Name} every {boiler.Installed.StokedEveryHours:0.#} h"));
        List<string> work = [.. watched.Select(one => $"{one.Kiln} {(state.Kilns[one.Kiln].Installed.HeatAtWaterC is null ? "gauges" : "bulbs, fans, doors")}{(one.Running is { } charge ? $" ({charge.Tag})" : "")}").Distinct(), .. fires];
        var hours = state.People.Values.Where(person => Roles.Of(person).HasFlag(Duties.Kilns)).SelectMany(Roles.Rounds).Distinct().Order().ToList();
        return work.Count == 0 ? null : new(day, hours is [var first, ..] ? first : null, hours.Count > 0 ? $"Rounds {string.Join(" ", hours.Select(hour => hour.ToString("HH:mm", CultureInfo.InvariantCulture)))}" : "Round", string.Join("; ", work));
    }
}
