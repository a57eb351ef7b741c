using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Density and weight of wood at a moisture content.</summary>
public static class WoodWeightCommand
{
    public static Command Command { get; } = Command.Of("wood", "weight", "Density and weight of wood at a moisture content", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("mc", "MC", "moisture content, such as 12%"),
            Option.Required("volume", "V", "volume at that moisture content, such as 2.3m3; 964bf is taken as nominal size"),
        ],
        Examples = ["wood weight --species \"black walnut\" --mc 79% --volume 1000bf", "wood weight --species \"quercus alba\" --mc 8% --volume 0.5m3"],
    };

    public sealed record Answer(double DensityKgPerM3, double WeightKg, double WeightLb);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var moisture = ask.Moisture("mc");
        var volume = ask.Volume("volume");
        ask.RefuseWetterThanWood("mc", species, moisture);
        if (ask.Refuses)
        {
            return ask.Refused<Answer>();
        }

        var weight = WoodWeight.Of(species!, moisture, volume);
        return new Answer(WoodDensity.At(species!, moisture).KilogramsPerCubicMetre, weight.Kilograms, weight.Pounds);
    }
}
