using Boardwright.Quantities;

namespace Boardwright.Documents.Kilns;

/// <summary>A sample board with its earlier weighings, the oldest first.</summary>
/// <param name="Number">As written on the board.</param>
/// <param name="DryWeight">Calculated dry weight now in force.</param>
/// <param name="Weighings">One for each earlier day of the sheet; null where it was not weighed that day.</param>
/// <param name="Remark">Wettest, driest, heartwood, and the like.</param>
public sealed record KilnSample(string Number, Mass DryWeight, IReadOnlyList<SampleWeighing?> Weighings, string Remark = "");

/// <summary>A weighing and the moisture content it means.</summary>
public sealed record SampleWeighing(Mass Weight, MoistureContent Moisture);

/// <summary>One step of the schedule as the table gives it.</summary>
/// <param name="MoistureAbove">The step holds while the wettest samples are above this.</param>
public sealed record ScheduleStep(MoistureContent MoistureAbove, Temperature DryBulb, Temperature WetBulb, MoistureContent Emc, RelativeHumidity Humidity)
{
    /// <summary>How long a step by the clock is run; null for one that ends by moisture.</summary>
    public Elapsed? Lasts { get; init; }
}
