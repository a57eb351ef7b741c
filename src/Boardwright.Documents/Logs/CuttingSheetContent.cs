using Boardwright.Quantities;

namespace Boardwright.Documents.Logs;

/// <summary>What the sawyer takes to the mill: the log's small end with its boards, and the blade heights of every opening.</summary>
/// <remarks>Points and boards lie in the log's own frame: zero at the centre of the small end, x right, y up, as the log lies unturned.</remarks>
public sealed record CuttingSheetContent
{
    public required string Yard { get; init; }

    public required string Log { get; init; }

    /// <summary>White oak, quartersawn 5/4.</summary>
    public required string Title { get; init; }

    /// <summary>Diameters, length, where from, in one line.</summary>
    public required string Description { get; init; }

    public required DateOnly Date { get; init; }

    /// <summary>Small end inside bark, in order around it.</summary>
    public required IReadOnlyList<PointMm> Outline { get; init; }

    public Length Bark { get; init; } = Length.FromMillimetres(15);

    public required Length Kerf { get; init; }

    /// <summary>The mill's scale is in millimetres.</summary>
    public bool Metric { get; init; }

    public required IReadOnlyList<SawnBoard> Boards { get; init; }

    public required IReadOnlyList<Opening> Openings { get; init; }

    public required MetalScan Metal { get; init; }

    /// <summary>Who scanned and when, or what was found.</summary>
    public required string MetalNote { get; init; }

    public IReadOnlyList<MetalHit> MetalHits { get; init; } = [];
}

/// <summary>What is known about metal in the log.</summary>
public enum MetalScan
{
    NotScanned,
    Clear,
    Found,

    /// <summary>Found and taken out, or marks of it are seen: there may be more.</summary>
    Doubtful,
}

/// <summary>Where metal sits.</summary>
/// <param name="ClockDegrees">Around the small end, clockwise from the top of the unturned log.</param>
/// <param name="FromSmallEnd">Along the log.</param>
public sealed record MetalHit(double ClockDegrees, Length FromSmallEnd, string Note);

/// <summary>A board as it lies in the log.</summary>
/// <param name="Opening">Index of the opening that frees it.</param>
/// <param name="Size">Thickness, width and length in words.</param>
/// <param name="IsFirstQuality">The quality asked for; others are drawn dashed.</param>
public sealed record SawnBoard(int Number, double LeftMm, double BottomMm, double WidthMm, double HeightMm, int Opening, string Size, bool IsFirstQuality);

/// <summary>One way of lying on the bed, with the cuts made in it from the top down.</summary>
/// <param name="TurnDegrees">Clockwise from the unturned log, looking at the small end.</param>
/// <param name="CentreHeight">Height of the centre of the small end above the bed.</param>
public sealed record Opening(string Title, double TurnDegrees, Length CentreHeight, IReadOnlyList<BladeCut> Cuts);

/// <param name="Height">Blade above the bed.</param>
/// <param name="Frees">What comes off with this cut.</param>
public sealed record BladeCut(string Name, Length Height, string Frees)
{
    /// <summary>The height as the mill's own scale is set; null for inches on a rule.</summary>
    public string? OnScale { get; init; }

    /// <summary>The face is scanned for metal before this cut.</summary>
    public bool ScanFirst { get; init; }
}
