using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables;

/// <summary>Logs, stacks and readings.</summary>
internal static class WoodTables
{
    public static IReadOnlyList<YardTable> All { get; } =
    [
        YardTable.Of("logs", "tag,date_in,source,species,metal_scan,end_coated,owner", Log, r => r.At("date_in")),
        YardTable.Of("log_seen", "log,seen_at", r => new LogSeen(
            r.Text("log"), r.MmOrNull("mid_dib"), r.MmOrNull("sweep"), r.NumberOrNull("sweep_towards_hour"), r.MmOrNull("heart_rot"), r.MmOrNull("pith_off"), r.NumberOrNull("pith_towards_hour"),
            r.MOrNull("split_small_end"), r.MOrNull("split_large_end"), r.MmOrNull("bark"), r.TextOrNull("grade") is null ? null : r.Word<LogGrade>("grade"), r.Yes("metal_marks")), r => r.At("seen_at")),
        new("log_radii", ["log", "measured_at", "radii"], r => $"{r.Text("log")}|{r.Text("measured_at")}", rows =>
        [
            new(new LogRadiiMeasured(rows[0].Text("log"), [.. rows.Select(r => new RadiiPlace(r.M("place"), RadiiCells.Mm(r)))]), rows[0].At("measured_at")),
        ]),
        YardTable.Of("stacks", "stack,species,thickness,product,sawn,place,owner", r => new StackBuilt(
            r.Text("stack"), r.Species("species"), r.Quarters("thickness"), r.Word<Product>("product"), r.Date("sawn"), r.Text("place"), r.Text("owner"),
            r.NumberOrNull("net_bf"), r.WholeOrNull("pieces"), r.TextOrNull("grain") is null ? Grain.Flat : r.Word<Grain>("grain"), r.MmOrNull("sawn_thickness"), r.MOrNull("min_len"), r.MOrNull("max_len"),
            r.MmOrNull("piece_width"), r.TextOrNull("reserved_for"), r.Yes("never_kiln"), r.TextOrNull("note")), r => r.At("sawn", 7)),
        new("sawing", ["log", "sawn_at", "stack", "bf", "pieces"], r => $"{r.Text("log")}|{r.Text("sawn_at")}", rows =>
        [
            new(new LogSawn(rows[0].Text("log"), [.. rows.Select(r => new SawnInto(r.Text("stack"), r.Number("bf"), r.Whole("pieces"), r.NumberOrNull("mc_pct")))], rows[0].NumberOrNull("mill_h"), rows[0].TextOrNull("pattern"),
                rows[0].TextOrNull("boards") is null ? null : SawnCells.Boards(rows[0]), rows[0].TextOrNull("plan_parts") is null ? null : SawnCells.Plan(rows[0]), rows[0].TextOrNull("sawyer")), rows[0].At("sawn_at")),
        ]),
        new("thickness", ["measured_at", "species", "thickness", "board"], r => $"{r.Text("measured_at")}|{r.Text("species")}", rows =>
        [
            new(new ThicknessMeasured(rows[0].Species("species"), rows[0].Quarters("thickness"), rows[0].Mm("set"),
                [.. rows.Select(r => new BoardThickness(r.Whole("board"), [r.Mm("p1"), r.Mm("p2"), r.Mm("p3"), r.Mm("p4")]))]), rows[0].At("measured_at")),
        ]),
        YardTable.Of("moisture", "stack,read_at,method", r => new MoistureRead(
            r.Text("stack"), r.Word<MoistureMethod>("method"), r.NumberOrNull("raw_reading_pct"), r.NumberOrNull("mc_mean_pct"), r.NumberOrNull("mc_sd_pct"), r.WholeOrNull("boards"),
            r.TextOrNull("set_to"), r.COrNull("wood_temp", "wood_c"), r.MmOrNull("pin_depth"), r.NumberOrNull("weight_kg"), r.NumberOrNull("tare_kg")), r => r.At("read_at")),
    ];

    private static LogReceived Log(TableRow r)
    {
        var (scan, hits) = Metal(r);
        return new(
            r.Text("tag"), r.Text("source"), r.Species("species"), r.Mm("se_dib_a", "small_end_a_mm"), r.Mm("se_dib_b", "small_end_b_mm"), r.Mm("le_dib", "large_end_mm"),
            r.M("scale_len", "scale_length_m"), r.M("actual_len", "actual_length_m"), scan, hits, r.Yes("end_coated"), r.Text("owner"), r.TextOrNull("defect"), r.TextOrNull("planned_for"),
            r.MoneyOrNull("paid_money"), r.DateOrNull("felled_on"));
    }

    // As it is said at the log: clear; 2 hits, dug out; 3 hits, not dug; not scanned; fence line, not scanned.
    private static (MetalScan Scan, int Hits) Metal(TableRow r)
    {
        var text = r.Text("metal_scan");
        var number = text.Split(' ')[0];
        return text switch
        {
            "clear" => (MetalScan.Clear, 0),
            "not scanned" => (MetalScan.NotScanned, 0),
            "fence line, not scanned" => (MetalScan.FenceLineNotScanned, 0),
            _ when int.TryParse(number, out var hits) && text.EndsWith("dug out", StringComparison.Ordinal) => (MetalScan.HitsDugOut, hits),
            _ when int.TryParse(number, out var hits) && text.EndsWith("not dug", StringComparison.Ordinal) => (MetalScan.HitsNotDug, hits),
            _ => r.Refuse("metal_scan", text, "clear; 2 hits, dug out; 2 hits, not dug; not scanned; fence line, not scanned", (MetalScan.NotScanned, 0)),
        };
    }
}
