using System.Globalization;
using Boardwright.Sawing;
using Boardwright.Web.Drawings;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Pages;

/// <summary>From a graded board to its drawing and words.</summary>
internal static class BoardPictures
{
    public static BoardFacesDrawing Faces(BoardGrade graded, string? species)
    {
        var number = 0;
        return new("The board", species ?? "", graded.Board.Length.Inches, graded.Board.Width.Inches, [.. new[] { graded.Board.First, graded.Board.Second }.Select(face =>
        {
            var decides = graded.Deciding.IsMade && ReferenceEquals(graded.Deciding.Face, face);
            return new FaceDrawing(
                $"Face {face.Name}{(decides ? $": {graded.Deciding.Yield!.Units.ToString("0.#", CultureInfo.InvariantCulture)} units, decides" : "")}",
                [.. face.Defects.Select(defect => new FacePiece($"{++number}", defect.FromLeft.Inches, defect.FromEdge.Inches, defect.Length.Inches, defect.Width.Inches, defect.Kind is DefectKind.Knot or DefectKind.UnsoundKnot or DefectKind.Hole))],
                decides ? [.. graded.Deciding.Yield!.Cuttings.Select((cutting, index) => new FacePiece(Letter(index), cutting.FromLeft.Inches, cutting.FromEdge.Inches, cutting.Length.Inches, cutting.Width.Inches))] : []);
        })]);
    }

    public static string Letter(int index) => ((char)('A' + (index % 26))).ToString();

    public static string Cuttings(CuttingYield found) => found.Way switch
    {
        { Way: CuttingWay.WholeFace } => "the whole face clear",
        { Cuttings: null } => "any number of cuttings",
        { Cuttings: 1 } => "1 cutting",
        { Way: CuttingWay.FullWidth, Cuttings: var most } => $"{most} cuttings of full width",
        { Cuttings: var most } => $"{most} cuttings",
    };

    public static string Asked(CuttingYield found) => string.Create(CultureInfo.InvariantCulture,
        $"{found.RequiredUnits:0.#} asked, in {Cuttings(found)}{(found.IsProven ? "" : $"; at most {found.CeilingUnits:0.#} there are")}");

    public static string Left(BoardCut cut) => string.Join(" and ", cut.Boards.Select(board =>
        string.Create(CultureInfo.InvariantCulture, $"{board.Board.Width.Inches:0.##} in × {board.Board.Length.Feet:0.##} ft {board.Grade.Name()}, {board.Footage.Count:0.##} bf")));

    public static string Said(BoardCut cut) => Judged.Words(cut) is var words ? char.ToUpperInvariant(words[0]) + words[1..] : "";
}
