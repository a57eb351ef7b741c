namespace Boardwright.Web.Drawings;

/// <summary>A log's end as it lies on the saw bed. Lengths in inches; positions from the pith, up positive.</summary>
/// <param name="Tag">L-012.</param>
/// <param name="Species">Common name; decides rings, pores and rays.</param>
/// <param name="WideInches">Diameter inside bark, level.</param>
/// <param name="HighInches">Diameter inside bark, upright.</param>
public sealed record LogEndDrawing(string Tag, string Species, double WideInches, double HighInches)
{
    /// <summary>From the pith to the rim at equal angles, the first upright, then clockwise, as it lies; empty for an ellipse. Widths and heights then hold the farthest on either side.</summary>
    public IReadOnlyList<double> RimInches { get; init; } = [];

    /// <summary>From the pith to the rim of a log with measured radii, inches; angles run clockwise from the right.</summary>
    public double RimAt(double angle)
    {
        var around = ((((angle / Math.Tau) + .25) % 1) + 1) % 1 * RimInches.Count;
        var (first, part) = ((int)around % RimInches.Count, around - Math.Floor(around));
        return RimInches[first] + (part * (RimInches[(first + 1) % RimInches.Count] - RimInches[first]));
    }

    public IReadOnlyList<LogPiece> Pieces { get; init; } = [];

    public IReadOnlyList<BladeCut> Cuts { get; init; } = [];

    /// <summary>Unit of the blade heights, in words.</summary>
    public string HeightUnit { get; init; } = "inches";

    /// <summary>Height of the pith above the bed; null leaves the bed out.</summary>
    public double? PithHeightInches { get; init; }

    public double BarkInches { get; init; } = .7;

    public double SapwoodInches { get; init; } = 1;

    /// <summary>Diameter of rot at the heart; 0 when sound.</summary>
    public double HeartRotInches { get; init; }

    /// <summary>The species is not settled: blank wood, dashed edge, a question mark.</summary>
    public bool Unproven { get; init; }

    /// <summary>What happens to the log after these cuts, such as "then turn ¼".</summary>
    public string? Turn { get; init; }
}
