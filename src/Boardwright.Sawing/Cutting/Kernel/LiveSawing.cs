namespace Boardwright.Sawing;

/// <summary>Through and through: the best of all turns.</summary>
/// <remarks>Turns are worked out by falling ceiling until none left can be the best.</remarks>
internal static class LiveSawing
{
    /// <summary>The best plan worth more than what is asked for; null where no turn passes it.</summary>
    public static PlanDraft? Best(CuttingSpace space, double need)
    {
        var most = space.ForEachTurn(turn => space.Lie(turn).Up.Skip[0]);
        var (best, walk) = (new BestFound(need), (IReadOnlyList<(int, int)>)[]);
        foreach (var turn in Enumerable.Range(0, most.Length).OrderByDescending(turn => most[turn]).Where(turn => best.IsPassedBy(most[turn], turn)))
        {
            var program = new LayerProgram(space, space.Lie(space.Turns[turn]));
            if (best.Take(program.Up(0, false, best.Need(turn, space.Values.Quantum)), turn))
                walk = program.Walk();
        }

        if (best.Place < 0)
            return null;

        var lie = space.Lie(space.Turns[best.Place]);
        var draft = new PlanDraft(space, SawPattern.Live, lie.TurnDegrees, best.Value);
        draft.SawThrough("log", lie.TurnDegrees, lie.Log.Lowest, draft.Layers(lie, walk, FlitchClip.None));
        return draft;
    }
}
