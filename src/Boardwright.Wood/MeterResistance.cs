namespace Boardwright.Wood;

/// <summary>Electrical resistance of wood along the grain at 80 F, by kind of wood and moisture content: what a pin meter measures.</summary>
/// <remarks>
/// <para>Megohms between needles 1-1/4 in apart and 5/16 in deep. Between whole percents the logarithm of the resistance is taken as straight.</para>
/// <para>Validity: 7 to 20 % moisture content, less for hickory and walnut; nothing is extrapolated.</para>
/// </remarks>
/// <source id="james-1988" locator="FPL-GTR-6, table 1"/>
/// <method page="docs/methods/moisture-meter.md"/>
public sealed class MeterResistance
{
    private const int FirstPercent = 7;
    private const int LastPercent = 20;

    private readonly double[] percents;
    private readonly double[] logMegohms;

    private MeterResistance(string group, double[] percents, double[] logMegohms)
    {
        Group = group;
        this.percents = percents;
        this.logMegohms = logMegohms;
    }

    /// <summary>Every row of the table.</summary>
    public static IReadOnlyList<MeterResistance> All { get; } = [.. DataTable.Read("meter-resistance.csv").Select(Read)];

    /// <summary>Coast Douglas-fir, the wood most meters are set to.</summary>
    public static MeterResistance DouglasFir { get; } = Find("Douglas-fir, coast")!;

    /// <summary>Kind of wood, as the table names it.</summary>
    public string Group { get; }

    /// <summary>Lowest moisture content of the row, percent.</summary>
    public double PercentMin => percents[0];

    /// <summary>Highest moisture content of the row, percent.</summary>
    public double PercentMax => percents[^1];

    /// <summary>The row of a group; null where there is none.</summary>
    public static MeterResistance? Find(string? group) => All.FirstOrDefault(row => row.Group == group);

    /// <summary>Common logarithm of the resistance in megohms at a moisture content in percent; null outside the row.</summary>
    public double? LogMegohms(double percent) => Between(percents, logMegohms, percent);

    /// <summary>Moisture content in percent at a logarithm of the resistance in megohms; null outside the row.</summary>
    public double? Percent(double logMegohm) => Between([.. logMegohms.Select(value => -value)], percents, -logMegohm);

    // Straight lines between ascending points.
    private static double? Between(double[] x, double[] y, double at)
    {
        const double Rounding = 1e-9;
        if (!(at >= x[0] - Rounding && at <= x[^1] + Rounding))
            return null;

        at = Math.Clamp(at, x[0], x[^1]);
        var upper = Math.Max(1, Array.FindIndex(x, value => value >= at));
        return y[upper - 1] + (y[upper] - y[upper - 1]) * (at - x[upper - 1]) / (x[upper] - x[upper - 1]);
    }

    private static MeterResistance Read(DataRow row)
    {
        var cells = Enumerable.Range(FirstPercent, LastPercent - FirstPercent + 1)
            .Select(percent => (percent, megohms: row.Number($"{percent}")))
            .Where(cell => cell.megohms is not null)
            .ToList();
        return new(row.Text("group"), [.. cells.Select(cell => (double)cell.percent)], [.. cells.Select(cell => Math.Log10(cell.megohms!.Value))]);
    }
}
