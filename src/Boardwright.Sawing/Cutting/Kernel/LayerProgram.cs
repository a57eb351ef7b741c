namespace Boardwright.Sawing;

/// <summary>Exact dynamic programme of parallel cuts across a log turned by an angle.</summary>
/// <remarks>
/// <para>Heights y_i on a grid. v(i, t): best edged and trimmed value of the flitch from y_i to y_i + t. With a fresh sawn face at y_i the best is
/// A(i) = max( B(i), S(i + kerf) ); in waste it is S(i) = max( B(i), S(i + 1) ); B(i) = max over t of v(i, t) + A(i + pitch_t). So between two boards lies
/// one kerf, or waste of at least two: what a blade can do.</para>
/// <para>Cost: cells x thicknesses x trim windows for v, cells x thicknesses for the programme. Nothing is allocated after construction.</para>
/// <para>A flitch is edged to its full clear width; its grain is seen after that.</para>
/// </remarks>
internal sealed class LayerProgram
{
    private const double QuarteredShare = 0.8;

    private readonly CuttingSpace space;
    private readonly double firstMm;
    private readonly int[] windowsFrom;
    private readonly TrimWindow[] windows;
    private readonly double[] value;
    private readonly double[] board;
    private readonly double[] fresh;
    private readonly double[] skip;
    private readonly int[] choice;

    /// <param name="space">Log, rules and prices.</param>
    /// <param name="turnDegrees">Turn of the log.</param>
    /// <param name="anchorMm">A height the grid shall hold; null for the lowest point of the wood.</param>
    public LayerProgram(CuttingSpace space, double turnDegrees, double? anchorMm = null)
    {
        this.space = space;
        TurnDegrees = turnDegrees % 360.0;
        Log = TurnedLog.Of(space.Stations, TurnDegrees);
        var (lowest, highest) = (Log.Lowest, Log.Highest);
        firstMm = anchorMm is { } anchor ? anchor - (Math.Ceiling(((anchor - lowest) / space.GridMm) - 1e-9) * space.GridMm) : lowest;
        Count = (int)Math.Ceiling((highest - firstMm) / space.GridMm) + 1;
        var thicknesses = space.Values.GreenMm.Length;
        (windowsFrom, windows) = new TrimWindows(space, Log).Of(thicknesses, Count, Height);
        value = new double[thicknesses * Count];
        var beyond = Count + space.PitchSteps.Max() + space.KerfSteps + 1;
        (board, fresh, skip, choice) = (new double[Count], new double[beyond], new double[beyond], new int[Count]);
    }

    public double TurnDegrees { get; }

    public TurnedLog Log { get; }

    /// <summary>Number of heights on the grid.</summary>
    public int Count { get; }

    /// <summary>Best value of the whole height, opening anywhere.</summary>
    public double Best => skip[0];

    public double Height(int index) => firstMm + (index * space.GridMm);

    /// <summary>Nearest grid point of a height that lies on the grid.</summary>
    public int IndexOf(double heightMm) => (int)Math.Round((heightMm - firstMm) / space.GridMm);

    /// <summary>Best value above a fresh sawn face; nothing above the wood.</summary>
    public double FromFresh(int index) => index >= fresh.Length ? 0.0 : fresh[Math.Max(0, index)];

    /// <summary>Value of the flitch of a thickness on a height.</summary>
    public double ValueAt(int thickness, int index) => value[(thickness * Count) + index];

    /// <summary>Values every flitch between two upright lines.</summary>
    /// <param name="clipLow">Left line.</param>
    /// <param name="clipHigh">Right line.</param>
    /// <param name="heartRadiusMm">Half of the heart taken out of every flitch that meets it; 0 for none.</param>
    public void Value(double clipLow = double.NegativeInfinity, double clipHigh = double.PositiveInfinity, double heartRadiusMm = 0.0)
    {
        var out_ = Math.Max(heartRadiusMm, space.RotRadiusMm);
        for (var t = 0; t < space.Values.GreenMm.Length; t++)
        {
            for (var i = 0; i < Count; i++)
                value[(t * Count) + i] = BestWindow(t, i, clipLow, clipHigh, out_, out _);
        }
    }

