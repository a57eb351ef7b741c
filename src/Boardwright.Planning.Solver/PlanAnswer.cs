namespace Boardwright.Planning.Solver;

/// <summary>A plan with what follows from it and how near it is to the best.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Outlook">What follows from it.</param>
/// <param name="Levels">Lateness, risk, cost: settled in this order.</param>
public sealed record PlanAnswer(Plan Plan, PlanOutlook Outlook, IReadOnlyList<PlanLevel> Levels)
{
    /// <summary>True when all levels are proven.</summary>
    public bool Proven => Levels.All(level => level.Proven);
}
