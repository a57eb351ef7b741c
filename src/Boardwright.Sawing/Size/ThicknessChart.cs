using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>What a control chart of board means can say of one board.</summary>
public enum ChartSignal
{
    /// <summary>One point beyond three deviations.</summary>
    BeyondThree,

    /// <summary>Two of three points beyond two deviations on one side.</summary>
    TwoOfThreeBeyondTwo,

    /// <summary>Four of five points beyond one deviation on one side.</summary>
    FourOfFiveBeyondOne,

    /// <summary>Eight points in a row on one side of the centre.</summary>
    EightOnOneSide,

    /// <summary>The scatter within the board beyond its limits.</summary>
    Spread,
}

/// <summary>One board on the chart.</summary>
/// <param name="Board">Name of the board.</param>
/// <param name="Mean">Mean of its readings.</param>
/// <param name="Spread">Standard deviation of its readings.</param>
/// <param name="Signals">What it says; empty for a board that says nothing.</param>
public sealed record ChartPoint(string Board, Length Mean, Length Spread, IReadOnlyList<ChartSignal> Signals);

/// <summary>Control chart of thickness, board by board in the order of sawing: the means against each other, the scatter within boards.</summary>
/// <param name="Centre">Mean of the board means.</param>
/// <param name="Sigma">Deviation of a board mean, from the moving range of neighbours.</param>
/// <param name="SpreadCentre">Mean of the deviations within boards.</param>
/// <param name="SpreadLow">Lower limit of the deviation within a board.</param>
/// <param name="SpreadHigh">Upper limit of the deviation within a board.</param>
/// <param name="Points">The boards in order.</param>
/// <remarks>
/// <para>A saw sets every board anew, so boards differ by more than the scatter within them and limits from that scatter would cry at every turn. The means are charted as single values: sigma = mean moving range / d2, d2 = 2/sqrt(pi) = 1.128, limits centre +- 3 sigma.</para>
/// <para>Scatter: limits s (1 -+ 3 sqrt(1 - c4²)/c4), the lower not below 0; n is the smallest number of readings of a board.</para>
/// </remarks>
/// <source id="western-electric-1956" locator="tests for instability, M; worded as in a public documentation page"/>
/// <source id="quality-factors" locator="c4, B3, B4, d2"/>
/// <method page="docs/methods/size-control.md"/>
public sealed record ThicknessChart(Length Centre, Length Sigma, Length SpreadCentre, Length SpreadLow, Length SpreadHigh, IReadOnlyList<ChartPoint> Points)
{
    private const int BoardsMin = 3;
    private static readonly double RangeFactor = 2.0 / Math.Sqrt(Math.PI);

    /// <summary>Lower and upper limit of the means.</summary>
    public (Length Low, Length High) Limits => (Length.FromMetres(Math.Max(0.0, Centre.Metres - 3.0 * Sigma.Metres)), Centre + Sigma * 3.0);

    /// <summary>The chart of a sample whose boards stand in the order of sawing.</summary>
    /// <returns>The chart; a refusal for fewer than three boards or a board read once.</returns>
    public static Outcome<ThicknessChart> Of(IReadOnlyList<ThicknessReading> readings)
    {
        var boards = readings.GroupBy(reading => reading.Board, reading => reading.Thickness.Metres).Select(board => (board.Key, Readings: board.ToList())).ToList();
        if (boards.Count < BoardsMin)
            return new Refusal("boards", boards.Count.ToString(System.Globalization.CultureInfo.InvariantCulture), $"at least {BoardsMin} boards in the order of sawing; 20 before the limits mean much");
        if (boards.FirstOrDefault(board => board.Readings.Count < 2) is { Key: { } once })
            return new Refusal("board " + once, "1 reading", "at least 2 readings on each board; 6 to 10 are usual");

        var means = boards.Select(board => board.Readings.Average()).ToList();
        var spreads = boards.Select(board => Deviation(board.Readings)).ToList();
        var (centre, spread) = (means.Average(), spreads.Average());
        var sigma = means.Zip(means.Skip(1), (left, right) => Math.Abs(right - left)).Average() / RangeFactor;
        var c4 = MeanOfDeviation(boards.Min(board => board.Readings.Count));
        var part = 3.0 * Math.Sqrt(1.0 - (c4 * c4)) / c4;
        var (low, high) = (spread * Math.Max(0.0, 1.0 - part), spread * (1.0 + part));
        var points = boards.Select((board, index) => new ChartPoint(
            board.Key, Length.FromMetres(means[index]), Length.FromMetres(spreads[index]),
            [.. Signals([.. means.Take(index + 1).Select(mean => sigma > 0.0 ? (mean - centre) / sigma : 0.0)]), .. spreads[index] > high || spreads[index] < low ? new[] { ChartSignal.Spread } : []])).ToList();
        return new ThicknessChart(Length.FromMetres(centre), Length.FromMetres(sigma), Length.FromMetres(spread), Length.FromMetres(low), Length.FromMetres(high), points);
    }

    /// <summary>What the last of a row of standardised means says, by the four tests.</summary>
    internal static IEnumerable<ChartSignal> Signals(IReadOnlyList<double> deviations)
    {
        if (Beyond(deviations, 1, 3.0) == 1)
            yield return ChartSignal.BeyondThree;
        if (Beyond(deviations, 3, 2.0) >= 2)
            yield return ChartSignal.TwoOfThreeBeyondTwo;
        if (Beyond(deviations, 5, 1.0) >= 4)
            yield return ChartSignal.FourOfFiveBeyondOne;
        if (Beyond(deviations, 8, 0.0) == 8)
            yield return ChartSignal.EightOnOneSide;
    }

    /// <summary>c4: mean of the standard deviation of n normal readings, as a part of the true one.</summary>
    internal static double MeanOfDeviation(int count)
    {
        // The ratio of gamma functions, from its value at 2 upwards.
        var ratio = 1.0 / Math.Sqrt(Math.PI);
        for (var n = 2; n < count; n++)
            ratio = (n - 1) / 2.0 / ratio;
        return Math.Sqrt(2.0 / (count - 1)) * ratio;
    }

    // How many of the last few lie beyond a limit on the side of the last one, which must be among them.
    private static int Beyond(IReadOnlyList<double> deviations, int window, double limit)
    {
        var side = Math.Sign(deviations[^1]);
        return side * deviations[^1] > limit ? deviations.TakeLast(window).Count(value => side * value > limit) : 0;
    }

    private static double Deviation(List<double> values)
    {
        var mean = values.Average();
        return Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1));
    }
}
