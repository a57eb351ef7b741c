namespace Boardwright.Sawing;

/// <summary>A convex rim in a turned log: its chords. Millimetres.</summary>
internal sealed record TurnedRim(double[] X, double[] Y, double Lowest, double Highest)
{
    public static TurnedRim Of(SectionRim rim, double sin, double cos, double across, double up)
    {
        var (x, y) = (new double[rim.X.Length], new double[rim.X.Length]);
        for (var i = 0; i < x.Length; i++)
            (x[i], y[i]) = (across + (rim.X[i] * cos) + (rim.Y[i] * sin), up + (rim.Y[i] * cos) - (rim.X[i] * sin));
        return new(x, y, y.Min(), y.Max());
    }

    public void Chord(double height, out double low, out double high)
    {
        (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int i = 0, j = X.Length - 1; i < X.Length; j = i++)
        {
            if ((Y[i] > height) == (Y[j] > height))
                continue;

            var x = X[j] + ((X[i] - X[j]) * (height - Y[j]) / (Y[i] - Y[j]));
            (low, high) = (Math.Min(low, x), Math.Max(high, x));
        }
    }

    /// <summary>Its chords at both ends and the corners between them: chords change straight from corner to corner.</summary>
    public void ChordsOver(double from, double to, out double low, out double high)
    {
        Chord(from, out low, out high);
        Chord(to, out var low2, out var high2);
        (low, high) = (Math.Min(low, low2), Math.Max(high, high2));
        for (var i = 0; i < X.Length; i++)
        {
            if (Y[i] >= from && Y[i] <= to)
                (low, high) = (Math.Min(low, X[i]), Math.Max(high, X[i]));
        }
    }

    public double LowestBetween(double low, double high)
    {
        var lowest = double.PositiveInfinity;
        for (int i = 0, j = X.Length - 1; i < X.Length; j = i++)
        {
            if (X[i] >= low && X[i] <= high)
                lowest = Math.Min(lowest, Y[i]);
            foreach (var line in (ReadOnlySpan<double>)[low, high])
            {
                if ((X[i] > line) != (X[j] > line))
                    lowest = Math.Min(lowest, Y[j] + ((Y[i] - Y[j]) * (line - X[j]) / (X[i] - X[j])));
            }
        }

        return lowest;
    }
}
