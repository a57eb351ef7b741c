using System.Globalization;
using Boardwright.Drying.Schedules;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables.Writing;

/// <summary>Rows of kilns and of casting: the other way of <see cref="KilnTables"/> and <see cref="CastingTables"/>.</summary>
internal static class KilnRows
{
    public static (string Table, IEnumerable<RowWriter> Rows)? Of(Entry e) => e.Fact switch
    {
        EquipmentDown f => ("equipment-down", [new RowWriter(e).Text("equipment", f.Equipment).At("down_at").Text("why", f.Why).Date("back_expected_on", f.BackExpectedOn).Date("back_late_on", f.BackLateOn)]),
        ChargePlanned f => ("plans", [new RowWriter(e).Text("charge", f.Charge).Text("kiln", f.Kiln).Date("in_on", f.InOn).Date("out_on", f.OutOn).List("stacks", f.Stacks).Text("serves", f.Serves).At("planned_at")]),
        ChargeLoaded f => ("charges", [new RowWriter(e).Text("charge", f.Charge).Text("kiln", f.Kiln).At("loaded_at").List("stacks", f.Stacks).Number("target_mc_pct", f.TargetMcPct).Date("expected_out_on", f.ExpectedOutOn).Text("note", f.Note).Text("schedule", f.Schedule)]),
        ScheduleWritten f => ("schedules", f.Rows.Select((row, index) => new RowWriter(e).Text("schedule", f.Schedule).Word<SchedulePhase>("phase", row.Phase).Number("mc_above_pct", row.McAbovePct).Number("hours", row.Hours)
            .C("dry_bulb", row.DryBulbC).C("wet_bulb", row.WetBulbC).Text("note", index == 0 ? f.Note : null))),
        SampleCut f when f.Sections.Count is 1 or 2 => ("samples", [new RowWriter(e).Text("charge", f.Charge).Text("sample", f.Sample).At("cut_at")
            .Number("section_1_wet_g", f.Sections[0].WetG).Number("section_1_dry_g", f.Sections[0].DryG)
            .Number("section_2_wet_g", f.Sections.ElementAtOrDefault(1)?.WetG).Number("section_2_dry_g", f.Sections.ElementAtOrDefault(1)?.DryG).G("weight", f.WeightG).Text("stack", f.Stack)]),
        SampleWeighed f => ("sample-weights", [new RowWriter(e).Text("charge", f.Charge).Text("sample", f.Sample).At("weighed_at").G("weight", f.WeightG, "weight_g")]),
        SettingsChanged f => ("set-points", [new RowWriter(e).Text("charge", f.Charge).At("at").C("dry_bulb", f.DryBulbC, "dry_bulb_c").C("wet_bulb", f.WetBulbC, "wet_bulb_c").Text("note", f.Note)]),
        GaugeRead f => ("gauges", [new RowWriter(e).Text("charge", f.Charge).At("at").C("dry_bulb", f.DryBulbC, "dry_bulb_c").C("wet_bulb", f.WetBulbC, "wet_bulb_c").Number("pressure_pa", f.PressurePa).C("core", f.CoreC, "core_c")
            .Number("condensate_l", f.CondensateL).Number("energy_kwh", f.EnergyKwh).Text("note", f.Note)]),
        HeatTreated f => ("treatments", [new RowWriter(e).Text("charge", f.Charge).At("at").C("core", f.CoreC, "core_c").Number("held_min", f.HeldMinutes).Text("probe", f.Probe)]),
        ChargeUnloaded f => ("unloadings", f.Stacks.Select(part => new RowWriter(e).Text("charge", f.Charge).At("unloaded_at").Text("stack", part.Stack).Number("bf", part.Bf).Text("place", part.Place)
            .Number("mc_mean_pct", part.McMeanPct).Number("mc_sd_pct", part.McSdPct).Number("mc_low_pct", part.McLowPct).Number("mc_high_pct", part.McHighPct).Number("boards", part.Boards)
            .Number("pieces", part.Pieces).Text("out_stack", part.OutStack))),
        ResinListed f => ("resins", [new RowWriter(e).Text("resin", f.Resin).Number("ratio_a_by_mass", f.RatioAByMass).Number("ratio_b_by_mass", f.RatioBByMass)
            .Number("density_a_kg_per_l", PerLitre(f.DensityAKgM3)).Number("density_b_kg_per_l", PerLitre(f.DensityBKgM3)).Number("density_mixed_kg_per_m3", f.DensityMixedKgM3).Mm("deepest_pour", f.DepthMaxMm)
            .Number("gel_h", f.GelHours).Number("demould_h", f.DemouldHours).C("label", f.LabelC).Mm("label_depth", f.LabelDepthMm).Number("doubles_per_k", f.DoublesPerKelvin).Text("kinetics", f.Kinetics).Text("note", f.Note)]),
        ResinCounted f => ("resin-stock", [new RowWriter(e).Text("resin", f.Resin).Word<ResinPart>("part", f.Part).Number("kg", f.Kg).At("counted_on").Text("lot", f.Lot).Date("expires_on", f.ExpiresOn)]),
        ClassPlanned f => ("classes", [new RowWriter(e).Text("class", f.Class).Date("pour_on", f.PourOn).Date("demould_on", f.DemouldOn).Number("seats", f.Seats).Money("seat_money", f.SeatMoney).List("people", f.People)]),
        PourPlanned f => ("pours", [Pour(e, f)]),
        ResinMixed f => ("mixes", [new RowWriter(e).Text("pour", f.Pour).At("mixed_at").Number("part_a_kg", f.PartAKg).Number("part_b_kg", f.PartBKg).Number("buckets", f.Buckets).Number("min_each", f.MinutesEach).Text("lot_a", f.LotA).Text("lot_b", f.LotB)]),
        Poured f => ("pourings", [new RowWriter(e).Text("pour", f.Pour).At("poured_at").Mm("depth", f.DepthMm)]),
        ShopTemperatureRead { Readings: [var one] } => ("shop-temperatures", [new RowWriter(e).At("at", one.At).C("shop", one.ShopC)]),
        Demoulded f => ("demouldings", [new RowWriter(e).Text("pour", f.Pour).At("demoulded_at").Text("seen", f.Seen)]),
        _ => null,
    };

