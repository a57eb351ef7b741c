namespace Boardwright.Sawing;

/// <summary>Through and through.</summary>
internal static class LiveSawing
{
    public static double Best(CuttingSpace space, double turnDegrees, out LayerProgram program)
    {
        program = new LayerProgram(space, turnDegrees);
        program.Value();
        program.Solve();
        return program.Best;
    }

    public static PlanDraft Draft(CuttingSpace space, LayerProgram program)
    {
        var draft = new PlanDraft(space, SawPattern.Live, program.TurnDegrees);
        draft.SawThrough("log", program.TurnDegrees, program.Log.Lowest, draft.Layers(program, program.Walk()));
        return draft;
    }
}
