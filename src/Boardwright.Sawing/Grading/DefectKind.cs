namespace Boardwright.Sawing;

/// <summary>What a defect of a board is, as far as a grade asks.</summary>
public enum DefectKind
{
    /// <summary>A sound, tight knot.</summary>
    Knot,

    /// <summary>A loose or decayed knot.</summary>
    UnsoundKnot,

    /// <summary>A hole of any cause, larger than a pin.</summary>
    Hole,

    /// <summary>Pin, shot or spot worm holes.</summary>
    PinHoles,

    /// <summary>Bark, or wood missing, on an edge.</summary>
    Wane,

    /// <summary>A lengthwise parting through the piece, from an end.</summary>
    Split,

    /// <summary>A parting along the growth rings.</summary>
    Shake,

    /// <summary>The heart's centre in the face.</summary>
    Pith,

    /// <summary>Decay.</summary>
    Rot,

    /// <summary>Bark grown into the wood.</summary>
    BarkPocket,

    /// <summary>Stain.</summary>
    Stain,

    /// <summary>Mineral streak, spot or gum.</summary>
    Streak,

    /// <summary>Bird peck.</summary>
    BirdPeck,

    /// <summary>An ordinary check of seasoning: admitted in cuttings.</summary>
    SeasonCheck,
}

/// <summary>What a kind of defect does to cuttings.</summary>
/// <remarks>A sound cutting is free of rot, pith, shake, wane and what lets it fall apart; it admits sound knots, stain, streaks, bird pecks and pin holes (M).</remarks>
/// <source id="nhla-rules" locator="clear-face cutting, sound cutting; from memory"/>
/// <method page="docs/methods/board-grade.md"/>
public static class DefectKinds
{
    /// <summary>A clear-face cutting may not show it.</summary>
    public static bool IsInClearFace(this DefectKind kind) => kind != DefectKind.SeasonCheck;

    /// <summary>A sound cutting may not hold it, on either side.</summary>
    public static bool IsUnsound(this DefectKind kind) => kind is not (DefectKind.Knot or DefectKind.PinHoles or DefectKind.Stain or DefectKind.Streak or DefectKind.BirdPeck or DefectKind.SeasonCheck);
}
