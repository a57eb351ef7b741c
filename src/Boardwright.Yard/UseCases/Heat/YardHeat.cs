using Boardwright.Drying;
using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>The yard's heat as the book has it: boilers, shop and house, what holds a kiln warm, fuel, and the air outside.</summary>
public static class YardHeat
{
    private const double DefaultShopKilowattsPerKelvin = 0.0;
    private const double DefaultShopBaseCelsius = 16.0;

    /// <summary>Boilers with the days they stand still. One that is down is counted on again from the day it is expected back.</summary>
    public static IReadOnlyList<Boiler> Boilers(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Boilers.Values.Select(boiler => new Boiler(boiler.Name, Power.FromKilowatts(boiler.Installed.SteadyOutputKw), [.. boiler.Outages.Select(Days)]))];
    }

    /// <summary>Heat of shop and house.</summary>
    public static ShopHeat Shop(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return new(Temperature.FromCelsius(state.Setting("shop_heat_below") ?? DefaultShopBaseCelsius), state.Setting("shop_heat") ?? DefaultShopKilowattsPerKelvin);
    }

    /// <summary>What holds a kiln warm, fitted to what was noted; null for a kiln that is not on the boilers or of which nothing was noted.</summary>
    public static HoldingHeat? Holding(BookState.Kiln kiln)
    {
        ArgumentNullException.ThrowIfNull(kiln);
        var noted = kiln.Installed.HoldingHeat.Select(point => (Temperature.FromCelsius(point.OutsideC), Power.FromKilowatts(point.HeatKw))).ToList();
        return kiln.Installed.HeatAtWaterC is not null && HoldingHeat.Fit($"holding heat of {kiln.Name}", noted) is Outcome<HoldingHeat>.Done(var holding) ? holding : null;
    }

    /// <summary>The fuel on hand at the last count; null when nobody counted.</summary>
    public static FuelStock? Fuel(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Fuel is { Count: var count } && state.Setting("oven_dry_per_solid") is { } ovenDry && state.Setting("wood_heating_value") is { } heat && state.Setting("fuel_delivered") is { } delivered
            ? new(count.Cords, Share.FromFraction(count.SolidShare), Density.FromKilogramsPerCubicMetre(ovenDry), heat, Share.FromPercent(delivered))
            : null;
    }

    /// <summary>The air of one day and where it is known from; null when nothing tells of it.</summary>
    public static (double Celsius, string Source)? Outside(YardState state, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Weather.TryGetValue(day, out var known) ? (known.MeanC, known.Observed ? "observed" : "forecast")
            : YardWeather.Series(state, day, day) is Outcome<WeatherSeries>.Done(var series) ? (series.Days[0].MeanCelsius, "usual for the season")
            : null;
    }

    // A boiler that came back during a day gives what it gives from then on: the day counts.
    private static (DateOnly From, DateOnly? Until) Days(BookState.Outage outage) => (
        DateOnly.FromDateTime(outage.From), outage.To is { } to ? DateOnly.FromDateTime(to) : outage.BackExpectedOn);
}
