using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>How evenly a saw cuts: scatter within boards, between boards, and in all.</summary>
/// <param name="Mean">Mean of all readings.</param>
/// <param name="Within">Square root of the mean of the board variances: blade and feed.</param>
/// <param name="BetweenMeans">Deviation of the board means: setworks, seen through the scatter within.</param>
/// <param name="BetweenComponent">Between-board component, the scatter within taken out: sqrt(between² - within²/n), zero where that is negative.</param>
/// <param name="Total">Deviation of all readings.</param>
/// <param name="Boards">Number of boards.</param>
/// <param name="Points">Number of readings.</param>
/// <remarks>
/// Two deviations go by the name "between" and two by "total" (of the readings, and <see cref="Expected"/>); they are kept apart here. n is the number of readings of a board (their harmonic mean where it varies).
/// A first study wants 100 boards and more, 6 to 10 readings each on both edges, clear of ends and knots; then small samples often.
/// </remarks>
/// <source id="brown-2000" locator="EM 8731, pp. 21-22"/>
/// <method page="docs/methods/size-control.md"/>
public sealed record SawVariation(Length Mean, Length Within, Length BetweenMeans, Length BetweenComponent, Length Total, int Boards, int Points)
{
    /// <summary>The variation of a sample.</summary>
    /// <returns>The statistics; a refusal for fewer than two boards or a board read once.</returns>
    public static Outcome<SawVariation> Of(IReadOnlyList<ThicknessReading> readings)
    {
        var boards = readings.GroupBy(reading => reading.Board, reading => reading.Thickness.Metres).ToList();
        if (boards.Count < 2)
            return new Refusal("boards", boards.Count.ToString(System.Globalization.CultureInfo.InvariantCulture), "at least 2 boards; 100 for a first study");
        if (boards.FirstOrDefault(board => board.Count() < 2) is { } once)
            return new Refusal("board " + once.Key, "1 reading", "at least 2 readings on each board; 6 to 10 are usual");

        var within = Math.Sqrt(boards.Average(Variance));
        var between = Math.Sqrt(Variance(boards.Select(board => board.Average())));
        var readingsPerBoard = boards.Count / boards.Sum(board => 1.0 / board.Count());
        var component = Math.Sqrt(Math.Max(0.0, between * between - within * within / readingsPerBoard));
        var all = readings.Select(reading => reading.Thickness.Metres).ToList();
        return new SawVariation(
            Length.FromMetres(all.Average()), Length.FromMetres(within), Length.FromMetres(between), Length.FromMetres(component),
            Length.FromMetres(Math.Sqrt(Variance(all))), boards.Count, all.Count);
    }

    /// <summary>Deviation from the mean of a board chosen at random and read anywhere: sqrt(within² + component²). The green target uses this.</summary>
    public Length Expected => Combined(Within, BetweenComponent);

    /// <summary>The deviation two independent parts add up to: sqrt(within² + component²).</summary>
    public static Length Combined(Length within, Length betweenComponent) =>
        Length.FromMetres(Math.Sqrt(within.Metres * within.Metres + betweenComponent.Metres * betweenComponent.Metres));

    private static double Variance(IEnumerable<double> values)
    {
        var list = values.ToList();
        var mean = list.Average();
        return list.Sum(value => (value - mean) * (value - mean)) / (list.Count - 1);
    }
}
