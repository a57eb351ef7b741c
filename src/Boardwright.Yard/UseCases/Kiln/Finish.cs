using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How to end a charge.</summary>
public static class KilnFinishCommand
{
    public static Command Command { get; } = Command.Of("kiln", "finish", "Equalizing and conditioning settings for a final moisture content", Run) with
    {
        Options =
        [
            Option.Required("target-mc", "MC", "final moisture content, 5% to 12%"),
            Option.Optional("rule", "ah188|gtr57", "equalize from 2 % (ah188, default) or 3 % (gtr57) under the target"),
            Option.Optional("wood", "hardwood|softwood", "conditioning 4 % (hardwood, default) or 3 % above the target"),
            Option.Optional("condition-above", "3|4", "instead: points above the target, whatever the wood"),
        ],
        Examples = ["kiln finish --target-mc 7%", "kiln finish --target-mc 8% --rule gtr57 --json"],
    };

    public sealed record Answer(double EqualizeEmcPct, double EqualizeFromDriestPct, double EqualizeUntilWettestPct, double ConditionEmcPct);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var target = ask.Moisture("target-mc");
        var rule = ask.Choice("rule", "ah188", "ah188", "gtr57") == "ah188" ? FinishRule.Ah188 : FinishRule.Gtr57;
        var usual = ask.Choice("wood", "hardwood", "hardwood", "softwood") == "softwood" ? "3" : "4";
        var points = ask.Choice("condition-above", usual, "3", "4") == "3" ? KilnFinish.SoftwoodConditionPoints : KilnFinish.HardwoodConditionPoints;
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(KilnFinish.For(target, rule, points)).Then<Answer>(finish => new Answer(
                finish.EqualizeEmc.Percent, finish.EqualizeFromDriest.Percent, finish.EqualizeUntilWettest.Percent, finish.ConditionEmc.Percent));
    }
}
