using System.Numerics;

namespace Boardwright.Drying.Board;

/// <summary>Many boards drying or wetting side by side: moisture across the half thickness of each, stepped implicitly in time.</summary>
/// <remarks>
/// <para>Equation: dM/dt = d/dx (D dM/dx) from the centre (no flow) to the surface, where D dM/dx = -S (min(M, saturation) - E); a the half thickness, E the
/// equilibrium moisture content of the air, S the surface coefficient, M on the oven-dry basis as a fraction. See <see cref="DiffusionLaw"/> for D.</para>
/// <para>Scheme: finite volumes on a grid graded to the surface, backward Euler, the coefficient between two cells the mean of D over the moisture between them
/// (exact for steady flow), taken before the step and, with more than one pass, again from its outcome. Every pass is a system whose solution lies between the
/// start and the air, so any step is stable and keeps to the physical range; second order in space, first in time; what leaves the surface equals what the
/// cells lose to rounding.</para>
/// <para>Shape: kernel. Boards lie side by side and are advanced together by vector instructions, a block of them at a time so that its working space stays in
/// the innermost cache; a step allocates nothing. Stacks are independent: give each core its own ensemble.</para>
/// </remarks>
/// <method page="docs/methods/board-drying.md"/>
public sealed class BoardEnsemble
{
    private readonly BoardGrid grid;
    private readonly BoardSweep sweep;
    private readonly int stride;
    private readonly double[] moisture;
    private readonly double[] before;
    private readonly BoardAir air;
    private readonly double[] average;

    /// <summary>Boards of one law, oven-dry until their moisture is set.</summary>
    /// <param name="members">Number of boards, at least 1.</param>
    /// <param name="cells">Cells across the half thickness, at least 3; 12 give the time to dry within 0.4 % of 48.</param>
    /// <param name="law">Dependence of the coefficient on moisture.</param>
    public BoardEnsemble(int members, int cells, DiffusionLaw law)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(members, 1);
        grid = new BoardGrid(cells);
        Members = members;
        stride = Stride(members);
        moisture = new double[cells * stride];
        before = new double[cells * stride];
        average = new double[stride];
        air = new BoardAir(stride);
        sweep = new BoardSweep(grid, law, stride);
    }

    /// <summary>Number of boards.</summary>
    public int Members { get; }

    /// <summary>Number of cells across the half thickness.</summary>
    public int Cells => grid.Cells;

    /// <summary>How often a step is worked out, each time with coefficients nearer to its outcome: 1 is enough for steps of hours, 3 for long ones.</summary>
    public int Passes { get; init; } = 3;

    /// <summary>Centres of the cells, shares of the half thickness from the centre of the board.</summary>
    public ReadOnlySpan<double> Centres => grid.Centre;

    /// <summary>Input of the next step, by board: D(saturation) times step over half thickness squared. Zero with a zero surface number leaves the board as it is.</summary>
    public Span<double> DiffusionNumber => air.DiffusionNumber.AsSpan(0, Members);

    /// <summary>Input of the next step, by board: surface coefficient S times step over half thickness; infinity holds the surface at the equilibrium.</summary>
    public Span<double> SurfaceNumber => air.SurfaceNumber.AsSpan(0, Members);

    /// <summary>Input of the next step, by board: equilibrium moisture content of the air, fraction.</summary>
    public Span<double> Equilibrium => air.Equilibrium.AsSpan(0, Members);

    /// <summary>Input of the next step, by board: the most that the mean moisture may fall in it, fraction; infinity for no limit.</summary>
    public Span<double> LossLimit => air.LossLimit.AsSpan(0, Members);

    /// <summary>Mean moisture content of each board, fraction.</summary>
    public ReadOnlySpan<double> Average => average.AsSpan(0, Members);

    /// <summary>Moisture content at the surface of each board after the last step, fraction.</summary>
    public ReadOnlySpan<double> Surface => air.Surface.AsSpan(0, Members);

    /// <summary>What has left through the surface since the boards were set, as mean moisture content, fraction; negative for a gain.</summary>
    public ReadOnlySpan<double> Loss => air.Loss.AsSpan(0, Members);

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

        moistureFraction.CopyTo(air.Surface);
        air.Loss.AsSpan().Clear();
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
                sum += new Vector<double>(moisture, cell * stride + m) * grid.Width[cell];
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
        for (var index = 0; index < source.Length; index++)
        {
            var (cell, member) = (index / Members, index % Members);
            before[cell * stride + member] += source[index];
        }

        for (var first = 0; first < stride; first += BoardSweep.BlockLanes)
        {
            var lanes = Math.Min(BoardSweep.BlockLanes, stride - first);
            for (var pass = 0; pass < Passes; pass++)
            {
                sweep.Forward(before, moisture, air, first, lanes);
                sweep.Back(moisture, average, air, first, lanes, last: pass == Passes - 1);
            }
        }
    }

    // Whole vectors, and rows that do not all fall on the same lines of a cache.
    private static int Stride(int members)
    {
        var lanes = Vector<double>.Count;
        var whole = (members + lanes - 1) / lanes * lanes;
        return whole % 64 == 0 ? whole + 8 : whole;
    }
}
