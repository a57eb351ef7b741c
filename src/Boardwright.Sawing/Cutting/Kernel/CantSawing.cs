namespace Boardwright.Sawing;

/// <summary>Side boards off two faces, the cant between turned a quarter and sawn across: the best of all turns, sizes and places.</summary>
/// <remarks>
/// Value(turn, p, c) = boards above the cant + boards below it + boards of the cant clipped to its two faces; p and c run over their steps. Every candidate has a ceiling: those of
/// both sides, and of the wood across with no flitch above what its width c can bring. Candidates whose ceiling cannot pass the best found are not worked out, so the answer is that of trying them all.
/// </remarks>
internal static class CantSawing
{
    private readonly record struct Candidate(double Ceiling, double Sides, LogLie Lie, int Face, int Steps);

    /// <summary>The best plan worth more than what is asked for; null where none passes it.</summary>
    public static PlanDraft? Best(CuttingSpace space, double need)
    {
        var candidates = space.ForEachTurn(turn => Candidates(space, space.Lie(turn), need)).SelectMany(found => found).OrderByDescending(one => one.Ceiling);
        var programs = new Dictionary<LogLie, LayerProgram>();
        var (best, chosen, walk) = (need, (Candidate?)null, (IReadOnlyList<(int, int)>)[]);
        foreach (var candidate in candidates)
        {
            if (candidate.Ceiling <= best)
                break;

            var turned = space.QuarterOn(candidate.Lie.TurnDegrees);
            var clip = turned.Seen(Faces(space, candidate));
            if (!programs.TryGetValue(turned.Lie, out var across))
                programs[turned.Lie] = across = new LayerProgram(space, turned.Lie, clip);
            if (candidate.Sides + across.Clip(clip, best - candidate.Sides) <= best)
                continue;

            // A hair less than what is needed, so that what is just met still comes out exact.
            var cant = across.Up(0, false, best - candidate.Sides - 1e-9);
            if (cant > 0.0 && candidate.Sides + cant > best)
                (best, chosen, walk) = (candidate.Sides + cant, candidate, across.Walk());
        }

        return chosen is { } one ? Draft(space, one, walk) : null;
    }

    private static List<Candidate> Candidates(CuttingSpace space, LogLie lie, double need)
    {
        var candidates = new List<Candidate>();
        var across = space.QuarterOn(lie.TurnDegrees).Lie;
        var faceSteps = Math.Max(1, (int)Math.Round(space.Rules.FaceStep.Millimetres / space.GridMm));
        for (var size = space.Rules.CantMin.Millimetres; size < lie.Log.Highest - lie.Log.Lowest; size += space.Rules.CantStep.Millimetres)
        {
            // A trifle over size, so that its upper cut is on the grid too.
            var steps = SawGrid.Cover(size + space.KerfMm, space.GridMm);
            var most = across.Scratch.SolveUp(across, across.Field.Most, CantMm(space, steps));
            for (var face = 0; face + steps < lie.Count; face += faceSteps)
            {
                var sides = lie.Up.FreshAt(face + steps) + lie.Down.FreshAt(LayerBound.FromAbove(space, lie, face));
                if (sides + most > need)
                    candidates.Add(new(sides + most, sides, lie, face, steps));
            }
        }

        return candidates;
    }

    private static double CantMm(CuttingSpace space, int steps) => (steps * space.GridMm) - space.KerfMm;

    private static FlitchClip Faces(CuttingSpace space, Candidate one) => new(one.Lie.Height(one.Face), one.Lie.Height(one.Face) + CantMm(space, one.Steps));

    private static PlanDraft Draft(CuttingSpace space, Candidate one, IReadOnlyList<(int, int)> across)
    {
        var (lie, bottom) = (one.Lie, one.Lie.Height(one.Face));
        var top = bottom + CantMm(space, one.Steps);
        var draft = new PlanDraft(space, SawPattern.Cant, lie.TurnDegrees);
        var sides = new LayerProgram(space, lie);
        sides.Up(one.Face + one.Steps, true, lie.Up.FreshAt(one.Face + one.Steps) - 1e-9);
        var upper = draft.Layers(lie, sides.Walk(), FlitchClip.None);
        sides.Down(one.Face, lie.Down.FreshAt(LayerBound.FromAbove(space, lie, one.Face)) - 1e-9);
        var lower = draft.Layers(lie, sides.Walk(), FlitchClip.None).Reverse().Select(PlanDraft.Flip).ToList();
        draft.Open("log", lie.TurnDegrees, lie.Log.Lowest, With(space, draft.CutsOf(upper), top), upper);
        draft.Open("log, turned over on its sawn face", lie.TurnDegrees + 180.0, -top, With(space, draft.CutsOf(lower), -bottom), lower);
        var (turned, clip) = space.QuarterOn(lie.TurnDegrees).True(space, Faces(space, one));
        draft.SawThrough("cant", turned.TurnDegrees, turned.Log.LowestBetween(clip.LowMm, clip.HighMm), draft.Layers(turned, across, clip));
        return draft;
    }

    // The cant's own cut takes the place of the kerf under the first side board.
    private static List<double> With(CuttingSpace space, IReadOnlyList<double> cuts, double face) => [face, .. cuts.Where(cut => cut - face >= space.KerfMm - 1e-6)];
}
