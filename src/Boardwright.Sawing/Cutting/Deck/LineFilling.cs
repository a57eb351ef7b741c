using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>What boards are worth when open order lines take them until they are full.</summary>
/// <remarks>Footage goes to lines by falling premium over its list price: best for one line, and for lines that take different boards.</remarks>
internal sealed class LineFilling(IReadOnlyList<BoardPrice> prices, IReadOnlyList<OpenLine> lines)
{
    /// <summary>Value of the boards of some plans and what each line takes.</summary>
    public (double Value, LineFill[] Fills) Of(IEnumerable<CuttingPlan?> plans)
    {
        var total = 0.0;
        var wanted = new List<(double Premium, int Line, int Board, double Feet)>();
        var free = new List<double>();
        foreach (var board in plans.SelectMany(plan => plan?.Boards ?? []))
        {
            var list = prices.Where(price => Takes(price, board)).Select(price => price.MoneyPerBoardFoot).DefaultIfEmpty(0.0).Max();
            total += list * board.Footage.Count;
            for (var line = 0; line < lines.Count; line++)
            {
                if (Takes(lines[line].Row, board) && lines[line].Row.MoneyPerBoardFoot > list)
                    wanted.Add((lines[line].Row.MoneyPerBoardFoot - list, line, free.Count, board.Footage.Count));
            }

            free.Add(board.Footage.Count);
        }

        var (open, premiums) = (lines.Select(line => line.Open.Count).ToArray(), new double[lines.Count]);
        foreach (var one in wanted.OrderByDescending(one => one.Premium))
        {
            var feet = Math.Min(open[one.Line], free[one.Board]);
            (open[one.Line], free[one.Board], premiums[one.Line]) = (open[one.Line] - feet, free[one.Board] - feet, premiums[one.Line] + (feet * one.Premium));
        }

        return (total + premiums.Sum(), [.. lines.Select((line, i) => new LineFill(line, BoardFeet.From(line.Open.Count - open[i]), premiums[i]))]);
    }

    /// <summary>Board feet of a plan that a price of its own was paid for, by line.</summary>
    public double[] Asked(IEnumerable<CuttingPlan?> plans)
    {
        var asked = new double[lines.Count];
        foreach (var board in plans.SelectMany(plan => plan?.Boards ?? []))
        {
            for (var line = 0; line < lines.Count; line++)
                asked[line] += board.Order == lines[line].Name ? board.Footage.Count : 0.0;
        }

        return asked;
    }

    private static bool Takes(BoardPrice row, PlannedBoard board) =>
        row.Thickness == board.Thickness && row.Edge == board.Edge && (row.Grain is null || row.Grain == board.Grain) && row.Wane.Fraction >= board.Wane.Fraction
        && board.Width.Millimetres >= row.WidthMin.Millimetres - 1e-6 && board.Length.Millimetres >= row.LengthMin.Millimetres - 1e-6
        && board.Width.Millimetres <= (row.WidthMax?.Millimetres ?? double.PositiveInfinity) + 1e-6 && board.Length.Millimetres <= (row.LengthMax?.Millimetres ?? double.PositiveInfinity) + 1e-6;
}
