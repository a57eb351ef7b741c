using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How hard a liquid pushes a piece of wood up, and what holds it down.</summary>
public static class WoodFloat
{
    public static Command Command { get; } = Command.Of("wood", "float", "How hard a liquid pushes wood up, and the weight that holds it down", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("mc", "MC", "moisture content, such as 8%"),
            Option.Required("liquid-density", "D", "density of the liquid, such as 1.10kg/L"),
            Option.Required("volume", "V", "volume of the wood, such as 6.5L"),
        ],
        Examples = ["wood float --species \"black walnut\" --mc 8% --liquid-density 1.10kg/L --volume 6.5L"],
    };

    public sealed record Answer(double BuoyancyN, double HoldDownKg, double SubmergedFraction, double WoodDensityKgPerM3);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var moisture = ask.Moisture("mc");
        var liquid = ask.Density("liquid-density");
        var volume = ask.Volume("volume");
        ask.RefuseWetterThanWood("mc", species, moisture);
        if (ask.Refuses)
        {
            return ask.Refused<Answer>();
        }

        var wood = WoodDensity.At(species!, moisture);
        return ask.Named(Flotation.Of(wood, liquid, volume)).Then<Answer>(held =>
            new Answer(held.BuoyancyNewtons, held.HoldDown.Kilograms, held.SubmergedFraction, wood.KilogramsPerCubicMetre));
    }
}
