using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>What keeps each piece of wood under the resin.</summary>
public static class CastWeighDown
{
    public static Command Command { get; } = Command.Of("cast", "weigh-down", "Weight that keeps each piece of wood under the resin", Run) with
    {
        Argument = new("FILE", $"a mould in JSON: {MouldFile.Keys}"),
        Examples = ["cast weigh-down demo/examples/mould-table.json"],
    };

    public sealed record Piece(
        string Name, string? Species, double DensityKgPerM3, double WeightKg, double BuoyancyN, double HoldDownKg, double WaterL, double BallastKg, double? FloatsAboveMm, string Moisture);

    public sealed record Answer(IReadOnlyList<Piece> Pieces);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        return ask.Refuses ? ask.Refused<Answer>() : InputFile.Read<MouldFile>("FILE", text).Then(mould =>
            mould.Pieces is null or { Count: 0 }
                ? new Refusal("pieces", "none", "one piece of wood or more")
                : mould.Depth().Then(depth => mould.Wood().Then(wood => Density(mould).Then<Answer>(liquid =>
                    new Answer([.. wood.Select((piece, index) => Show(piece, mould.Pieces[index], HoldDown.Of(piece, liquid, depth)))])))));
    }

    private static Outcome<Density> Density(MouldFile mould) => mould.Resin is null
        ? ResinTable.Class.DensityMixed
        : ResinFile.Of(mould.Resin).Then<Density>(resin => resin.DensityMixed);

    private static Piece Show(WoodPiece piece, PieceFile file, HoldDown held) => new(
        piece.Name, file.Species, piece.Density.KilogramsPerCubicMetre, piece.Mass.Kilograms, held.BuoyancyNewtons, held.Need.Kilograms, held.Water.Litres,
        held.Ballast.Kilograms, held.FloatsAbove?.Millimetres, WoodForPour.Of(MoistureContent.FromPercent(file.McPct!.Value)).Advice);
}
