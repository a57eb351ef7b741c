using Boardwright.Quantities;
using CsCheck;

namespace Boardwright.Sawing.Tests.Grading;

/// <summary>Boards to grade, sizes in inches and feet.</summary>
internal static class SomeBoards
{
    public static Gen<GradedBoard> Any { get; } = Gen.Select(Gen.Int[12, 40], Gen.Int[8, 56], Faces(), Faces()).Select((quarters, quarterFeet, first, second) =>
        Fitted(quarters / 4.0, quarterFeet / 4.0, first, second));

    public static GradedBoard Of(double widthIn, double lengthFt, params BoardDefect[] defects) => Of(widthIn, lengthFt, defects, []);

    public static GradedBoard Of(double widthIn, double lengthFt, BoardDefect[] first, BoardDefect[] second) => new(
        NominalThickness.FromQuarters(4), Expect.Inches(widthIn), Expect.Feet(lengthFt), new BoardFace("a", first), new BoardFace("b", second));

    public static BoardDefect Defect(DefectKind kind, double xIn, double yIn, double lengthIn, double widthIn) =>
        new(kind, Expect.Inches(xIn), Expect.Inches(yIn), Expect.Inches(lengthIn), Expect.Inches(widthIn));

    public static BoardGrade Graded(GradedBoard board) => Expect.Done(BoardGrade.Of(board));

    // Kinds of place 0 to 1 along and across, and sizes in inches.
    private static Gen<(int Kind, double X, double Y, double Length, double Width)[]> Faces() =>
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 95], Gen.Int[0, 15], Gen.Int[1, 16], Gen.Int[1, 12]).Select((kind, x, y, length, width) => (kind, x / 96.0, y / 16.0, length / 4.0, width / 4.0)).Array[0, 5];

    private static GradedBoard Fitted(double widthIn, double lengthFt, (int Kind, double X, double Y, double Length, double Width)[] first, (int Kind, double X, double Y, double Length, double Width)[] second)
    {
        DefectKind[] kinds = [DefectKind.Knot, DefectKind.Hole, DefectKind.Stain, DefectKind.Rot];
        BoardDefect[] On((int Kind, double X, double Y, double Length, double Width)[] face) =>
            [.. face.Select(one => Defect(kinds[one.Kind], one.X * ((lengthFt * 12) - one.Length), one.Y * Math.Max(0.0, widthIn - one.Width), one.Length, Math.Min(one.Width, widthIn)))];

        return Of(widthIn, lengthFt, On(first), On(second));
    }
}
