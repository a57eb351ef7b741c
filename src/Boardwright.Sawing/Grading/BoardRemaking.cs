using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>A rip or trim of a board and what comes of it.</summary>
/// <param name="Cut">What is cut.</param>
/// <param name="At">Where: from the left end for a trim, from the lower edge for a rip.</param>
/// <param name="Boards">The boards it leaves, graded, those below grade included.</param>
/// <param name="Value">Their value at the prices given, or by grade alone, with footage unrounded: no cut gains by the rounding of surface measure.</param>
public sealed record BoardCut(BoardCutKind Cut, Length At, IReadOnlyList<BoardGrade> Boards, double Value)
{
    /// <summary>The best grade among its boards.</summary>
    public LumberGrade Best => Boards.Min(board => board.Grade);
}

/// <summary>How a board may be cut again.</summary>
public enum BoardCutKind
{
    /// <summary>The part left of the line is cut away.</summary>
    TrimLeft,

    /// <summary>The part right of the line is cut away.</summary>
    TrimRight,

    /// <summary>Parted across at the line: both parts are kept.</summary>
    Crosscut,

    /// <summary>Parted along the line: both parts are kept.</summary>
    Rip,
}

/// <summary>Tries every trim, crosscut and rip of a board at the edges of its defects and at whole feet.</summary>
/// <remarks>
/// Between two such places a cut only takes more wood away: the defects that stay, the length that counts and the cuttings that fit do not change for the better.
/// A cut to a whole number of feet is tried from both ends, since surface measure counts whole feet.
/// </remarks>
/// <method page="docs/methods/board-grade.md"/>
public static class BoardRemaking
{
    /// <summary>Saw lines where nothing else is said.</summary>
    public static readonly Length UsualKerf = Length.FromInches(1.0 / 8.0);

    private static readonly Length ShortestBoard = Length.FromFeet(4.0);
    private static readonly Length NarrowestBoard = Length.FromInches(3.0);

    /// <summary>The cuts worth more than the board as it is, best first.</summary>
    /// <param name="graded">The board and its grade.</param>
    /// <param name="price">Money per board foot of a board of this grade; null tells cuts apart by grade and footage.</param>
    /// <param name="kerf">Wood lost to a rip or crosscut.</param>
    /// <param name="count">Most cuts to name.</param>
    public static IReadOnlyList<BoardCut> Better(BoardGrade graded, Func<GradedBoard, LumberGrade, double>? price, Length kerf, int count)
    {
        var worth = price ?? ((_, grade) => ByGradeAlone(grade, graded.Grade));
        var now = Value([graded], worth);
        return
        [
            .. Cuts(graded.Board, kerf).Where(cut => cut.Boards.Sum(board => Footage(board) * Dearest(board, worth)) > now + 1e-9).Select(cut => Cut(cut, worth)).OfType<BoardCut>()
                .Where(cut => cut.Value > now + 1e-9 && (price is not null || cut.Best < graded.Grade)).OrderByDescending(cut => cut.Value).Take(count),
        ];
    }

    /// <summary>Value of boards as tallied, at prices by board foot.</summary>
    public static double Worth(IReadOnlyList<BoardGrade> boards, Func<GradedBoard, LumberGrade, double> price) => boards.Sum(board => board.Footage.Count * price(board.Board, board.Grade));

    // Without prices a foot of a better grade is worth ten of the grade the board has, so that a cut that lifts the grade is found and the one that keeps most is first.
    private static double ByGradeAlone(LumberGrade grade, LumberGrade now) => grade < now ? 10.0 + (now - grade) : grade == now ? 1.0 : 0.0;

    private static double Dearest(GradedBoard board, Func<GradedBoard, LumberGrade, double> price) => Enum.GetValues<LumberGrade>().Max(grade => price(board, grade));

    private static double Value(IReadOnlyList<BoardGrade> boards, Func<GradedBoard, LumberGrade, double> price) => boards.Sum(board => Footage(board.Board) * price(board.Board, board.Grade));

