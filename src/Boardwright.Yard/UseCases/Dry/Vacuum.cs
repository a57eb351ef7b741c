using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Time, energy and water of a radio-frequency vacuum charge.</summary>
public static class DryVacuum
{
    public static Command Command { get; } = Command.Of("dry", "vacuum", "Time, energy and water of a radio-frequency vacuum charge", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("thickness", "L", "of the boards, such as 8/4"),
            Option.Required("length", "L", "of the boards, such as 8ft"),
            Option.Required("from", "MC", "moisture content at the start"),
            Option.Required("to", "MC", "moisture content at the end"),
            Option.Required("pressure", "P", "absolute pressure in the chamber, such as 75mbar"),
            Option.Required("rf-power", "P", "radio-frequency power at the platen, such as 18kW"),
            Option.Required("volume", "V", "wood when green, such as 575bf"),
            Option.Optional("voltage", "HOW", "of the electrodes: constant as set at the start, or raised as the wood dries (default constant)"),
        ],
        Examples =
        [
            "dry vacuum --species \"black cherry\" --thickness 10/4 --length 8ft --from 21% --to 8% --pressure 75mbar --rf-power 18kW --volume 575bf",
            "dry vacuum --species \"white oak\" --thickness 5/4 --length 10ft --from 19.8% --to 7% --pressure 75mbar --rf-power 18kW --volume 610bf --json",
        ],
    };

    public sealed record Answer(
        double BoilingPointC, double WaterKg, double HoursP10, double HoursP50, double HoursP90, string LimitedBy, double EnergyKwh, double CondensateL,
        double InWoodKwh, double PumpKwh, double LowestMcPct, string Advice);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var thickness = ask.Length("thickness");
        var length = ask.Length("length");
        var from = ask.Moisture("from");
        var to = ask.Moisture("to");
        var pressure = ask.Pressure("pressure");
        var power = ask.Power("rf-power");
        var volume = ask.Volume("volume");
        var voltage = ask.Choice("voltage", "constant", "constant", "raised");
        if (ask.Refuses || species is null)
            return ask.Refused<Answer>();
        var charge = new VacuumCharge(species, thickness, length, from, to, volume, pressure, power) { VoltageRaised = voltage == "raised" };
        return VacuumDrying.Forecast(charge, RadioFrequency.Usual).Then<Answer>(forecast => new Answer(
            forecast.Boiling.Celsius, forecast.Water.Kilograms, forecast.HoursP10, forecast.HoursP50, forecast.HoursP90,
            forecast.Limit is VacuumLimit.Power ? "power" : "permeability", forecast.MainsKilowattHours, forecast.Condensate.Kilograms,
            forecast.InWoodKilowattHours, forecast.PumpKilowattHours, forecast.LowestMoisture.Percent, Advice(charge, forecast)));
    }

    private static string Advice(VacuumCharge charge, VacuumForecast forecast)
    {
        var most = charge.MostKilowattsPerCubicMetre;
        var density = RadioFrequency.Usual.InWoodKilowatts(charge.Platen) / charge.Volume.CubicMetres;
        var power = density > most ? $"Full power would be {density:0.#} kW/m3 in the wood: it is reckoned turned down to {most:0}. " : "";
        var limit = forecast.Limit is VacuumLimit.Permeability && charge.Species.VacuumClass == "nearly-impermeable"
            ? "Long boards of this wood do not pass steam: only slow diffusion dries them here. Use another kiln, or short blanks. "
            : forecast.Limit is VacuumLimit.Permeability ? "The wood sets the pace: shorter pieces dry sooner, more power does not help. " : "";
        return power + limit + "Drying only: equalizing and conditioning come on top. The vessel is a confined space, and radio frequency burns deep: interlocks, grounded electrodes, lock-out, no metal in the load.";
    }
}
