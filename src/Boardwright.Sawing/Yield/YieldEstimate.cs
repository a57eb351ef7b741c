namespace Boardwright.Sawing;

/// <summary>What the next log of a wood gives over its scale in a sawyer's hands.</summary>
/// <param name="Ratio">Expected green tally over International 1/4-inch scale.</param>
/// <param name="MeanSd">How unsure that expectation is: where the mean of very many such logs would lie.</param>
/// <param name="LogSd">How far one log lies from the next.</param>
/// <param name="Logs">Logs of this wood by this sawyer that taught it.</param>
/// <param name="OwnRatio">Their plain mean; null where there are none.</param>
/// <param name="OwnWeight">Share of the expectation that rests on what was sawn, the rest on what was taken for true before: 0 to 1.</param>
public readonly record struct YieldEstimate(double Ratio, double MeanSd, double LogSd, int Logs, double? OwnRatio, double OwnWeight)
{
    private const double OneInTen = 1.2815515655446004;

    /// <summary>Standard deviation of one log's ratio around the expectation.</summary>
    public double NextSd => Math.Sqrt((MeanSd * MeanSd) + (LogSd * LogSd));

    /// <summary>One log in ten gives less.</summary>
    public double Low => Math.Max(0.0, Ratio - (OneInTen * NextSd));

    /// <summary>One log in ten gives more.</summary>
    public double High => Ratio + (OneInTen * NextSd);
}
