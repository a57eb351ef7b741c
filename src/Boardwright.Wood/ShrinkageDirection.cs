namespace Boardwright.Wood;

/// <summary>Direction in the tree along which a size is measured.</summary>
public enum ShrinkageDirection
{
    /// <summary>Across the growth rings: the width of a quartersawn board, the thickness of a flatsawn one.</summary>
    Radial,

    /// <summary>Along the growth rings: the width of a flatsawn board, the thickness of a quartersawn one.</summary>
    Tangential,

    /// <summary>Volume.</summary>
    Volumetric,
}
