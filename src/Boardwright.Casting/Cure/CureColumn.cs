namespace Boardwright.Casting.Cure;

/// <summary>Cells of wall and resin one above the other, and the two halves of a time step: reaction and conduction.</summary>
/// <remarks>
/// Finite volumes. Reaction: each cell adiabatic, T moves with conversion, one fourth-order Runge–Kutta step, so heat is made
/// exactly in step with conversion. Conduction: TR-BDF2, implicit and L-stable, both stages with the same tridiagonal matrix; the
/// heat through the faces is summed with the scheme's own weights, so the balance closes to rounding. Nothing is allocated in a step.
/// </remarks>
internal sealed class CureColumn(CureSection section, int capacity)
{
    private const double Gamma = 0.585786437626905; // 2 − √2
    private const double StageWeight = Gamma / 2.0;
    private const double OldWeight = 0.353553390593274; // √2 / 4

    private readonly double[] cellMetres = new double[capacity];
    private readonly double[] conductivity = new double[capacity];
    private readonly double[] heatCapacity = new double[capacity]; // J/(m²K)
    private readonly double[] conductance = new double[capacity + 1]; // W/(m²K), below cell i
    private readonly double[] start = new double[capacity];
    private readonly double[] slopeOld = new double[capacity];
    private readonly double[] slopeMiddle = new double[capacity];
    private readonly double[] ratio = new double[capacity];

    public double[] Kelvins { get; } = new double[capacity];

    public double[] Conversion { get; } = new double[capacity];

    public int Count { get; private set; }

    public int WallCells { get; private set; }

    /// <summary>Heat made by reaction since the start, J/m².</summary>
    public double MadeJoules { get; private set; }

    /// <summary>Heat that came in through both faces since the start, J/m².</summary>
    public double EnteredJoules { get; private set; }

    /// <summary>Heat brought by wall and pours at their own temperature, J/m² above zero kelvin.</summary>
    public double BroughtJoules { get; private set; }

    public double StoredJoules
    {
        get
        {
            var sum = 0.0;
            for (var cell = 0; cell < Count; cell++)
            {
                sum += heatCapacity[cell] * Kelvins[cell];
            }

            return sum;
        }
    }

    public static int CellsOf(double metres, double cellMetres) => metres <= 0.0 ? 0 : Math.Max(8, (int)Math.Round(metres / cellMetres));

    public void AddWall(MouldWall wall, double kelvins)
    {
        WallCells = CellsOf(wall.Thickness.Metres, section.CellMetres);
        Add(WallCells, wall.Thickness.Metres, wall.ConductivityWattsPerMetreKelvin, wall.DensityKilogramsPerCubicMetre * wall.SpecificHeatJoulesPerKilogramKelvin, kelvins);
    }

    public void AddResin(double metres, double kelvins)
    {
        var resin = section.Resin;
        Add(CellsOf(metres, section.CellMetres), metres, resin.ConductivityWattsPerMetreKelvin,
            resin.DensityKilogramsPerCubicMetre * resin.SpecificHeatJoulesPerKilogramKelvin, kelvins);
    }

    public double HeightMetres(int cell)
    {
        var height = 0.0;
        for (var below = WallCells; below < cell; below++)
        {
            height += cellMetres[below];
        }

        return height + cellMetres[cell] / 2.0;
    }

    public double MaximumRatePerSecond()
    {
        var rate = 0.0;
        for (var cell = WallCells; cell < Count; cell++)
        {
            rate = Math.Max(rate, section.Resin.Kinetics.RatePerSecond(Conversion[cell], Kelvins[cell]));
        }

        return rate;
    }

    public void React(double seconds)
    {
        var kinetics = section.Resin.Kinetics;
        var rise = section.Resin.AdiabaticRiseKelvins;
        for (var cell = WallCells; cell < Count; cell++)
        {
            var (a, t) = (Conversion[cell], Kelvins[cell]);
            var first = kinetics.RatePerSecond(a, t);
            var gain = seconds / 2.0 * first;
            var second = kinetics.RatePerSecond(a + gain, t + rise * gain);
            gain = seconds / 2.0 * second;
            var third = kinetics.RatePerSecond(a + gain, t + rise * gain);
            gain = seconds * third;
            var fourth = kinetics.RatePerSecond(a + gain, t + rise * gain);
            gain = Math.Min(seconds / 6.0 * (first + 2.0 * second + 2.0 * third + fourth), 1.0 - a);
            Conversion[cell] = a + gain;
            Kelvins[cell] = t + rise * gain;
            MadeJoules += heatCapacity[cell] * rise * gain;
        }
    }

