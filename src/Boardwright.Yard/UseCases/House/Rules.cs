using Boardwright.Drying.Schedules;
using Boardwright.Wood;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Where published sources disagree, the one the house follows: a figure of the house each, its sources named beside it.</summary>
/// <method page="docs/methods/kiln-schedule.md"/>
public static class HouseRules
{
    /// <summary>Which samples lead a charge through its schedule.</summary>
    public static StepRule Steps(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return (state.Setting("schedule_led_by") ?? 50.0) > 50.0 ? StepRule.MeanOfAll : StepRule.WettestHalf;
    }

    /// <summary>How far under the target equalizing begins.</summary>
    public static FinishRule Equalizing(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return (state.Setting("equalize_below_target") ?? 2.0) > 2.0 ? FinishRule.Gtr57 : FinishRule.Ah188;
    }

    /// <summary>How far over the target hardwood is conditioned, points of moisture content.</summary>
    public static double ConditionPoints(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return (state.Setting("condition_above_target") ?? 4.0) < 4.0 ? KilnFinish.SoftwoodConditionPoints : KilnFinish.HardwoodConditionPoints;
    }

    /// <summary>By which equation the air of rooms and of the yard holds wood.</summary>
    public static EmcEquation Equilibrium(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return (state.Setting("emc_equation") ?? 1.0) > 1.0 ? EmcEquation.Glass : EmcEquation.HailwoodHorrobin;
    }

    /// <summary>"the wettest half", "the mean of all samples".</summary>
    public static string Words(StepRule rule) => rule == StepRule.WettestHalf ? "the wettest half" : "the mean of all samples";

    /// <summary>Where a rule is printed.</summary>
    public static string Printed(StepRule rule) => rule == StepRule.WettestHalf
        ? "Dry Kiln Operator’s Manual (1991), ch. 7: the wettest half controls (from memory of the source)"
        : "Dry Kiln Schedules for Commercial Woods, FPL-GTR-57, p. 9: the average of the wood controls";
}
