using System.Text.Json.Serialization;
using Boardwright.Casting;
using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>What to weigh of both parts.</summary>
public static class CastMix
{
    public static Command Command { get; } = Command.Of("cast", "mix", "Masses of part A and part B that fill a volume", Run) with
    {
        Options =
        [
            Option.Required("resin", "NAME|FILE", "class, ref-slow, or a resin in JSON"),
            Option.Required("volume", "V", "resin in place, such as 6.5L"),
            Option.Optional("waste", "P", "what sticks to buckets and leaks, such as 8% (default 0%)"),
        ],
        Examples = ["cast mix --resin class --volume 50.27L --waste 8%", "cast mix --resin demo/examples/resin.json --volume 6.5L"],
    };

    public sealed record Answer(double PartAKg, double PartBKg, [property: JsonPropertyName("part_a_l")] double PartALitres, [property: JsonPropertyName("part_b_l")] double PartBLitres, double TotalKg, IReadOnlyList<string> Cautions);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var volume = ask.Volume("volume");
        var waste = ask.Share("waste", default(Share));
        var resin = ask.Take("--resin", ResinFile.Find(ask, "resin"));
        if (ask.Refuses || resin is null)
            return ask.Refused<Answer>();
        var mix = Mix.For(resin, volume, waste);
        return new Answer(mix.PartA.Kilograms, mix.PartB.Kilograms, mix.VolumeA.Litres, mix.VolumeB.Litres, mix.Total.Kilograms, PourAdvice.Cautions);
    }
}
