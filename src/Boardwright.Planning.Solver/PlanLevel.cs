namespace Boardwright.Planning.Solver;

/// <summary>How well one level of a plan is settled, in cents.</summary>
/// <param name="Name"><c>late</c>, <c>risk</c> or <c>cost</c>.</param>
/// <param name="Cents">Value of the plan.</param>
/// <param name="BoundCents">No plan that is as good on the levels before has less than this.</param>
public sealed record PlanLevel(string Name, long Cents, long BoundCents)
{
    /// <summary>True when the bound is reached: nothing better exists.</summary>
    public bool Proven => BoundCents >= Cents;

    /// <summary>Distance to the bound in percent of the value; 0 when proven.</summary>
    public double GapPercent => Proven ? 0.0 : 100.0 * (Cents - BoundCents) / Math.Max(1.0, Math.Abs((double)Cents));
}
