namespace Boardwright.Casting.Cure;

/// <summary>Watches a column while it cures: peak, gel, demould and the curve.</summary>
internal sealed class CureRecord(CureSection section, CureColumn column, int capacity)
{
    private const double LookSeconds = 1800.0;

    private readonly double[] gelSeconds = Filled(capacity);
    private readonly double[] hardSeconds = Filled(capacity);
    private readonly double[] lastConversion = new double[capacity];
    private readonly double[] lastHotSeconds = new double[capacity];
    private readonly List<CurePoint> curve = [];
    private double lastSeconds;
    private double peakKelvins;
    private double peakSeconds;
    private int peakCell;

    public double NextLookSeconds { get; private set; }

    /// <summary>Every cell poured so far is hard and cool.</summary>
    public bool IsDemoulded { get; private set; }

    /// <summary>Hottest so far.</summary>
    public double PeakCelsius => peakKelvins - 273.15;

    /// <summary>Notes what a step from the last time to this one brought.</summary>
    public void Step(double seconds)
    {
        var hotKelvins = section.Resin.DemouldCelsiusMax + 273.15;
        var isDemoulded = column.Count > column.WallCells;
        for (var cell = column.WallCells; cell < column.Count; cell++)
        {
            var conversion = column.Conversion[cell];
            gelSeconds[cell] = Crossing(gelSeconds[cell], section.Resin.GelConversion, cell, seconds);
            hardSeconds[cell] = Crossing(hardSeconds[cell], section.Resin.DemouldConversion, cell, seconds);
            lastConversion[cell] = conversion;
            var kelvins = column.Kelvins[cell];
            if (kelvins > hotKelvins)
            {
                lastHotSeconds[cell] = seconds;
            }

            if (kelvins > peakKelvins)
            {
                (peakKelvins, peakSeconds, peakCell) = (kelvins, seconds, cell);
            }

            isDemoulded &= !double.IsNaN(hardSeconds[cell]) && kelvins <= hotKelvins;
        }

        IsDemoulded = isDemoulded;
        lastSeconds = seconds;
    }

    /// <summary>Adds a point to the curve when one is due, and at the end.</summary>
    public void Look(double seconds, bool isLast)
    {
        if (seconds < NextLookSeconds && !isLast)
        {
            return;
        }

        NextLookSeconds = seconds + LookSeconds;
        if (column.Count == column.WallCells)
        {
            return;
        }

        var hottest = 0.0;
        var least = 1.0;
        for (var cell = column.WallCells; cell < column.Count; cell++)
        {
            hottest = Math.Max(hottest, column.Kelvins[cell]);
            least = Math.Min(least, column.Conversion[cell]);
        }

        var centre = Centre;
        curve.Add(new(
            seconds / 3600.0, section.Shop.CelsiusAt(seconds / 3600.0), column.Kelvins[centre] - 273.15, hottest - 273.15,
            column.Kelvins[column.Count - 1] - 273.15, column.Conversion[centre], least));
    }

    public CureRun Result()
    {
        var balance = column.StoredJoules - column.BroughtJoules - column.MadeJoules - column.EnteredJoules;
        return new()
        {
            PeakCelsius = PeakCelsius,
            PeakHour = peakSeconds / 3600.0,
            PeakHeightMetres = column.HeightMetres(peakCell),
            GelCentreHour = Hours(gelSeconds[Centre]),
            GelLastHour = Last(gelSeconds),
            DemouldCentreHour = Hours(Demould(Centre)),
            DemouldLastHour = Last([.. Enumerable.Range(0, capacity).Select(Demould)]),
            Curve = curve,
            BalanceError = Math.Abs(balance) / Math.Max(column.MadeJoules, 1.0),
        };
    }

    private int Centre => (column.WallCells + column.Count - 1) / 2;

    private static double[] Filled(int count)
    {
        var values = new double[count];
        Array.Fill(values, double.NaN);
        return values;
    }

    private static double? Hours(double seconds) => double.IsNaN(seconds) ? null : seconds / 3600.0;

    private double Demould(int cell) => column.Kelvins[cell] > section.Resin.DemouldCelsiusMax + 273.15
        ? double.NaN
        : Math.Max(hardSeconds[cell], lastHotSeconds[cell]);

    private double? Last(ReadOnlySpan<double> seconds)
    {
        var last = 0.0;
        foreach (var value in seconds[column.WallCells..column.Count])
        {
            if (double.IsNaN(value))
            {
                return null;
            }

            last = Math.Max(last, value);
        }

        return last / 3600.0;
    }

    private double Crossing(double known, double target, int cell, double seconds)
    {
        var now = column.Conversion[cell];
        if (!double.IsNaN(known) || now < target)
        {
            return known;
        }

        var before = lastConversion[cell];
        return now > before ? lastSeconds + (target - before) / (now - before) * (seconds - lastSeconds) : seconds;
    }
}
