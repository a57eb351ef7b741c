using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Thicknesses read on green boards as a plain table.</summary>
internal static class ThicknessFile
{
    public const string Header = "board,point,thickness_mm (or thickness_in)";

    /// <summary>The readings in the order of the table.</summary>
    public static Outcome<IReadOnlyList<ThicknessReading>> Read(Ask ask, string text) => CsvTable.Read("FILE", text, "board").Then<IReadOnlyList<ThicknessReading>>(table =>
    {
        if (!table.Columns.Contains("thickness_mm") && !table.Columns.Contains("thickness_in"))
            return new Refusal("FILE", $"the columns {string.Join(',', table.Columns)}", $"a first line with {Header}");

        var metric = table.Columns.Contains("thickness_mm");
        var readings = table.Rows.Select(row => new ThicknessReading(row.Text("board"), ask.Take("FILE", row.Size(metric ? "thickness_mm" : "thickness_in", metric ? 0.001 : 0.0254, 0.5)))).ToList();
        return ask.Refuses ? ask.Refused<IReadOnlyList<ThicknessReading>>() : readings;
    });
}
