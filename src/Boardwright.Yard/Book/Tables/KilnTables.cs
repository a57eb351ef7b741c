using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables;

/// <summary>Charges, samples and what happened in the kilns.</summary>
internal static class KilnTables
{
    public static IReadOnlyList<YardTable> All { get; } =
    [
        YardTable.Of("equipment-down", "equipment,down_at,why", r => new EquipmentDown(r.Text("equipment"), r.Text("why"), r.DateOrNull("back_expected_on"), r.DateOrNull("back_late_on")), r => r.At("down_at")),
        YardTable.Of("plans", "charge,kiln,in_on,out_on,stacks", r => new ChargePlanned(r.Text("charge"), r.Text("kiln"), r.Date("in_on"), r.Date("out_on"), r.List("stacks"), r.TextOrNull("serves")), r => r.At("planned_at", 7)),
        new("schedules", ["schedule"], r => r.Text("schedule"), rows => [new(ScheduleTable.Fact(rows, rows[0].Text("schedule")), null)]),
        YardTable.Of("charges", "charge,kiln,loaded_at,stacks,target_mc_pct", r => new ChargeLoaded(
            r.Text("charge"), r.Text("kiln"), r.List("stacks"), r.Number("target_mc_pct"), r.DateOrNull("expected_out_on"), r.TextOrNull("note"), r.TextOrNull("schedule")), r => r.At("loaded_at")),
        YardTable.Of("samples", "charge,sample,cut_at", r => new SampleCut(
            r.Text("charge"), r.Text("sample"), [.. Sections(r)], r.G("weight"), r.TextOrNull("stack")), r => r.At("cut_at")),
        YardTable.Of("sample-weights", "charge,sample,weighed_at", r => new SampleWeighed(r.Text("charge"), r.Text("sample"), r.G("weight", "weight_g")), r => r.At("weighed_at")),
        YardTable.Of("set-points", "charge,at", r => new SettingsChanged(r.Text("charge"), r.C("dry_bulb", "dry_bulb_c"), r.C("wet_bulb", "wet_bulb_c"), r.TextOrNull("note")), r => r.At("at")),
        YardTable.Of("gauges", "charge,at", r => new GaugeRead(
            r.Text("charge"), r.COrNull("dry_bulb", "dry_bulb_c"), r.COrNull("wet_bulb", "wet_bulb_c"), r.NumberOrNull("pressure_pa"), r.COrNull("core", "core_c"), r.NumberOrNull("condensate_l"),
            r.NumberOrNull("energy_kwh"), r.TextOrNull("note")), r => r.At("at")),
        YardTable.Of("treatments", "charge,at", r => new HeatTreated(r.Text("charge"), r.C("core", "core_c"), r.Number("held_min"), r.TextOrNull("probe")), r => r.At("at")),
        new("unloadings", ["charge", "unloaded_at", "stack", "bf", "place"], r => $"{r.Text("charge")}|{r.Text("unloaded_at")}", rows =>
        [
            new(new ChargeUnloaded(rows[0].Text("charge"), [.. rows.Select(r => new StackOut(
                r.Text("stack"), r.Number("bf"), r.Text("place"), r.NumberOrNull("mc_mean_pct"), r.NumberOrNull("mc_sd_pct"), r.NumberOrNull("mc_low_pct"), r.NumberOrNull("mc_high_pct"),
                r.WholeOrNull("boards"), r.WholeOrNull("pieces"), r.TextOrNull("out_stack")))]), rows[0].At("unloaded_at")),
        ]),
    ];

    private static IEnumerable<Section> Sections(TableRow r)
    {
        yield return new(r.G("section_1_wet"), r.G("section_1_dry"));
        if (r.TextOrNull("section_2_wet_g") is not null)
            yield return new(r.G("section_2_wet"), r.G("section_2_dry"));
    }
}
