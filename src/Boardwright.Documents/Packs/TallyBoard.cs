using Boardwright.Quantities;

namespace Boardwright.Documents.Packs;

/// <summary>One board as it was tallied.</summary>
/// <param name="Number">Place in the tally.</param>
/// <param name="Width">As measured.</param>
/// <param name="Length">As measured; the rule drops it to whole feet itself.</param>
/// <param name="SurfaceMeasure">Whole square feet under the rule; null when the pack is tallied by volume.</param>
/// <param name="Volume">For a pack tallied in millimetres and metres.</param>
/// <param name="Grade">Only where boards of one pack differ.</param>
public sealed record TallyBoard(int Number, Length Width, Length Length, int? SurfaceMeasure, Volume? Volume = null, string? Grade = null);

/// <summary>What the boards of one length come to.</summary>
public sealed record LengthSubtotal(Length Length, int Pieces, int? SurfaceMeasure, BoardFeet? Footage, Volume? Volume = null);

/// <summary>The two ways a pack is measured.</summary>
public enum TallyUnits
{
    InchesAndFeet,
    MillimetresAndMetres,
}
