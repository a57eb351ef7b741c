using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>One grade tried on a board: whether it makes it, and if not, what is in the way.</summary>
/// <param name="Grade">The grade.</param>
/// <param name="Face">The face that decides it: the poor face, or the better face of a grade judged from it.</param>
/// <param name="Yield">What that face yields; null where the board is too small to be looked at.</param>
/// <param name="Faults">What is in the way, in words; empty when the grade is made.</param>
/// <param name="IsOpen">The search ended before it was shown that the yield is missing, and nothing else is in the way.</param>
public sealed record GradeTrial(LumberGrade Grade, BoardFace? Face, CuttingYield? Yield, IReadOnlyList<string> Faults, bool IsOpen)
{
    /// <summary>The board makes the grade.</summary>
    public bool IsMade => Faults.Count == 0;
}

/// <summary>The grade of a board and how it was found.</summary>
/// <param name="Board">The board.</param>
/// <param name="SurfaceMeasure">Square feet of the face as tallied; a half goes up.</param>
/// <param name="Footage">Board feet.</param>
/// <param name="Trials">The grades tried, best first; the last is the grade of the board unless it is below all.</param>
/// <source id="nhla-rules" locator="summary chart of standard grades; 2019 edition paragraphs 57 to 72 as quoted"/>
/// <method page="docs/methods/board-grade.md"/>
public sealed record BoardGrade(GradedBoard Board, int SurfaceMeasure, BoardFeet Footage, IReadOnlyList<GradeTrial> Trials)
{
    /// <summary>The grade.</summary>
    public LumberGrade Grade => Trials[^1].IsMade ? Trials[^1].Grade : LumberGrade.Below;

    /// <summary>The trial that decides: the grade made, or the last one missed.</summary>
    public GradeTrial Deciding => Trials[^1];

    /// <summary>The grade next above; null for the best.</summary>
    public GradeTrial? Next => Trials[^1].IsMade ? Trials.SkipLast(1).LastOrDefault() : Trials[^1];

    /// <summary>No better grade was left open.</summary>
    public bool IsProven => !Trials.Any(trial => trial.IsOpen);

    /// <summary>The grade of a board, or why it cannot be graded.</summary>
    public static Outcome<BoardGrade> Of(GradedBoard board) => board.Checked().Then<BoardGrade>(sound => new BoardGrader(sound).Grade());
}
