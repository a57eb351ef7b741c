using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>How much resin fills a mould around its wood, with the band that reading errors and voids give it.</summary>
/// <param name="OpenArea">Area of the resin between the wood, seen from above.</param>
/// <param name="MouldArea">Area of the mould; the open area itself where only a river was measured.</param>
/// <param name="WoodArea">Mean area of the wood.</param>
/// <param name="Volume">Resin in place, without waste.</param>
/// <param name="Low">Should the wood be wider and the pour shallower than read.</param>
/// <param name="High">Should the wood be narrower and the pour deeper than read, and voids fill.</param>
public sealed record PourVolume(Area OpenArea, Area MouldArea, Area WoodArea, Volume Volume, Volume Low, Volume High)
{
    private static readonly Length CornerTolerance = Length.FromMillimetres(2.0);

    /// <summary>Resin volume = mould area × depth − wood below the level.</summary>
    /// <remarks>
    /// <para>Band: edge reading × length of wood edges × immersed height and level reading × open surface, added in quadrature;
    /// voids on the high side.</para>
    /// <para>Validity: wood inside the mould and not overlapping beyond the mould's area; depth above zero.</para>
    /// </remarks>
    /// <method page="docs/methods/resin-volume.md"/>
    /// <param name="mould">Inside of the mould, seen from above.</param>
    /// <param name="depth">Height of the resin above the bottom.</param>
    /// <param name="pieces">Wood on the bottom of the mould; may be none.</param>
    /// <param name="allowance">What makes the band.</param>
    public static Outcome<PourVolume> Around(Outline mould, Length depth, IReadOnlyList<WoodPiece> pieces, ReadingAllowance allowance)
    {
        ArgumentNullException.ThrowIfNull(mould);
        ArgumentNullException.ThrowIfNull(pieces);
        ArgumentNullException.ThrowIfNull(allowance);
        if (depth.Metres is not (> 0.0 and <= 1.0))
        {
            return new Refusal("depth", $"{depth.Millimetres:0.#} mm", "a pour above 0 and up to 1000 mm deep");
        }

        if (pieces.FirstOrDefault(piece => IsOutside(mould, piece)) is { } outside)
        {
            return new Refusal(outside.Name, "a corner outside the mould", "an outline inside the mould, corners in millimetres from the mould's first corner");
        }

        var wood = pieces.Sum(piece => piece.MeanArea.SquareMetres);
        var immersed = pieces.Sum(piece => piece.Immersed(depth).CubicMetres);
        var filled = mould.AreaSquareMetres * depth.Metres - immersed;
        if (wood >= mould.AreaSquareMetres || filled <= 0.0)
        {
            return new Refusal("pieces", $"{wood:0.0000} m2 of wood in a mould of {mould.AreaSquareMetres:0.0000} m2", "wood that leaves room for resin");
        }

        var edges = pieces.Sum(piece => piece.Outline.PerimeterMetres * Math.Min(piece.Thickness.Metres, depth.Metres));
        var surface = mould.AreaSquareMetres - pieces.Sum(piece => piece.AreaAtSquareMetres(depth));
        var band = Quadrature(allowance.Edge.Metres * edges, allowance.Level.Metres * surface);
        return Banded(mould.AreaSquareMetres - wood, mould.AreaSquareMetres, wood, filled, band, allowance.Voids);
    }

    /// <summary>Resin volume of a river measured by its width at stations along the mould: trapezoid rule × depth.</summary>
    /// <remarks>
    /// Where the first or last station stands short of the end, its width is taken to reach the end. The band also holds the
    /// difference between all stations and every second one, as an estimate of what lies between them.
    /// </remarks>
    /// <method page="docs/methods/resin-volume.md"/>
    /// <param name="length">Length of the mould.</param>
    /// <param name="depth">Height of the resin above the bottom.</param>
    /// <param name="stations">Places along the mould in rising order, with the width between the wood there.</param>
    /// <param name="allowance">What makes the band.</param>
    public static Outcome<PourVolume> Between(Length length, Length depth, IReadOnlyList<RiverStation> stations, ReadingAllowance allowance)
    {
        ArgumentNullException.ThrowIfNull(stations);
        ArgumentNullException.ThrowIfNull(allowance);
        if (depth.Metres is not (> 0.0 and <= 1.0))
        {
            return new Refusal("depth", $"{depth.Millimetres:0.#} mm", "a pour above 0 and up to 1000 mm deep");
        }

        if (stations.Count < 2 || stations[^1].At > length || stations.Zip(stations.Skip(1)).Any(pair => pair.First.At >= pair.Second.At))
        {
            return new Refusal("stations", string.Join(' ', stations.Select(station => $"{station.At.Millimetres:0.#}")) + " mm",
                $"two places or more in rising order, from 0 to {length.Millimetres:0.#} mm");
        }

        var area = RiverArea(length, stations);
        if (area <= 0.0)
        {
            return new Refusal("stations", "widths all zero", "widths above zero");
        }

        var coarse = stations.Count >= 3 ? RiverArea(length, [.. stations.Where((_, index) => index % 2 == 0 || index == stations.Count - 1)]) : area;
        var band = Quadrature(
            allowance.Edge.Metres * 2.0 * length.Metres * depth.Metres, allowance.Level.Metres * area, Math.Abs(area - coarse) * depth.Metres);
        return Banded(area, area, 0.0, area * depth.Metres, band, allowance.Voids);
    }

    private static bool IsOutside(Outline mould, WoodPiece piece) =>
        piece.Outline.Corners.Concat(piece.BottomOutline?.Corners ?? []).Any(corner => !mould.Holds(corner, CornerTolerance));

    private static double RiverArea(Length length, IReadOnlyList<RiverStation> stations)
    {
        var between = stations.Zip(stations.Skip(1))
            .Sum(pair => (pair.Second.At.Metres - pair.First.At.Metres) * (pair.First.Gap.Metres + pair.Second.Gap.Metres) / 2.0);
        return between + stations[0].At.Metres * stations[0].Gap.Metres + (length.Metres - stations[^1].At.Metres) * stations[^1].Gap.Metres;
    }

    private static PourVolume Banded(double open, double mould, double wood, double filled, double band, Share voids) => new(
        Area.FromSquareMetres(open), Area.FromSquareMetres(mould), Area.FromSquareMetres(wood), Volume.FromCubicMetres(filled),
        Volume.FromCubicMetres(Math.Max(0.0, filled - band)), Volume.FromCubicMetres(filled * (1.0 + voids.Fraction) + band));

    private static double Quadrature(params ReadOnlySpan<double> parts)
    {
        var sum = 0.0;
        foreach (var part in parts)
        {
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }
}
