using Boardwright.Quantities;

namespace Boardwright.Drying.Schedules;

/// <summary>The temperature and depression tables that schedule codes name, and the codes of the species.</summary>
internal static class KilnTables
{
    /// <summary>Moisture contents, percent, at which every temperature row changes.</summary>
    private static readonly double[] TemperatureChanges = [30.0, 25.0, 20.0, 15.0];

    private static readonly string[] DryBulbColumns = ["above_30_pct_f", "at_30_pct_f", "at_25_pct_f", "at_20_pct_f", "at_15_pct_f"];

    private static readonly Dictionary<int, double[]> DryBulbs = DryingData.Read("kiln-dry-bulbs.csv")
        .ToDictionary(row => (int)row.Needed("row"), row => DryBulbColumns.Select(row.Needed).ToArray());

    private static readonly Dictionary<int, double[]> Depressions = DryingData.Read("kiln-depressions.csv")
        .ToDictionary(row => (int)row.Needed("number"), row => Enumerable.Range(1, 6).Select(step => row.Needed($"step_{step}_f")).ToArray());

    private static readonly Dictionary<char, double[]> ClassChanges = DryingData.Read("kiln-moisture-classes.csv")
        .ToDictionary(row => row.Text("class")[0], row => Enumerable.Range(2, 5).Select(step => row.Needed($"step_{step}_pct")).ToArray());

    public static IReadOnlyList<KilnCodeRow> Codes { get; } = [.. DryingData.Read("kiln-codes.csv").Select(row => new KilnCodeRow(
        row.Text("schedule_group"),
        NominalThickness.FromQuarters((int)row.Needed("quarters_from")),
        NominalThickness.FromQuarters((int)row.Needed("quarters_to")),
        row.TextOrNull("code"),
        row.Text("source"),
        row.Text("mark"),
        row.TextOrNull("note")))];

    /// <summary>The steps of a code: the union of the change points of both tables, equal neighbours joined.</summary>
    public static IReadOnlyList<KilnStep> Steps(KilnCode code)
    {
        var changes = ClassChanges[code.MoistureClass];
        double[] points = [.. TemperatureChanges.Union(changes).OrderDescending()];
        var steps = new List<KilnStep>();
        for (var index = 0; index <= points.Length; index++)
        {
            // Inside the step the moisture content lies just at or under the point before it.
            var moisturePercent = index == 0 ? double.MaxValue : points[index - 1];
            var step = new KilnStep
            {
                Above = index == points.Length ? MoistureContent.OvenDry : MoistureContent.FromPercent(points[index]),
                DryBulbFahrenheit = DryBulbs[code.TemperatureRow][Reached(TemperatureChanges, moisturePercent)],
                DepressionFahrenheit = Depressions[code.DepressionNumber][Reached(changes, moisturePercent)],
            };
            if (steps.Count > 0 && steps[^1] with { Above = step.Above } == step)
                steps.RemoveAt(steps.Count - 1);

            steps.Add(step);
        }

        return steps;
    }

    private static int Reached(double[] changesDescending, double moisturePercent) => changesDescending.Count(point => moisturePercent <= point);
}

/// <summary>One row of the index of schedules by wood and thickness; without a code where the handbook advises against one.</summary>
internal sealed record KilnCodeRow(string Group, NominalThickness From, NominalThickness To, string? Code, string Source, string Mark, string? Note);
