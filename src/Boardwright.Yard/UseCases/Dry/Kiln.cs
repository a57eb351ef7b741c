using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How long a charge takes in a kiln.</summary>
public static class DryKiln
{
    // The kilns of the demonstration yard by their limits.
    private static readonly Dictionary<string, KilnEquipment> Kilns = new(StringComparer.OrdinalIgnoreCase)
    {
        ["conventional"] = KilnEquipment.Conventional,
        ["dehumidification"] = KilnEquipment.Dehumidification,
        ["K1"] = new KilnEquipment("K1", Temperature.FromFahrenheit(165.0)),
        ["K2"] = new KilnEquipment("K2", Temperature.FromFahrenheit(150.0)),
    };

    public static Command Command { get; } = Command.Of("dry", "kiln", "Hours a charge needs in a kiln, with a band, step by step", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "species, such as \"sugar maple\""),
            Option.Required("thickness", "L", "rough thickness, such as 4/4"),
            Option.Required("from", "MC", "mean moisture content of the charge"),
            Option.Required("to", "MC", "mean moisture content wanted"),
            Option.Optional("kiln", "NAME", "conventional (default), dehumidification, or K1 or K2 of the demonstration yard"),
        ],
        Examples = ["dry kiln --species \"sugar maple\" --thickness 4/4 --from 22.4% --to 8%", "dry kiln --species \"northern red oak\" --thickness 4/4 --from 75% --to 7% --kiln K1 --json"],
    };

    public sealed record Step(double McAbovePct, double DryBulbC, double WetBulbC, double EmcPct, double Hours);

    public sealed record Answer(
        double HoursP10, double HoursP50, double HoursP90, IReadOnlyList<Step> Steps, double WaterKgPerM3, string Code, string Origin, string Mark, IReadOnlyList<string> Notes);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var thickness = ask.Length("thickness");
        var from = ask.Moisture("from");
        var to = ask.Moisture("to");
        var kiln = Kilns[ask.Choice("kiln", "conventional", [.. Kilns.Keys])];
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(KilnDrying.Forecast(new KilnDryingInput { Species = species!, Thickness = thickness, From = from, To = to, Kiln = kiln })).Then<Answer>(forecast => new Answer(
                forecast.HoursP10, forecast.HoursP50, forecast.HoursP90, [.. forecast.Steps.Select(Show)], forecast.WaterKilogramsPerCubicMetre,
                forecast.Schedule.Code.ToString(), forecast.Origin, forecast.Mark, forecast.Notes));
    }

    private static Step Show(KilnStepTime time)
    {
        var air = time.Step.AirFloored90;
        return new Step(time.Step.Above.Percent, air.DryBulb.Celsius, air.WetBulb!.Value.Celsius, air.Emc!.Value.Percent, time.Hours);
    }
}
