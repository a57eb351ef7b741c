using System.Globalization;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables;

/// <summary>Resin, classes and pours.</summary>
internal static class CastingTables
{
    private const double DaysAhead = 60.0;

    public static IReadOnlyList<YardTable> All { get; } =
    [
        YardTable.Of("resins", "resin,ratio_a_by_mass,ratio_b_by_mass", r => new ResinListed(
            r.Text("resin"), r.Number("ratio_a_by_mass"), r.Number("ratio_b_by_mass"), r.Number("density_a_kg_per_l") * 1000.0, r.Number("density_b_kg_per_l") * 1000.0, r.Number("density_mixed_kg_per_m3"),
            r.Mm("deepest_pour"), r.Number("gel_h"), r.Number("demould_h"), r.C("label"), r.Mm("label_depth"), r.Number("doubles_per_k"), r.TextOrNull("kinetics"), r.TextOrNull("note"))),
        YardTable.Of("resin-stock", "resin,part,kg,counted_on", r => new ResinCounted(
            r.Text("resin"), r.Word<ResinPart>("part"), r.Number("kg"), r.TextOrNull("lot"), r.DateOrNull("expires_on")), r => r.At("counted_on", 7)),
        YardTable.Of("classes", "class,pour_on,demould_on", r => new ClassPlanned(
            r.Text("class"), r.Date("pour_on"), r.Date("demould_on"), r.Whole("seats"), r.Money("seat_money"), r.List("people")), r => r.At("pour_on").AddDays(-DaysAhead)),
        YardTable.Of("pours", "pour,resin,shape,pour_on,demould_on", r => new PourPlanned(
            r.Text("pour"), r.Text("resin"), new(r.Word<MouldShape>("shape"), r.MmOrNull("length"), r.MmOrNull("width"), r.MmOrNull("side"), r.MmOrNull("diameter")), r.Mm("depth"), r.Number("waste_pct") / 100.0,
            [.. Pieces(r)], r.Date("pour_on"), r.Date("demould_on"), r.TextOrNull("class"), r.TextOrNull("owner"), r.MmOrNull("thinnest"), r.TextOrNull("note")), r => r.At("planned_at")),
        YardTable.Of("mixes", "pour,mixed_at,part_a_kg,part_b_kg", r => new ResinMixed(
            r.Text("pour"), r.Number("part_a_kg"), r.Number("part_b_kg"), r.Whole("buckets"), r.Number("min_each"), r.TextOrNull("lot_a"), r.TextOrNull("lot_b")), r => r.At("mixed_at")),
        YardTable.Of("pourings", "pour,poured_at", r => new Poured(r.Text("pour"), r.MmOrNull("depth")), r => r.At("poured_at")),
        YardTable.Of("shop-temperatures", "at", r => new ShopTemperatureRead([new(r.At("at"), r.C("shop"))]), r => r.At("at")),
        YardTable.Of("demouldings", "pour,demoulded_at,seen", r => new Demoulded(r.Text("pour"), r.Text("seen")), r => r.At("demoulded_at")),
    ];

    private static IEnumerable<WoodPiece> Pieces(TableRow r)
    {
        for (var piece = 1; r.MmOrNull($"piece_{piece}_length") is { } length && length > 0.0; piece++)
        {
            var widths = r.Text($"piece_{piece}_widths_mm").Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(text => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var width) ? width : r.Refuse($"piece_{piece}_widths_mm", text, "widths in mm parted by blanks", 0.0));
            yield return new(r.Species("species"), r.Number("mc_pct"), r.Mm("wood_thickness"), length, [.. widths], r.TextOrNull("stack"));
        }
    }
}
