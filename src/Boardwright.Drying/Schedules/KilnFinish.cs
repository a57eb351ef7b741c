using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Schedules;

/// <summary>How a charge is ended: equalizing brings wet and dry boards together, conditioning frees the stress set in drying.</summary>
/// <remarks>
/// <para>Equalizing starts when the driest sample stands an offset under the target and holds the kiln at that same equilibrium moisture content,
/// until the wettest sample reaches the target. Conditioning holds the target plus 4 % (hardwood) or 3 % (softwood), or what the house has set.</para>
/// <para>The sources disagree on the offset: 2 % (ah-188, wengert-drying-oak) or 3 % (fpl-gtr-57). Validity: targets 5 to 12 %.</para>
/// <para>Equalizing is ended by samples, not by the clock. Test for stress before the wood leaves the kiln.</para>
/// </remarks>
/// <source id="ah-188" locator="ch. 7, equalizing and conditioning"/>
/// <source id="fpl-gtr-57" locator="appendix A"/>
/// <method page="docs/methods/equalize-and-condition.md"/>
public sealed record KilnFinish
{
    private const double TargetMinPercent = 5.0;
    private const double TargetMaxPercent = 12.0;

    /// <summary>Hardwood is conditioned at the target plus this, points of moisture content.</summary>
    public const double HardwoodConditionPoints = 4.0;

    /// <summary>Softwood is conditioned at the target plus this, points of moisture content.</summary>
    public const double SoftwoodConditionPoints = 3.0;

    /// <summary>Equalizing starts when the driest sample is at this.</summary>
    public required MoistureContent EqualizeFromDriest { get; init; }

    /// <summary>Equilibrium moisture content held while equalizing.</summary>
    public required MoistureContent EqualizeEmc { get; init; }

    /// <summary>Equalizing ends when the wettest sample is at this: the target.</summary>
    public required MoistureContent EqualizeUntilWettest { get; init; }

    /// <summary>Equilibrium moisture content held while conditioning.</summary>
    public required MoistureContent ConditionEmc { get; init; }

    /// <summary>The settings for a final moisture content.</summary>
    /// <param name="target">Final moisture content.</param>
    /// <param name="rule">Whose offset equalizing begins with.</param>
    /// <param name="conditionPoints">Conditioning holds the target plus this.</param>
    /// <returns>The settings, or a refusal of target-mc outside 5 to 12 %.</returns>
    public static Outcome<KilnFinish> For(MoistureContent target, FinishRule rule, double conditionPoints = HardwoodConditionPoints)
    {
        var percent = target.Percent;
        if (percent is < TargetMinPercent - 1e-9 or > TargetMaxPercent + 1e-9)
            return new Refusal("target-mc", percent.ToString("0.##", CultureInfo.InvariantCulture) + "%", "5% to 12%, the targets the rules are printed for");

        var driest = MoistureContent.FromPercent(percent - (rule == FinishRule.Ah188 ? 2.0 : 3.0));
        return new KilnFinish
        {
            EqualizeFromDriest = driest,
            EqualizeEmc = driest,
            EqualizeUntilWettest = target,
            ConditionEmc = MoistureContent.FromPercent(percent + conditionPoints),
        };
    }

    /// <summary>Wet bulb that holds an equilibrium moisture content at a dry bulb, at the pressure of sea level; null where no air does.</summary>
    public static Temperature? WetBulbFor(Temperature dryBulb, MoistureContent emc) =>
        Emc.HumidityFor(dryBulb, emc) is { } humidity && AirState.FromHumidity(dryBulb, humidity, AirState.StandardPressure) is Outcome<AirState>.Done({ WetBulb: { } wetBulb }) ? wetBulb : null;
}
