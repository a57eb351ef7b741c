using System.Runtime.Intrinsics;

namespace Boardwright.Sawing;

/// <summary>The stations' sections in the log turned clockwise by an angle: what a level cut at any height leaves. Millimetres.</summary>
internal sealed class TurnedLog
{
    private readonly double[] shear;
    private readonly double[] halfChord;
    private readonly double[] perHalfHeight;
    private readonly TurnedRim?[] rims;

    private TurnedLog(Stations stations, double sin, double cos)
    {
        var count = stations.Count;
        (Across, Up, HalfHeight, HalfWidth) = (new double[count], new double[count], new double[count], new double[count]);
        (shear, halfChord, perHalfHeight, rims) = (new double[count], new double[count], new double[count], new TurnedRim?[count]);
        for (var j = 0; j < count; j++)
        {
            var (a, b) = (stations.SemiX[j], stations.SemiY[j]);
            Across[j] = (stations.OffsetX[j] * cos) + (stations.OffsetY[j] * sin);
            Up[j] = (stations.OffsetY[j] * cos) - (stations.OffsetX[j] * sin);
            HalfWidth[j] = Math.Sqrt((a * a * cos * cos) + (b * b * sin * sin));
            HalfHeight[j] = Math.Sqrt((a * a * sin * sin) + (b * b * cos * cos));
            perHalfHeight[j] = 1.0 / HalfHeight[j];
            shear[j] = ((b * b) - (a * a)) * sin * cos / (HalfHeight[j] * HalfHeight[j]);
            halfChord[j] = a * b / HalfHeight[j];
            rims[j] = stations.Rims[j] is { } rim ? TurnedRim.Of(rim, sin, cos, Across[j], Up[j]) : null;
        }

        (Lowest, Highest, Left, Right) = (double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
        for (var j = 0; j < count; j++)
        {
            Lowest = Math.Min(Lowest, LowestOf(j));
            Highest = Math.Max(Highest, HighestOf(j));
            Left = Math.Min(Left, Across[j] - HalfWidth[j]);
            Right = Math.Max(Right, Across[j] + HalfWidth[j]);
        }
    }

    /// <summary>Centre, right of the line.</summary>
    public double[] Across { get; }

    /// <summary>Centre, above the line.</summary>
    public double[] Up { get; }

    /// <summary>From the centre to the highest point of an ellipse.</summary>
    public double[] HalfHeight { get; }

    /// <summary>From the centre to the farthest point right of an ellipse.</summary>
    public double[] HalfWidth { get; }

    public double LowestOf(int station) => rims[station]?.Lowest ?? (Up[station] - HalfHeight[station]);

    public double HighestOf(int station) => rims[station]?.Highest ?? (Up[station] + HalfHeight[station]);

    /// <summary>Lowest point of all stations.</summary>
    public double Lowest { get; }

    /// <summary>Highest point of all stations.</summary>
    public double Highest { get; }

    /// <summary>Farthest left of all stations.</summary>
    public double Left { get; }

    /// <summary>Farthest right of all stations.</summary>
    public double Right { get; }

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
        return new(stations, sin, cos);
    }

