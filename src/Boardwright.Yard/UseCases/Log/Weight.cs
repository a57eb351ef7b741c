using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Weight of a green log.</summary>
public static class LogWeightCommand
{
    public static Command Command { get; } = Command.Of("log", "weight", "Weight of a green log, for loader and truck", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("small-end", "D", "small-end diameter inside bark, such as 16in"),
            Option.Required("large-end", "D", "large-end diameter inside bark, such as 18in"),
            Option.Required("length", "L", "whole length with trim, such as 12ft6in"),
            Option.Flag("bark", "add the bark"),
        ],
        Examples = ["log weight --species \"northern red oak\" --small-end 16in --large-end 17.5in --length 12ft --bark"],
    };

    public sealed record Answer(double WeightKg, double WeightLb, double VolumeM3, double GreenMcPct, double? BarkKg, string Caution);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var log = new MeasuredLog(ask.Length("small-end"), ask.Length("length")) { LargeEnd = ask.LengthOrNull("large-end") };
        if (ask.Refuses)
            return ask.Refused<Answer>();

        return ask.Named(LogScale.Of(LogRule.Smalian, log)).Then(scaled => LogWeight.OfWood(species!, scaled.Volume).Then(wood =>
            Bark(ask, species!, scaled.Volume).Then<Answer>(bark => Show(scaled.Volume, wood, species!.GreenMoistureAverage!.Value, ask.Has("bark") ? bark : null))));
    }

    private static Outcome<Mass> Bark(Ask ask, Boardwright.Wood.Species species, Volume volume) =>
        ask.Has("bark") ? LogWeight.OfBark(species, volume) : default(Mass);

    private static Outcome<Answer> Show(Volume volume, Mass wood, MoistureContent moisture, Mass? bark)
    {
        var total = wood + (bark ?? default);
        return new Answer(
            total.Kilograms, total.Pounds, volume.CubicMetres, moisture.Percent, bark?.Kilograms,
            "A rolling log kills: chock it, work from the uphill side and the ends, nobody between log and stop. Single logs differ by a tenth and more from the species' average.");
    }
}
