using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;

namespace Boardwright.Yard.UseCases;

/// <summary>A graded board with its value and the cuts that would make it worth more.</summary>
/// <param name="Graded">The board's grade.</param>
/// <param name="Price">Money per board foot; null where there are no prices.</param>
/// <param name="ValueMoney">What the board brings; null where there are no prices.</param>
/// <param name="Better">Cuts that bring more, best first.</param>
public sealed record Judged(BoardGrade Graded, Func<GradedBoard, LumberGrade, double>? Price, double? ValueMoney, IReadOnlyList<BoardCut> Better)
{
    /// <summary>Values a board and tries its cuts; refused where the price list has no row of its thickness.</summary>
    public static Outcome<Judged> Of(BoardGrade graded, IReadOnlyList<BoardPrice>? prices, Length kerf, int cuts)
    {
        ArgumentNullException.ThrowIfNull(graded);
        if (prices is null)
            return new Judged(graded, null, null, BoardRemaking.Better(graded, null, kerf, cuts));

        var rows = prices.Select(row => (Grade: LumberGrades.Find(row.Grade), Row: row)).ToList();
        if (rows.FirstOrDefault(row => row.Grade is null) is { Row: { } unknown })
            return new Refusal("--prices, grade", unknown.Grade, string.Join(", ", Enum.GetValues<LumberGrade>().SkipLast(1).Select(grade => grade.Brief())));
        if (rows.TrueForAll(row => row.Row.Thickness != graded.Board.Thickness))
            return new Refusal("--prices", $"no row of {graded.Board.Thickness}", $"prices of the board's thickness; the table has {string.Join(", ", rows.Select(row => row.Row.Thickness.ToString()).Distinct())}");

        double Price(GradedBoard board, LumberGrade grade) => rows
            .Where(row => row.Grade >= grade && row.Row.Thickness == board.Thickness && Fits(row.Row.WidthMin, board.Width) && Fits(row.Row.LengthMin, board.Length))
            .Select(row => row.Row.MoneyPerBoardFoot).DefaultIfEmpty().Max();
        return new Judged(graded, Price, BoardRemaking.Worth([graded], Price), BoardRemaking.Better(graded, Price, kerf, cuts));
    }

    /// <summary>A cut in words.</summary>
    public static string Words(BoardCut cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        var at = cut.At.Inches.ToString("0.##", CultureInfo.InvariantCulture);
        return cut.Cut switch
        {
            BoardCutKind.TrimLeft => $"trim {at} in off the left end",
            BoardCutKind.TrimRight => $"trim to {at} in from the left end",
            BoardCutKind.Crosscut => $"crosscut {at} in from the left end",
            _ => $"rip {at} in from the lower edge",
        };
    }

    // A board sold as a lower grade is still sold: a better board takes the best row it meets. A tenth of a millimetre is rounding.
    private static bool Fits(Length least, Length size) => size.Metres >= least.Metres - 1e-4;
}