    /// <summary>The level chord of a station at a height; empty (low above high) above or below the wood.</summary>
    public void Chord(int station, double heightMm, out double low, out double high)
    {
        if (rims[station] is { } rim)
        {
            rim.Chord(heightMm, out low, out high);
            return;
        }

        var rise = heightMm - Up[station];
        var share = rise * perHalfHeight[station];
        var under = 1.0 - (share * share);
        if (under <= 0.0)
        {
            (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            return;
        }

        var middle = Across[station] + (shear[station] * rise);
        var half = halfChord[station] * Math.Sqrt(under);
        (low, high) = (middle - half, middle + half);
    }

    /// <summary>The same at four heights.</summary>
    public void Chord(int station, Vector256<double> heightMm, out Vector256<double> low, out Vector256<double> high)
    {
        if (rims[station] is not null)
        {
            Span<double> ends = stackalloc double[8];
            for (var lane = 0; lane < 4; lane++)
                Chord(station, heightMm[lane], out ends[lane], out ends[lane + 4]);
            (low, high) = (Vector256.Create<double>(ends[..4]), Vector256.Create<double>(ends[4..]));
            return;
        }

        var rise = heightMm - Vector256.Create(Up[station]);
        var share = rise * Vector256.Create(perHalfHeight[station]);
        var under = Vector256<double>.One - (share * share);
        var middle = Vector256.Create(Across[station]) + (Vector256.Create(shear[station]) * rise);
        var half = Vector256.Create(halfChord[station]) * Vector256.Sqrt(Vector256.Max(under, Vector256<double>.Zero));
        var inWood = Vector256.GreaterThan(under, Vector256<double>.Zero);
        low = Vector256.ConditionalSelect(inWood, middle - half, Vector256.Create(double.PositiveInfinity));
        high = Vector256.ConditionalSelect(inWood, middle + half, Vector256.Create(double.NegativeInfinity));
    }

    /// <summary>Strip that a core takes out at four heights.</summary>
    public void Core(int station, Vector256<double> bottomMm, Vector256<double> topMm, double radiusMm, out Vector256<double> low, out Vector256<double> high)
    {
        var up = Vector256.Create(Up[station]);
        var rise = Vector256.Max(Vector256<double>.Zero, Vector256.Max(bottomMm - up, up - topMm));
        var under = Vector256.Create(radiusMm * radiusMm) - (rise * rise);
        var half = Vector256.Sqrt(Vector256.Max(under, Vector256<double>.Zero));
        var inCore = Vector256.LessThan(rise, Vector256.Create(radiusMm));
        low = Vector256.ConditionalSelect(inCore, Vector256.Create(Across[station]) - half, Vector256.Create(double.PositiveInfinity));
        high = Vector256.ConditionalSelect(inCore, Vector256.Create(Across[station]) + half, Vector256.Create(double.NegativeInfinity));
    }

    /// <summary>What the level chords of a station cover together between two heights; empty (low above high) where none has wood.</summary>
    public void ChordsOver(int station, double fromMm, double toMm, out double low, out double high)
    {
        if (rims[station] is { } rim)
        {
            rim.ChordsOver(fromMm, toMm, out low, out high);
            return;
        }

        var (half, up) = (HalfHeight[station], Up[station]);
        var (first, last) = (Math.Max(fromMm, up - half), Math.Min(toMm, up + half));
        if (first > last)
        {
            (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            return;
        }

        Ends(station, first, out var low1, out var high1);
        Ends(station, last, out var low2, out var high2);
        (low, high) = (Math.Min(low1, low2), Math.Max(high1, high2));

        // The farthest points right and left lie as high above and below the centre as the chord leans.
        var peak = shear[station] * half * half / HalfWidth[station];
        if (up + peak > first && up + peak < last)
            high = Across[station] + HalfWidth[station];
        if (up - peak > first && up - peak < last)
            low = Across[station] - HalfWidth[station];
    }

    /// <summary>Lowest point of the wood between two upright lines: where such a part touches the bed.</summary>
    public double LowestBetween(double lowMm, double highMm)
    {
        var lowest = double.PositiveInfinity;
        for (var j = 0; j < Up.Length; j++)
            lowest = Math.Min(lowest, rims[j]?.LowestBetween(lowMm, highMm) ?? LowestOfEllipse(j, lowMm, highMm));
        return lowest;
    }

    /// <summary>Strip that a core round the centre takes out of a station between two heights; empty (low above high) where they miss it.</summary>
    public void Core(int station, double bottomMm, double topMm, double radiusMm, out double low, out double high)
    {
        var rise = Math.Max(0.0, Math.Max(bottomMm - Up[station], Up[station] - topMm));
        if (rise >= radiusMm)
        {
            (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            return;
        }

        var half = Math.Sqrt((radiusMm * radiusMm) - (rise * rise));
        (low, high) = (Across[station] - half, Across[station] + half);
    }

    private void Ends(int station, double heightMm, out double low, out double high)
    {
        var rise = heightMm - Up[station];
        var share = rise / HalfHeight[station];
        var middle = Across[station] + (shear[station] * rise);
        var half = halfChord[station] * Math.Sqrt(Math.Max(0.0, 1.0 - (share * share)));
        (low, high) = (middle - half, middle + half);
    }

    private double LowestOfEllipse(int j, double lowMm, double highMm)
    {
        // The lower edge of an ellipse falls, then rises: its lowest point in a strip is its own, or at the nearer side of the strip.
        var atLowest = Across[j] - (shear[j] * HalfHeight[j]);
        var x = Math.Clamp(atLowest, lowMm, Math.Max(lowMm, highMm));
        var share = (x - Across[j]) / HalfWidth[j];
        if (Math.Abs(share) >= 1.0)
            return double.PositiveInfinity;

        var slope = shear[j] * HalfHeight[j] * HalfHeight[j] / (HalfWidth[j] * HalfWidth[j]);
        var half = halfChord[j] * HalfHeight[j] / HalfWidth[j] * Math.Sqrt(1.0 - (share * share));
        return Up[j] + (slope * (x - Across[j])) - half;
    }
}
