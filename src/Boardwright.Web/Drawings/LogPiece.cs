namespace Boardwright.Web.Drawings;

/// <summary>A board in a log's end, from the pith, up positive.</summary>
/// <param name="KeepsEdges">A slab or boule board: between its faces it goes as far as the wood does, across its thickness.</param>
public sealed record LogPiece(string Label, double LeftInches, double BottomInches, double WidthInches, double HeightInches, PieceKind Kind = PieceKind.First, bool KeepsEdges = false);

/// <summary>How a board is outlined.</summary>
public enum PieceKind
{
    /// <summary>Of the quality asked for: solid outline.</summary>
    First,

    /// <summary>Lesser (rift, falldown): dashed outline.</summary>
    Lesser,

    /// <summary>Taken out, such as the heart.</summary>
    Waste,
}
