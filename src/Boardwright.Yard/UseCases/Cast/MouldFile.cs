using Boardwright.Casting;
using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Yard.UseCases;

/// <summary>A mould as written in a file: its inside, the wood in it or the river between, and for a cure the resin, layers and shop.</summary>
internal sealed record MouldFile
{
    public const string Keys = "length_mm width_mm (or diameter_mm, side_mm of a hexagon, outline) depth_mm wall_mm wall_material edge_mm "
        + "pieces:[{species mc_pct thickness_mm outline:[[x_mm,y_mm]] outline_bottom or length_mm widths_mm}] or stations:[{at_mm gap_mm}] resin layers:[{depth_mm poured_h}] shop_c or shop:[{h c}]";

    public double? LengthMm { get; init; }

    public double? WidthMm { get; init; }

    public double? DiameterMm { get; init; }

    public double? SideMm { get; init; }

    public IReadOnlyList<double[]>? Outline { get; init; }

    public double? DepthMm { get; init; }

    public double? WallMm { get; init; }

    public string? WallMaterial { get; init; }

    public double? EdgeMm { get; init; }

    public IReadOnlyList<PieceFile>? Pieces { get; init; }

    public IReadOnlyList<StationFile>? Stations { get; init; }

    public System.Text.Json.JsonElement? Resin { get; init; }

    public IReadOnlyList<LayerFile>? Layers { get; init; }

    public double? ShopC { get; init; }

    public IReadOnlyList<ShopFile>? Shop { get; init; }

    public Outcome<Length> Depth() => Millimetres("depth_mm", DepthMm);

    public Outcome<Outline> Inside() =>
        Outline is { } corners ? Corners("outline", corners)
        : DiameterMm is not null ? Millimetres("diameter_mm", DiameterMm).Then(diameter => Casting.Outline.Circle("diameter_mm", diameter))
        : SideMm is not null ? Millimetres("side_mm", SideMm).Then(side => Casting.Outline.RegularHexagon("side_mm", side))
        : Millimetres("length_mm", LengthMm).Then(length => Millimetres("width_mm", WidthMm).Then(width => Casting.Outline.Rectangle("length_mm, width_mm", length, width)));

    public Outcome<IReadOnlyList<WoodPiece>> Wood()
    {
        var pieces = new List<WoodPiece>();
        foreach (var piece in Pieces ?? [])
        {
            switch (piece.Piece($"pieces[{pieces.Count}]"))
            {
                case Outcome<WoodPiece>.Done(var done):
                    pieces.Add(done);
                    break;
                case var other:
                    return other.Then<IReadOnlyList<WoodPiece>>(_ => pieces);
            }
        }

        return pieces;
    }

    public Outcome<PourVolume> Volume() => Depth().Then(depth => Stations is { } stations
        ? Millimetres("length_mm", LengthMm ?? (stations.Count > 0 ? stations[^1].AtMm : null)).Then(length => River(stations).Then(river => PourVolume.Between(length, depth, river, ReadingAllowance.Usual)))
        : Inside().Then(mould => Wood().Then(wood => PourVolume.Around(mould, depth, wood, ReadingAllowance.Usual))));

    public Outcome<MouldWall?> Wall() => WallMm is null or 0.0
        ? new Outcome<MouldWall?>.Done(null)
        : Millimetres("wall_mm", WallMm).Then(thickness => MouldWall.Of("wall_material", WallMaterial ?? "hdpe", thickness).Then(wall => new Outcome<MouldWall?>.Done(wall)));

    public static Outcome<Length> Millimetres(string what, double? given) => given is { } value && Length.Accepts(value / 1000.0)
        ? Length.FromMillimetres(value)
        : new Refusal(what, given is { } wrong ? $"{wrong}" : "nothing", "millimetres, 0 to 1000000");

    public static Outcome<Outline> Corners(string what, IReadOnlyList<double[]> corners) => corners.All(corner => corner is [_, _])
        ? Casting.Outline.Polygon(what, [.. corners.Select(corner => PlanPoint.FromMillimetres(corner[0], corner[1]))])
        : new Refusal(what, "a corner that is not a pair", "[x_mm, y_mm] for each corner");

    private static Outcome<IReadOnlyList<RiverStation>> River(IReadOnlyList<StationFile> stations)
    {
        var bad = stations.FirstOrDefault(station => station.AtMm is not (>= 0.0 and <= 1e5) || station.GapMm is not (>= 0.0 and <= 1e5));
        return bad is null
            ? stations.Select(station => new RiverStation(Length.FromMillimetres(station.AtMm!.Value), Length.FromMillimetres(station.GapMm!.Value))).ToList()
            : new Refusal("stations", $"at_mm {bad.AtMm}, gap_mm {bad.GapMm}", "both in millimetres, 0 to 100000");
    }
}

internal sealed record StationFile(double? AtMm, double? GapMm);

internal sealed record LayerFile(double? DepthMm, double? PouredH);

internal sealed record ShopFile(double? H, double? C);

internal sealed record PieceFile
{
    public string? Species { get; init; }

    public double? McPct { get; init; }

    public double? ThicknessMm { get; init; }

    public IReadOnlyList<double[]>? Outline { get; init; }

    public IReadOnlyList<double[]>? OutlineBottom { get; init; }

    public double? LengthMm { get; init; }

    public IReadOnlyList<double>? WidthsMm { get; init; }

    public Outcome<WoodPiece> Piece(string name) => SpeciesTable.Find($"{name}.species", Species ?? "").Then(species =>
        McPct is { } percent && MoistureContent.Accepts(percent / 100.0)
            ? Shape(name).Then(outline => Bottom(name).Then(bottom => MouldFile.Millimetres($"{name}.thickness_mm", ThicknessMm).Then<WoodPiece>(thickness =>
                new WoodPiece(name, outline, thickness, WoodDensity.At(species, MoistureContent.FromPercent(percent))) { BottomOutline = bottom })))
            : new Refusal($"{name}.mc_pct", McPct is { } wrong ? $"{wrong}" : "nothing", "percent of the oven-dry mass, 0 to 500"));

    private Outcome<Outline> Shape(string name) => Outline is { } corners
        ? MouldFile.Corners($"{name}.outline", corners)
        : MouldFile.Millimetres($"{name}.length_mm", LengthMm).Then(length => WidthsMm is { } widths && widths.All(width => width is >= 0.0 and <= 1e5)
            ? Casting.Outline.Strip($"{name}.widths_mm", length, [.. widths.Select(Length.FromMillimetres)])
            : new Refusal($"{name}.widths_mm", "nothing or a width below zero", "widths in millimetres at equal spacing, from end to end"));

    private Outcome<Outline?> Bottom(string name) => OutlineBottom is { } corners
        ? MouldFile.Corners($"{name}.outline_bottom", corners).Then(outline => new Outcome<Outline?>.Done(outline))
        : new Outcome<Outline?>.Done(null);
}
