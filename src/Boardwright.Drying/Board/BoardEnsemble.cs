using System.Numerics;
using Boardwright.Numerics;

namespace Boardwright.Drying.Board;

/// <summary>Many boards drying or wetting side by side: moisture across the half thickness of each, stepped implicitly in time.</summary>
/// <remarks>
/// <para>Equation: dM/dt = d/dx (D dM/dx) from the centre (no flow) to the surface, where D dM/dx = -S (min(M, saturation) - E); a the half thickness, E the
/// equilibrium moisture content of the air, S the surface coefficient, M on the oven-dry basis as a fraction. See <see cref="DiffusionLaw"/> for D.</para>
/// <para>Scheme: finite volumes on a grid graded to the surface, backward Euler, the coefficient between two cells the mean of D over the moisture between them
/// (exact for steady flow), iterated. Unconditionally stable, second order in space, first in time; what leaves the surface equals what the cells lose to rounding.</para>
/// <para>Shape: kernel. Members lie side by side and are advanced together by vector instructions; a step allocates nothing.</para>
/// </remarks>
/// <method page="docs/methods/board-drying.md"/>
public sealed class BoardEnsemble
{
    private const double Tiny = 1e-300;
    private const int Passes = 3;

    private readonly BoardGrid grid;
    private readonly DiffusionLaw law;
    private readonly int stride;
    private readonly double[] moisture;
    private readonly double[] before;
    private readonly double[] potential;
    private readonly double[] coefficient;
    private readonly double[] lower;
    private readonly double[] diagonal;
    private readonly double[] upper;
    private readonly double[] scratch;
    private readonly double[] diffusionNumber;
    private readonly double[] surfaceNumber;
    private readonly double[] equilibrium;
    private readonly double[] lossLimit;
    private readonly double[] conductance;
    private readonly double[] surface;
    private readonly double[] loss;
    private readonly double[] average;

