using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A tally as a plain table: one board a line, in the order tallied.</summary>
public static class TallyFile
{
    public const string Header = "thickness_quarters,width_in,length_ft (or width_mm,length_m), optional species,grade";

    private const double WidthMaxMetres = 2.0;
    private const double LengthMaxMetres = 20.0;

    /// <summary>The boards; every bad row is refused with its line and column.</summary>
    public static Outcome<IReadOnlyList<TalliedBoard>> Read(string what, string text) => CsvTable.Read(what, text, "thickness_quarters").Then<IReadOnlyList<TalliedBoard>>(table =>
    {
        var metric = table.Columns.Contains("width_mm") && table.Columns.Contains("length_m");
        if (!metric && !(table.Columns.Contains("width_in") && table.Columns.Contains("length_ft")))
            return new Refusal(what, $"the columns {string.Join(',', table.Columns)}", $"a first line with {Header}");

        var boards = new List<TalliedBoard>();
        var refusals = new List<Refusal>();
        foreach (var outcome in table.Rows.Select(row => Board(row, metric)))
        {
            if (outcome is Outcome<TalliedBoard>.Done(var board))
                boards.Add(board);
            else if (outcome is Outcome<TalliedBoard>.Refused(var reasons))
                refusals.AddRange(reasons);
        }

        return refusals.Count > 0 ? new Outcome<IReadOnlyList<TalliedBoard>>.Refused(refusals) : boards;
    });

    private static Outcome<TalliedBoard> Board(CsvRow row, bool metric) =>
        Thickness(row).Then(thickness =>
        row.Size(metric ? "width_mm" : "width_in", metric ? 0.001 : 0.0254, WidthMaxMetres).Then(width =>
        row.Size(metric ? "length_m" : "length_ft", metric ? 1.0 : 0.3048, LengthMaxMetres).Then(length =>
        SpeciesOf(row).Then<TalliedBoard>(species => new TalliedBoard(thickness, width, length) { Species = species.FirstOrDefault(), Grade = row.Text("grade") is { Length: > 0 } grade ? grade : null }))));

    // "4" and "4/4" both mean four quarters in a column of this name.
    private static Outcome<NominalThickness> Thickness(CsvRow row) => row.Get(
        "thickness_quarters", (what, text) => Quantities.Reading.Read.NominalThickness(what, text.EndsWith("/4", StringComparison.Ordinal) ? text : text + "/4"));

    private static Outcome<Species[]> SpeciesOf(CsvRow row) => row.Text("species").Length == 0
        ? Array.Empty<Species>()
        : row.Get("species", SpeciesTable.Find).Then<Species[]>(species => new[] { species });
}
