using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Prices of boards as a plain table.</summary>
internal static class PriceFile
{
    public const string Header = "species,thickness_quarters,grade,width_min_mm,length_min_m,price_money_per_bf, optional grain (flat or quartered) edge (square, live for slabs, boule for slabs sold as one log) width_max_mm length_max_m wane_pct (of the thickness, on one face)";

    /// <summary>The rows for a species; rows without a species fit any log.</summary>
    /// <param name="what">Where the table came from.</param>
    /// <param name="text">The table.</param>
    /// <param name="species">The log's species; null takes rows only of a table that names none or one.</param>
    public static Outcome<IReadOnlyList<BoardPrice>> Read(string what, string text, Species? species) =>
        CsvTable.Read(what, text, "thickness_quarters", "grade", "width_min_mm", "length_min_m", "price_money_per_bf").Then<IReadOnlyList<BoardPrice>>(table =>
        {
            var rows = table.Rows.Select(row => (Outcome: Price(row), Species: row.Text("species"))).ToList();
            var refusals = rows.SelectMany(row => row.Outcome is Outcome<BoardPrice>.Refused(var reasons) ? reasons : []).ToList();
            refusals.AddRange(rows.Select(row => row.Species).Distinct().Where(name => name.Length > 0)
                .SelectMany(name => SpeciesTable.Find($"{what}, species", name) is Outcome<Species>.Refused(var reasons) ? reasons : []));
            if (refusals.Count > 0)
                return new Outcome<IReadOnlyList<BoardPrice>>.Refused(refusals);

            var named = rows.Select(row => row.Species).Where(name => name.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
            if (species is null && named.Count > 1)
                return new Refusal("FILE, species", "nothing", $"a species, as {what} prices {string.Join(", ", named)}");

            var fitting = rows.Where(row => row.Species.Length == 0 || species is null || SpeciesTable.Find(what, row.Species) is Outcome<Species>.Done(var priced) && priced == species).ToList();
            return fitting.Count > 0
                ? fitting.Select(row => ((Outcome<BoardPrice>.Done)row.Outcome).Value).ToList()
                : new Refusal(what, $"no row for {species!.CommonName}", $"prices of the log's species; the table has {string.Join(", ", named)}");
        });

    /// <summary>Open order lines as a table: the same columns, an order in place of the grade, and what is open.</summary>
    public const string OrdersHeader = "order,thickness_quarters,width_min_mm,length_min_m,price_money_per_bf,open_bf, optional species grain edge width_max_mm length_max_m wane_pct";

    /// <summary>Order lines for a species, with the row each pays; rows without a species want any log. A line of several rows repeats its open footage.</summary>
    public static Outcome<IReadOnlyList<(OpenLine Line, BoardPrice Row)>> Orders(string what, string text, Species? species) =>
        CsvTable.Read(what, text, "order", "thickness_quarters", "width_min_mm", "length_min_m", "price_money_per_bf", "open_bf").Then<IReadOnlyList<(OpenLine Line, BoardPrice Row)>>(table =>
        {
            var rows = table.Rows.Where(row => row.Text("species").Length == 0 || species is null || SpeciesTable.Find(what, row.Text("species")) is Outcome<Species>.Done(var wanted) && wanted == species)
                .Select(row => (Outcome: Order(row), row)).ToList();
            var refusals = rows.SelectMany(row => row.Outcome is Outcome<(OpenLine Line, BoardPrice Row)>.Refused(var reasons) ? reasons : []).ToList();
            var read = rows.Select(row => row.Outcome).OfType<Outcome<(OpenLine Line, BoardPrice Row)>.Done>().Select(done => done.Value).ToList();
            refusals.AddRange(read.GroupBy(one => one.Line.Name).Where(lines => lines.Select(one => one.Line.Open).Distinct().Count() > 1)
                .Select(lines => new Refusal($"{what}, open_bf of {lines.Key}", string.Join(" and ", lines.Select(one => one.Line.Open.Count.ToString(System.Globalization.CultureInfo.InvariantCulture))), "the same in every row of a line")));
            return refusals.Count > 0 ? new Outcome<IReadOnlyList<(OpenLine Line, BoardPrice Row)>>.Refused(refusals) : read;
        });

    private static Outcome<(OpenLine Line, BoardPrice Row)> Order(CsvRow row) => Price(row).Then(price => row.Number("open_bf").Then<(OpenLine Line, BoardPrice Row)>(open => row.Text("order") is not { Length: > 0 } name
        ? new Refusal($"{row.What}, line {row.Line}, order", "nothing", "the name of an order line")
        : open is >= 0.0 and <= 1e7
            ? (new OpenLine(name, BoardFeet.From(open)), price with { Grade = name, Order = name })
            : new Refusal($"{row.What}, line {row.Line}, open_bf", row.Text("open_bf"), "0 to 10000000 board feet")));

    private static Outcome<BoardPrice> Price(CsvRow row) =>
        row.Get("thickness_quarters", (what, text) => Quantities.Reading.Read.NominalThickness(what, text.EndsWith("/4", StringComparison.Ordinal) ? text : text + "/4")).Then(thickness =>
        row.Size("width_min_mm", 0.001, 1.6).Then(width =>
        row.Size("length_min_m", 1.0, 12.2).Then(length =>
        row.Number("price_money_per_bf").Then(money => Grain(row).Then(grain => Limits(row, money is >= 0.0 and <= 1e6
            ? new BoardPrice(thickness, row.Text("grade"), width, length, money, grain)
            : new Refusal($"{row.What}, line {row.Line}, price_money_per_bf", row.Text("price_money_per_bf"), "0 to 1000000")))))));

    private static Outcome<BoardPrice> Limits(CsvRow row, Outcome<BoardPrice> read) => read.Then(price => Edge(row).Then(edge =>
        Largest(row, "width_max_mm", 0.001, 1.6).Then(width => Largest(row, "length_max_m", 1.0, 12.2).Then(length => Wane(row).Then<BoardPrice>(wane =>
            price with { Edge = edge, WidthMax = width, LengthMax = length, Wane = wane })))));

    private static Outcome<Length?> Largest(CsvRow row, string column, double unitMetres, double most) =>
        row.Text(column).Length == 0 ? new Outcome<Length?>.Done(null) : row.Size(column, unitMetres, most).Then(size => new Outcome<Length?>.Done(size));

    private static Outcome<Share> Wane(CsvRow row) => row.Text("wane_pct").Length == 0 ? new Outcome<Share>.Done(default) : row.Number("wane_pct").Then<Share>(percent => percent is >= 0.0 and <= 90.0
        ? Share.FromPercent(percent)
        : new Refusal($"{row.What}, line {row.Line}, wane_pct", row.Text("wane_pct"), "0 to 90"));

    private static Outcome<BoardEdge> Edge(CsvRow row) => row.Text("edge").ToLowerInvariant() switch
    {
        "" or "square" => new Outcome<BoardEdge>.Done(BoardEdge.Square),
        "live" => new Outcome<BoardEdge>.Done(BoardEdge.Live),
        "boule" => new Outcome<BoardEdge>.Done(BoardEdge.Boule),
        var other => new Refusal($"{row.What}, line {row.Line}, edge", other, "square, live, boule or nothing"),
    };

    private static Outcome<BoardGrain?> Grain(CsvRow row) => row.Text("grain").ToLowerInvariant() switch
    {
        "" or "any" => new Outcome<BoardGrain?>.Done(null),
        "flat" => new Outcome<BoardGrain?>.Done(BoardGrain.Flat),
        "quartered" or "quarter" => new Outcome<BoardGrain?>.Done(BoardGrain.Quartered),
        var other => new Refusal($"{row.What}, line {row.Line}, grain", other, "flat, quartered or nothing"),
    };
}
