using System.Globalization;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Tables;

namespace Boardwright.Yard.UseCases;

/// <summary>A schedule of the house's own, as typed.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Table">Its steps, one a line, the first line naming the columns.</param>
/// <param name="Note">Anything else.</param>
/// <param name="By">Who writes it.</param>
public sealed record ScheduleTyped(string? Name, string? Table, string? Note, string? By);

/// <summary>A schedule of the house's own and the charges that run by it.</summary>
/// <param name="Schedule">The schedule.</param>
/// <param name="Running">Charges in the kilns that follow it.</param>
public sealed record KeptSchedule(KilnSchedule Schedule, IReadOnlyList<string> Running);

/// <summary>Schedules of the house's own: those the book keeps, writing one, and giving a running charge another.</summary>
public static class ChargeSchedules
{
    private const int NameMost = 40;

    /// <summary>All that the book keeps.</summary>
    public static IReadOnlyList<KeptSchedule> Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Schedules.Values.Select(schedule => new KeptSchedule(schedule, [.. state.Charges.Values.Where(charge => charge.IsRunning && charge.Schedule == schedule.Name).Select(charge => charge.Tag)]))];
    }

    /// <summary>The steps of a kept one as the table that is typed.</summary>
    public static string Table(KilnSchedule schedule)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        var phases = schedule.Steps.Select(step => ("dry", step)).Concat(new[] { ("equalize", schedule.Equalize), ("condition", schedule.Condition) }.Where(one => one.Item2 is not null).Select(one => (one.Item1, one.Item2!)));
        return "phase,mc_above_pct,hours,dry_bulb_f,wet_bulb_f\n" + string.Concat(phases.Select(one => string.Create(CultureInfo.InvariantCulture,
            $"{one.Item1},{(one.Item2.Above > MoistureContent.OvenDry ? one.Item2.Above.Percent : null):0.##},{one.Item2.Lasts?.Hours:0.#},{one.Item2.DryBulbFahrenheit:0.##},{one.Item2.WetBulbFahrenheit:0.##}\n")));
    }

    /// <summary>Writes one; under a name that is kept it takes the place of the former.</summary>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, ScheduleTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var name = read.Named("Name", typed.Name, "a name, such as Ash by hours");
        if (name.Length > NameMost)
            read.Refuse("Name", name, $"up to {NameMost} letters");
        var by = read.By(book.State, typed.By);
        var rows = Rows(read, typed.Table, name);
        return read.Then(() => key.Write(book, by, rows! with { Note = ChargeSet.Note(typed.Note) ?? rows.Note }));
    }

    /// <summary>Gives a running charge another schedule, or the listed one of its woods again.</summary>
    /// <param name="book">The book.</param>
    /// <param name="tag">The charge.</param>
    /// <param name="schedule">Name of a kept one; empty for the listed one.</param>
    /// <param name="note">Why.</param>
    /// <param name="by">Who says so.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Choose(YardBook book, string tag, string? schedule, string? note, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");
        if (state.Kilns[charge.Kiln].Installed.Type == KilnType.RadioFrequencyVacuum)
            read.Refuse("Charge", tag, "a charge in a kiln that dries with air");
        var chosen = Known(read, state, schedule);
        var who = read.By(state, by);
        if (read.Refusals.Count == 0 && chosen == charge.Schedule)
            read.Refuse("Schedule", chosen ?? "the listed one", "another than it runs by");
        return read.Then(() => key.Write(book, who, new ScheduleChosen(tag, chosen, ChargeSet.Note(note))));
    }

    // Null for the listed schedule.
    internal static string? Known(Typed read, YardState state, string? schedule)
    {
        var name = string.IsNullOrWhiteSpace(schedule) ? null : schedule.Trim();
        if (name is not null && !state.Schedules.ContainsKey(name))
            read.Refuse("Schedule", name, state.Schedules.Count == 0 ? "the listed one; the house has written none of its own" : $"the listed one, or {string.Join(", ", state.Schedules.Keys)}");
        return name;
    }

    private static ScheduleWritten? Rows(Typed read, string? table, string name)
    {
        if (string.IsNullOrWhiteSpace(table))
        {
            read.Refuse("Steps", table, $"a line of columns and a line for each step: {ScheduleTable.Header}");
            return null;
        }

        switch (ScheduleTable.ReadOne("Steps", table, name))
        {
            case Outcome<ScheduleWritten>.Done(var rows):
                return rows with { Schedule = name };
            case Outcome<ScheduleWritten>.Refused(var reasons):
                foreach (var reason in reasons)
                    read.Refuse(reason.What, reason.Given, reason.Accepted);
                return null;
            default:
                throw new InvalidOperationException("A table is read or refused.");
        }
    }
}
