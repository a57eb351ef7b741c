using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Grade of a board from its defects: named by the contract, without an answer so far.</summary>
public static class BoardGradeCommand
{
    public static Command Command { get; } = Command.Of<Answer>("board", "grade", "Grade of a board from its defects (has no answer yet)", Run) with
    {
        Argument = new("FILE", "the board as JSON: species thickness_quarters width_mm length_m faces:[{name defects:[{kind x_mm y_mm width_mm length_mm}]}]"),
    };

    public sealed record Cutting(double XMm, double YMm, double WidthMm, double LengthMm);

    public sealed record Answer(string Grade, double CuttingUnits, double RequiredUnits, IReadOnlyList<Cutting> Cuttings);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        ask.ArgumentFile();
        return ask.Refuses
            ? ask.Refused<Answer>()
            : new Outcome<Answer>.NoAnswer("Boards are not graded here yet: the search for clear cuttings between defects is not built. Surface measure and footage are in board measure; the grader's own grade goes into the tally.");
    }
}
