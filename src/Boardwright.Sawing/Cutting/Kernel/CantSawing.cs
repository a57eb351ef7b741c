namespace Boardwright.Sawing;

/// <summary>Side boards off two faces, the cant between turned a quarter and sawn across.</summary>
/// <remarks>Value(p, c) = boards above the cant + boards below it + boards of the cant clipped to its two faces; p and c run over their steps. Candidates whose
/// relaxed value cannot beat the best found are not evaluated, so the answer is that of trying them all.</remarks>
internal sealed class CantSawing
{
    private readonly CuttingSpace space;
    private readonly LayerProgram above;
    private readonly LayerProgram below;
    private readonly LayerProgram across;
    private readonly double lowest;

    public CantSawing(CuttingSpace space, LayerProgram live)
    {
        this.space = space;
        above = live;
        lowest = live.Height(0);

        // The same log upside down: its grid holds the faces below a cant whose lower face is on the grid of the first.
        below = new LayerProgram(space, live.TurnDegrees + 180.0, space.KerfMm - lowest);
        below.Value();
        below.Solve();
        across = new LayerProgram(space, live.TurnDegrees + 90.0);
        Search();
    }

    public double Best { get; private set; }

    private int BestFace { get; set; }

    private double BestSize { get; set; }

    public PlanDraft Draft()
    {
        var draft = new PlanDraft(space, SawPattern.Cant, above.TurnDegrees);
        var (bottom, top) = (above.Height(BestFace), above.Height(BestFace) + BestSize);
        var upper = draft.Layers(above, above.Walk(above.IndexOf(top + space.KerfMm), true));
        var lower = draft.Layers(below, below.Walk(below.IndexOf(space.KerfMm - bottom), true));
        draft.Open("log", above.TurnDegrees, above.Log.Lowest, With(draft.CutsOf(upper), top), upper);
        draft.Open("log, turned over on its sawn face", below.TurnDegrees, -top, With(draft.CutsOf(lower), -bottom), lower);
        across.Value(bottom, top);
        across.Solve();
        draft.SawThrough("cant", across.TurnDegrees, across.Log.LowestBetween(bottom, top), draft.Layers(across, across.Walk(), bottom, top));
        return draft;
    }

    // The cant's own cut takes the place of the kerf under the first side board.
    private List<double> With(IReadOnlyList<double> cuts, double face) => [face, .. cuts.Where(cut => cut - face >= space.KerfMm - 1e-6)];

    private void Search()
    {
        var field = new ValueField(space, above.TurnDegrees);
        var candidates = new List<(double Ceiling, double Sides, int Face, double Size)>();
        var faceSteps = Math.Max(1, (int)Math.Round(space.Rules.FaceStep.Millimetres / space.GridMm));
        for (var size = space.Rules.CantMin.Millimetres; size < above.Log.Highest - above.Log.Lowest; size += space.Rules.CantStep.Millimetres)
        {
            // A trifle over size, so that its upper cut is on the grid too.
            var steps = SawGrid.Cover(size + space.KerfMm, space.GridMm);
            var cant = (steps * space.GridMm) - space.KerfMm;
            for (var face = 0; face + steps < above.Count; face += faceSteps)
            {
                var bottom = above.Height(face);

                // A round log upside down is the same log.
                if (space.Shape.IsRoundAndStraight && bottom + (cant / 2.0) < -space.Rules.FaceStep.Millimetres)
                    continue;
                var sides = above.FromFresh(face + steps) + below.FromFresh(below.IndexOf(space.KerfMm - bottom));
                candidates.Add((sides + field.Between(bottom, bottom + cant), sides, face, cant));
            }
        }

        foreach (var (ceiling, sides, face, size) in candidates.OrderByDescending(one => one.Ceiling))
        {
            if (ceiling <= Best)
                break;

            across.Value(above.Height(face), above.Height(face) + size);
            across.Solve();
            if (across.Best > 0.0 && sides + across.Best > Best)
                (Best, BestFace, BestSize) = (sides + across.Best, face, size);
        }
    }
}
