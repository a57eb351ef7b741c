using System.Numerics;
using System.Runtime.CompilerServices;
using Boardwright.Numerics;

namespace Boardwright.Drying.Board;

/// <summary>One implicit pass over a block of boards: coefficients, elimination from the centre to the surface, and back.</summary>
/// <remarks>
/// <para>The coefficients are worked out in the same loop that eliminates, cell by cell for all boards of the block: they are used while they are still in the
/// innermost cache and never stored for the whole board. The boards are independent, so the processor overlaps their divisions.</para>
/// <para>The eliminated row is x[i] = value[i] + ratio[i] x[i+1] with ratio between 0 and 1 and only sums of positive terms in the pivot: no cancellation.</para>
/// <para>Unchecked inside: the rows lie where the constructor and <see cref="BoardEnsemble"/> put them.</para>
/// </remarks>
internal sealed class BoardSweep
{
    /// <summary>Boards taken through all cells together.</summary>
    public const int BlockLanes = 64;

    // Rows of the working spaces: value and ratio of each cell side by side, after a row of zeros for the cell there is not behind the centre;
    // coefficient and potential of even and of odd cells in turn; conductance of the faces towards the centre and towards the surface.
    private const int Pair = 2 * BlockLanes;
    private const int Ratio = BlockLanes;
    private const int Even = 0;
    private const int Odd = 2 * BlockLanes;
    private const int Potential = BlockLanes;
    private const int Inward = 4 * BlockLanes;
    private const int Outward = 5 * BlockLanes;

    private const double Tiny = 1e-300;

    private readonly double[] width;
    private readonly double[] distance;
    private readonly double slope;
    private readonly double perSlope;
    private readonly double saturation;
    private readonly double near;
    private readonly int stride;
    private readonly double[] eliminated;
    private readonly double[] carried;

