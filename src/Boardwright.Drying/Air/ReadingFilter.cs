using Boardwright.Drying.Board;

namespace Boardwright.Drying;

/// <summary>Takes a reading into an ensemble: the mean moves towards the reading, the spread narrows, and what the reading says of the rate is kept.</summary>
/// <remarks>
/// Ensemble square-root filter for one observed quantity, without chance of its own (whitaker-hamill-2002). The correction of a board is laid over its
/// thickness as 1.5 (1 - x²): most in the core, none at the surface, which the air holds. The logarithm of the coefficient
/// and the departure of the stack's air from the weather move by their regression on the moisture.
/// </remarks>
/// <source id="whitaker-hamill-2002" locator="eqs 10 to 13"/>
/// <source id="evensen-van-leeuwen-2000"/>
internal static class ReadingFilter
{
    private const double LogFactorMax = 1.0;

    public static void Take(BoardSet set, StackClimate climate, double readingFraction, double errorFraction)
    {
        var boards = set.Boards;
        var members = boards.Members;
        var mean = Mean(boards.Average);
        var logs = new double[members];
        for (var m = 0; m < members; m++)
        {
            logs[m] = Math.Log(set.CoefficientM2PerS(m));
        }

        var variance = Covariance(boards.Average, mean, boards.Average, mean);
        if (variance <= 0.0)
            return;

        var error = errorFraction * errorFraction;
        var reduced = 1.0 / (1.0 + Math.Sqrt(error / (variance + error)));
        var gain = variance / (variance + error);
        var logGain = Covariance(boards.Average, mean, logs, Mean(logs)) / (variance + error);
        var airGain = Covariance(boards.Average, mean, climate.Departure, Mean(climate.Departure)) / (variance + error);
        var shifts = new double[members];
        for (var m = 0; m < members; m++)
        {
            var move = readingFraction - mean - reduced * (boards.Average[m] - mean);
            shifts[m] = Math.Max(gain * move, -0.9 * boards.Average[m]);
            set.ScaleCoefficient(m, Math.Exp(Math.Clamp(logGain * move, -LogFactorMax, LogFactorMax)));
            climate.Correct(m, airGain * move);
        }

        Shift(boards, shifts);
    }

    /// <summary>What a reading says of earlier days: each board's past moves by its regression on the moisture now. Called before <see cref="Take"/>.</summary>
    /// <param name="past">Moisture of every board on each earlier evening, fraction; changed.</param>
    /// <param name="now">Moisture of every board, fraction.</param>
    /// <param name="readingFraction">Mean read.</param>
    /// <param name="errorFraction">Standard error of that mean.</param>
    public static void Smooth(IReadOnlyList<double[]> past, ReadOnlySpan<double> now, double readingFraction, double errorFraction)
    {
        var mean = Mean(now);
        var variance = Covariance(now, mean, now, mean);
        if (variance <= 0.0)
            return;

        var error = errorFraction * errorFraction;
        var reduced = 1.0 / (1.0 + Math.Sqrt(error / (variance + error)));
        foreach (var day in past)
        {
            var gain = Covariance(day, Mean(day), now, mean) / (variance + error);
            for (var m = 0; m < day.Length; m++)
            {
                day[m] += Math.Max(gain * (readingFraction - mean - reduced * (now[m] - mean)), -0.9 * day[m]);
            }
        }
    }

    private static double Covariance(ReadOnlySpan<double> one, double meanOne, ReadOnlySpan<double> other, double meanOther)
    {
        var sum = 0.0;
        for (var m = 0; m < one.Length; m++)
        {
            sum += (one[m] - meanOne) * (other[m] - meanOther);
        }

        return sum / (one.Length - 1);
    }

    /// <summary>Moves every board's mean by its shift, most in the core, not at the surface, which the air holds.</summary>
    public static void Shift(BoardEnsemble boards, ReadOnlySpan<double> shifts)
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
