using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Reads the species out of the table built into the program.</summary>
internal static class SpeciesData
{
    public static IReadOnlyList<Species> Load() => [.. DataTable.Read("species.csv").Select(Read)];

    private static Species Read(DataRow row) => new()
    {
        CommonName = row.Text("common_name"),
        ScientificName = row.Text("scientific_name"),
        AlsoCalled = row.Text("also_called").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries),
        BasicSpecificGravity = row.Number("sg_green") ?? throw new FormatException($"{row.Text("common_name")}: no basic specific gravity."),
        SpecificGravityAt12Percent = row.Number("sg_at_12pct_mc"),
        GreenMoistureHeartwood = Moisture(row, "green_mc_heartwood_pct"),
        GreenMoistureSapwood = Moisture(row, "green_mc_sapwood_pct"),
        GreenMoistureAverage = Moisture(row, "green_mc_average_pct"),
        ShrinkageRadialPercent = row.Number("shrinkage_radial_pct"),
        ShrinkageTangentialPercent = row.Number("shrinkage_tangential_pct"),
        ShrinkageVolumetricPercent = row.Number("shrinkage_volumetric_pct"),
        ShrinkageStart = Moisture(row, "shrinkage_start_mc_pct") ?? throw new FormatException($"{row.Text("common_name")}: no start of shrinkage."),
        ScheduleGroup = row.TextOrNull("schedule_group"),
        SafeRateGroup = row.TextOrNull("safe_rate_group"),
        DryingTimeGroup = row.TextOrNull("drying_time_group"),
        MeterGroup = row.TextOrNull("meter_group"),
        StainGroup = row.TextOrNull("stain_group"),
        VacuumClass = row.TextOrNull("vacuum_class"),
        GroupMark = row.Text("group_mark"),
        GroupNote = row.TextOrNull("group_note"),
        Source = row.Text("source"),
        Mark = row.Text("mark"),
        Note = row.TextOrNull("note"),
    };

    private static MoistureContent? Moisture(DataRow row, string column) =>
        row.Number(column) is { } percent ? MoistureContent.FromPercent(percent) : null;
}
