using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying.Schedules;

/// <summary>One row of a house's own schedule.</summary>
/// <param name="Phase">Drying, equalizing or conditioning.</param>
/// <param name="AbovePercent">A step of drying holds while the controlling moisture content is above this, percent; null where it does not end by moisture.</param>
/// <param name="Hours">Hours it lasts, in halves; null where it does not go by the clock.</param>
/// <param name="DryBulb">Dry bulb held.</param>
/// <param name="WetBulb">Wet bulb held.</param>
public sealed record OwnStep(SchedulePhase Phase, double? AbovePercent, double? Hours, Temperature DryBulb, Temperature WetBulb);

/// <summary>A schedule of the house's own: steps by moisture content, by the clock, or some by each; equalizing and conditioning after them where the house wrote them.</summary>
/// <remarks>
/// <para>Steps by moisture go down; each step but the last of drying ends, by moisture or by hours, not by both. The last holds on to the end; hours that stand there are the
/// least it is held. Equalizing and conditioning come after drying, one row each; their hours are how long they are held.</para>
/// <para>Nothing of it is checked against the wood here: it is held against the safe rate elsewhere.</para>
/// </remarks>
/// <method page="docs/methods/kiln-schedule.md"/>
public static class OwnSchedule
{
    private const int RowsMost = 40;
    private const double HoursMost = 2000.0;
    private const double ColdestFahrenheit = 60.0;
    private const double HottestFahrenheit = 250.0;

    /// <summary>The schedule of its rows.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="rows">Drying from wet to dry, then equalizing, then conditioning.</param>
    /// <returns>The schedule; a refusal of each row that cannot stand, named "row 3, hours".</returns>
    public static Outcome<KilnSchedule> Of(string name, IReadOnlyList<OwnStep> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        if (rows.Count(row => row.Phase == SchedulePhase.Dry) is 0 or > RowsMost)
            return new Refusal("rows", string.Create(CultureInfo.InvariantCulture, $"{rows.Count(row => row.Phase == SchedulePhase.Dry)} steps of drying"), $"1 to {RowsMost} steps of drying");

        var refusals = rows.Select((row, index) => Fault(rows, index)).OfType<Refusal>().ToList();
        return refusals.Count > 0 ? new Outcome<KilnSchedule>.Refused(refusals) : new KilnSchedule
        {
            Code = null,
            Name = name,
            Steps = [.. rows.Where(row => row.Phase == SchedulePhase.Dry).Select(Step)],
            Equalize = rows.Where(row => row.Phase == SchedulePhase.Equalize).Select(Step).SingleOrDefault(),
            Condition = rows.Where(row => row.Phase == SchedulePhase.Condition).Select(Step).SingleOrDefault(),
            Source = "the house's own",
            Mark = "C",
            Note = Cold(rows),
        };
    }

    // One fault a row: the first that stands in the way.
    private static Refusal? Fault(IReadOnlyList<OwnStep> rows, int index)
    {
        var row = rows[index];
        var place = string.Create(CultureInfo.InvariantCulture, $"row {index + 1}");
        return AirFault(place, row) ?? PhaseFault(rows, index, place)
            ?? (row.Hours is { } hours && !(hours is >= 0.5 and <= HoursMost && hours * 2.0 == Math.Floor(hours * 2.0)) ? new Refusal($"{place}, hours", Number(hours), $"0.5 to {HoursMost:0}, in halves") : null)
            ?? (row.Phase == SchedulePhase.Dry ? EndFault(rows, index, place) : row.AbovePercent is { } above ? new Refusal($"{place}, mc_above_pct", Number(above), $"nothing: {Word(row.Phase)} ends by samples or by hours") : null);
    }

    private static Refusal? PhaseFault(IReadOnlyList<OwnStep> rows, int index, string place) => index == 0 ? null : (rows[index].Phase, rows[index - 1].Phase) switch
    {
        var (now, before) when now < before => new($"{place}, phase", Word(now), $"dry, then equalize, then condition; {Word(before)} stands before it"),
        (not SchedulePhase.Dry and var now, var before) when now == before => new($"{place}, phase", Word(now), $"one row of {Word(now)}"),
        _ => null,
    };

    private static Refusal? AirFault(string place, OwnStep row) =>
        row.DryBulb.Fahrenheit is < ColdestFahrenheit - 1e-6 or > HottestFahrenheit + 1e-6 ? new($"{place}, dry_bulb", Degrees(row.DryBulb), "60F to 250F, 15.6C to 121.1C")
        : row.WetBulb > row.DryBulb ? new($"{place}, wet_bulb", Degrees(row.WetBulb), $"at most the dry bulb, {Degrees(row.DryBulb)}")
        : Wood.AirState.FromWetBulb(row.DryBulb, row.WetBulb, Wood.AirState.StandardPressure) is Outcome<Wood.AirState>.Done({ Emc: not null }) ? null
        : new($"{place}, wet_bulb", Degrees(row.WetBulb), $"a wet bulb that air of {Degrees(row.DryBulb)} can have");

    private static Refusal? EndFault(IReadOnlyList<OwnStep> rows, int index, string place)
    {
        var row = rows[index];
        var isLast = index + 1 == rows.Count || rows[index + 1].Phase != SchedulePhase.Dry;
        var before = rows.Take(index).LastOrDefault(one => one.AbovePercent is not null)?.AbovePercent;
        return row switch
        {
            { AbovePercent: not null, Hours: not null } => new($"{place}, hours", $"{Number(row.Hours.Value)} beside {Number(row.AbovePercent.Value)} %", "either mc_above_pct or hours: a step ends by one of them"),
            { AbovePercent: { } above } when isLast => new($"{place}, mc_above_pct", Number(above), "nothing or hours: the last step of drying holds on to the end"),
            { AbovePercent: { } above } when above is < 4.0 or > 150.0 => new($"{place}, mc_above_pct", Number(above), "4 to 150"),
            { AbovePercent: { } above } when above >= before => new($"{place}, mc_above_pct", Number(above), $"less than {Number(before.Value)}: steps go from wet to dry"),
            { AbovePercent: null, Hours: null } when !isLast => new($"{place}, mc_above_pct", "nothing", "a moisture content, or hours: only the last step of drying has neither"),
            _ => null,
        };
    }

    private static KilnStep Step(OwnStep row) => new()
    {
        Above = row.AbovePercent is { } above ? MoistureContent.FromPercent(above) : MoistureContent.OvenDry,
        Lasts = row.Hours is { } hours ? Elapsed.FromHours(hours) : null,
        AsWritten = true,
        DryBulbFahrenheit = row.DryBulb.Fahrenheit,
        DepressionFahrenheit = (row.DryBulb - row.WetBulb).FahrenheitDegrees,
    };

    private static string? Cold(IReadOnlyList<OwnStep> rows) => rows.Any(row => row.WetBulb.Fahrenheit < 90.0 - 0.05)
        ? "a wet bulb under 90 °F stands in it: a vented kiln cannot hold that in humid weather (fpl-gtr-57)" : null;

    private static string Word(SchedulePhase phase) => phase switch { SchedulePhase.Dry => "dry", SchedulePhase.Equalize => "equalize", _ => "condition" };

    private static string Degrees(Temperature temperature) => string.Create(CultureInfo.InvariantCulture, $"{temperature.Fahrenheit:0.#} F ({temperature.Celsius:0.#} C)");

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
