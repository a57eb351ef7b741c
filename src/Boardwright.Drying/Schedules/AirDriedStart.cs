using Boardwright.Quantities;

namespace Boardwright.Drying.Schedules;

/// <summary>How a listed schedule is begun with stock that was air dried before: in mild air first, so that its dry surface is not shocked.</summary>
/// <remarks>
/// <para>Dry bulb of the step its moisture is in; for the first 12 to 18 h vents shut, no spray, and a depression of about 10 F up to 6/4, 5 to 8 F for thicker stock (6 is taken); then the depression of that step.
/// Stock that was rained on begins as green stock does until its surface is dry. Partly dried stock is never wetted again: water on open checks deepens them.</para>
/// <para>Air dried is stock whose controlling moisture content is at most 30 %; where the listed depression is no larger than that, nothing is changed.</para>
/// </remarks>
/// <source id="ah-188" locator="ch. 7, air-dried or predried stock (from memory of the source)"/>
/// <method page="docs/methods/kiln-schedule.md"/>
public static class AirDriedStart
{
    private const double AirDriedPercent = 30.0;
    private const double ThickInches = 1.75;

    /// <summary>At least this long: 12 h.</summary>
    public static Elapsed Least { get; } = Elapsed.FromHours(12.0);

    /// <summary>At most this long: 18 h.</summary>
    public static Elapsed Most { get; } = Elapsed.FromHours(18.0);

    /// <summary>The mild first step; null where the listed step is as mild, and for green stock.</summary>
    /// <param name="schedule">The listed schedule.</param>
    /// <param name="controlling">Moisture content it begins at.</param>
    /// <param name="thickness">Rough thickness of its thickest wood.</param>
    public static KilnStep? Step(KilnSchedule schedule, MoistureContent controlling, Length thickness)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        var depression = thickness.Inches < ThickInches ? 10.0 : 6.0;
        var listed = schedule.StepAt(controlling);
        return controlling.Percent > AirDriedPercent || schedule.HasTimes || listed.DryBulbFahrenheit - listed.WetBulbFloored90Fahrenheit <= depression ? null
            : listed with { Above = MoistureContent.OvenDry, Lasts = Least, AsWritten = true, DepressionFahrenheit = depression };
    }

    /// <summary>The schedule from there on, its mild first step before the listed ones; the schedule itself where none is needed.</summary>
    /// <param name="schedule">The listed schedule.</param>
    /// <param name="controlling">Moisture content it begins at.</param>
    /// <param name="thickness">Rough thickness of its thickest wood.</param>
    public static KilnSchedule On(KilnSchedule schedule, MoistureContent controlling, Length thickness) => Step(schedule, controlling, thickness) is not { } first ? schedule : schedule with
    {
        Steps = [first, .. schedule.Steps.Skip(schedule.IndexAt(controlling))],
        Note = $"{(schedule.Note is { } note ? $"{note}; " : "")}air-dried stock: 12 to 18 h in mild air first, vents shut, no spray",
    };
}
