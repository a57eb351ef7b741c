namespace Boardwright.Sawing;

/// <summary>For standing rings: a middle block sawn flat with the heart taken out, both outer parts turned a quarter and sawn upright; the best of all turns.</summary>
/// <remarks>
/// From a lower face p the block is built upward, a kerf between boards: reach(i + pitch_t) = reach(i) + v(i, t), v with the heart out, reach(p) = L(p), the outer part below;
/// the plan is the best of reach(i) + U(i), U the outer part above. Faces of the outer parts lie on their own coarser step; a middle block may end anywhere, its outer part is then
/// taken from the next such face. Ceilings of flitches and outer parts leave out what cannot pass the best found.
/// </remarks>
internal sealed class QuarterSawing
{
    private readonly CuttingSpace space;
    private readonly LogLie lie;
    private readonly QuarterTurn turned;
    private readonly LogLie upright;
    private readonly int faceSteps;
    private readonly double[] above;
    private readonly double[] below;
    private readonly double[] block;

    private QuarterSawing(CuttingSpace space, double turnDegrees)
    {
        this.space = space;
        lie = space.Lie(turnDegrees);
        turned = space.QuarterOn(turnDegrees);
        upright = turned.Lie;
        faceSteps = Math.Max(1, (int)Math.Round(space.Rules.FaceStep.Millimetres / space.GridMm));
        var faces = (lie.Count / faceSteps) + 2;
        (above, below) = (new double[faces], new double[faces]);
        FillOuter(above, Above, 0.0);
        FillOuter(below, Below, space.KerfMm);
        Ceilings = new double[lie.Field.Whole.Length];
        lie.Field.Clips.Fill(Heart, Ceilings);
        block = new double[lie.Count + space.PitchSteps.Max() + 1];
        Most = Ceiling();
    }

    /// <summary>No plan of this turn is worth more.</summary>
    private double Most { get; }

    private double[] Ceilings { get; }

    private FlitchClip Heart => FlitchClip.None with { HeartRadiusMm = space.Rules.HeartOut.Millimetres / 2.0 };

    /// <summary>The best plan worth more than what is asked for; null where none passes it.</summary>
    public static PlanDraft? Best(CuttingSpace space, double need)
    {
        var (best, draft) = (new BestFound(need), (PlanDraft?)null);
        var turns = space.ForEachTurn(turn => new QuarterSawing(space, turn));
        foreach (var place in Enumerable.Range(0, turns.Length).OrderByDescending(place => turns[place].Most).Where(place => best.IsPassedBy(turns[place].Most, place)))
        {
            if (turns[place].Exact(best.Need(place, space.Values.Quantum)) is var (value, way) && best.Take(value, place))
                draft = turns[place].Draft(way, value);
        }

        return draft;
    }

    private static FlitchClip Above(double height) => new(height, double.PositiveInfinity);

    private static FlitchClip Below(double height) => new(double.NegativeInfinity, height);

    private int FaceFrom(int index) => Math.Min(above.Length - 1, (index + faceSteps - 1) / faceSteps);

    private void FillOuter(double[] most, Func<double, FlitchClip> side, double kerfMm)
    {
        Span<FlitchClip> clips = stackalloc FlitchClip[FlitchField.Lanes];
        for (var first = 0; first < most.Length; first += clips.Length)
        {
            var count = Math.Min(clips.Length, most.Length - first);
            for (var lane = 0; lane < count; lane++)
                clips[lane] = turned.Seen(side(lie.Height((first + lane) * faceSteps) - kerfMm));
            var four = upright.Field.Clips.Together(clips[..count]);
            for (var lane = 0; lane < count; lane++)
                most[first + lane] = four[lane];
        }
    }

    private double Ceiling()
    {
        for (var i = block.Length - 1; i >= 0; i--)
            block[i] = Math.Max(above[FaceFrom(i)], i < lie.Count ? Block(i) : 0.0);

        var most = 0.0;
        for (var face = 0; face * faceSteps < lie.Count; face++)
            most = Math.Max(most, below[face] + Block(face * faceSteps));
        return most;
    }

