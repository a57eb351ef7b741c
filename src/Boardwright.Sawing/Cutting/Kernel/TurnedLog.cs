namespace Boardwright.Sawing;

/// <summary>The stations' ellipses in the log turned clockwise by an angle: what a level cut at any height leaves. Millimetres.</summary>
internal sealed class TurnedLog
{
    private TurnedLog(int count)
    {
        Across = new double[count];
        Up = new double[count];
        HalfHeight = new double[count];
        HalfWidth = new double[count];
        Shear = new double[count];
        HalfChord = new double[count];
    }

    /// <summary>Centre, right of the line.</summary>
    public double[] Across { get; }

    /// <summary>Centre, above the line.</summary>
    public double[] Up { get; }

    /// <summary>From the centre to the highest point.</summary>
    public double[] HalfHeight { get; }

    /// <summary>From the centre to the farthest point right.</summary>
    public double[] HalfWidth { get; }

    /// <summary>Shift of the middle of a level chord for each millimetre above the centre.</summary>
    public double[] Shear { get; }

    /// <summary>Half of the level chord through the centre.</summary>
    public double[] HalfChord { get; }

    /// <summary>Lowest point of all stations.</summary>
    public double Lowest => Enumerable.Range(0, Up.Length).Min(j => Up[j] - HalfHeight[j]);

    /// <summary>Highest point of all stations.</summary>
    public double Highest => Enumerable.Range(0, Up.Length).Max(j => Up[j] + HalfHeight[j]);

    public static TurnedLog Of(Stations stations, double turnDegrees)
    {
        // Whole quarters are turned exactly, so that a cant's faces stay where they were cut.
        var (sin, cos) = (turnDegrees % 360.0) switch
        {
            0.0 => (0.0, 1.0),
            90.0 => (1.0, 0.0),
            180.0 => (0.0, -1.0),
            270.0 => (-1.0, 0.0),
            var other => Math.SinCos(other * Math.PI / 180.0),
        };
        var turned = new TurnedLog(stations.Count);
        for (var j = 0; j < stations.Count; j++)
        {
            var (a, b) = (stations.SemiX[j], stations.SemiY[j]);
            var width = (a * a * cos * cos) + (b * b * sin * sin);
            var height = (a * a * sin * sin) + (b * b * cos * cos);
            turned.Across[j] = (stations.OffsetX[j] * cos) + (stations.OffsetY[j] * sin);
            turned.Up[j] = (stations.OffsetY[j] * cos) - (stations.OffsetX[j] * sin);
            turned.HalfWidth[j] = Math.Sqrt(width);
            turned.HalfHeight[j] = Math.Sqrt(height);
            turned.Shear[j] = ((b * b) - (a * a)) * sin * cos / height;
            turned.HalfChord[j] = a * b / turned.HalfHeight[j];
        }

        return turned;
    }

    /// <summary>The level chord of a station at a height; empty (low above high) above or below the wood.</summary>
    public void Chord(int station, double heightMm, out double low, out double high)
    {
        var rise = heightMm - Up[station];
        var share = rise / HalfHeight[station];
        var under = 1.0 - (share * share);
        if (under <= 0.0)
        {
            (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            return;
        }

        var middle = Across[station] + (Shear[station] * rise);
        var half = HalfChord[station] * Math.Sqrt(under);
        (low, high) = (middle - half, middle + half);
    }

    /// <summary>Lowest point of the wood between two upright lines: where such a part touches the bed.</summary>
    public double LowestBetween(double lowMm, double highMm)
    {
        var lowest = double.PositiveInfinity;
        for (var j = 0; j < Up.Length; j++)
        {
            // The lower edge of an ellipse falls, then rises: its lowest point in a strip is its own, or at the nearer side of the strip.
            var atLowest = Across[j] - (Shear[j] * HalfHeight[j]);
            var x = Math.Clamp(atLowest, lowMm, Math.Max(lowMm, highMm));
            var share = (x - Across[j]) / HalfWidth[j];
            if (Math.Abs(share) >= 1.0)
                continue;

            var slope = Shear[j] * HalfHeight[j] * HalfHeight[j] / (HalfWidth[j] * HalfWidth[j]);
            var half = HalfChord[j] * HalfHeight[j] / HalfWidth[j] * Math.Sqrt(1.0 - (share * share));
            lowest = Math.Min(lowest, Up[j] + (slope * (x - Across[j])) - half);
        }

        return lowest;
    }

    /// <summary>Widest strip that a core round the centre takes out between two heights, from one station to another; empty (low above high) where they miss it.</summary>
    public (double Low, double High) CoreBetween(int from, int to, double bottomMm, double topMm, double radiusMm)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var j = from; j <= to; j++)
        {
            var rise = Math.Max(0.0, Math.Max(bottomMm - Up[j], Up[j] - topMm));
            if (rise >= radiusMm)
                continue;

            var half = Math.Sqrt((radiusMm * radiusMm) - (rise * rise));
            (low, high) = (Math.Min(low, Across[j] - half), Math.Max(high, Across[j] + half));
        }

        return (low, high);
    }
}
