namespace Boardwright.Planning;

/// <summary>What follows for one charge of a plan.</summary>
/// <param name="Charge">The charge.</param>
/// <param name="HeatFrom">Step at which its warm-up begins; 0 for a started charge.</param>
/// <param name="WarmAt">Step at which it is warm and drying begins.</param>
/// <param name="DryAt">Step at which it is dry, as often as not (p50).</param>
/// <param name="DryAtMost">Step at which it is dry, nine times in ten (p90).</param>
/// <param name="EmptyAt">Step at which it is out of the kiln.</param>
/// <param name="Slowest">The stack that takes longest; empty for a started charge.</param>
/// <param name="Mildness">The schedule numbers that rule it; null for a started charge.</param>
/// <param name="CostMoney">Kiln-days and heat less the gain of its wood.</param>
public sealed record ChargeOutlook(
    Charge Charge, int HeatFrom, int WarmAt, int DryAt, int DryAtMost, int EmptyAt, string Slowest, ScheduleMildness? Mildness, decimal CostMoney)
{
    /// <summary>Heat and electricity in <see cref="CostMoney"/>.</summary>
    public decimal HeatMoney { get; init; }
}
