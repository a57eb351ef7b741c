using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>The published tables built into this project.</summary>
internal static class DryingData
{
    public static IEnumerable<DataRow> Read(string name) => DataTable.Read(name, typeof(DryingData).Assembly);

    public static double Needed(this DataRow row, string column) =>
        row.Number(column) ?? throw new FormatException($"A row of a built-in table has no value in '{column}'.");
}