    private static RowWriter Pour(Entry e, PourPlanned f)
    {
        var wood = f.Pieces is [var first, ..] ? first : null;
        var row = new RowWriter(e).Text("pour", f.Pour).Text("class", f.Class).Text("resin", f.Resin).Word<MouldShape>("shape", f.Mould.Shape).Mm("length", f.Mould.LengthMm).Mm("width", f.Mould.WidthMm).Mm("side", f.Mould.SideMm)
            .Mm("diameter", f.Mould.DiameterMm).Mm("depth", f.DepthMm).Number("waste_pct", Math.Round(f.WasteShare * 100.0, 9)).Text("species", wood?.Species)
            .Number("mc_pct", wood?.McPct).Mm("wood_thickness", wood?.ThicknessMm);
        for (var piece = 0; piece < f.Pieces.Count; piece++)
        {
            row.Mm($"piece_{piece + 1}_length", f.Pieces[piece].LengthMm)
                .Text($"piece_{piece + 1}_widths_mm", string.Join(' ', f.Pieces[piece].WidthsMm.Select(width => width.ToString("R", CultureInfo.InvariantCulture))));
        }

        return row.Mm("thinnest", f.ThinnestMm).Text("owner", f.Owner).Date("pour_on", f.PourOn).Date("demould_on", f.DemouldOn).Text("stack", wood?.Stack).At("planned_at").Text("note", f.Note);
    }

    private static double PerLitre(double kgM3) => Math.Round(kgM3 / 1000.0, 9);
}
