using Boardwright.Drying.Schedules;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>What the weighings of kiln samples say: which moisture rules the schedule, how fast it falls, what the scale should show next.</summary>
/// <source id="ah-188" locator="ch. 7: the wettest half of the samples controls"/>
/// <source id="fpl-gtr-57" locator="p. 9: the average of the wood controls"/>
/// <source id="wengert-drying-oak" locator="step 3B"/>
/// <method page="docs/methods/moisture-content.md"/>
public static class SampleTrend
{
    // What the scale may show before somebody is asked: from somewhat more than the last loss to a little gain. Common practice.
    private const double LossFactor = 1.4;
    private const double LossMargin = 0.3;
    private const double GainMargin = 0.2;

    /// <summary>The controlling moisture content: mean of the wetter half of the samples, the middle one included where they are odd.</summary>
    /// <returns>The mean, or null without samples.</returns>
    public static MoistureContent? WettestHalf(IReadOnlyCollection<MoistureContent> samples)
    {
        ArgumentNullException.ThrowIfNull(samples);
        return samples.Count == 0 ? null
            : MoistureContent.FromFraction(samples.OrderDescending().Take((samples.Count + 1) / 2).Average(sample => sample.Fraction));
    }

    /// <summary>The controlling moisture content by a rule.</summary>
    /// <returns>The mean, or null without samples.</returns>
    public static MoistureContent? Controlling(IReadOnlyCollection<MoistureContent> samples, StepRule rule)
    {
        ArgumentNullException.ThrowIfNull(samples);
        return rule == StepRule.WettestHalf ? WettestHalf(samples) : samples.Count == 0 ? null : MoistureContent.FromFraction(samples.Average(sample => sample.Fraction));
    }

    /// <summary>Loss of moisture content in percent a day while the charge dried; negative where it gained.</summary>
    /// <param name="before">At the earlier weighing.</param>
    /// <param name="now">At the later one.</param>
    /// <param name="between">Time between them.</param>
    /// <param name="stood">Time of it in which the charge did not dry.</param>
    /// <returns>The loss, or null where no time is left.</returns>
    public static double? DailyLossPercent(MoistureContent before, MoistureContent now, Elapsed between, Elapsed stood)
    {
        var days = (between.Seconds - stood.Seconds) / 86400.0;
        return days > 0.0 ? (before.Percent - now.Percent) / days : null;
    }

    /// <summary>Weights the scale may show next without a question: from 1.4 times the last loss and 0.3 % more, to a gain of 0.2 %.</summary>
    /// <param name="calculatedDry">Calculated dry weight.</param>
    /// <param name="last">Moisture content at the last weighing.</param>
    /// <param name="dailyLossPercent">Loss a day so far.</param>
    /// <param name="days">Days since then.</param>
    public static (Mass Low, Mass High) ExpectedWeight(Mass calculatedDry, MoistureContent last, double dailyLossPercent, double days)
    {
        var low = Math.Max(0.0, last.Percent - LossFactor * Math.Max(dailyLossPercent, 0.0) * Math.Max(days, 0.0) - LossMargin);
        return (calculatedDry * (1.0 + low / 100.0), calculatedDry * (1.0 + (last.Percent + GainMargin) / 100.0));
    }
}