    public BoardSweep(BoardGrid grid, DiffusionLaw law, int stride)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(law.SlopePerFraction * law.SaturationFraction, -VectorExp.Lowest);
        this.stride = stride;
        (width, distance) = (grid.Width, grid.Distance);
        slope = law.SlopePerFraction;
        perSlope = slope == 0.0 ? 0.0 : 1.0 / slope;
        saturation = law.SaturationFraction;
        near = slope == 0.0 ? double.PositiveInfinity : 1e-4 / Math.Abs(slope);
        eliminated = new double[(grid.Cells + 1) * Pair];
        carried = new double[6 * BlockLanes];
    }

    /// <summary>Eliminates from the centre to the surface.</summary>
    /// <param name="before">Moisture before the step.</param>
    /// <param name="moisture">Moisture the coefficients are taken from.</param>
    /// <param name="air">Inputs; receives the conductance and the moisture at the surface.</param>
    /// <param name="first">First board.</param>
    /// <param name="lanes">Number of boards, whole vectors.</param>
    public void Forward(double[] before, double[] moisture, BoardAir air, int first, int lanes)
    {
        Begin(moisture, first, lanes);
        for (var cell = 0; cell < width.Length - 1; cell++)
        {
            Row(cell, ref before[cell * stride + first], ref moisture[cell * stride + first], ref moisture[(cell + 1) * stride + first], ref air.DiffusionNumber[first], (nuint)lanes);
        }

        LastRow(before, moisture, air, first, lanes);
    }

    /// <summary>Puts the solution back from the surface to the centre, with its mean; the last pass counts what left.</summary>
    public void Back(double[] moisture, double[] average, BoardAir air, int first, int lanes, bool last)
    {
        var end = width.Length - 1;
        ref var x = ref moisture[first];
        ref var rows = ref eliminated[Pair];
        for (var lane = 0; lane < lanes; lane += Vector<double>.Count)
        {
            var one = Vector.LoadUnsafe(ref rows, (nuint)(end * Pair + lane));
            one.StoreUnsafe(ref x, (nuint)(end * stride + lane));
            var sum = one * width[end];
            if (last)
                (Load(air.Loss, first + lane) + Load(air.Conductance, first + lane) * (one - Load(air.Equilibrium, first + lane))).CopyTo(air.Loss, first + lane);

            for (var cell = end - 1; cell >= 0; cell--)
            {
                ref var row = ref Unsafe.Add(ref rows, cell * Pair + lane);
                one = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref row, Ratio), one, Vector.LoadUnsafe(ref row));
                one.StoreUnsafe(ref x, (nuint)(cell * stride + lane));
                sum = Vector.FusedMultiplyAdd(one, new Vector<double>(width[cell]), sum);
            }

            sum.CopyTo(average, first + lane);
        }
    }

    // Coefficient and potential of the centre cell; nothing flows into it from behind.
    private void Begin(double[] moisture, int first, int lanes)
    {
        carried.AsSpan(Inward, BlockLanes).Clear();
        for (var lane = 0; lane < lanes; lane += Vector<double>.Count)
        {
            var (coefficient, potential) = Law(Load(moisture, first + lane));
            coefficient.CopyTo(carried, lane);
            potential.CopyTo(carried, Potential + lane);
        }
    }

    private void Row(int cell, ref double before, ref double moisture, ref double nextMoisture, ref double diffusionNumber, nuint lanes)
    {
        // Three short loops rather than one long: each has one slow operation, and the processor keeps more boards of a short loop under way.
        var (now, then) = cell % 2 == 0 ? (Even, Odd) : (Odd, Even);
        ref var coefficients = ref carried[now];
        ref var nextCoefficients = ref carried[then];
        ref var inwards = ref carried[Inward];
        ref var outwards = ref carried[Outward];
        for (nuint lane = 0; lane < lanes; lane += (nuint)Vector<double>.Count)
        {
            var (coefficient, potential) = Law(Vector.LoadUnsafe(ref nextMoisture, lane));
            coefficient.StoreUnsafe(ref nextCoefficients, lane);
            potential.StoreUnsafe(ref nextCoefficients, lane + Potential);
        }

        var perGap = new Vector<double>(1.0 / distance[cell]);
        for (nuint lane = 0; lane < lanes; lane += (nuint)Vector<double>.Count)
        {
            var mean = Mean(
                Vector.LoadUnsafe(ref moisture, lane), Vector.LoadUnsafe(ref nextMoisture, lane),
                Vector.LoadUnsafe(ref coefficients, lane + Potential), Vector.LoadUnsafe(ref nextCoefficients, lane + Potential),
                Vector.LoadUnsafe(ref coefficients, lane), Vector.LoadUnsafe(ref nextCoefficients, lane));
            (Vector.LoadUnsafe(ref diffusionNumber, lane) * perGap * mean).StoreUnsafe(ref outwards, lane);
        }

        ref var behind = ref eliminated[cell * Pair];
        var w = new Vector<double>(width[cell]);
        for (nuint lane = 0; lane < lanes; lane += (nuint)Vector<double>.Count)
        {
            var outward = Vector.LoadUnsafe(ref outwards, lane);
            Eliminate(ref behind, lane, w, w * Vector.LoadUnsafe(ref before, lane), Vector.LoadUnsafe(ref inwards, lane), outward);
            outward.StoreUnsafe(ref inwards, lane);
        }
    }

    // From the last cell to the air: half a cell of wood and the surface in series.
    private void LastRow(double[] before, double[] moisture, BoardAir air, int first, int lanes)
    {
        var cell = width.Length - 1;
        var w = new Vector<double>(width[cell]);
        var carry = cell % 2 == 0 ? Even : Odd;
        ref var behind = ref eliminated[cell * Pair];
        for (var lane = 0; lane < lanes; lane += Vector<double>.Count)
        {
            var m = first + lane;
            var i = cell * stride + m;
            var (here, skin, equilibrium) = (Load(moisture, i), Load(air.Surface, m), Load(air.Equilibrium, m));
            var (coefficient, potential) = Law(skin);
            var mean = Mean(here, skin, Load(carried, carry + Potential + lane), potential, Load(carried, carry + lane), coefficient);
            var inside = new Vector<double>(distance[cell]) / Vector.Max(Load(air.DiffusionNumber, m) * mean, new Vector<double>(Tiny));

            // A surface wetter than saturation evaporates like one at saturation.
            var force = skin - equilibrium;
            var bound = Vector.Max((Vector.Min(skin, new Vector<double>(saturation)) - equilibrium) / force, new Vector<double>(1e-9));
            var factor = Vector.ConditionalSelect(Vector.GreaterThan(force, new Vector<double>(1e-12)), bound, Vector<double>.One);
            var outside = Vector<double>.One / Vector.Max(Load(air.SurfaceNumber, m) * factor, new Vector<double>(Tiny));
            outside = Vector.Max(outside, (here - equilibrium) / Load(air.LossLimit, m) - inside);

            var outward = Vector<double>.One / (inside + outside);
            outward.CopyTo(air.Conductance, m);
            (here - (here - equilibrium) * inside * outward).CopyTo(air.Surface, m);
            Eliminate(ref behind, (nuint)lane, w, w * Load(before, i) + outward * equilibrium, Load(carried, Inward + lane), outward);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Eliminate(ref double behind, nuint lane, Vector<double> width, Vector<double> rightSide, Vector<double> inward, Vector<double> outward)
    {
        var left = Vector<double>.One - Vector.LoadUnsafe(ref behind, lane + Ratio);
        var pivot = Vector<double>.One / Vector.FusedMultiplyAdd(inward, left, width + outward);
        (Vector.FusedMultiplyAdd(inward, Vector.LoadUnsafe(ref behind, lane), rightSide) * pivot).StoreUnsafe(ref behind, lane + Pair);
        (outward * pivot).StoreUnsafe(ref behind, lane + Pair + Ratio);
    }

    // Coefficient over the one at saturation, and its integral over moisture. A constant law (slope 0) gives 1 and a potential that is not used.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (Vector<double> Coefficient, Vector<double> Potential) Law(Vector<double> moisture)
    {
        var over = moisture - new Vector<double>(saturation);
        var relative = VectorExp.Decay(new Vector<double>(slope) * Vector.MinNative(over, Vector<double>.Zero));
        return (relative, Vector.FusedMultiplyAdd(relative, new Vector<double>(perSlope), Vector.MaxNative(over, Vector<double>.Zero)));
    }

    // Mean of the coefficient over the moisture between two points; the plain mean where they are too near for the quotient.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector<double> Mean(
        Vector<double> one, Vector<double> other, Vector<double> onePotential, Vector<double> otherPotential, Vector<double> oneCoefficient, Vector<double> otherCoefficient)
    {
        var difference = other - one;
        return Vector.ConditionalSelect(
            Vector.LessThan(Vector.Abs(difference), new Vector<double>(near)),
            0.5 * (oneCoefficient + otherCoefficient),
            (otherPotential - onePotential) / difference);
    }

    private static Vector<double> Load(double[] values, int index) => new(values, index);
}
