using System.Runtime.Intrinsics;

namespace Boardwright.Sawing;

/// <summary>The recurrence of parallel cuts: the best beyond every height, of flitches' values or of their ceilings.</summary>
/// <remarks>
/// <para>B(i) = max over t of v(i, t) + A(i + pitch_t); A(i) = max( B(i), S(i + kerf) ) beyond a fresh sawn face at i; S(i) = max( B(i), S(i + 1) ) in waste. So between two
/// boards lies one kerf, or waste of at least two: what a blade can do.</para>
/// <para>Places count from the side the recurrence ends at: upward they are the grid's heights, downward they count from above.
/// Cost: heights x thicknesses; upward four heights at a time, as a pitch is never under four.</para>
/// </remarks>
internal sealed class LayerBound
{
    private readonly CuttingSpace space;
    private readonly double[] board;
    private readonly double[] most;

    private LayerBound(CuttingSpace space, int places)
    {
        this.space = space;
        var beyond = places + space.PitchSteps.Max() + space.KerfSteps + FlitchField.Lanes + 1;
        (board, Fresh, Skip, most) = (new double[beyond], new double[beyond], new double[beyond], new double[space.PitchSteps.Length]);
    }

    /// <summary>Best beyond a fresh sawn face at a place.</summary>
    public double[] Fresh { get; }

    /// <summary>Best beyond a place that lies in waste.</summary>
    public double[] Skip { get; }

    /// <summary>Best beyond a fresh sawn face; nothing beyond the wood.</summary>
    public double FreshAt(int place) => place >= Fresh.Length ? 0.0 : Fresh[place];

    /// <summary>Place of a height counted from above.</summary>
    public static int FromAbove(CuttingSpace space, LogLie lie, int index) => lie.Count + space.KerfSteps + 1 - index;

    /// <summary>Nothing run yet.</summary>
    public static LayerBound For(CuttingSpace space, LogLie lie) => new(space, lie.Field.Stride);

    public static LayerBound Up(CuttingSpace space, LogLie lie, double[] values)
    {
        var bound = For(space, lie);
        bound.SolveUp(lie, values, double.PositiveInfinity);
        return bound;
    }

    public static LayerBound Down(CuttingSpace space, LogLie lie, double[] values)
    {
        var (last, stride) = (FromAbove(space, lie, 0), lie.Field.Stride);
        var bound = new LayerBound(space, last);
        for (var j = last; j >= 0; j--)
        {
            var best = 0.0;
            for (var t = 0; t < space.PitchSteps.Length; t++)
            {
                var index = last - j - space.PitchSteps[t];
                if (index >= 0 && index < lie.Count)
                    best = Math.Max(best, values[(t * stride) + index] + bound.Fresh[j + space.PitchSteps[t]]);
            }

            bound.Take(j, best);
        }

        return bound;
    }

    /// <summary>Runs upward again over other values, none above what a flitch of a width can bring.</summary>
    public double SolveUp(LogLie lie, double[] values, double widthMm)
    {
        var (stride, pitch) = (lie.Field.Stride, space.PitchSteps);
        for (var t = 0; t < pitch.Length; t++)
            most[t] = double.IsInfinity(widthMm) || !space.IsPruned ? double.PositiveInfinity : space.Values.Ceiling(t, widthMm);
        for (var first = stride - FlitchField.Lanes; first >= 0; first -= FlitchField.Lanes)
        {
            var best = Vector256<double>.Zero;
            for (var t = 0; t < pitch.Length; t++)
                best = Vector256.Max(best, Vector256.Min(Vector256.Create(most[t]), Vector256.Create(values, (t * stride) + first)) + Vector256.Create(Fresh, first + pitch[t]));
            best.CopyTo(board, first);
            for (var i = Math.Min(lie.Count, first + FlitchField.Lanes) - 1; i >= first; i--)
                Take(i, board[i]);
        }

        return Skip[0];
    }

    private void Take(int place, double best)
    {
        Skip[place] = Math.Max(best, Skip[place + 1]);
        Fresh[place] = Math.Max(best, Skip[place + space.KerfSteps]);
    }
}
