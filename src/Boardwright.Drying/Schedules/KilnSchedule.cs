using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Schedules;

/// <summary>A moisture-content schedule for a kiln: what air to hold while the wood dries through each range of moisture content.</summary>
/// <remarks>
/// <para>A starting point, not a recipe: regional stock needs local changes, one step of one number at a time, after a whole charge without a defect.</para>
/// <para>The controlling moisture content is the mean of the wettest half of the samples (ah-188) unless the yard has set it to the mean of all (fpl-gtr-57).</para>
/// </remarks>
/// <source id="ah-188" locator="ch. 7, temperature and wet-bulb-depression tables for hardwoods, index of schedules"/>
/// <source id="fpl-gtr-57" locator="p. 9 and modified schedules"/>
/// <method page="docs/methods/kiln-schedule.md"/>
public sealed record KilnSchedule
{
    // A board named 8/4 is sawn 2-1/8 in: the size in hand may pass the name by this much.
    private const double SawnOverInches = 0.15;

    /// <summary>The code both tables are read by; null for a schedule of the house's own.</summary>
    public required KilnCode? Code { get; init; }

    /// <summary>What it is called: its code, or words where it is none of the tables.</summary>
    public string Name { get => field ?? Code?.ToString() ?? "own schedule"; init; }

    /// <summary>Air of equalizing as the house wrote it; null where the printed rule gives it.</summary>
    public KilnStep? Equalize { get; init; }

    /// <summary>Air of conditioning as the house wrote it; null where the printed rule gives it.</summary>
    public KilnStep? Condition { get; init; }

    /// <summary>True where a step goes by the clock.</summary>
    public bool HasTimes => Steps.Any(step => step.Lasts is not null);

    /// <summary>Steps from green to dry.</summary>
    public required IReadOnlyList<KilnStep> Steps { get; init; }

    /// <summary>Where the code comes from.</summary>
    public required string Source { get; init; }

    /// <summary>P printed source seen, M from memory of the source, C chosen by common practice.</summary>
    public required string Mark { get; init; }

    /// <summary>What to know before using it; null when there is nothing.</summary>
    public required string? Note { get; init; }

    /// <summary>The schedule of a code, whatever the wood.</summary>
    public static KilnSchedule Assemble(KilnCode code) => new()
    {
        Code = code,
        Steps = KilnTables.Steps(code),
        Source = "ah-188",
        Mark = "M",
        Note = null,
    };

    /// <summary>The listed schedule of a wood and rough thickness.</summary>
    /// <returns>The schedule; no answer where none is listed for the wood, or for wood this thick.</returns>
    public static Outcome<KilnSchedule> For(Species species, Length thickness)
    {
        ArgumentNullException.ThrowIfNull(species);
        var rows = KilnTables.Codes.Where(row => row.Group == species.ScheduleGroup).ToList();
        if (rows.Count == 0)
            return new Outcome<KilnSchedule>.NoAnswer($"No kiln schedule is listed for {species.CommonName}.");

        var row = rows.FirstOrDefault(row => Holds(row, thickness));
        if (row?.Code is null)
            return new Outcome<KilnSchedule>.NoAnswer(Why(species, thickness, row, rows));

        return KilnCode.Parse("schedule code", row.Code).Then<KilnSchedule>(code => Assemble(code) with
        {
            Source = row.Source,
            Mark = row.Mark,
            Note = Join(row.Note, Refractory(species, thickness)),
        });
    }

    /// <summary>The step in force at a controlling moisture content; where steps go by the clock, <see cref="StepClock"/> tells.</summary>
    public KilnStep StepAt(MoistureContent controlling) => Steps.First(step => controlling > step.Above || step.Above == MoistureContent.OvenDry);

    /// <summary>The schedule in a kiln that cannot go above a dry bulb.</summary>
    public KilnSchedule LimitedTo(Temperature dryBulbMax) => this with
    {
        Steps = [.. Steps.Select(step => step.LimitedTo(dryBulbMax))],
        Equalize = Equalize?.LimitedTo(dryBulbMax),
        Condition = Condition?.LimitedTo(dryBulbMax),
    };

    /// <summary>The schedule of wood dried together: the gentlest of theirs in each part.</summary>
    /// <param name="schedules">At least one, all of the tables.</param>
    public static KilnSchedule Shared(IReadOnlyList<KilnSchedule> schedules)
    {
        ArgumentNullException.ThrowIfNull(schedules);
        if (schedules.Select(one => one.Code).Distinct().Count() == 1)
            return schedules[0];

        return Assemble(schedules.Select(one => one.Code!.Value).Aggregate(KilnCode.Mildest)) with
        {
            Source = string.Join("; ", schedules.Select(one => one.Source).Distinct()),
            Mark = schedules.Any(one => one.Mark == "C") ? "C" : schedules[0].Mark,
            Note = string.Join("; ", schedules.Select(one => one.Note).OfType<string>().Append($"the gentlest of {string.Join(", ", schedules.Select(one => one.Code).Distinct())}").Distinct()),
        };
    }

    /// <summary>The schedule as it is run: air other than listed in the step now in force, the later steps as they are listed.</summary>
    /// <param name="dryBulb">Dry bulb held.</param>
    /// <param name="wetBulb">Wet bulb held.</param>
    /// <param name="now">Index of the step in force.</param>
    public KilnSchedule Holding(Temperature dryBulb, Temperature wetBulb, int now) => this with
    {
        Steps = [.. Steps.Skip(now).Select((step, index) => index > 0 ? step : step with
        {
            DryBulbFahrenheit = dryBulb.Fahrenheit,
            DepressionFahrenheit = (dryBulb - wetBulb).FahrenheitDegrees,
        })],
    };

    /// <summary>Index of the step in force at a controlling moisture content.</summary>
    public int IndexAt(MoistureContent controlling)
    {
        var now = StepAt(controlling);
        return Steps.TakeWhile(step => step != now).Count();
    }

    private static bool Holds(KilnCodeRow row, Length thickness) =>
        thickness.Inches <= row.To.Inches + SawnOverInches && (row.From.Quarters == 1 || thickness.Inches > row.From.Inches - 0.25 + SawnOverInches);

    private static string Why(Species species, Length thickness, KilnCodeRow? row, List<KilnCodeRow> rows)
    {
        var inches = thickness.Inches.ToString("0.##", CultureInfo.InvariantCulture);
        if (row is not null)
            return $"No kiln schedule for {species.CommonName} {inches} in thick: {row.Note}.";

        var listed = string.Join(", ", rows.Where(one => one.Code is not null).Select(one => one.From.Quarters == 1 ? $"up to {one.To}" : $"{one.From} to {one.To}"));
        return $"No kiln schedule is listed for {species.CommonName} {inches} in thick; listed: {listed}.";
    }

    private static string? Refractory(Species species, Length thickness) =>
        species.ScheduleGroup is { } group && thickness.Inches > 1.25 + SawnOverInches && thickness.Inches <= 1.5 + SawnOverInches
        && (group.StartsWith("oak", StringComparison.Ordinal) || group.StartsWith("beech", StringComparison.Ordinal) || group.StartsWith("hickory", StringComparison.Ordinal))
            ? "6/4 of slow-drying woods is commonly run on the 8/4 code (common practice)"
            : null;

    private static string? Join(string? one, string? other) => (one, other) switch
    {
        (null, null) => null,
        (null, _) => other,
        (_, null) => one,
        _ => $"{one}; {other}",
    };
}
