namespace Boardwright.Sawing;

/// <summary>Through and through: the best of all turns.</summary>
internal static class LiveSawing
{
    /// <summary>The best plan worth more than what is asked for; null where no turn passes it.</summary>
    public static PlanDraft? Best(CuttingSpace space, double need)
    {
        var best = space.ForEachTurn(turn => space.Lie(turn).Up.Skip[0]);
        var lie = space.Lie(space.Turns[Array.IndexOf(best, best.Max())]);
        if (lie.Up.Skip[0] <= need)
            return null;

        var program = new LayerProgram(space, lie);
        program.Up(0, false, lie.Up.Skip[0] * (1.0 - 1e-12));
        var draft = new PlanDraft(space, SawPattern.Live, lie.TurnDegrees);
        draft.SawThrough("log", lie.TurnDegrees, lie.Log.Lowest, draft.Layers(lie, program.Walk(), FlitchClip.None));
        return draft;
    }
}
