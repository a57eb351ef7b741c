using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The listed kiln schedule of a wood and thickness.</summary>
public static class KilnScheduleCommand
{
    public static Command Command { get; } = Command.Of("kiln", "schedule", "Kiln schedule of a wood and rough thickness, step by step", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "species, such as \"northern red oak\""),
            Option.Required("thickness", "L", "rough thickness, such as 4/4"),
            Option.Optional("from", "MC", "moisture it begins at: air-dried stock, up to 30%, begins in mild air for 12 to 18 h"),
            Option.Optional("dry-bulb-max", "T", "hottest dry bulb the kiln can hold: hotter steps run at it and keep their equilibrium"),
        ],
        Examples = ["kiln schedule --species \"northern red oak\" --thickness 4/4", "kiln schedule --species \"white oak\" --thickness 8/4 --dry-bulb-max 150F --json", "kiln schedule --species \"white ash\" --thickness 4/4 --from 20%"],
    };

    public sealed record Step(
        double McAbovePct, double DryBulbF, double WetBulbF, double DepressionF, double WetBulbFloor90F, double RhPct, double EmcPct, double RhFloor90Pct, double EmcFloor90Pct);

    /// <summary>The first air of air-dried stock.</summary>
    public sealed record Begin(double DryBulbF, double WetBulbF, double DepressionF, double EmcPct, double LeastH, double MostH, string Words);

    public sealed record Answer(string Code, IReadOnlyList<Step> Steps, string Source, string Mark, string? Note, Begin? Start);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var thickness = ask.Length("thickness");
        var from = ask.MoistureOrNull("from");
        var limit = ask.TemperatureOrNull("dry-bulb-max");
        if (!ask.Refuses && limit is { Fahrenheit: < 80.0 or > 250.0 })
            ask.Refuse("dry-bulb-max", ask.Text("dry-bulb-max"), "80F to 250F");

        return ask.Refuses
            ? ask.Refused<Answer>()
            : KilnSchedule.For(species!, thickness).Then<Answer>(schedule => Show(limit is { } most ? schedule.LimitedTo(most) : schedule, from, thickness));
    }

    private static Answer Show(KilnSchedule schedule, MoistureContent? from, Length thickness) =>
        new(schedule.Name, [.. schedule.Steps.Select(Show)], schedule.Source, schedule.Mark, schedule.Note,
            from is { } begins && AirDriedStart.Step(schedule, begins, thickness) is { } mild
                ? new(mild.DryBulbFahrenheit, mild.WetBulbFahrenheit, mild.DepressionFahrenheit, mild.Air.Emc!.Value.Percent, AirDriedStart.Least.Hours, AirDriedStart.Most.Hours, "vents shut, no spray; rained-on stock begins as green stock until its surface is dry (ah-188, from memory of the source)")
                : null);

    private static Step Show(KilnStep step) => new(
        step.Above.Percent, step.DryBulbFahrenheit, step.WetBulbFahrenheit, step.DepressionFahrenheit, step.WetBulbFloored90Fahrenheit,
        step.Air.Humidity.Percent, step.Air.Emc!.Value.Percent, step.AirFloored90.Humidity.Percent, step.AirFloored90.Emc!.Value.Percent);
}
