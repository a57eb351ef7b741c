using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The hardwood grade of a board from its size and defects.</summary>
public static class BoardGradeCommand
{
    private const int CutsShown = 3;

    public static Command Command { get; } = Command.Of("board", "grade", "The hardwood lumber grade of a board from its size and the defects of both faces", Run) with
    {
        Argument = new("FILE", $"the board as JSON: {BoardFile.Keys}"),
        Options =
        [
            Option.Optional("prices", "FILE", $"a table with the header {PriceFile.Header}; grades as {string.Join(", ", Enum.GetValues<LumberGrade>().SkipLast(1).Select(grade => grade.Brief()))}"),
            Option.Optional("kerf", "L", "wood lost to a rip or crosscut (default 1/8in)"),
        ],
        Examples =
        [
            "board grade demo/examples/board-red-oak.json --prices demo/examples/prices-grades-red-oak.csv",
            "board grade demo/examples/board-clear.json",
        ],
    };

    public sealed record CuttingShown(double XMm, double YMm, double WidthMm, double LengthMm, double Units);

    public sealed record Trial(string Grade, bool Made, string? Face, double? CuttingUnits, double? RequiredUnits, int? CuttingsAllowed, double? ShortUnits, IReadOnlyList<string> InTheWay);

    public sealed record Next(string Grade, double? ShortUnits, IReadOnlyList<string> InTheWay);

    public sealed record Part(double WidthMm, double LengthM, string Grade, double BoardFeet, double? ValueMoney);

    public sealed record Cut(string How, double AtMm, IReadOnlyList<Part> Boards, double BoardFeet, double? ValueMoney);

    public sealed record Answer(
        string Grade, double CuttingUnits, double RequiredUnits, IReadOnlyList<CuttingShown> Cuttings, string GradeName, string? Face, int? CuttingsAllowed, double CeilingUnits, bool UnitsProven, bool GradeProven,
        int SurfaceMeasure, double BoardFeet, double? ValueMoney, Next? NextGrade, IReadOnlyList<Trial> Trials, IReadOnlyList<Cut> BetterCuts, string? Assumed, string SpeciesRule, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        var prices = ask.Has("prices") ? ask.File("prices") : null;
        var kerf = ask.Length("kerf", BoardRemaking.UsualKerf);
        if (ask.Refuses)
            return ask.Refused<Answer>();

        return InputFile.Read<BoardFile>("FILE", text).Then(file => file.KnownSpecies().Then(species =>
            (prices is null ? new Outcome<IReadOnlyList<BoardPrice>?>.Done(null) : PriceFile.Read("--prices", prices, species).Then(rows => new Outcome<IReadOnlyList<BoardPrice>?>.Done(rows))).Then(rows =>
            Named(file.Board().Then(BoardGrade.Of)).Then(graded => Judged.Of(graded, rows, kerf, CutsShown).Then<Answer>(judged => Show(judged, species, file.Assumed))))));
    }

    private static Outcome<BoardGrade> Named(Outcome<BoardGrade> graded) => graded is Outcome<BoardGrade>.Refused(var reasons)
        ? new Outcome<BoardGrade>.Refused([.. reasons.Select(reason => reason.What.StartsWith("FILE", StringComparison.Ordinal) ? reason : reason with { What = "FILE, " + reason.What })])
        : graded;

    private static Answer Show(Judged judged, Species? species, string? assumed)
    {
        var graded = judged.Graded;
        var found = graded.Deciding.IsMade ? graded.Deciding.Yield : null;
        return new Answer(
            graded.Grade.Brief(), found?.Units ?? 0.0, found?.RequiredUnits ?? 0.0,
            [.. (found?.Cuttings ?? []).Select(cutting => new CuttingShown(cutting.FromLeft.Millimetres, cutting.FromEdge.Millimetres, cutting.Width.Millimetres, cutting.Length.Millimetres, cutting.Units))],
            graded.Grade.Name(), graded.Deciding.IsMade ? graded.Deciding.Face?.Name : null, found?.Way.Cuttings, found?.CeilingUnits ?? 0.0, found?.IsProven ?? true, graded.IsProven,
            graded.SurfaceMeasure, graded.Footage.Count, judged.ValueMoney,
            graded.Next is { } next ? new Next(next.Grade.Brief(), next.Yield?.ShortUnits, next.Faults) : null,
            [.. graded.Trials.Select(trial => new Trial(trial.Grade.Brief(), trial.IsMade, trial.Face?.Name, trial.Yield?.Units, trial.Yield?.RequiredUnits, trial.Yield?.Way.Cuttings, trial.Yield?.ShortUnits, trial.Faults))],
            [.. judged.Better.Select(cut => Show(cut, judged.Price))], assumed, SpeciesRules.Words(species),
            "Flatness, warp and thickness are not graded. cutting_units is the most the face gives in the cuttings allowed; units_proven false: it is at least that, and at most ceiling_units.");
    }

    private static Cut Show(BoardCut cut, Func<GradedBoard, LumberGrade, double>? price) => new(
        Judged.Words(cut), cut.At.Millimetres,
        [.. cut.Boards.Select(board => new Part(board.Board.Width.Millimetres, board.Board.Length.Metres, board.Grade.Brief(), board.Footage.Count, price is null ? null : BoardRemaking.Worth([board], price)))],
        cut.Boards.Sum(board => board.Footage.Count), price is null ? null : BoardRemaking.Worth(cut.Boards, price));
}
