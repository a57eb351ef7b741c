using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How much resin a mould takes around its wood.</summary>
public static class CastVolume
{
    public static Command Command { get; } = Command.Of("cast", "volume", "Resin that fills a mould around its wood, with a low and a high figure", Run) with
    {
        Argument = new("FILE", $"a mould in JSON: {MouldFile.Keys}"),
        Examples = ["cast volume demo/examples/mould-river.json", "cast volume demo/examples/mould-table.json --json"],
    };

    public sealed record Answer(double AreaM2, double VolumeL, double VolumeLowL, double VolumeHighL, double MouldAreaM2, double WoodAreaM2);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        return ask.Refuses ? ask.Refused<Answer>() : InputFile.Read<MouldFile>("FILE", text).Then(mould => mould.Volume()).Then<Answer>(pour => new Answer(
            pour.OpenArea.SquareMetres, pour.Volume.Litres, pour.Low.Litres, pour.High.Litres, pour.MouldArea.SquareMetres, pour.WoodArea.SquareMetres));
    }
}