    /// <summary>Runs the recurrence over the values.</summary>
    public void Solve()
    {
        Array.Clear(fresh);
        Array.Clear(skip);
        for (var i = Count - 1; i >= 0; i--)
        {
            var (best, chosen) = (0.0, -1);
            for (var t = 0; t < space.PitchSteps.Length; t++)
            {
                var v = value[(t * Count) + i];
                if (v > 0.0 && v + fresh[i + space.PitchSteps[t]] > best)
                    (best, chosen) = (v + fresh[i + space.PitchSteps[t]], t);
            }

            (board[i], choice[i]) = (best, chosen);
            skip[i] = Math.Max(best, skip[i + 1]);
            fresh[i] = Math.Max(best, skip[i + space.KerfSteps]);
        }
    }

    /// <summary>The flitches of the best plan, from the bottom up.</summary>
    /// <param name="index">Where to begin.</param>
    /// <param name="isFresh">A fresh sawn face lies there.</param>
    public IEnumerable<(int Thickness, int Index)> Walk(int index = 0, bool isFresh = false)
    {
        while (index < Count)
        {
            var rest = isFresh ? skip[index + space.KerfSteps] : skip[index + 1];
            if (choice[index] >= 0 && board[index] >= rest)
            {
                yield return (choice[index], index);
                index += space.PitchSteps[choice[index]];
                isFresh = true;
            }
            else
            {
                index += isFresh ? space.KerfSteps : 1;
                isFresh = false;
            }
        }
    }

    /// <summary>Best trimmed and edged value of one flitch, and how.</summary>
    public double BestWindow(int thickness, int index, double clipLow, double clipHigh, double outRadiusMm, out FlitchWindow window)
    {
        var at = (thickness * Count) + index;
        var (best, values, clipped) = (0.0, space.Values, clipHigh - clipLow);
        var middle = Height(index) + (values.GreenMm[thickness] / 2.0);
        window = default;

        // Longest first: once the rest could not beat the best even at the full width between the lines, it is not looked at.
        foreach (ref readonly var trim in windows.AsSpan(windowsFrom[at]..windowsFrom[at + 1]))
        {
            if (clipped < double.PositiveInfinity && values.Ceiling(thickness, trim.Steps, clipped) <= best)
                break;

            var (left, right) = (Math.Max(clipLow, trim.Low), Math.Min(clipHigh, trim.High));
            if (right - left < values.NarrowestMm - 1e-9)
                continue;

            var (outLeft, outRight) = outRadiusMm > space.RotRadiusMm
                ? Log.CoreBetween(trim.From, trim.To, Height(index), Height(index) + values.GreenMm[thickness], outRadiusMm)
                : (trim.RotLow, trim.RotHigh);
            if (outLeft > outRight)
            {
                var grain = Grain(trim, middle, left, right);
                if (values.At(thickness, grain, trim.Steps, values.WidthSteps(right - left)) is var whole && whole > best)
                    (best, window) = (whole, new(trim.From, trim.Steps, left, right, 0.0, -1.0, grain, 0));
                continue;
            }

            // A rip needs its kerf even where the rot only just touches the flitch.
            var spare = Math.Max(0.0, space.KerfMm - (outRight - outLeft)) / 2.0;
            var (leftTo, rightFrom) = (Math.Min(right, outLeft - spare), Math.Max(left, outRight + spare));
            var (leftGrain, rightGrain) = (Grain(trim, middle, left, leftTo), Grain(trim, middle, rightFrom, right));
            var sum = Strip(thickness, leftGrain, trim.Steps, leftTo - left) + Strip(thickness, rightGrain, trim.Steps, right - rightFrom);
            if (sum > best)
                (best, window) = (sum, new(trim.From, trim.Steps, left, leftTo, rightFrom, right, leftGrain, rightGrain));
        }

        return best;
    }

    private double Strip(int thickness, int grain, int steps, double width) => width <= 0.0 ? 0.0 : space.Values.At(thickness, grain, steps, space.Values.WidthSteps(width));

    /// <summary>Rings round the centre meet a level face at 45 degrees or more where a point lies farther beside the centre than above or below it.</summary>
    private int Grain(in TrimWindow trim, double middle, double left, double right)
    {
        if (!space.Values.HasGrain || right <= left)
            return (int)BoardGrain.Flat;

        var rise = Math.Abs(middle - ((Log.Up[trim.From] + Log.Up[trim.To]) / 2.0));
        var centre = (Log.Across[trim.From] + Log.Across[trim.To]) / 2.0;
        var flat = Math.Max(0.0, Math.Min(right, centre + rise) - Math.Max(left, centre - rise));
        return (int)(flat <= (1.0 - QuarteredShare) * (right - left) ? BoardGrain.Quartered : BoardGrain.Flat);
    }
}