    private double Block(int index)
    {
        var most = 0.0;
        for (var t = 0; t < space.PitchSteps.Length; t++)
        {
            if (CeilingOf(t, index) is > 0.0 and var value)
                most = Math.Max(most, value + block[index + space.PitchSteps[t]]);
        }

        return most;
    }

    private double CeilingOf(int thickness, int index) => Ceilings[(thickness * lie.Field.Stride) + index];

    /// <summary>Value and block (from the bottom up) of the best plan of this turn, exact where it passes what is asked for.</summary>
    private (double Value, List<(int Thickness, int Index)> Way) Exact(double need)
    {
        var flat = new LayerProgram(space, lie, Heart);
        var (lower, upper) = (Unknown(below.Length), Unknown(above.Length));
        var (reach, by) = (new double[block.Length], new int[block.Length]);
        Array.Fill(reach, double.NegativeInfinity);
        var (best, way) = (need, new List<(int, int)>());
        for (var i = 0; i < block.Length; i++)
        {
            if (reach[i] + above[FaceFrom(i)] > best && reach[i] + Part(upper, above, FaceFrom(i), Above) is var total && total > best)
                (best, way) = (total, Back(by, reach, i));
            if (i >= lie.Count)
                continue;
            if (i % faceSteps == 0 && below[i / faceSteps] + Block(i) > best && Part(lower, below, i / faceSteps, height => Below(height - space.KerfMm)) is var outer && outer > reach[i])
                (reach[i], by[i]) = (outer, -1);
            for (var t = 0; t < space.PitchSteps.Length; t++)
            {
                var next = i + space.PitchSteps[t];
                if (CeilingOf(t, i) is not (> 0.0 and var most) || reach[i] + most + block[next] <= best || flat.ValueAt(t, i) is not (> 0.0 and var value) || reach[i] + value <= reach[next])
                    continue;
                (reach[next], by[next]) = (reach[i] + value, t);
            }
        }

        return way.Count == 0 ? (0.0, way) : (best, way);
    }

    private static double[] Unknown(int count)
    {
        var unknown = new double[count];
        Array.Fill(unknown, double.NaN);
        return unknown;
    }

    private double Part(double[] known, double[] most, int face, Func<double, FlitchClip> side)
    {
        if (double.IsNaN(known[face]))
            known[face] = most[face] > 0.0 ? Solved(turned.Seen(side(lie.Height(face * faceSteps)))).Value : 0.0;
        return known[face];
    }

    private (LayerProgram Program, double Value) Solved(FlitchClip clip)
    {
        var program = new LayerProgram(space, upright, clip);
        return (program, program.Up(0, false, 0.0));
    }

    private List<(int Thickness, int Index)> Back(int[] by, double[] reach, int end)
    {
        var way = new List<(int Thickness, int Index)>();
        for (var i = end; by[i] >= 0 && !double.IsNegativeInfinity(reach[i]);)
        {
            var t = by[i];
            i -= space.PitchSteps[t];
            way.Add((t, i));
        }

        way.Reverse();
        return way;
    }

    private PlanDraft Draft(List<(int Thickness, int Index)> way, double value)
    {
        var draft = new PlanDraft(space, SawPattern.Quarter, lie.TurnDegrees, value);
        var middle = draft.Layers(lie, way, Heart);
        var end = way[^1].Index + space.PitchSteps[way[^1].Thickness];
        var upper = lie.Height(FaceFrom(end) * faceSteps);
        draft.Open("log", lie.TurnDegrees, lie.Log.Lowest, [middle[0].BottomMm - space.KerfMm, .. middle.Select(layer => layer.TopMm)], middle);
        Upright(draft, "upper part", Above(upper));
        Upright(draft, "lower part", Below(middle[0].BottomMm - space.KerfMm));
        return draft;
    }

    private void Upright(PlanDraft draft, string part, FlitchClip side)
    {
        var (program, value) = Solved(turned.Seen(side));
        var (truly, clip) = turned.True(space, side);
        if (value > 0.0)
            draft.SawThrough(part, truly.TurnDegrees, truly.Log.LowestBetween(clip.LowMm, clip.HighMm), draft.Layers(truly, program.Walk(), clip));
    }
}
