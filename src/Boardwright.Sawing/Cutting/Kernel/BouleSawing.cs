namespace Boardwright.Sawing;

/// <summary>Through and through into slabs of one thickness that stay together: the best run of flitches a kerf apart that all meet a boule's row.</summary>
/// <remarks>F(i) = v(i) + F(i + pitch) where v(i) > 0, else 0; the best F over heights, thicknesses and turns. Cost: heights x thicknesses x turns.</remarks>
internal static class BouleSawing
{
    public static PlanDraft? Best(CuttingSpace space)
    {
        var (best, chosen) = (0.0, (Lie: (LogLie?)null, Thickness: 0, Index: 0));
        foreach (var lie in space.Turns.Select(space.Lie))
        {
            for (var t = 0; t < space.PitchSteps.Length; t++)
            {
                var sums = Sums(space, lie, t);
                for (var i = 0; i < lie.Count; i++)
                {
                    if (sums[i] > best)
                        (best, chosen) = (sums[i], (lie, t, i));
                }
            }
        }

        return chosen.Lie is { } found ? Draft(space, found, chosen.Thickness, chosen.Index, best) : null;
    }

    private static double[] Sums(CuttingSpace space, LogLie lie, int thickness)
    {
        var sums = new double[lie.Count + space.PitchSteps[thickness]];
        for (var i = lie.Count - 1; i >= 0 && space.Values.Boules[thickness].Length > 0; i--)
        {
            var value = lie.Trim.Slab(space.Values.Boules[thickness], thickness, lie.Height(i), out _, out _);
            sums[i] = value > 0.0 ? value + sums[i + space.PitchSteps[thickness]] : 0.0;
        }

        return sums;
    }

    private static PlanDraft Draft(CuttingSpace space, LogLie lie, int thickness, int index, double value)
    {
        var sums = Sums(space, lie, thickness);
        var walk = new List<(int, int)>();
        for (var i = index; i < lie.Count && sums[i] > 0.0; i += space.PitchSteps[thickness])
            walk.Add((thickness, i));
        var draft = new PlanDraft(space, SawPattern.Boule, lie.TurnDegrees, value);
        draft.SawThrough("log", lie.TurnDegrees, lie.Log.Lowest, draft.Boule(lie, walk));
        return draft;
    }
}
