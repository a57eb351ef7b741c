using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Boards of one size as they came off the saw.</summary>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Width">Width; of a slab the mean of both faces.</param>
/// <param name="Length">Length.</param>
/// <param name="Pieces">How many.</param>
public sealed record SawnSize(NominalThickness Thickness, Length Width, Length Length, int Pieces)
{
    private const double NearMm = 3.2;

    /// <summary>Nominal footage, nothing rounded: what a cutting plan counts in, so that both can be laid side by side. A pack is tallied by surface measure later.</summary>
    public BoardFeet Footage => BoardFeet.From(Pieces * SurfaceMeasure.Exact(Width.Inches, Length.Feet) * BoardMeasure.CountedThicknessIn(Thickness.Length.Inches));

    /// <summary>What they bring at the prices a log was planned at.</summary>
    /// <remarks>A board of a planned size (within an eighth of an inch) is worth what the plan has for one of it, with the rings the plan gives it; any other takes the best row that asks for no rings.</remarks>
    /// <param name="plan">The plan.</param>
    /// <param name="prices">Its prices.</param>
    public double Money(CuttingPlan plan, IReadOnlyList<BoardPrice> prices)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var planned = plan.Boards.Where(board => board.Thickness == Thickness && IsNear(board.Width, Width) && IsNear(board.Length, Length)).ToList();
        var perFoot = planned.Count > 0
            ? planned.Sum(board => board.ValueMoney) / planned.Sum(board => board.Footage.Count)
            : prices.Where(price => price.Thickness == Thickness && price.Grain is null && price.WidthMin <= Width && price.LengthMin <= Length && !(price.WidthMax < Width) && !(price.LengthMax < Length))
                .Select(price => price.MoneyPerBoardFoot).DefaultIfEmpty(0.0).Max();
        return perFoot * Footage.Count;
    }

    private static bool IsNear(Length left, Length right) => Math.Abs(left.Millimetres - right.Millimetres) <= NearMm;
}