    /// <summary>Boards of one law, oven-dry until their moisture is set.</summary>
    /// <param name="members">Number of boards, at least 1.</param>
    /// <param name="cells">Cells across the half thickness, at least 3; 12 give the time to dry within 0.4 % of 48.</param>
    /// <param name="law">Dependence of the coefficient on moisture.</param>
    public BoardEnsemble(int members, int cells, DiffusionLaw law)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(members, 1);
        grid = new BoardGrid(cells);
        this.law = law;
        Members = members;
        var lanes = Vector<double>.Count;
        stride = (members + lanes - 1) / lanes * lanes;
        double[] OfCells() => new double[cells * stride];
        double[] OfMembers() => new double[stride];
        (moisture, before, potential, coefficient) = (OfCells(), OfCells(), OfCells(), OfCells());
        (lower, diagonal, upper, scratch) = (OfCells(), OfCells(), OfCells(), OfCells());
        (diffusionNumber, surfaceNumber, equilibrium, lossLimit) = (OfMembers(), OfMembers(), OfMembers(), OfMembers());
        (conductance, surface, loss, average) = (OfMembers(), OfMembers(), OfMembers(), OfMembers());
        lossLimit.AsSpan().Fill(double.PositiveInfinity);
    }

    /// <summary>Number of boards.</summary>
    public int Members { get; }

    /// <summary>Number of cells across the half thickness.</summary>
    public int Cells => grid.Cells;

    /// <summary>Centres of the cells, shares of the half thickness from the centre of the board.</summary>
    public ReadOnlySpan<double> Centres => grid.Centre;

    /// <summary>Input of the next step, by board: D(saturation) times step over half thickness squared. Zero with a zero surface number leaves the board as it is.</summary>
    public Span<double> DiffusionNumber => diffusionNumber.AsSpan(0, Members);

    /// <summary>Input of the next step, by board: surface coefficient S times step over half thickness; infinity holds the surface at the equilibrium.</summary>
    public Span<double> SurfaceNumber => surfaceNumber.AsSpan(0, Members);

    /// <summary>Input of the next step, by board: equilibrium moisture content of the air, fraction.</summary>
    public Span<double> Equilibrium => equilibrium.AsSpan(0, Members);

    /// <summary>Input of the next step, by board: the most that the mean moisture may fall in it, fraction; infinity for no limit.</summary>
    public Span<double> LossLimit => lossLimit.AsSpan(0, Members);

    /// <summary>Mean moisture content of each board, fraction.</summary>
    public ReadOnlySpan<double> Average => average.AsSpan(0, Members);

    /// <summary>Moisture content at the surface of each board after the last step, fraction.</summary>
    public ReadOnlySpan<double> Surface => surface.AsSpan(0, Members);

    /// <summary>What has left through the surface since the boards were set, as mean moisture content, fraction; negative for a gain.</summary>
    public ReadOnlySpan<double> Loss => loss.AsSpan(0, Members);

    /// <summary>Moisture of one cell of all boards, centre first; call <see cref="Refresh"/> after writing.</summary>
    public Span<double> Cell(int cell) => moisture.AsSpan(cell * stride, Members);

    /// <summary>Gives every board one moisture content throughout.</summary>
    /// <param name="moistureFraction">Moisture content of each board, fraction.</param>
    public void SetUniform(ReadOnlySpan<double> moistureFraction)
    {
        for (var cell = 0; cell < Cells; cell++)
        {
            moistureFraction.CopyTo(Cell(cell));
        }

        moistureFraction.CopyTo(surface);
        loss.AsSpan().Clear();
        Refresh();
    }

    /// <summary>Works the means out again after cells were written.</summary>
    public void Refresh()
    {
        for (var m = 0; m < stride; m += Vector<double>.Count)
        {
            var sum = Vector<double>.Zero;
            for (var cell = 0; cell < Cells; cell++)
            {
                sum += Load(moisture, cell * stride + m) * grid.Width[cell];
            }

            sum.CopyTo(average, m);
        }
    }

    /// <summary>Advances all boards by one step of the inputs given.</summary>
    public void Step() => Step([]);

    /// <summary>A step with a source of moisture in every cell (fraction per step, cell by cell, members side by side, no padding): for the check by a made-up solution.</summary>
    internal void Step(ReadOnlySpan<double> source)
    {
        moisture.CopyTo(before, 0);
        for (var pass = 0; pass < Passes; pass++)
        {
            Coefficients();
            Surfaces();
            Assemble();
            for (var index = 0; index < source.Length; index++)
            {
                var (cell, member) = (index / Members, index % Members);
                moisture[cell * stride + member] += grid.Width[cell] * source[index];
            }

            TridiagonalBatch.Solve(stride, lower, diagonal, upper, moisture, scratch);
        }

        AccountForLoss();
        Refresh();
    }

    // Coefficient of each cell over the one at saturation, and its integral over moisture.
    private void Coefficients()
    {
        var saturation = new Vector<double>(law.SaturationFraction);
        var slope = law.SlopePerFraction;
        var perSlope = slope == 0.0 ? 0.0 : 1.0 / slope;
        for (var i = 0; i < moisture.Length; i += Vector<double>.Count)
        {
            var m = Load(moisture, i);
            var relative = slope == 0.0 ? Vector<double>.One : Vector.Exp(slope * (Vector.Min(m, saturation) - saturation));
            relative.CopyTo(coefficient, i);
            (relative * perSlope + Vector.Max(m - saturation, Vector<double>.Zero)).CopyTo(potential, i);
        }
    }

    // Conductance from the last cell to the air: half a cell of wood and the surface in series.
    private void Surfaces()
    {
        var last = (Cells - 1) * stride;
        var saturation = new Vector<double>(law.SaturationFraction);
        var slope = law.SlopePerFraction;
        var perSlope = slope == 0.0 ? 0.0 : 1.0 / slope;
        for (var m = 0; m < stride; m += Vector<double>.Count)
        {
            var cell = Load(moisture, last + m);
            var skin = Load(surface, m);
            var air = Load(equilibrium, m);
            var relative = slope == 0.0 ? Vector<double>.One : Vector.Exp(slope * (Vector.Min(skin, saturation) - saturation));
            var skinPotential = relative * perSlope + Vector.Max(skin - saturation, Vector<double>.Zero);
            var mean = Mean(cell, skin, Load(potential, last + m), skinPotential, Load(coefficient, last + m), relative);
            var inside = new Vector<double>(grid.Distance[^1]) / Vector.Max(Load(diffusionNumber, m) * mean, new Vector<double>(Tiny));

            // A surface wetter than saturation evaporates like one at saturation.
            var force = skin - air;
            var bound = Vector.Max((Vector.Min(skin, saturation) - air) / force, new Vector<double>(1e-9));
            var factor = Vector.ConditionalSelect(Vector.GreaterThan(force, new Vector<double>(1e-12)), bound, Vector<double>.One);
            var outside = Vector<double>.One / Vector.Max(Load(surfaceNumber, m) * factor, new Vector<double>(Tiny));
            outside = Vector.Max(outside, (cell - air) / Load(lossLimit, m) - inside);

            (Vector<double>.One / (inside + outside)).CopyTo(conductance, m);
            (cell - (cell - air) * inside / (inside + outside)).CopyTo(surface, m);
        }
    }

    private void Assemble()
    {
        for (var m = 0; m < stride; m += Vector<double>.Count)
        {
            var number = Load(diffusionNumber, m);
            var inward = Vector<double>.Zero;
            for (var cell = 0; cell < Cells; cell++)
            {
                var i = cell * stride + m;
                var outward = cell == Cells - 1
                    ? Load(conductance, m)
                    : number * Mean(Load(moisture, i), Load(moisture, i + stride), Load(potential, i), Load(potential, i + stride), Load(coefficient, i), Load(coefficient, i + stride)) / new Vector<double>(grid.Distance[cell]);
                var width = new Vector<double>(grid.Width[cell]);
                (-inward).CopyTo(lower, i);
                (-outward).CopyTo(upper, i);
                (width + inward + outward).CopyTo(diagonal, i);
                inward = outward;
            }
        }

        // The right side overwrites the moisture only now: the coefficients above were taken from it.
        for (var cell = 0; cell < Cells; cell++)
        {
            for (var m = 0; m < stride; m += Vector<double>.Count)
            {
                var i = cell * stride + m;
                var right = Load(before, i) * grid.Width[cell];
                if (cell == Cells - 1)
                    right += Load(conductance, m) * Load(equilibrium, m);

                right.CopyTo(moisture, i);
            }
        }
    }

    private void AccountForLoss()
    {
        var last = (Cells - 1) * stride;
        for (var m = 0; m < stride; m += Vector<double>.Count)
        {
            (Load(loss, m) + Load(conductance, m) * (Load(moisture, last + m) - Load(equilibrium, m))).CopyTo(loss, m);
        }
    }

    // Mean of the coefficient over the moisture between two points; the plain mean where they are too near for the quotient.
    private Vector<double> Mean(
        Vector<double> one, Vector<double> other, Vector<double> onePotential, Vector<double> otherPotential, Vector<double> oneCoefficient, Vector<double> otherCoefficient)
    {
        var plain = 0.5 * (oneCoefficient + otherCoefficient);
        if (law.SlopePerFraction == 0.0)
            return plain;

        var difference = other - one;
        var near = Vector.LessThan(Vector.Abs(difference), new Vector<double>(1e-4 / Math.Abs(law.SlopePerFraction)));
        return Vector.ConditionalSelect(near, plain, (otherPotential - onePotential) / difference);
    }

    private static Vector<double> Load(double[] values, int index) => new(values, index);
}
