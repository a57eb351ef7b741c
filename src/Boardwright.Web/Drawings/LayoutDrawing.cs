namespace Boardwright.Web.Drawings;

/// <summary>A charge in its kiln from the door, to scale: places side by side and one over the other, with the layers that stand in them.</summary>
/// <param name="Kiln">K1.</param>
/// <param name="Wide">Places side by side.</param>
/// <param name="WidthInches">Width of a place.</param>
/// <param name="HeightInches">Height of a place.</param>
/// <param name="Places">Lower row first, left to right; each from the bottom up.</param>
public sealed record LayoutDrawing(string Kiln, int Wide, double WidthInches, double HeightInches, IReadOnlyList<IReadOnlyList<LayoutPart>> Places);

/// <summary>Layers of one stack.</summary>
/// <param name="Stack">Its tag.</param>
/// <param name="Species">Its pattern.</param>
/// <param name="Layers">How many.</param>
/// <param name="LayerInches">Height of one with its stickers.</param>
/// <param name="BoardInches">Thickness of the boards.</param>
public sealed record LayoutPart(string Stack, string Species, int Layers, double LayerInches, double BoardInches);
