using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The state of air from its dry bulb and one more reading.</summary>
public static class AirStateCommand
{
    public static Command Command { get; } = Command.Of("air", "state", "State of the air from its dry bulb and its humidity, wet bulb or dew point", Run) with
    {
        Options =
        [
            Option.Required("dry-bulb", "T", "temperature of the air, such as 68F or 20C"),
            Option.Optional("rh", "P", "relative humidity, such as 65%"),
            Option.Optional("wet-bulb", "T", "temperature of a clean wetted wick in moving air"),
            Option.Optional("dew-point", "T", "temperature at which dew forms"),
            Option.Optional("pressure", "P", "absolute air pressure, such as 97.8kPa (default 101.325kPa)"),
            Option.Optional("equation", "hailwood-horrobin|glass", "of the moisture content wood comes to (default hailwood-horrobin)"),
        ],
        Examples = ["air state --dry-bulb 110F --wet-bulb 106F", "air state --dry-bulb 20C --rh 65% --json", "air state --dry-bulb -5C --wet-bulb -6C --pressure 97.8kPa"],
    };

    public sealed record Answer(
        double DryBulbC, double? WetBulbC, double? DewPointC, double RhPct, double HumidityRatioKgPerKg, double VapourPressurePa, double EnthalpyKjPerKg, double? EmcPct);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var dryBulb = ask.Temperature("dry-bulb");
        var humidity = ask.HumidityOrNull("rh");
        var wetBulb = ask.TemperatureOrNull("wet-bulb");
        var dewPoint = ask.TemperatureOrNull("dew-point");
        var pressure = ask.Pressure("pressure", AirState.StandardPressure);
        var equation = ask.Choice("equation", "hailwood-horrobin", "hailwood-horrobin", "glass") == "glass" ? EmcEquation.Glass : EmcEquation.HailwoodHorrobin;
        if (!ask.Refuses && (humidity is null ? 0 : 1) + (wetBulb is null ? 0 : 1) + (dewPoint is null ? 0 : 1) != 1)
        {
            ask.Refuse("rh", ask.TextOrNull("rh") ?? "nothing", "exactly one of --rh, --wet-bulb and --dew-point");
        }

        return ask.Refuses ? ask.Refused<Answer>() : ask.Named(State(dryBulb, humidity, wetBulb, dewPoint, pressure)).Then<Answer>(air => Show(air, equation));
    }

    private static Outcome<AirState> State(Temperature dryBulb, RelativeHumidity? humidity, Temperature? wetBulb, Temperature? dewPoint, Pressure pressure) =>
        humidity is { } rh ? AirState.FromHumidity(dryBulb, rh, pressure)
        : wetBulb is { } wet ? AirState.FromWetBulb(dryBulb, wet, pressure)
        : AirState.FromDewPoint(dryBulb, dewPoint!.Value, pressure);

    private static Answer Show(AirState air, EmcEquation equation) => new(
        air.DryBulb.Celsius, air.WetBulb?.Celsius, air.DewPoint?.Celsius, air.Humidity.Percent, air.HumidityRatio, air.VapourPressure.Pascals, air.EnthalpyKilojoulesPerKilogram, air.EmcBy(equation)?.Percent);
}
