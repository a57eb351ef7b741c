namespace Boardwright.Sawing;

/// <summary>For standing rings: a middle block sawn flat with the heart taken out, both outer parts turned a quarter and sawn upright.</summary>
/// <remarks>
/// G(i) = max( U(i), max over t of v(i, t) + G(i + pitch_t) ) from a fresh face at i upward, v with the heart out, U the outer part above; the plan is the
/// best of L(p) + max over t of v(p, t) + G(p + pitch_t), L the outer part below. Faces of the outer parts lie on their own coarser step; a middle block may end
/// anywhere, its outer part is then taken from the next such face.
/// </remarks>
internal sealed class QuarterSawing
{
    private readonly CuttingSpace space;
    private readonly LayerProgram flat;
    private readonly LayerProgram upright;
    private readonly double[] above;
    private readonly double[] below;
    private readonly double[] best;
    private readonly int[] choice;
    private readonly int faceSteps;
    private readonly int start;

    public QuarterSawing(CuttingSpace space, double turnDegrees)
    {
        this.space = space;
        flat = new LayerProgram(space, turnDegrees);
        flat.Value(heartRadiusMm: HeartMm);
        upright = new LayerProgram(space, turnDegrees + 90.0);
        faceSteps = Math.Max(1, (int)Math.Round(space.Rules.FaceStep.Millimetres / space.GridMm));
        var faces = (flat.Count / faceSteps) + 2;
        (above, below) = (new double[faces], new double[faces]);
        var middle = (flat.Log.Lowest + flat.Log.Highest) / 2.0;
        for (var face = 0; face < faces; face++)
        {
            // The block lies round the middle: an outer part never reaches past it.
            var height = flat.Height(face * faceSteps);
            (above[face], below[face]) = height >= middle ? (Outer(height, double.PositiveInfinity), 0.0) : (0.0, Outer(double.NegativeInfinity, height - space.KerfMm));
        }

        (best, choice) = (new double[flat.Count + space.PitchSteps.Max() + 1], new int[flat.Count]);
        start = Search();
    }

    public double Best { get; private set; }

    private double HeartMm => space.Rules.HeartOut.Millimetres / 2.0;

    public PlanDraft Draft()
    {
        var draft = new PlanDraft(space, SawPattern.Quarter, flat.TurnDegrees);
        var walk = Middle().ToList();
        var middle = draft.Layers(flat, walk, heartRadiusMm: HeartMm);
        var end = walk[^1].Index + space.PitchSteps[walk[^1].Thickness];
        draft.Open("log", flat.TurnDegrees, flat.Log.Lowest, [middle[0].BottomMm - space.KerfMm, .. middle.Select(layer => layer.TopMm)], middle);
        Upright(draft, "upper part", flat.Height(FaceFrom(end) * faceSteps), double.PositiveInfinity);
        Upright(draft, "lower part", double.NegativeInfinity, middle[0].BottomMm - space.KerfMm);
        return draft;
    }

    private void Upright(PlanDraft draft, string part, double low, double high)
    {
        Outer(low, high);
        draft.SawThrough(part, upright.TurnDegrees, upright.Log.LowestBetween(low, high), draft.Layers(upright, upright.Walk(), low, high));
    }

    private double Outer(double low, double high)
    {
        upright.Value(low, high);
        upright.Solve();
        return upright.Best;
    }

    private int FaceFrom(int index) => Math.Min(above.Length - 1, (index + faceSteps - 1) / faceSteps);

    private int Search()
    {
        for (var i = best.Length - 1; i >= 0; i--)
        {
            best[i] = above[FaceFrom(i)];
            if (i >= flat.Count)
                continue;

            (var block, choice[i]) = Block(i);
            if (block > best[i])
                best[i] = block;
            else
                choice[i] = -1;
        }

        var first = -1;
        for (var face = 0; face * faceSteps < flat.Count; face++)
        {
            var (block, chosen) = Block(face * faceSteps);
            if (chosen >= 0 && below[face] + block > Best)
                (Best, first) = (below[face] + block, face * faceSteps);
        }

        return first;
    }

    private (double Value, int Thickness) Block(int index)
    {
        var (most, chosen) = (0.0, -1);
        for (var t = 0; t < space.PitchSteps.Length; t++)
        {
            var v = flat.ValueAt(t, index);
            if (v > 0.0 && v + best[index + space.PitchSteps[t]] > most)
                (most, chosen) = (v + best[index + space.PitchSteps[t]], t);
        }

        return (most, chosen);
    }

    private IEnumerable<(int Thickness, int Index)> Middle()
    {
        var index = start;
        var chosen = Block(index).Thickness;
        while (chosen >= 0)
        {
            yield return (chosen, index);
            index += space.PitchSteps[chosen];
            chosen = index < choice.Length ? choice[index] : -1;
        }
    }
}
