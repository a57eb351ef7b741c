using System.Globalization;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables.Writing;

/// <summary>Rows of logs, stacks, readings, charges, orders, packs and pours: the other way of the tables of those names.</summary>
internal static class WoodRows
{
    public static (string Table, IEnumerable<RowWriter> Rows)? Of(Entry e) => e.Fact switch
    {
        LogReceived f => ("logs", [new RowWriter(e).Text("tag", f.Log).At("date_in").Text("source", f.Source).Text("species", f.Species)
            .Mm("se_dib_a", f.SmallEndAMm, "small_end_a_mm").Mm("se_dib_b", f.SmallEndBMm, "small_end_b_mm").Mm("le_dib", f.LargeEndMm, "large_end_mm")
            .M("scale_len", f.ScaleLengthM, "scale_length_m").M("actual_len", f.ActualLengthM, "actual_length_m").Text("metal_scan", Metal(f)).Yes("end_coated", f.EndCoated)
            .Text("defect", f.Defect).Text("planned_for", f.PlannedFor).Text("owner", f.Owner).Money("paid_money", f.PaidMoney).Date("felled_on", f.FelledOn)]),
        LogSeen f => ("log_seen", [new RowWriter(e).Text("log", f.Log).At("seen_at").Mm("mid_dib", f.MidDibMm).Mm("sweep", f.SweepMm).Number("sweep_towards_hour", f.SweepTowardsHour).Mm("heart_rot", f.HeartRotMm)
            .Mm("pith_off", f.PithOffMm).Number("pith_towards_hour", f.PithTowardsHour).M("split_small_end", f.SplitSmallEndM).M("split_large_end", f.SplitLargeEndM).Mm("bark", f.BarkMm).Word("grade", f.Grade).Yes("metal_marks", f.MetalMarks)]),
        LogRadiiMeasured f => ("log_radii", f.Places.Select(place => new RowWriter(e).Text("log", f.Log).At("measured_at").M("place", place.AtM).List("radii", RadiiCells.Of(place.RadiiMm)))),
        StackBuilt f => ("stacks", [new RowWriter(e).Text("stack", f.Stack).Text("species", f.Species).Quarters("thickness", f.ThicknessQuarters).Mm("sawn_thickness", f.SawnThicknessMm).Word<Product>("product", f.Product)
            .Word<Grain>("grain", f.Grain).Number("net_bf", f.Bf).Number("pieces", f.Pieces).Date("sawn", f.SawnOn).Text("place", f.Place).Text("owner", f.Owner).Text("reserved_for", f.ReservedFor)
            .Yes("never_kiln", f.NeverKiln).M("min_len", f.PieceLengthMinM).M("max_len", f.PieceLengthMaxM).Mm("piece_width", f.PieceWidthMm).Text("note", f.Note)]),
        LogSawn f => ("sawing", f.Into.Select((part, index) => new RowWriter(e).Text("log", f.Log).At("sawn_at").Text("stack", part.Stack).Number("bf", part.Bf).Number("pieces", part.Pieces).Number("mc_pct", part.McPct)
            .Number("mill_h", f.MillHours).Text("pattern", f.Pattern).List("boards", SawnCells.Of(f.Boards)).Text("plan_pattern", f.Plan?.Pattern).List("plan_parts", SawnCells.Of(f.Plan)).Number("sawn_money", f.Plan?.SawnMoney)
            .Text("sawyer", f.Sawyer))),
        ThicknessMeasured f when f.Boards.All(board => board.PointsMm.Count == 4) => ("thickness", f.Boards.Select(board => new RowWriter(e).At("measured_at").Text("species", f.Species).Quarters("thickness", f.ThicknessQuarters)
            .Mm("set", f.SetMm).Number("board", board.Board).Mm("p1", board.PointsMm[0]).Mm("p2", board.PointsMm[1]).Mm("p3", board.PointsMm[2]).Mm("p4", board.PointsMm[3]))),
        MoistureRead f => ("moisture", [new RowWriter(e).Text("stack", f.Stack).At("read_at").Word<MoistureMethod>("method", f.Method).Number("raw_reading_pct", f.RawPct).C("wood_temp", f.WoodC, "wood_c").Text("set_to", f.SpeciesSetting)
            .Number("mc_mean_pct", f.MeanPct).Number("mc_sd_pct", f.SdPct).Number("boards", f.Boards).Mm("pin_depth", f.PinDepthMm).Number("weight_kg", f.WeightKg).Number("tare_kg", f.TareKg)]),
        OrderTaken f => ("orders", f.Lines.Select(line => Line(e, f, line))),
        PackTallied f => ("packs", f.Boards.Select((board, index) => new RowWriter(e).Text("pack", f.Pack).Text("stack", f.Stack).Text("species", f.Species).Quarters("thickness", f.ThicknessQuarters).Text("order", f.Order)
            .Number("line", f.Line).At("tallied_at").Text("tallied_by", e.By).Number("mc_pct", f.McPct).Number("board", index + 1).Mm("width", Math.Round(board.WidthIn * 25.4, 9)).M("length", Math.Round(board.LengthFt * 0.3048, 9)).Text("grade", board.Grade).Yes("stack_empty", f.StackEmpty))),
        Shipped f => ("shipments", [new RowWriter(e).Text("shipment", f.Shipment).Text("order", f.Order).Number("line", f.Line).At("at").List("packs", f.Packs)
            .List("stacks", f.Stacks.Select(part => string.Create(CultureInfo.InvariantCulture, $"{part.Stack}:{part.Bf:R}"))).Number("quantity", f.Quantity).Text("carrier", f.Carrier)
            .Number("weight_kg", f.WeightKg).Number("mc_pct", f.McPct).Text("note", f.Note).Text("despite", f.Despite).Yes("closes", f.Closes)]),
        _ => null,
    };

    private static RowWriter Line(Entry e, OrderTaken f, OrderLine line) => new RowWriter(e).Text("order", f.Order).Number("line", line.Line).Text("customer", f.Customer).Text("goods", line.Goods).Number("quantity", line.Quantity)
        .Word<OrderUnit>("unit", line.Unit).Text("specification", line.Specification).Date("due", line.DueOn).Text("species", line.Species).Quarters("thickness", line.ThicknessQuarters).Word("grain", line.Grain)
        .Number("mc_low_pct", line.McLowPct).Number("mc_high_pct", line.McHighPct).Mm("min_thickness", line.ThicknessMinMm).Mm("dressed", line.DressedMm).M("min_len", line.PieceLengthMinM)
        .Yes("never_kiln", line.NeverKiln).Yes("heat_treated", line.HeatTreated).Yes("delivered", line.Delivered).Yes("customer_wood", line.CustomerWood).List("forbidden_species", line.ForbiddenSpecies).Money("price_money_per_bf", line.PriceMoneyPerBf)
        .List("stacks", line.Stacks).Number("importance", f.Importance).Money("late_per_day_money", f.LatePerDayMoney).At("taken_at").Text("note", f.Note);

    private static string Metal(LogReceived f) => f.MetalScan switch
    {
        MetalScan.Clear => "clear",
        MetalScan.NotScanned => "not scanned",
        MetalScan.FenceLineNotScanned => "fence line, not scanned",
        MetalScan.HitsDugOut => string.Create(CultureInfo.InvariantCulture, $"{f.MetalHits} hits, dug out"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{f.MetalHits} hits, not dug"),
    };
}
