using System.Globalization;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables;

/// <summary>A kiln schedule of the house's own as a plain table, one row a step.</summary>
/// <remarks>
/// Columns: mc_above_pct or hours (a step ends by one of them, the last by none); dry_bulb_f or dry_bulb_c; and one of wet_bulb_f, depression_f (both also in _c), emc_pct, rh_pct;
/// phase where it is not dry: equalize, condition. The first fault of each row is told.
/// </remarks>
public static class ScheduleTable
{
    /// <summary>The columns in a line, for help.</summary>
    public const string Header = "mc_above_pct or hours,dry_bulb_f (or _c) and one of wet_bulb_f, depression_f (or _c), emc_pct, rh_pct, with phase for equalize and condition";

    private static readonly string[] Airs = ["wet_bulb", "depression", "emc_pct", "rh_pct"];

    private static readonly string[] Columns =
        ["phase", "mc_above_pct", "hours", "note", .. new[] { "dry_bulb", "wet_bulb", "depression" }.SelectMany(name => new[] { name, $"{name}_f", $"{name}_c" }), "emc_pct", "rh_pct"];

    /// <summary>Reads a file that holds one schedule; a column schedule names it.</summary>
    /// <param name="what">The file, for refusals.</param>
    /// <param name="text">Its text.</param>
    /// <param name="name">What it is called where no column names it.</param>
    public static Outcome<ScheduleWritten> ReadOne(string what, string text, string name)
    {
        var table = new YardTable("schedules", [], _ => "", rows => [new(Fact(rows, rows[0].TextOrNull("schedule") ?? name), null)]);
        var (entries, refusals, _) = table.Read(what, text, "");
        return refusals.Count > 0 ? new Outcome<ScheduleWritten>.Refused(refusals) : (ScheduleWritten)entries[0].Entry.Fact;
    }

    /// <summary>The schedule of a fact.</summary>
    public static Outcome<KilnSchedule> Schedule(ScheduleWritten fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return OwnSchedule.Of(fact.Schedule, [.. fact.Rows.Select(row => new OwnStep(row.Phase, row.McAbovePct, row.Hours, Temperature.FromCelsius(row.DryBulbC), Temperature.FromCelsius(row.WetBulbC)))]);
    }

    internal static ScheduleWritten Fact(IReadOnlyList<TableRow> rows, string name)
    {
        var before = rows[0].Faults;
        var read = rows.Select(row => Row(row, name)).ToList();
        var fact = new ScheduleWritten(name, read, rows.Select(row => row.TextOrNull("note")).OfType<string>().FirstOrDefault());
        if (rows[0].Faults == before && Schedule(fact) is Outcome<KilnSchedule>.Refused(var reasons))
        {
            foreach (var reason in reasons)
            {
                Refuse(rows, reason);
            }
        }

        return fact;
    }

    private static ScheduleRow Row(TableRow row, string name)
    {
        // A row is read up to its first fault; what stands behind it is asked for all the same, so that no column is taken for unknown.
        foreach (var column in Columns)
            row.TextOrNull(column);
        var before = row.Faults;
        bool Sound() => row.Faults == before;
        var phase = row.TextOrNull("phase") is null ? SchedulePhase.Dry : row.Word<SchedulePhase>("phase");
        if (row.TextOrNull("schedule") is { } other && other != name)
            row.Refuse("schedule", other, $"{name}: one schedule a file", 0);
        var above = Sound() && row.NumberOrNull("mc_above_pct") is { } percent and not 0.0 ? percent : (double?)null;
        var hours = Sound() ? row.NumberOrNull("hours") : null;
        var dry = Sound() ? row.C("dry_bulb") : 0.0;
        var wet = Sound() ? WetBulb(row, Temperature.FromCelsius(dry)) : 0.0;
        return new(phase, dry, wet, above, hours);
    }

    // The air by what the owner writes it by.
    private static double WetBulb(TableRow row, Temperature dry)
    {
        var before = row.Faults;
        var (wet, depression, emc, humidity) = (row.COrNull("wet_bulb"), row.DifferenceOrNull("depression"), row.NumberOrNull("emc_pct"), row.NumberOrNull("rh_pct"));
        if (row.Faults > before)
            return 0.0;
        var given = new (string Name, bool Is)[] { (Airs[0], wet is not null), (Airs[1], depression is not null), (Airs[2], emc is not null), (Airs[3], humidity is not null) }.Where(one => one.Is).Select(one => one.Name).ToList();
        if (given.Count != 1)
            return row.Refuse("wet_bulb", given.Count == 0 ? "nothing" : string.Join(" and ", given), "one of wet_bulb, depression (each ending in _f or _c), emc_pct, rh_pct", 0.0);
        if (wet is { } bulb)
            return bulb;
        if (depression is { } lower)
            return lower.Kelvins >= 0.0 ? (dry - lower).Celsius : row.Refuse("depression", Number(lower.FahrenheitDegrees) + " F", "0 or more", 0.0);
        return emc is { } held
            ? (held is > 0.5 and < 30.0 ? KilnFinish.WetBulbFor(dry, MoistureContent.FromPercent(held)) : null)?.Celsius ?? row.Refuse("emc_pct", Number(held), $"an equilibrium that air of {Number(dry.Fahrenheit)} F can hold, above 0.5 and under 30", 0.0)
            : (humidity is > 0.0 and <= 100.0 && AirState.FromHumidity(dry, RelativeHumidity.FromPercent(humidity.Value), AirState.StandardPressure) is Outcome<AirState>.Done({ WetBulb: { } there }) ? there : (Temperature?)null)?.Celsius
                ?? row.Refuse("rh_pct", Number(humidity!.Value), "above 0 and up to 100", 0.0);
    }

    // "row 3, hours": the place in the file is told instead.
    private static void Refuse(IReadOnlyList<TableRow> rows, Refusal reason)
    {
        var parts = reason.What.Split(", ");
        if (parts.Length == 2 && int.TryParse(parts[0].AsSpan(4), NumberStyles.None, CultureInfo.InvariantCulture, out var row))
            rows[row - 1].Refuse((parts[1] == Airs[0] ? Airs : [parts[1]]).Select(name => Column(rows[row - 1], name)).FirstOrDefault(name => name is not null) ?? parts[1], reason.Given, reason.Accepted, 0);
        else
            rows[0].Refuse("mc_above_pct", reason.Given, reason.Accepted, 0);
    }

    // The column of the file it was read from, with its unit.
    private static string? Column(TableRow row, string name) => new[] { name, name + "_f", name + "_c" }.FirstOrDefault(column => row.TextOrNull(column) is not null);

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
