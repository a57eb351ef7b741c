using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Tables;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A kiln schedule of the house's own, read from its file and checked.</summary>
public static class KilnOwn
{
    /// <summary>What a schedule is called whose file does not name it.</summary>
    public const string Unnamed = "own schedule";

    public static Command Command { get; } = Command.Of("kiln", "own", "A schedule of the house's own, by moisture or by hours, read from a file and checked", Run) with
    {
        Argument = new("FILE", $"a table with the header {ScheduleTable.Header}, one step a line"),
        Options = [Option.Optional("dry-bulb-max", "T", "hottest dry bulb the kiln can hold: hotter steps run at it and keep their equilibrium")],
        Examples = ["kiln own demo/examples/schedule-by-hours.csv", "kiln own demo/examples/schedule-by-moisture.csv --dry-bulb-max 150F --json"],
    };

    public sealed record Step(string Phase, double? McAbovePct, double? Hours, double DryBulbF, double DryBulbC, double WetBulbF, double WetBulbC, double DepressionF, double RhPct, double EmcPct);

    public sealed record Answer(string Schedule, IReadOnlyList<Step> Steps, double? HoursByClockH, string? Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        var limit = ask.TemperatureOrNull("dry-bulb-max");
        if (!ask.Refuses && limit is { Fahrenheit: < 80.0 or > 250.0 })
            ask.Refuse("dry-bulb-max", ask.Text("dry-bulb-max"), "80F to 250F");
        return ask.Refuses ? ask.Refused<Answer>() : Read(ask.Argument!, text).Then<Answer>(schedule => Show(limit is { } most ? schedule.LimitedTo(most) : schedule));
    }

    /// <summary>The schedule of a file.</summary>
    internal static Outcome<KilnSchedule> Read(string what, string text) => ScheduleTable.ReadOne(what, text, Unnamed).Then(ScheduleTable.Schedule);

    internal static Step Show(string phase, KilnStep step) => new(
        phase, step.Lasts is null && step.Above > MoistureContent.OvenDry ? step.Above.Percent : null, step.Lasts?.Hours, step.DryBulbFahrenheit, step.DryBulb.Celsius,
        step.WetBulbFahrenheit, step.Air.WetBulb!.Value.Celsius, step.DepressionFahrenheit, step.Air.Humidity.Percent, step.Air.Emc!.Value.Percent);

    private static Answer Show(KilnSchedule schedule)
    {
        List<Step> steps = [.. schedule.Steps.Select(step => Show("dry", step))];
        if (schedule.Equalize is { } equalize)
            steps.Add(Show("equalize", equalize));
        if (schedule.Condition is { } condition)
            steps.Add(Show("condition", condition));
        return new(schedule.Name, steps, schedule.HasTimes ? schedule.Steps.Sum(step => step.Lasts?.Hours ?? 0.0) : null, schedule.Note);
    }
}
