namespace Boardwright.Planning;

/// <summary>What a plan is worth, in cents, compared level by level: first lateness, then risk, then cost.</summary>
/// <param name="LateCents">Days late of each order times what a day late counts.</param>
/// <param name="RiskCents">The same with drying times that are enough nine times in ten.</param>
/// <param name="CostCents">Kiln-days, fuel, heat taken from the shop, substitute wood and waiting, less the gain in value of the wood dried; may be negative.</param>
public readonly record struct PlanScore(long LateCents, long RiskCents, long CostCents) : IComparable<PlanScore>
{
    /// <inheritdoc/>
    public int CompareTo(PlanScore other) =>
        LateCents != other.LateCents ? LateCents.CompareTo(other.LateCents)
        : RiskCents != other.RiskCents ? RiskCents.CompareTo(other.RiskCents)
        : CostCents.CompareTo(other.CostCents);

    /// <summary>Better than.</summary>
    public static bool operator <(PlanScore left, PlanScore right) => left.CompareTo(right) < 0;

    /// <summary>Worse than.</summary>
    public static bool operator >(PlanScore left, PlanScore right) => left.CompareTo(right) > 0;

    /// <summary>As good or better.</summary>
    public static bool operator <=(PlanScore left, PlanScore right) => left.CompareTo(right) <= 0;

    /// <summary>As good or worse.</summary>
    public static bool operator >=(PlanScore left, PlanScore right) => left.CompareTo(right) >= 0;
}
