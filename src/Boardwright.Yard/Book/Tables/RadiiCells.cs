using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;

namespace Boardwright.Yard.Book.Tables;

/// <summary>Radii round a log in one cell of a table, each with its unit: 8in;8.1in;7.9in;8in;8.2in;8in;7.9in;8in.</summary>
internal static class RadiiCells
{
    private static readonly (string Unit, double PerMm)[] Units = [("mm", 1.0), ("in", 1.0 / 25.4)];

    public static IReadOnlyList<double> Mm(TableRow row)
    {
        var read = new List<double>();
        foreach (var text in row.List("radii"))
        {
            if (Read.Length("radii", text) is Outcome<Length>.Done(var radius))
                read.Add(radius.Millimetres);
            else
                row.Refuse("radii", text, "sizes with their unit, parted by semicolons: 8in;8.1in;7.9in", 0.0);
        }

        return read;
    }

    /// <summary>Each in the unit in which it is shortest and reads back to the last digit.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<double> radiiMm) => radiiMm.Select(mm =>
        Units.Select(unit => Math.Round(mm * unit.PerMm, 9).ToString("R", CultureInfo.InvariantCulture) + unit.Unit).Where(text => Back(text) == mm).MinBy(text => text.Length)
        ?? mm.ToString("R", CultureInfo.InvariantCulture) + "mm");

    private static double? Back(string text) => Read.Length("", text) is Outcome<Length>.Done(var read) ? read.Millimetres : null;
}
