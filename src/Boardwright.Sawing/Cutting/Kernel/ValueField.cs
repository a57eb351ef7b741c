namespace Boardwright.Sawing;

/// <summary>A ceiling on what wood can bring: every line along the log is given the best it could be part of, as if boards could be packed without loss.</summary>
/// <remarks>
/// A line parallel to the log's axis meets at most one board, which is no longer than the clear length along the line. A board with half a kerf on either face covers
/// thickness + kerf times its width of the log's end, and such covers do not overlap. So the value of any plan is at most the sum over small cells of the end of
/// cell area x the best price x nominal thickness x length / (thickness + kerf) of boards that the cell's clear length allows. A cell counts as clear where any point within half a kerf of it is.
/// </remarks>
internal sealed class ValueField
{
    private const int CellsAcross = 160;

    private readonly double[] rows;
    private readonly double cellMm;
    private readonly double lowest;

    public ValueField(CuttingSpace space, double turnDegrees)
    {
        var log = TurnedLog.Of(space.Stations, turnDegrees);
        (lowest, var highest) = (log.Lowest - space.KerfMm, log.Highest + space.KerfMm);
        cellMm = (highest - lowest) / CellsAcross;
        rows = new double[CellsAcross];
        var density = Density(space);
        var wide = Enumerable.Range(0, log.Up.Length).Max(j => Math.Abs(log.Across[j]) + log.HalfWidth[j]) + space.KerfMm;
        var columns = (int)Math.Ceiling(2.0 * wide / cellMm);
        var clear = new bool[space.Stations.Count];
        for (var row = 0; row < CellsAcross; row++)
        {
            for (var column = 0; column < columns; column++)
                rows[row] += density[Longest(space, log, -wide + ((column + 0.5) * cellMm), lowest + ((row + 0.5) * cellMm), clear)] * cellMm * cellMm;
        }
    }

    /// <summary>Ceiling of the whole log.</summary>
    public double Total => rows.Sum();

    /// <summary>Ceiling of what lies between two level faces.</summary>
    public double Between(double fromMm, double toMm)
    {
        var first = Math.Clamp((int)Math.Floor((fromMm - lowest) / cellMm) - 1, 0, rows.Length - 1);
        var last = Math.Clamp((int)Math.Ceiling((toMm - lowest) / cellMm) + 1, 0, rows.Length - 1);
        return rows.AsSpan(first..(last + 1)).ToArray().Sum();
    }

    /// <summary>Most money per square millimetre of the log's end, by longest clear length in trim steps.</summary>
    private static double[] Density(CuttingSpace space)
    {
        var values = space.Values;
        var longest = (int)Math.Floor((space.Shape.Length.Millimetres / values.LengthStepMm) + 1e-6);
        var widest = values.WidthSteps(2.0 * space.Stations.SemiX.Concat(space.Stations.SemiY).Max());
        var density = new double[longest + 1];
        for (var steps = 1; steps <= longest; steps++)
        {
            density[steps] = density[steps - 1];
            for (var t = 0; t < values.GreenMm.Length; t++)
            {
                if (widest > 0)
                    density[steps] = Math.Max(density[steps], Math.Max(values.At(t, 0, steps, widest), values.At(t, 1, steps, widest)) / (widest * values.WidthStepMm * (values.GreenMm[t] + space.KerfMm)));
            }
        }

        return density;
    }

    private int Longest(CuttingSpace space, TurnedLog log, double x, double y, bool[] clear)
    {
        var stations = space.Stations;
        for (var j = 0; j < clear.Length; j++)
            clear[j] = Reaches(log, j, x, y, (cellMm / 2.0) + (space.KerfMm / 2.0)) && !InRot(log, j, x, y, space.RotRadiusMm - (space.KerfMm / 2.0));

        var longest = 0;
        for (var p = 0; p < clear.Length; p++)
        {
            for (var q = p; q < clear.Length && clear[q]; q++)
                longest = Math.Max(longest, stations.StepsBetween[(p * clear.Length) + q]);
        }

        return longest;
    }

    /// <summary>The square of half side <paramref name="reach"/> round a point holds a point of the section: exact over its rows, by the chord at the nearest and farthest heights.</summary>
    private static bool Reaches(TurnedLog log, int j, double x, double y, double reach)
    {
        var (dx, dy) = (x - log.Across[j], y - log.Up[j]);

        // In coordinates that make the ellipse a circle the square becomes a parallelogram; bounding its sides keeps the test on the safe side.
        var rise = Math.Max(0.0, Math.Abs(dy) - reach) / log.HalfHeight[j];
        var run = Math.Max(0.0, Math.Abs(dx - (log.Shear[j] * dy)) - reach - (Math.Abs(log.Shear[j]) * reach)) / log.HalfChord[j];
        return (rise * rise) + (run * run) <= 1.0;
    }

    private bool InRot(TurnedLog log, int j, double x, double y, double radius)
    {
        var (dx, dy) = (Math.Abs(x - log.Across[j]) + (cellMm / 2.0), Math.Abs(y - log.Up[j]) + (cellMm / 2.0));
        return radius > 0.0 && (dx * dx) + (dy * dy) <= radius * radius;
    }
}
