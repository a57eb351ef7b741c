using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables;

/// <summary>Orders, packs and shipments.</summary>
internal static class OrderTables
{
    public static IReadOnlyList<YardTable> All { get; } =
    [
        new("orders", ["order", "line", "customer", "goods", "quantity", "unit", "due"], r => r.Text("order"), rows =>
        [
            new(new OrderTaken(rows[0].Text("order"), rows[0].Text("customer"), [.. rows.Select(Line)], rows[0].Whole("importance"), rows[0].Money("late_per_day_money"), rows[0].TextOrNull("note")), rows[0].At("taken_at")),
        ]),
        new("packs", ["pack", "stack", "species", "thickness", "tallied_at", "tallied_by", "board"], r => $"{r.Text("pack")}|{r.Text("tallied_at")}|{r.Text("tallied_by")}", Pack),
        YardTable.Of("shipments", "shipment,order,line,at", r => new Shipped(
            r.Text("shipment"), r.Text("order"), r.List("packs"), [.. r.List("stacks").Select(part => Part(r, part))], r.Whole("line"), r.NumberOrNull("quantity"), r.TextOrNull("carrier"),
            r.NumberOrNull("weight_kg"), r.NumberOrNull("mc_pct"), r.TextOrNull("note"), r.TextOrNull("despite"), r.Yes("closes")), r => r.At("at")),
    ];

    private static OrderLine Line(TableRow r) => new(
        r.Whole("line"), r.Text("goods"), r.Number("quantity"), r.Word<OrderUnit>("unit"), r.Date("due"), r.TextOrNull("specification") ?? "", r.List("stacks"),
        r.TextOrNull("species"), r.QuartersOrNull("thickness"), r.TextOrNull("grain") is null ? null : r.Word<Grain>("grain"), r.NumberOrNull("mc_low_pct"), r.NumberOrNull("mc_high_pct"),
        r.MmOrNull("min_thickness"), r.MmOrNull("dressed"), r.MOrNull("min_len"), r.Yes("never_kiln"), r.Yes("heat_treated"), r.Yes("delivered"), r.Yes("customer_wood"),
        r.List("forbidden_species") is { Count: > 0 } forbidden ? forbidden : null, r.MoneyOrNull("price_money_per_bf"));

    private static IEnumerable<TableFact> Pack(IReadOnlyList<TableRow> rows)
    {
        var first = rows[0];
        var quarters = first.Quarters("thickness");
        TallyBoard[] boards = [.. rows.Select(r => new TallyBoard(Rounded(r.Mm("width") / 25.4), Rounded(r.M("length") / 0.3048), r.TextOrNull("grade")))];
        if (quarters < 1)
            yield break;
        var tally = PackTally.Of(
            boards.Select(b => new TalliedBoard(NominalThickness.FromQuarters(quarters), Length.FromInches(b.WidthIn), Length.FromFeet(b.LengthFt))), BoardRule.Nhla);
        yield return new(
            new PackTallied(first.Text("pack"), first.Text("stack"), first.Species("species"), quarters, tally.BoardFeet.Count, boards, "nhla", first.NumberOrNull("mc_pct"), first.TextOrNull("order"), first.WholeOrNull("line"), StackEmpty: first.Yes("stack_empty")),
            first.At("tallied_at"), first.Text("tallied_by"));
    }

    // Inches and feet typed as such come back as they were typed.
    private static double Rounded(double value) => Math.Round(value, 9);

    private static StackShare Part(TableRow r, string part)
    {
        var pair = part.Split(':');
        return pair.Length == 2 && double.TryParse(pair[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var bf)
            ? new(pair[0], bf)
            : r.Refuse("stacks", part, "stack and board feet, such as S-01:120, parted by semicolons", new StackShare("", 0.0));
    }
}
