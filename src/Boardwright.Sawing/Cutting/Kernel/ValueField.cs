namespace Boardwright.Sawing;

/// <summary>A ceiling on what wood can bring: every line along the log is given the best it could be part of, as if boards could be packed without loss.</summary>
/// <remarks>
/// Boards on a line parallel to the log's axis are together no longer than the clear wood along it. A board with half a kerf on either face covers thickness + kerf times its width of
/// the log's end (with wane, what of its thickness is whole), and such covers do not overlap. A slab's mean of both faces' widths at a place is at most its wood there over its thickness,
/// as chords are convex. So the value of any plan is at most the sum over small cells of the end of cell area x the better of the best price x nominal thickness x length / (thickness + kerf) of boards
/// that the cell's clear length allows, and of a slab's by the share of its measured places that the cell is in wood. A cell counts as clear where any point within half a kerf of it is.
/// </remarks>
internal static class ValueField
{
    private const int CellsAcross = 128;

    /// <summary>Ceiling of the whole log.</summary>
    public static double Total(CuttingSpace space)
    {
        var log = TurnedLog.Of(space.Stations, 0.0);
        var (lowest, left) = (log.Lowest - space.KerfMm, log.Left - space.KerfMm);
        var cellMm = (log.Highest + space.KerfMm - lowest) / CellsAcross;
        var columns = (int)Math.Ceiling((log.Right + space.KerfMm - left) / cellMm);
        var density = Density(space);
        var slab = SlabDensity(space) * space.Stations.AtMm[^1];
        var clear = new bool[space.Stations.Count];
        var chords = new (double Low, double High)[clear.Length];
        var total = 0.0;
        for (var row = 0; row < CellsAcross; row++)
        {
            var y = lowest + ((row + 0.5) * cellMm);
            var reach = (cellMm + space.KerfMm) / 2.0;

            // The widest chord of the cell's heights holds a point of the cell, or none does.
            for (var j = 0; j < chords.Length; j++)
            {
                log.ChordsOver(j, y - reach, y + reach, out var low, out var high);
                chords[j] = (low - reach, high + reach);
            }

            for (var column = 0; column < columns; column++)
            {
                var x = left + ((column + 0.5) * cellMm);
                for (var j = 0; j < clear.Length; j++)
                    clear[j] = x >= chords[j].Low && x <= chords[j].High && !(space.RotRadiusMm > 0.0 && InRot(space, log, j, x, y, cellMm / 2.0));
                var most = Most(space.Stations, density, space.Values.LengthStepMm, clear);
                if (slab > 0.0)
                    most = Math.Max(most, slab * space.Stations.SlabAt.Count(place => clear[place]) / SlabMeasure.Places);
                total += most * cellMm * cellMm;
            }
        }

        return total;
    }

    /// <summary>Most money per square millimetre of the log's end, by clear length in trim steps, cut across as is best.</summary>
    private static double[] Density(CuttingSpace space)
    {
        var values = space.Values;
        var density = new double[values.Longest + 1];
        for (var steps = 1; steps <= values.Longest; steps++)
        {
            density[steps] = density[steps - 1];
            foreach (var row in values.Boards.Where(row => row.LengthMin.Millimetres <= (steps * values.LengthStepMm) + 1e-6))
            {
                var thickness = values.GreenMm[values.Thicknesses.ToList().FindIndex(setting => setting.Nominal == row.Thickness)];
                var cover = row.Wane.Fraction > 0.0 ? thickness * (1.0 - row.Wane.Fraction) : thickness + space.KerfMm;
                density[steps] = Math.Max(density[steps], row.MoneyPerBoardFoot * row.Thickness.Inches * steps * values.LengthStepMm / 304.8 / 12.0 / 25.4 / cover);
            }

            for (var part = 1; part <= steps / 2; part++)
                density[steps] = Math.Max(density[steps], density[part] + density[steps - part]);
        }

        return density;
    }

    private static double SlabDensity(CuttingSpace space) => Enumerable.Range(0, space.Values.GreenMm.Length)
        .SelectMany(t => space.Values.Slabs[t].Concat(space.Values.Boules[t]).Select(row => row.MoneyPerBoardFoot * row.Thickness.Inches / 304.8 / 12.0 / 25.4 / space.Values.GreenMm[t]))
        .DefaultIfEmpty(0.0).Max();

    private static double Most(Stations stations, double[] density, double stepMm, bool[] clear)
    {
        var total = 0.0;
        for (var p = 0; p < clear.Length; p++)
        {
            if (!clear[p])
                continue;

            var q = p;
            while (q + 1 < clear.Length && clear[q + 1])
                q++;
            total += density[Math.Min(density.Length - 1, (int)(((stations.AtMm[q] - stations.AtMm[p]) / stepMm) + 1e-6))];
            p = q;
        }

        return total;
    }

    private static bool InRot(CuttingSpace space, TurnedLog log, int j, double x, double y, double half)
    {
        var (dx, dy, radius) = (Math.Abs(x - log.Across[j]) + half, Math.Abs(y - log.Up[j]) + half, space.RotRadiusMm - (space.KerfMm / 2.0));
        return radius > 0.0 && (dx * dx) + (dy * dy) <= radius * radius;
    }
}