    public void Conduct(double seconds, double airOldKelvins, double airMiddleKelvins, double airNewKelvins)
    {
        Kelvins.AsSpan(0, Count).CopyTo(start);
        var entered = OldWeight * Slope(slopeOld, airOldKelvins);
        for (var cell = 0; cell < Count; cell++)
        {
            Kelvins[cell] = start[cell] + StageWeight * seconds * slopeOld[cell];
        }

        Solve(StageWeight * seconds, airMiddleKelvins);
        entered += OldWeight * Slope(slopeMiddle, airMiddleKelvins);
        for (var cell = 0; cell < Count; cell++)
        {
            Kelvins[cell] = start[cell] + OldWeight * seconds * (slopeOld[cell] + slopeMiddle[cell]);
        }

        Solve(StageWeight * seconds, airNewKelvins);
        entered += StageWeight * FaceWatts(airNewKelvins);
        EnteredJoules += seconds * entered;
    }

    public static double MiddleOf(double seconds) => Gamma * seconds;

    private void Add(int cells, double metres, double wattsPerMetreKelvin, double joulesPerCubicMetreKelvin, double kelvins)
    {
        for (var cell = Count; cell < Count + cells; cell++)
        {
            cellMetres[cell] = metres / cells;
            conductivity[cell] = wattsPerMetreKelvin;
            heatCapacity[cell] = joulesPerCubicMetreKelvin * metres / cells;
            Kelvins[cell] = kelvins;
            Conversion[cell] = 0.0;
            BroughtJoules += heatCapacity[cell] * kelvins;
        }

        Count += cells;
        if (Count == 0)
        {
            return;
        }

        conductance[0] = 1.0 / (1.0 / section.BelowWattsPerSquareMetreKelvin + HalfResistance(0));
        for (var cell = 1; cell < Count; cell++)
        {
            conductance[cell] = 1.0 / (HalfResistance(cell - 1) + HalfResistance(cell));
        }

        conductance[Count] = 1.0 / (1.0 / section.AboveWattsPerSquareMetreKelvin + HalfResistance(Count - 1));
    }

    private double HalfResistance(int cell) => cellMetres[cell] / (2.0 * conductivity[cell]);

    private double FaceWatts(double airKelvins) =>
        conductance[0] * (airKelvins - Kelvins[0]) + conductance[Count] * (airKelvins - Kelvins[Count - 1]);

    // Rate of temperature change of every cell, K/s; returns the heat through both faces, W/m2.
    private double Slope(double[] slope, double airKelvins)
    {
        for (var cell = 0; cell < Count; cell++)
        {
            var below = cell == 0 ? airKelvins : Kelvins[cell - 1];
            var above = cell == Count - 1 ? airKelvins : Kelvins[cell + 1];
            slope[cell] = (conductance[cell] * (below - Kelvins[cell]) + conductance[cell + 1] * (above - Kelvins[cell])) / heatCapacity[cell];
        }

        return FaceWatts(airKelvins);
    }

    // Thomas algorithm for (1 − weight L) T = given + weight b; Kelvins holds the given side and then the solution.
    private void Solve(double weightSeconds, double airKelvins)
    {
        for (var cell = 0; cell < Count; cell++)
        {
            var scale = weightSeconds / heatCapacity[cell];
            var below = scale * conductance[cell];
            var above = scale * conductance[cell + 1];
            var given = Kelvins[cell] + (cell == 0 ? below * airKelvins : 0.0) + (cell == Count - 1 ? above * airKelvins : 0.0);
            var pivot = 1.0 + below + above;
            if (cell > 0)
            {
                pivot -= below * ratio[cell - 1];
                given += below * Kelvins[cell - 1];
            }

            ratio[cell] = above / pivot;
            Kelvins[cell] = given / pivot;
        }

        for (var cell = Count - 2; cell >= 0; cell--)
        {
            Kelvins[cell] += ratio[cell] * Kelvins[cell + 1];
        }
    }
}
