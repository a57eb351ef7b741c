using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Sawing;

/// <summary>A pack, board by board in the order tallied.</summary>
/// <param name="Rule">How footage was counted.</param>
/// <param name="Boards">Each board with its measure.</param>
/// <remarks>
/// Widths x lengths / 12 added up will not equal the sum of surface measures: both are printed, each with its basis. Surface measure governs a dispute.
/// </remarks>
/// <source id="nhla-rules" locator="para. 18: random widths are tallied by surface measure"/>
/// <method page="docs/methods/pack-tally.md"/>
public sealed record PackTally(BoardRule Rule, IReadOnlyList<(TalliedBoard Board, MeasuredBoard Measure)> Boards)
{
    /// <summary>Tallies boards in order; exact halves of surface measure alternate, the first going up.</summary>
    public static PackTally Of(IEnumerable<TalliedBoard> boards, BoardRule rule)
    {
        var halves = new SurfaceMeasure();
        return new(rule, [.. boards.Select(board => (board, BoardMeasure.Of(board.Thickness.Length, board.Width, board.Length, rule, halves)))]);
    }

    /// <summary>Number of boards.</summary>
    public int Pieces => Boards.Count;

    /// <summary>Sum of the footage.</summary>
    public BoardFeet BoardFeet => BoardFeet.From(Boards.Sum(one => one.Measure.BoardFeet.Count));

    /// <summary>Solid volume of the sizes tallied, at nominal thickness.</summary>
    public Volume Volume => Volume.FromCubicMetres(Boards.Sum(one => one.Measure.Volume.CubicMetres));

    /// <summary>Mean of the widths; zero for an empty tally.</summary>
    public Length AverageWidth => Length.FromMetres(Boards.Select(one => one.Board.Width.Metres).DefaultIfEmpty().Average());

    /// <summary>Mean of the lengths; zero for an empty tally.</summary>
    public Length AverageLength => Length.FromMetres(Boards.Select(one => one.Board.Length.Metres).DefaultIfEmpty().Average());

    /// <summary>Boards, footage and volume by length in whole feet, shortest first.</summary>
    public IReadOnlyList<PackTallyLength> ByLength =>
    [
        .. Boards.GroupBy(one => TradeRounding.WholeDown(one.Board.Length.Feet)).OrderBy(group => group.Key).Select(group => new PackTallyLength(
            group.Key, group.Count(), BoardFeet.From(group.Sum(one => one.Measure.BoardFeet.Count)), Volume.FromCubicMetres(group.Sum(one => one.Measure.Volume.CubicMetres)))),
    ];

    /// <summary>Weight of the pack at a moisture content, at nominal thickness.</summary>
    /// <returns>The mass; null when a board has no species.</returns>
    public Mass? WeightAt(MoistureContent moisture) => Boards.Any(one => one.Board.Species is null)
        ? null
        : Mass.FromKilograms(Boards.Sum(one => WoodWeight.Of(one.Board.Species!, moisture, one.Measure.Volume).Kilograms));
}

/// <summary>The boards of one length.</summary>
/// <param name="LengthFt">Whole feet.</param>
/// <param name="Pieces">Number of boards.</param>
/// <param name="BoardFeet">Footage.</param>
/// <param name="Volume">Solid volume at nominal thickness.</param>
public readonly record struct PackTallyLength(int LengthFt, int Pieces, BoardFeet BoardFeet, Volume Volume);
