using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Heat;

/// <summary>The worked example of docs/methods/kiln-heat.md: 5000 bf of 4/4 red oak, green and air-dried.</summary>
internal static class KilnExample
{
    public static OutsideAir Autumn { get; } = new(Temperature.FromCelsius(5.0), RelativeHumidity.FromPercent(75.0));

    public static Volume Solid { get; } = Volume.FromCubicMetres(5000.0 * BoardFeet.CubicMetresNominal * 1.125);

    public static IReadOnlyList<KilnStage> GreenStages { get; } = [Stage(43, 85, 40, 336), Stage(49, 45, 25, 144), Stage(71, 25, 7, 192)];

    public static IReadOnlyList<KilnStage> AirDriedStages { get; } = [Stage(49, 50, 15, 72), Stage(71, 28, 7, 120)];

    public static KilnLoad Load(double percent) =>
        KilnLoad.Of(Given.Species("northern red oak"), Solid, MoistureContent.FromPercent(percent), Temperature.FromCelsius(10.0));

    public static KilnStage Stage(double celsius, double humidity, double until, double hours) =>
        new(Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(humidity), MoistureContent.FromPercent(until), Elapsed.FromHours(hours));

    /// <summary>Heat of a stage without leak or walls, and by another way the dry air a kilogram of water needs and what it carries off.</summary>
    public static (KilnHeatTerms Terms, (double KilogramsOfAir, double KilojoulesCarried) Air) Vented(PublishedRow row)
    {
        var outside = new OutsideAir(Temperature.FromCelsius(row["out_c"]), RelativeHumidity.FromFraction(row["RH_out"]));
        var kiln = Given.Done(AirState.FromHumidity(Temperature.FromCelsius(row["kiln_c"]), RelativeHumidity.FromFraction(row["RH_kiln"]), AirState.StandardPressure));
        var air = Given.Done(AirState.FromHumidity(outside.Temperature, outside.Humidity, AirState.StandardPressure));
        var stage = new KilnStage(kiln.DryBulb, kiln.Humidity, MoistureContent.FromPercent(30.0), Elapsed.FromHours(10.0));
        var terms = Given.Done(KilnHeat.Stage(Load(40.0) with { Temperature = kiln.DryBulb }, stage, new(0.0, 0.0, default, default), outside));
        var dryAir = 1.0 / (kiln.HumidityRatio - air.HumidityRatio);
        return (terms, (dryAir, dryAir * (kiln.EnthalpyKilojoulesPerKilogram - air.EnthalpyKilojoulesPerKilogram)));
    }
}
