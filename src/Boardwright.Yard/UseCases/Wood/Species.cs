using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The species table: all of it, or what is known of one.</summary>
public static class WoodSpecies
{
    public static Command Command { get; } = Command.Of<object>("wood", "species", "The species table, or all that is known of one species", Run) with
    {
        Argument = new Argument("NAME", "common or scientific name; leave it out for the list", IsRequired: false),
        Examples = ["wood species \"sugar maple\"", "wood species hackberry", "wood species"],
    };

    public sealed record Row(
        string Common, string Scientific, double SpecificGravityGreen, double? ShrinkageRadialPct, double? ShrinkageTangentialPct, double? ShrinkageVolumetricPct,
        double? GreenMcHeartwoodPct, double? GreenMcSapwoodPct, double? GreenMcAveragePct, string Mark);

    public sealed record List(int Count, IReadOnlyList<Row> Species);

    public sealed record One(
        string Common, string Scientific, IReadOnlyList<string> AlsoCalled, double SpecificGravityGreen, double? SpecificGravityAtTwelvePercent,
        double? ShrinkageRadialPct, double? ShrinkageTangentialPct, double? ShrinkageVolumetricPct, double ShrinkageStartMcPct,
        double? GreenMcHeartwoodPct, double? GreenMcSapwoodPct, double? GreenMcAveragePct,
        string? KilnScheduleRow, string? SafeRateRow, string? DryingTimeRow, string? MeterRow, string? StainGroup, string? VacuumClass,
        string Source, string Mark, string? Note);

    public static Outcome<object> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        return ask.Argument is { } name
            ? SpeciesTable.Find("NAME", name).Then<object>(species => ShowOne(species))
            : new Outcome<object>.Done(new List(SpeciesTable.All.Count, [.. SpeciesTable.All.Select(ShowRow)]));
    }

    private static Row ShowRow(Species species) => new(
        species.CommonName, species.ScientificName, species.BasicSpecificGravity,
        species.ShrinkageRadialPercent, species.ShrinkageTangentialPercent, species.ShrinkageVolumetricPercent,
        species.GreenMoistureHeartwood?.Percent, species.GreenMoistureSapwood?.Percent, species.GreenMoistureAverage?.Percent, species.Mark);

    private static One ShowOne(Species species) => new(
        species.CommonName, species.ScientificName, species.AlsoCalled, species.BasicSpecificGravity, species.SpecificGravityAt12Percent,
        species.ShrinkageRadialPercent, species.ShrinkageTangentialPercent, species.ShrinkageVolumetricPercent, species.ShrinkageStart.Percent,
        species.GreenMoistureHeartwood?.Percent, species.GreenMoistureSapwood?.Percent, species.GreenMoistureAverage?.Percent,
        species.ScheduleGroup, species.SafeRateGroup, species.DryingTimeGroup, species.MeterGroup, species.StainGroup, species.VacuumClass,
        species.Source, species.Mark, species.Note);
}
