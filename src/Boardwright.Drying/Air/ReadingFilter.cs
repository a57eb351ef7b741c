using Boardwright.Drying.Board;

namespace Boardwright.Drying;

/// <summary>Takes a reading into an ensemble: the mean moves towards the reading, the spread narrows, and what the reading says of the rate is kept.</summary>
/// <remarks>
/// <para>Ensemble square-root filter for one observed quantity, without chance of its own (whitaker-hamill-2002): no member is thrown away, so the ensemble does
/// not degenerate as weighted ones do, and the same seed gives the same answer. What is observed is the moisture of a board and the error its kind of reading has in
/// common; the logarithm of the coefficient, the departure of the stack's air from the weather and that common error move by their regression on it.</para>
/// <para>The correction of a board is laid over its thickness as 1.5 (1 - x²): most in the core, none at the surface, which the air holds.</para>
/// </remarks>
/// <source id="whitaker-hamill-2002" locator="eqs 10 to 13"/>
/// <source id="evensen-van-leeuwen-2000"/>
internal static class ReadingFilter
{
    private const double LogFactorMax = 1.0;

    /// <summary>Takes one reading.</summary>
    /// <param name="set">The boards.</param>
    /// <param name="climate">Departures of their air.</param>
    /// <param name="instruments">Errors in common.</param>
    /// <param name="past">Moisture of every board on each earlier evening, fraction: each moves by its own regression on what was read.</param>
    /// <param name="reading">The reading.</param>
    public static void Take(BoardSet set, StackClimate climate, InstrumentErrors instruments, IReadOnlyList<double[]> past, StackReading reading)
    {
        var boards = set.Boards;
        var shared = instruments.Of(reading.Kind);
        reading = AtExpected(reading, boards.Average);
        var expected = new double[boards.Members];
        for (var m = 0; m < expected.Length; m++)
        {
            expected[m] = boards.Average[m] + shared[m] * reading.SharedErrorPercent / 100.0;
        }

        if (Update.Of(expected, reading) is not { } update)
            return;

        foreach (var day in past)
        {
            update.Move(day, (m, step) => day[m] += Math.Max(step, -0.9 * day[m]));
        }

        var logs = new double[expected.Length];
        for (var m = 0; m < logs.Length; m++)
        {
            logs[m] = Math.Log(set.CoefficientM2PerS(m));
        }

        var shifts = new double[expected.Length];
        update.Move(boards.Average, (m, step) => shifts[m] = Math.Max(step, -0.9 * set.Boards.Average[m]));
        update.Move(logs, (m, step) => set.ScaleCoefficient(m, Math.Exp(Math.Clamp(step, -LogFactorMax, LogFactorMax))));
        update.Move(climate.Departure, climate.Correct);
        update.Move(shared, (m, step) => shared[m] += step);
        Shift(boards, shifts);
    }

    // The errors of a reading, worked out at what was read, at the moisture expected of the boards.
    private static StackReading AtExpected(StackReading reading, ReadOnlySpan<double> averages)
    {
        var model = ReadingErrorModel.Of(reading.Kind);
        var read = model.ErrorAt(reading.Mean.Percent);
        if (read <= 0.0)
            return reading;

        var sum = 0.0;
        foreach (var average in averages)
        {
            sum += average;
        }

        var ratio = model.ErrorAt(100.0 * sum / averages.Length) / read;
        return reading with { ErrorPercent = ratio * reading.ErrorPercent, SharedErrorPercent = ratio * reading.SharedErrorPercent };
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

    /// <summary>What a reading asks of every unknown: its regression on what was expected, times how far each board has to move.</summary>
    private sealed class Update
    {
        private readonly double[] expected;
        private readonly double mean;
        private readonly double total;
        private readonly double innovation;
        private readonly double reduced;

        private Update(double[] expected, double mean, double variance, double read, double error)
        {
            (this.expected, this.mean) = (expected, mean);
            total = variance + error;
            innovation = read - mean;
            reduced = 1.0 / (1.0 + Math.Sqrt(error / total));
        }

        /// <summary>Null when the boards do not differ: there is nothing to learn.</summary>
        public static Update? Of(double[] expected, StackReading reading)
        {
            var mean = Mean(expected);
            var variance = Covariance(expected, mean, expected, mean);
            return variance <= 0.0 ? null : new Update(expected, mean, variance, reading.Mean.Fraction, Math.Pow(reading.ErrorPercent / 100.0, 2.0));
        }

        public void Move(ReadOnlySpan<double> values, Action<int, double> move)
        {
            var gain = Covariance(values, Mean(values), expected, mean) / total;
            for (var m = 0; m < expected.Length; m++)
            {
                move(m, gain * (innovation - reduced * (expected[m] - mean)));
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
}
