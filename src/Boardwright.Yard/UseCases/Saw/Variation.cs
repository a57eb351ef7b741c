using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How evenly a saw cuts, from thicknesses read on its boards.</summary>
public static class SawVariationCommand
{
    private const string Header = "board,point,thickness_mm (or thickness_in)";

    public static Command Command { get; } = Command.Of("saw", "variation", "How evenly a saw cuts, from thicknesses read on its boards", Run) with
    {
        Argument = new("FILE", $"a table with the header {Header}, one reading a line"),
        Examples = ["saw variation demo/examples/thickness-readings.csv"],
    };

    public sealed record Answer(
        double MeanMm, double WithinSdMm, double BetweenSdMm, double BetweenComponentMm, double TotalSdMm, int Boards, int Points, double ExpectedSdMm, double MeanIn, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        return ask.Refuses ? ask.Refused<Answer>() : CsvTable.Read("FILE", text, "board").Then(table => Readings(ask, table)).Then(SawVariation.Of).Then<Answer>(Show);
    }

    private static Outcome<IReadOnlyList<ThicknessReading>> Readings(Ask ask, CsvTable table)
    {
        if (!table.Columns.Contains("thickness_mm") && !table.Columns.Contains("thickness_in"))
            return new Refusal("FILE", $"the columns {string.Join(',', table.Columns)}", $"a first line with {Header}");

        var metric = table.Columns.Contains("thickness_mm");
        var readings = table.Rows.Select(row => new ThicknessReading(row.Text("board"), ask.Take("FILE", row.Size(metric ? "thickness_mm" : "thickness_in", metric ? 0.001 : 0.0254, 0.5)))).ToList();
        return ask.Refuses ? ask.Refused<IReadOnlyList<ThicknessReading>>() : readings;
    }

    private static Outcome<Answer> Show(SawVariation variation) => new Answer(
        variation.Mean.Millimetres, variation.Within.Millimetres, variation.BetweenMeans.Millimetres, variation.BetweenComponent.Millimetres, variation.Total.Millimetres,
        variation.Boards, variation.Points, variation.Expected.Millimetres, variation.Mean.Inches,
        "For saw target: within_sd as --within, between_component as --between. total_sd is the deviation of the readings; expected_sd = sqrt(within² + component²)");
}
