namespace Boardwright.Yard.Book.Facts;

public enum Product
{
    Boards,
    Slabs,
    Boule,
    Slab,
    Blocking,
}

public enum Grain
{
    Flat,
    Quarter,
}

/// <summary>A stack on stickers and its card. Without a tally its footage is the sum of what was sawn onto it.</summary>
/// <remarks>Thickness is nominal in quarters; the sawn thickness stands beside it where it is known.</remarks>
public sealed record StackBuilt(
    string Stack, string Species, int ThicknessQuarters, Product Product, DateOnly SawnOn, string Place, string Owner,
    double? Bf = null, int? Pieces = null, Grain Grain = Grain.Flat, double? SawnThicknessMm = null, double? PieceLengthMinM = null, double? PieceLengthMaxM = null,
    double? PieceWidthMm = null, string? ReservedFor = null, bool NeverKiln = false, string? Note = null) : Fact;

/// <summary>A stack lies somewhere else now.</summary>
public sealed record StackMoved(string Stack, string Place) : Fact;

/// <summary>Boards were taken from a stack otherwise than by shipping, dressing or packing.</summary>
public sealed record StackTakenFrom(string Stack, double Bf, int? Pieces = null, string? Why = null) : Fact;

/// <summary>A stack was counted again; the count replaces what the card said.</summary>
public sealed record StackCounted(string Stack, double Bf, int? Pieces = null) : Fact;

/// <summary>What a stack is kept for, and whether it must stay out of every kiln.</summary>
public sealed record StackReserved(string Stack, string? ReservedFor = null, bool NeverKiln = false) : Fact;

/// <summary>Boards of a stack were planed into another.</summary>
public sealed record StackDressed(
    string Stack, string OutStack, double BfIn, double BfOut, double ThicknessMm, int? PiecesOut = null, double? ShavingsM3 = null, string? Place = null, string? Surfaces = null) : Fact;

/// <summary>Wood that is not in the book was planed for somebody; its species is in the shavings bin.</summary>
public sealed record CustomPlaned(string Customer, string Species, double Bf, double? ShavingsM3 = null) : Fact;

/// <summary>The shavings bin was emptied and swept.</summary>
public sealed record ShavingsEmptied : Fact;
