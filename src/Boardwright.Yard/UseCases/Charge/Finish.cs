using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How a charge is ended by the house's rule: equalizing from 2 points under the target, or from 3 where the setting equalize_below_target says so; the sources disagree.</summary>
public static class ChargeFinish
{
    /// <summary>The rule of the house.</summary>
    public static FinishRule Rule(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Setting("equalize_below_target") >= 3.0 ? FinishRule.Gtr57 : FinishRule.Ah188;
    }

    /// <summary>The finish of a charge; null for a target the rules are not printed for.</summary>
    public static KilnFinish? Of(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        return KilnFinish.For(charge.Target, Rule(state), charge.Stacks.All(tag => state.Stacks[tag].Species.StainGroup == "softwood")) is Outcome<KilnFinish>.Done(var finish) ? finish : null;
    }
}
