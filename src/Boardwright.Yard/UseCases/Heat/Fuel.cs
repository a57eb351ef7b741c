using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Heat a kilogram of wood fuel gives, as fired.</summary>
public static class HeatFuel
{
    public static Command Command { get; } = Command.Of("heat", "fuel", "Heat a kilogram of wood fuel gives, as fired", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("mc", "MC", "moisture content on the oven-dry basis, such as 28%; 50 % of the wet mass is 100 % here"),
            Option.Optional("efficiency", "P", "share of the higher value that reaches the water (default: heat balance with a 400 F stack and 60 % excess air)"),
        ],
        Examples = ["heat fuel --species \"white ash\" --mc 28%", "heat fuel --species \"sugar maple\" --mc 28% --efficiency 60%"],
    };

    public sealed record Answer(double HigherKjPerKg, double RecoverableKjPerKg, double KwhPerM3Solid, double EfficiencyPct, double WaterOfWetMassPct);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var moisture = ask.Moisture("mc");
        var efficiency = ask.ShareOrNull("efficiency");
        if (ask.Refuses || species is null)
            return ask.Refused<Answer>();
        var balance = FuelHeat.Of(moisture, FireSetting.Usual);
        var recoverable = efficiency is { } share ? share.Fraction * balance.HigherKilojoulesPerKilogram : balance.RecoverableKilojoulesPerKilogram;
        return recoverable > 0.0
            ? new Answer(
                balance.HigherKilojoulesPerKilogram, recoverable, FuelHeat.KilowattHoursPerSolidCubicMetre(species, moisture, recoverable),
                100.0 * recoverable / balance.HigherKilojoulesPerKilogram, 100.0 * FuelHeat.WetBasis(moisture))
            : new Outcome<Answer>.NoAnswer($"At {moisture.Percent:0} % moisture content the fire spends more heat on the water than the wood gives.");
    }
}
