namespace Boardwright.Sawing;

/// <summary>The recurrence of <see cref="LayerBound"/> run forward for one best sequence of cuts, working out clipped flitches only where they can matter.</summary>
/// <remarks>
/// <para>From what is reached at a place on, a flitch is worked out where reach + its ceiling + the ceiling of all beyond passes what is asked for: the answer is that of working all out.
/// Downward the same runs on places counted from above.</para>
/// <para>Cost: heights x thicknesses, and the trim of each block of flitches that is worked out, once for all runs. Nothing is allocated after construction.</para>
/// </remarks>
internal sealed class LayerProgram
{
    private readonly CuttingSpace space;
    private readonly LogLie lie;
    private readonly double[] ceilings;
    private readonly double[] value;
    private readonly double[] fresh;
    private readonly double[] skip;
    private readonly int[] by;
    private readonly int stride;
    private FlitchClip clip;
    private (bool IsDown, int Start, int End) run;

    /// <summary>The whole log.</summary>
    /// <param name="space">Log, rules and prices.</param>
    /// <param name="lie">How the log lies.</param>
    public LayerProgram(CuttingSpace space, LogLie lie)
        : this(space, lie, lie.Field.Whole, lie.Field.IsExact ? lie.Field.Whole : Unknown(lie), lie.Up) => clip = FlitchClip.None;

    /// <summary>What is left of it between two lines, or without its heart.</summary>
    public LayerProgram(CuttingSpace space, LogLie lie, FlitchClip clip)
        : this(space, lie, new double[lie.Field.Whole.Length], Unknown(lie), LayerBound.For(space, lie)) => Clip(clip);

    private LayerProgram(CuttingSpace space, LogLie lie, double[] ceilings, double[] value, LayerBound ceiling)
    {
        (this.space, this.lie, this.ceilings, this.value, Ceiling, stride) = (space, lie, ceilings, value, ceiling, lie.Field.Stride);
        var places = LayerBound.FromAbove(space, lie, 0) + space.PitchSteps.Max() + space.KerfSteps + 2;
        (fresh, skip, by) = (new double[places], new double[places], new int[places]);
    }

    /// <summary>What all flitches above a height bring at most.</summary>
    public LayerBound Ceiling { get; }

    /// <summary>Clips the flitches elsewhere; what they bring at most together.</summary>
    public double Clip(FlitchClip other)
    {
        clip = other;
        lie.Field.Clips.Fill(clip, ceilings);
        Array.Fill(value, double.NaN);
        return Ceiling.SolveUp(lie, ceilings, double.PositiveInfinity);
    }

    /// <summary>Value of the flitch of a thickness on a height.</summary>
    public double ValueAt(int thickness, int index)
    {
        var at = (thickness * stride) + index;
        if (double.IsNaN(value[at]))
            lie.Field.Evaluate(thickness, index / FlitchField.Lanes, clip, value.AsSpan(at - (index % FlitchField.Lanes), FlitchField.Lanes));
        return value[at];
    }

    /// <summary>Best value above a height.</summary>
    /// <param name="index">Where to begin.</param>
    /// <param name="isFresh">A fresh sawn face lies there.</param>
    /// <param name="need">What it must pass to be of use: an answer up to it says only that none passes it. The way to what passes it is the same for every need.</param>
    public double Up(int index, bool isFresh, double need) => Run(false, index, isFresh, need, Ceiling);

    /// <summary>Best value of the unclipped log below a sawn face whose kerf ends at a height.</summary>
    public double Down(int index, double need) => Run(true, LayerBound.FromAbove(space, lie, index), true, need, lie.Down);

    /// <summary>The flitches of the last run, from the bottom up.</summary>
    public IReadOnlyList<(int Thickness, int Index)> Walk()
    {
        var walk = new List<(int, int)>();
        var (place, isFresh) = (run.End, true);
        while (place > run.Start)
        {
            if (isFresh && by[place] >= 0)
            {
                var t = by[place];
                place -= space.PitchSteps[t];
                walk.Add((t, run.IsDown ? LayerBound.FromAbove(space, lie, 0) - place - space.PitchSteps[t] : place));
                isFresh = fresh[place] >= skip[place];
            }
            else if (skip[place - 1] == skip[place])
            {
                (place, isFresh) = (place - 1, false);
            }
            else
            {
                (place, isFresh) = (place - space.KerfSteps, true);
            }
        }

        if (!run.IsDown)
            walk.Reverse();
        return walk;
    }

    private static double[] Unknown(LogLie lie)
    {
        var unknown = new double[lie.Field.Whole.Length];
        Array.Fill(unknown, double.NaN);
        return unknown;
    }

    /// <summary>A plan near the best: the way the ceilings point, at its true value.</summary>
    private double Along(bool isDown, int start, bool isFresh, LayerBound beyond)
    {
        var (total, place, last) = (0.0, start, LayerBound.FromAbove(space, lie, 0));
        var end = isDown ? last : lie.Count;
        while (place < end)
        {
            var (best, chosen) = (isFresh ? beyond.Skip[place + space.KerfSteps] : beyond.Skip[place + 1], -1);
            for (var t = 0; t < space.PitchSteps.Length; t++)
            {
                var pitch = space.PitchSteps[t];
                var index = isDown ? last - place - pitch : place;
                if (index >= 0 && index < lie.Count && ceilings[(t * stride) + index] is > 0.0 and var most && most + beyond.Fresh[place + pitch] >= best)
                    (best, chosen) = (most + beyond.Fresh[place + pitch], t);
            }

            if (chosen >= 0)
                (total, place, isFresh) = (total + ValueAt(chosen, isDown ? last - place - space.PitchSteps[chosen] : place), place + space.PitchSteps[chosen], true);
            else
                (place, isFresh) = (place + (isFresh ? space.KerfSteps : 1), false);
        }

        return total;
    }

    private double Run(bool isDown, int start, bool isFresh, double need, LayerBound beyond)
    {
        need = Math.Max(need, Along(isDown, start, isFresh, beyond) - space.Values.Quantum);
        Array.Fill(fresh, double.NegativeInfinity);
        Array.Fill(skip, double.NegativeInfinity);
        (fresh[start], skip[start], by[start]) = isFresh ? (0.0, double.NegativeInfinity, -1) : (double.NegativeInfinity, 0.0, -1);
        var (best, last) = (0.0, LayerBound.FromAbove(space, lie, 0));
        run = (isDown, start, start);
        var end = isDown ? last : lie.Count;
        for (var place = start; place < end; place++)
        {
            var reach = Math.Max(fresh[place], skip[place]);
            skip[place + 1] = Math.Max(skip[place + 1], skip[place]);
            skip[place + space.KerfSteps] = Math.Max(skip[place + space.KerfSteps], fresh[place]);
            if (reach + Math.Max(beyond.Fresh[place], beyond.Skip[place]) <= Math.Max(need, best))
                continue;

            for (var t = 0; t < space.PitchSteps.Length; t++)
            {
                var pitch = space.PitchSteps[t];
                var index = isDown ? last - place - pitch : place;
                if (index < 0 || index >= lie.Count || ceilings[(t * stride) + index] is not (> 0.0 and var most) || reach + most + beyond.Fresh[place + pitch] <= Math.Max(need, best))
                    continue;

                if (ValueAt(t, index) is not (> 0.0 and var worth))
                    continue;

                var total = reach + worth;
                if (total > fresh[place + pitch])
                    (fresh[place + pitch], by[place + pitch]) = (total, t);
                if (total > best)
                    (best, run.End) = (total, place + pitch);
            }
        }

        return best;
    }
}
