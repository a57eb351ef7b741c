namespace Boardwright.Drying.Heat;

/// <summary>Heat carried and stored by water in a loop and a buffer tank.</summary>
/// <source id="engineering-reference-boiler" locator="boiler horsepower, 500 gpm rule"/>
/// <method page="docs/methods/boiler-and-shop-heat.md"/>
public static class WaterLoop
{
    private const double WaterKilojoulesPerKilogramKelvin = 4.19;

    /// <summary>One boiler horsepower, kW: 33 475 Btu/h.</summary>
    public const double BoilerHorsepowerKilowatts = 9.8105540755;

    /// <summary>Heat carried, kW = L/s · kg/L · kJ/(kg K) · K.</summary>
    public static double Kilowatts(double litresPerSecond, double dropKelvins, double kilogramsPerLitre, double kilojoulesPerKilogramKelvin = WaterKilojoulesPerKilogramKelvin) =>
        litresPerSecond * kilogramsPerLitre * kilojoulesPerKilogramKelvin * dropKelvins;

    /// <summary>Flow that carries a heat, L/s.</summary>
    public static double LitresPerSecond(double kilowatts, double dropKelvins, double kilogramsPerLitre, double kilojoulesPerKilogramKelvin = WaterKilojoulesPerKilogramKelvin) =>
        kilowatts / (kilogramsPerLitre * kilojoulesPerKilogramKelvin * dropKelvins);

    /// <summary>Heat in a buffer tank between two temperatures, kWh.</summary>
    public static double StoredKilowattHours(double litres, double hotCelsius, double coldCelsius, double kilogramsPerLitre = 0.977) =>
        litres * kilogramsPerLitre * WaterKilojoulesPerKilogramKelvin * (hotCelsius - coldCelsius) / 3600.0;

    /// <summary>Tank that takes what a fire gives beyond the load, L.</summary>
    public static double BufferLitres(double fireKilowatts, double loadKilowatts, double hours, double hotCelsius, double coldCelsius, double kilogramsPerLitre = 0.977) =>
        (fireKilowatts - loadKilowatts) * hours * 3600.0 / (kilogramsPerLitre * WaterKilojoulesPerKilogramKelvin * (hotCelsius - coldCelsius));
}
