using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How a charge is ended by the <see cref="HouseRules"/>: equalizing from 2 or 3 points under the target, hardwood conditioned 4 or 3 over it.</summary>
public static class ChargeFinish
{
    /// <summary>The finish of a charge; null for a target the rules are not printed for.</summary>
    public static KilnFinish? Of(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        var own = charge.Schedule is { } name ? state.Schedules.GetValueOrDefault(name) : null;
        var points = charge.Stacks.All(tag => state.Stacks[tag].Species.StainGroup == "softwood") ? KilnFinish.SoftwoodConditionPoints : HouseRules.ConditionPoints(state);
        var printed = KilnFinish.For(charge.Target, HouseRules.Equalizing(state), points) is Outcome<KilnFinish>.Done(var finish) ? finish : null;
        return own is null ? printed : Own(own, charge.Target, printed);
    }

    // Air the house wrote takes the place of the rule's; equalizing begins when the driest is at the equilibrium it holds.
    private static KilnFinish? Own(KilnSchedule own, MoistureContent target, KilnFinish? printed)
    {
        var (equalize, condition) = (own.Equalize?.Air.Emc ?? printed?.EqualizeEmc, own.Condition?.Air.Emc ?? printed?.ConditionEmc);
        return equalize is not { } driest || condition is not { } free ? null
            : new() { EqualizeEmc = driest, EqualizeFromDriest = own.Equalize is null ? printed!.EqualizeFromDriest : driest, EqualizeUntilWettest = target, ConditionEmc = free };
    }
}