    private static double Footage(GradedBoard board) =>
        SurfaceMeasure.Exact(board.Width.Inches, TradeRounding.WholeDown(board.Length.Feet)) * BoardMeasure.CountedThicknessIn(board.Thickness.Inches);

    private static BoardCut? Cut((BoardCutKind Kind, Length At, IReadOnlyList<GradedBoard> Boards) cut, Func<GradedBoard, LumberGrade, double> price)
    {
        var boards = cut.Boards.Select(BoardGrade.Of).OfType<Outcome<BoardGrade>.Done>().Select(done => done.Value).ToList();
        return boards.Count == 0 ? null : new(cut.Kind, cut.At, boards, Value(boards, price));
    }

    private static IEnumerable<(BoardCutKind Kind, Length At, IReadOnlyList<GradedBoard> Boards)> Cuts(GradedBoard board, Length kerf)
    {
        var defects = board.First.Defects.Concat(board.Second.Defects).ToList();
        var feet = Enumerable.Range(1, (int)board.Length.Feet).Select(foot => Length.FromFeet(foot)).ToList();
        foreach (var at in Inside([.. defects.Select(defect => defect.FromLeft + defect.Length), .. feet.Where(foot => foot < board.Length).Select(foot => board.Length - foot)], board.Length - ShortestBoard))
            yield return (BoardCutKind.TrimLeft, at, [Part(board, at, board.Length, default, board.Width)]);
        foreach (var at in Inside([.. defects.Select(defect => defect.FromLeft), .. feet], board.Length).Where(at => at >= ShortestBoard))
            yield return (BoardCutKind.TrimRight, at, [Part(board, default, at, default, board.Width)]);
        foreach (var at in Inside([.. defects.Select(defect => defect.FromLeft), .. feet], board.Length - ShortestBoard - kerf).Where(at => at >= ShortestBoard))
            yield return (BoardCutKind.Crosscut, at, [Part(board, default, at, default, board.Width), Part(board, at + kerf, board.Length, default, board.Width)]);
        foreach (var at in Inside([.. defects.Select(defect => defect.FromEdge), .. defects.Select(defect => defect.FromEdge + defect.Width)], board.Width))
        {
            Length[] widths = [at, board.Width - at > kerf ? board.Width - at - kerf : default];
            IReadOnlyList<GradedBoard> parts = [Part(board, default, board.Length, default, at), Part(board, default, board.Length, at + kerf, board.Width)];
            yield return (BoardCutKind.Rip, at, [.. parts.Where((_, index) => widths[index] >= NarrowestBoard)]);
        }
    }

    private static IEnumerable<Length> Inside(IEnumerable<Length> places, Length most) => places.Where(at => at.Metres > 0.0 && at <= most).Distinct().Order();

    private static GradedBoard Part(GradedBoard board, Length left, Length right, Length bottom, Length top) => board with
    {
        Length = right > left ? right - left : default,
        Width = top > bottom ? top - bottom : default,
        First = Part(board.First, left, right, bottom, top),
        Second = Part(board.Second, left, right, bottom, top),
    };

    private static BoardFace Part(BoardFace face, Length left, Length right, Length bottom, Length top) => new(face.Name, [.. face.Defects.Select(defect => Part(defect, left, right, bottom, top)).OfType<BoardDefect>()]);

    private static BoardDefect? Part(BoardDefect defect, Length left, Length right, Length bottom, Length top)
    {
        var (from, to) = (Math.Max(left.Metres, defect.FromLeft.Metres), Math.Min(right.Metres, (defect.FromLeft + defect.Length).Metres));
        var (low, high) = (Math.Max(bottom.Metres, defect.FromEdge.Metres), Math.Min(top.Metres, (defect.FromEdge + defect.Width).Metres));
        // What is less than a tenth of a millimetre wide is the rounding of the cut.
        return to - from > 1e-4 && high - low > 1e-4
            ? defect with { FromLeft = Length.FromMetres(from - left.Metres), FromEdge = Length.FromMetres(low - bottom.Metres), Length = Length.FromMetres(to - from), Width = Length.FromMetres(high - low) }
            : null;
    }
}
