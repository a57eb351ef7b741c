using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book;

/// <summary>Board feet of a piece of wood for a table: its area by the trapezoid rule over widths at equal steps, times its thickness, nothing rounded.</summary>
internal static class PieceFootage
{
    public static double Of(WoodPiece piece) => MeanWidthMm(piece.WidthsMm) * piece.LengthMm * piece.ThicknessMm * 1e-9 / BoardFeet.CubicMetresNominal;

    private static double MeanWidthMm(IReadOnlyList<double> widths) => (widths.Sum() - (widths[0] + widths[^1]) / 2.0) / (widths.Count - 1);
}
