namespace Boardwright.Planning;

/// <summary>What a search by small changes looks for: how much it likes a plan on the way, and which plan it keeps.</summary>
internal abstract class SearchAim
{
    private const double RiskShare = 0.1;
    private const double CostShare = 0.02;

    /// <summary>What a plan is worth on the way, in cents; less is better. All levels count at once, so that the way to less lateness is not shut by a little cost.</summary>
    public virtual double Energy(PlanScore score, TimedCharge?[] chargeOfStack) => score.LateCents + RiskShare * score.RiskCents + CostShare * score.CostCents;

    /// <summary>True where a plan is better than the best one kept so far; it is the best one then.</summary>
    public abstract bool Takes(PlanScore score, TimedCharge?[] chargeOfStack);
}

/// <summary>The least score, level by level.</summary>
internal sealed class LeastScore(PlanScore first) : SearchAim
{
    private PlanScore best = first;

    public override bool Takes(PlanScore score, TimedCharge?[] chargeOfStack)
    {
        if (!(score < best))
        {
            return false;
        }

        best = score;
        return true;
    }
}

/// <summary>The fewest changes against an earlier plan, among plans no later than one found and dearer in risk and cost together by less than a change is worth.</summary>
/// <remarks>People set themselves to a plan: a stack that goes into another kiln, or on another day, is a change.</remarks>
internal sealed class FewestChanges : SearchAim
{
    private const double CentsEach = 500.0; // on the way only: what is kept goes by their number

    private readonly PlanScore found;
    private readonly long dearest;
    private readonly (int Kiln, int Day)?[] earlier; // by stack
    private readonly PlanTables tables;
    private (int Changes, PlanScore Score) best;

    /// <param name="tables">The yard.</param>
    /// <param name="from">The earlier plan, under today's facts.</param>
    /// <param name="plan">The plan found.</param>
    /// <param name="worthCents">What a change has to save.</param>
    public FewestChanges(PlanTables tables, Plan from, Plan plan, long worthCents)
    {
        this.tables = tables;
        earlier = Places(tables, from);
        found = PlanOutlook.Of(tables, plan).Score;
        dearest = found.RiskCents + found.CostCents + worthCents;
        best = (Differ(earlier, Places(tables, plan)), found);
    }

    /// <summary>Changes of the best plan so far.</summary>
    public int Changes => best.Changes;

    /// <summary>Stacks that two plans have in another kiln or on another day.</summary>
    public static int Between(PlanTables tables, Plan one, Plan other) => Differ(Places(tables, one), Places(tables, other));

    public override double Energy(PlanScore score, TimedCharge?[] chargeOfStack) =>
        Math.Max(0L, score.LateCents - found.LateCents) + Math.Max(0L, score.RiskCents + score.CostCents - dearest) + CentsEach * Count(chargeOfStack);

    public override bool Takes(PlanScore score, TimedCharge?[] chargeOfStack)
    {
        if (score.LateCents > found.LateCents || score.RiskCents + score.CostCents > dearest)
        {
            return false;
        }

        var changes = Count(chargeOfStack);
        if (changes > best.Changes || (changes == best.Changes && !(score < best.Score)))
        {
            return false;
        }

        best = (changes, score);
        return true;
    }

    private int Count(TimedCharge?[] chargeOfStack)
    {
        var changes = 0;
        for (var stack = 0; stack < earlier.Length; stack++)
        {
            changes += earlier[stack] == Place(tables, chargeOfStack[stack]) ? 0 : 1;
        }

        return changes;
    }

    private static (int Kiln, int Day)?[] Places(PlanTables tables, Plan plan) =>
        [.. Scoring.ChargeOfStack(tables, [.. plan.Charges.Select(charge => PlanOutlook.Timed(tables, charge))]).Select(charge => Place(tables, charge))];

    private static (int Kiln, int Day)? Place(PlanTables tables, TimedCharge? charge) => charge is null ? null : (charge.Kiln, tables.Calendar.DayOf(charge.Load));

    private static int Differ((int, int)?[] one, (int, int)?[] other) => one.Zip(other, (a, b) => a == b ? 0 : 1).Sum();
}
