using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>What boards are worth when open order lines take them until they are full.</summary>
/// <remarks>Footage goes to lines by falling premium over its list price: best for one line, and for lines that take different boards.</remarks>
internal sealed class LineFilling(IReadOnlyList<DeckLog> logs, IReadOnlyList<OpenLine> lines)
{
    private readonly Dictionary<string, int> places = lines.Select((line, i) => (line.Name, i)).ToDictionary(one => one.Name, one => one.i, StringComparer.Ordinal);

    private sealed record Taking(int Log, int Board, double ListMoney, string ListGrade)
    {
        public double Premium { get; set; }

        public double Taken { get; set; }

        public (int Line, double Feet, string Grade) Most { get; set; } = (-1, 0.0, "");
    }

    /// <summary>Value of the boards of some plans and what each line takes.</summary>
    /// <param name="plans">In the order of the logs.</param>
    public (double Value, LineFill[] Fills) Of(IReadOnlyList<CuttingPlan?> plans)
    {
        var (takings, fills) = Shared(plans);
        return (takings.Sum(one => (one.ListMoney * Feet(plans, one)) + one.Premium), fills);
    }

    /// <summary>The plans with every board at what it brings: list price, and what the line that takes most of it pays over that.</summary>
    public CuttingPlan?[] Settled(IReadOnlyList<CuttingPlan?> plans)
    {
        var takings = Shared(plans).Takings.ToLookup(one => one.Log);
        return [.. plans.Select((plan, log) => plan is null ? null : plan with
        {
            Boards = [.. plan.Boards.Zip(takings[log], (board, one) => board with
            {
                ValueMoney = (one.ListMoney * board.Footage.Count) + one.Premium,
                Order = one.Most.Line < 0 ? null : lines[one.Most.Line].Name,
                Grade = one.Most.Line < 0 || one.Most.Feet < board.Footage.Count / 2.0 ? one.ListGrade : one.Most.Grade,
            })],
        })];
    }

    /// <summary>Board feet of plans that a price of its own was paid for, by line.</summary>
    public double[] Asked(IEnumerable<CuttingPlan?> plans)
    {
        var asked = new double[lines.Count];
        foreach (var board in plans.SelectMany(plan => plan?.Boards ?? []).Where(board => board.Order is not null))
            asked[places[board.Order!]] += board.Footage.Count;
        return asked;
    }

    private (List<Taking> Takings, LineFill[] Fills) Shared(IReadOnlyList<CuttingPlan?> plans)
    {
        var takings = new List<Taking>();
        var wanted = new List<(double Premium, int Line, string Grade, Taking Board)>();
        for (var log = 0; log < plans.Count; log++)
        {
            for (var i = 0; i < (plans[log]?.Boards.Count ?? 0); i++)
            {
                var board = plans[log]!.Boards[i];
                var fitting = logs[log].Prices.Where(price => Takes(price, board)).ToList();
                var list = fitting.Where(price => price.Order is null).MaxBy(price => price.MoneyPerBoardFoot);
                var taking = new Taking(log, i, list?.MoneyPerBoardFoot ?? 0.0, list?.Grade ?? board.Grade);
                takings.Add(taking);
                wanted.AddRange(fitting.Where(price => price.Order is not null && price.MoneyPerBoardFoot > taking.ListMoney).GroupBy(price => price.Order!)
                    .Select(rows => rows.MaxBy(price => price.MoneyPerBoardFoot)!).Select(row => (row.MoneyPerBoardFoot - taking.ListMoney, places[row.Order!], row.Grade, taking)));
            }
        }

        var (open, premiums) = (lines.Select(line => line.Open.Count).ToArray(), new double[lines.Count]);
        foreach (var (premium, line, grade, one) in wanted.OrderByDescending(one => one.Premium))
        {
            var feet = Math.Min(open[line], Feet(plans, one) - one.Taken);
            (open[line], one.Taken, one.Premium, premiums[line]) = (open[line] - feet, one.Taken + feet, one.Premium + (feet * premium), premiums[line] + (feet * premium));
            if (feet > one.Most.Feet)
                one.Most = (line, feet, grade);
        }

        return (takings, [.. lines.Select((line, i) => new LineFill(line, BoardFeet.From(line.Open.Count - open[i]), premiums[i]))]);
    }

    private static double Feet(IReadOnlyList<CuttingPlan?> plans, Taking one) => plans[one.Log]!.Boards[one.Board].Footage.Count;

    private static bool Takes(BoardPrice row, PlannedBoard board) =>
        row.Thickness == board.Thickness && row.Edge == board.Edge && (row.Grain is null || row.Grain == board.Grain) && row.Wane.Fraction >= board.Wane.Fraction
        && board.Width.Millimetres >= row.WidthMin.Millimetres - 1e-6 && board.Length.Millimetres >= row.LengthMin.Millimetres - 1e-6
        && board.Width.Millimetres <= (row.WidthMax?.Millimetres ?? double.PositiveInfinity) + 1e-6 && board.Length.Millimetres <= (row.LengthMax?.Millimetres ?? double.PositiveInfinity) + 1e-6;
}
