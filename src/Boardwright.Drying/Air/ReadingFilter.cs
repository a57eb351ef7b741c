using Boardwright.Drying.Board;

namespace Boardwright.Drying;

/// <summary>Takes a reading into an ensemble: the mean moves towards the reading, the spread narrows, and what the reading says of the rate is kept.</summary>
/// <remarks>
/// Ensemble square-root filter for one observed quantity, without chance of its own (whitaker-hamill-2002). The correction of a board is laid over its
/// thickness as 1.5 (1 - x²): most in the core, none at the surface, which the air holds. The logarithm of the coefficient moves by its regression on the moisture.
/// </remarks>
/// <source id="whitaker-hamill-2002" locator="eqs 10 to 13"/>
internal static class ReadingFilter
{
    private const double LogFactorMax = 1.0;

    public static void Take(BoardSet set, double readingFraction, double errorFraction)
    {
        var boards = set.Boards;
        var members = boards.Members;
        var mean = Mean(boards.Average);
        double variance = 0.0, covariance = 0.0, meanLog = 0.0;
        for (var m = 0; m < members; m++)
        {
            meanLog += Math.Log(set.CoefficientM2PerS(m)) / members;
        }

        for (var m = 0; m < members; m++)
        {
            var deviation = boards.Average[m] - mean;
            variance += deviation * deviation / (members - 1);
            covariance += deviation * (Math.Log(set.CoefficientM2PerS(m)) - meanLog) / (members - 1);
        }

        if (variance <= 0.0)
            return;

        var error = errorFraction * errorFraction;
        var gain = variance / (variance + error);
        var reduced = 1.0 / (1.0 + Math.Sqrt(error / (variance + error)));
        var logGain = covariance / (variance + error);
        var shifts = new double[members];
        for (var m = 0; m < members; m++)
        {
            var deviation = boards.Average[m] - mean;
            var shift = gain * (readingFraction - mean) - reduced * gain * deviation;
            shifts[m] = Math.Max(shift, -0.9 * boards.Average[m]);
            var log = logGain * (readingFraction - mean) - reduced * logGain * deviation;
            set.ScaleCoefficient(m, Math.Exp(Math.Clamp(log, -LogFactorMax, LogFactorMax)));
        }

        Shift(boards, shifts);
    }

    private static void Shift(BoardEnsemble boards, double[] shifts)
    {
        for (var cell = 0; cell < boards.Cells; cell++)
        {
            var x = boards.Centres[cell];
            var row = boards.Cell(cell);
            for (var m = 0; m < row.Length; m++)
            {
                row[m] = Math.Max(row[m] + 1.5 * (1.0 - x * x) * shifts[m], 0.0);
            }
        }

        boards.Refresh();
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }
}
