namespace Boardwright.Sawing;

/// <summary>Side boards off two faces, the cant between turned a quarter and sawn across: the best of all turns, sizes and places.</summary>
/// <remarks>
/// Value(turn, p, c) = boards above the cant + boards below it + boards of the cant clipped to its two faces; p and c run over their steps. Every candidate has a ceiling: those of
/// both sides, and of the wood across clipped to its faces. Candidates whose ceiling cannot be the best are not worked out, so the answer is that of trying them all.
/// </remarks>
internal static class CantSawing
{
    private const int Lanes = FlitchField.Lanes;

    private readonly record struct Candidate(double Across, double Above, double Below, LogLie Lie, int Face, int Steps)
    {
        public double Most => Across + Above + Below;
    }

    /// <summary>The best plan worth more than what is asked for; null where none passes it.</summary>
    public static PlanDraft? Best(CuttingSpace space, double need)
    {
        var candidates = space.ForEachTurn(turn => Candidates(space, space.Lie(turn), need)).SelectMany(found => found).Select((one, place) => (one, place)).ToList();
        var programs = new Dictionary<LogLie, (LayerProgram Sides, LayerProgram Across)>();
        var (best, walk) = (new BestFound(need), (IReadOnlyList<(int, int)>)[]);
        foreach (var (candidate, place) in candidates.OrderByDescending(one => one.one.Most).Where(one => best.IsPassedBy(one.one.Most, one.place)))
        {
            var across = space.QuarterOn(candidate.Lie.TurnDegrees).Lie;
            var sides = Programs(space, programs, candidate.Lie).Sides;
            if (Value(space, candidate, sides, Programs(space, programs, across).Across, best.Need(place, space.Values.Quantum)) is var value && best.Take(value, place))
                walk = programs[across].Across.Walk();
        }

        return best.Place < 0 ? null : Draft(space, candidates[best.Place].one, walk, best.Value);
    }

    private static (LayerProgram Sides, LayerProgram Across) Programs(CuttingSpace space, Dictionary<LogLie, (LayerProgram Sides, LayerProgram Across)> programs, LogLie lie)
    {
        if (!programs.TryGetValue(lie, out var found))
            programs[lie] = found = (new LayerProgram(space, lie), new LayerProgram(space, lie, FlitchClip.None));
        return found;
    }

    // Part by part, each only as far as the ceilings of the rest leave it a chance; 0 where it has none.
    private static double Value(CuttingSpace space, Candidate one, LayerProgram sides, LayerProgram across, double need)
    {
        if (across.Clip(space.QuarterOn(one.Lie.TurnDegrees).Seen(Faces(space, one))) is var most && most + one.Above + one.Below <= need)
            return 0.0;
        var above = Side(one.Above, need - most - one.Below, least => sides.Up(one.Face + one.Steps, true, least));
        if (above + most + one.Below <= need)
            return 0.0;
        var below = Side(one.Below, need - most - above, least => sides.Down(one.Face, least));
        if (above + most + below <= need)
            return 0.0;
        var cant = across.Up(0, false, need - above - below);
        return cant > 0.0 ? above + below + cant : 0.0;
    }

    private static double Side(double most, double need, Func<double, double> exact) => most <= 0.0 ? 0.0 : exact(need);

    private static List<Candidate> Candidates(CuttingSpace space, LogLie lie, double need)
    {
        var candidates = new List<Candidate>();
        var turned = space.QuarterOn(lie.TurnDegrees);
        var across = turned.Lie;
        var faceSteps = Math.Max(1, (int)Math.Round(space.Rules.FaceStep.Millimetres / space.GridMm));
        for (var size = space.Rules.CantMin.Millimetres; size < lie.Log.Highest - lie.Log.Lowest; size += space.Rules.CantStep.Millimetres)
        {
            // A trifle over size, so that its upper cut is on the grid too.
            var steps = SawGrid.Cover(size + space.KerfMm, space.GridMm);
            var most = across.Scratch.SolveUp(across, across.Field.Most, CantMm(space, steps));
            for (var face = 0; face + steps < lie.Count; face += faceSteps)
            {
                var one = new Candidate(most, lie.Up.FreshAt(face + steps), lie.Down.FreshAt(LayerBound.FromAbove(space, lie, face)), lie, face, steps);
                if (one.Most > need)
                    candidates.Add(one);
            }
        }

        Span<FlitchClip> clips = stackalloc FlitchClip[Lanes];
        for (var first = 0; first < candidates.Count; first += Lanes)
        {
            var count = Math.Min(Lanes, candidates.Count - first);
            for (var lane = 0; lane < count; lane++)
                clips[lane] = turned.Seen(Faces(space, candidates[first + lane]));
            var most = across.Field.Clips.Together(clips[..count]);
            for (var lane = 0; lane < count; lane++)
                candidates[first + lane] = candidates[first + lane] with { Across = Math.Min(candidates[first + lane].Across, most[lane]) };
        }

        candidates.RemoveAll(one => one.Most <= need);
        return candidates;
    }

    private static double CantMm(CuttingSpace space, int steps) => (steps * space.GridMm) - space.KerfMm;

    private static FlitchClip Faces(CuttingSpace space, Candidate one) => new(one.Lie.Height(one.Face), one.Lie.Height(one.Face) + CantMm(space, one.Steps));

    private static PlanDraft Draft(CuttingSpace space, Candidate one, IReadOnlyList<(int, int)> across, double value)
    {
        var (lie, bottom) = (one.Lie, one.Lie.Height(one.Face));
        var top = bottom + CantMm(space, one.Steps);
        var draft = new PlanDraft(space, SawPattern.Cant, lie.TurnDegrees, value);
        var sides = new LayerProgram(space, lie);
        sides.Up(one.Face + one.Steps, true, 0.0);
        var upper = draft.Layers(lie, sides.Walk(), FlitchClip.None);
        sides.Down(one.Face, 0.0);
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
