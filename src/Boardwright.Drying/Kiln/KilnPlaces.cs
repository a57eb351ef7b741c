using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>The room inside a kiln: places of one size for packs of boards, side by side and one over the other.</summary>
/// <param name="Count">Number of places.</param>
/// <param name="Wide">Places side by side, as the air or the door sees them.</param>
/// <param name="Width">Width of a place, across the boards.</param>
/// <param name="Span">Length of a place, along the boards.</param>
/// <param name="Height">Height of a place, bolsters not counted.</param>
/// <param name="Fill">Share of a layer that is wood: boards laid end to end to the full length leave the rest.</param>
/// <param name="Sticker">Thickness of the stickers; zero in a press, where board lies on board.</param>
public sealed record KilnPlaces(int Count, int Wide, Length Width, Length Span, Length Height, Share Fill, Length Sticker)
{
    /// <summary>Board feet of one layer: the nominal thickness over the covered part of the place.</summary>
    public BoardFeet OfLayer(NominalThickness thickness) => BoardFeet.From(Width.Feet * Span.Feet * Fill.Fraction * thickness.Inches);

    /// <summary>Height that one layer takes with its stickers.</summary>
    public Length HeightOfLayer(NominalThickness thickness) => thickness.Length + Sticker;

    /// <summary>Whole layers that one place takes; at least one.</summary>
    public int LayersMost(NominalThickness thickness) => Math.Max(1, (int)(Height / HeightOfLayer(thickness) + 1e-9));

    /// <summary>Stickers under one layer at a spacing, one near each end.</summary>
    /// <remarks>Sticker specs and spacing (Wengert): 12 to 16 in for boards up to 1 in, 16 to 18 in for good hardwood, never over 24 in; in line over a bolster.</remarks>
    public int StickersAcross(Length spacing) => Sticker > default(Length) ? (int)Math.Ceiling(Span / spacing - 1e-9) + 1 : 0;
}
