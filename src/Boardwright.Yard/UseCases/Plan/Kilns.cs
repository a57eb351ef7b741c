using Boardwright.Drying.Heat;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Kilns, boilers and shop as the planner sees them.</summary>
internal static class PlanKilns
{
    private static readonly Elapsed[] WarmUps = [Elapsed.FromHours(8.0), Elapsed.FromHours(16.0), Elapsed.FromHours(32.0)];
    private static readonly Temperature KilnFloor = Temperature.FromCelsius(10.0);

    public static IReadOnlyList<Planning.Kiln> Kilns(YardState state, PlanFigures figures, PlanCalendar calendar, IReadOnlyList<Temperature> outside) =>
        [.. state.Kilns.Values.Select(kiln => One(state, kiln, figures, calendar, outside))];

    public static HeatSupply Heat(YardState state, PlanFigures figures, PlanCalendar calendar, IReadOnlyList<Temperature> outside)
    {
        var shop = YardHeat.Shop(state);
        return new(
            calendar.StepsPerDay,
            [.. YardHeat.Boilers(state).Select(boiler => new Planning.Boiler(boiler.Name, boiler.SteadyOutput, [.. Outages(boiler, calendar)]))],
            [.. outside.Select(air => Power.FromKilowatts(shop.KilowattsAt(air)))],
            Power.FromKilowatts(figures.ShopGivesWayKelvins * shop.KilowattsPerKelvin), figures.ShopMoneyPerKwh);
    }

    /// <summary>Money for a kilowatt-hour from the boilers: own slabs by the cord.</summary>
    public static decimal FuelMoneyPerKwh(YardState state)
    {
        var cord = state.Setting("fuel_own_slabs") ?? 0.0;
        return YardHeat.Fuel(state) is { } stock ? (decimal)(cord / (stock with { Cords = 1.0 }).KilowattHours) : 0m;
    }

    private static Planning.Kiln One(YardState state, BookState.Kiln kiln, PlanFigures figures, PlanCalendar calendar, IReadOnlyList<Temperature> outside)
    {
        var installed = kiln.Installed;
        var vacuum = PlanTimes.IsVacuum(kiln);
        var onBoiler = installed.HeatAtWaterC is not null;
        var holding = YardHeat.Holding(kiln);
        var capacity = BoardFeet.From(installed.CapacityBf);
        var rise = Math.Max(0.0, installed.DryBulbMaxC - KilnFloor.Celsius);
        return new(
            kiln.Name, kiln.Name, capacity, Length.FromMetres(installed.PieceLengthMaxM), Temperature.FromCelsius(installed.DryBulbMaxC),
            onBoiler ? Power.FromKilowatts(installed.HeatKw) : null, Elapsed.FromHours(installed.LoadHours), Elapsed.FromHours(installed.UnloadHours),
            vacuum ? [Elapsed.FromHours(calendar.StepHours)] : WarmUps, // a vacuum forecast holds its own warm-up
            vacuum ? default : Energy.FromJoules(KilnStructure.ForCapacity(capacity).HeatCapacityJoulesPerKelvin * rise),
            [.. outside.Select(air => Power.FromKilowatts(holding?.KilowattsAt(air) ?? 0.0))],
            installed.FixedPerDayMoney, onBoiler ? FuelMoneyPerKwh(state) : (decimal)figures.ElectricityMoneyPerKwh,
            [.. kiln.Outages.Where(outage => outage.To is null).Select(outage => calendar.StepsOf(
                DateOnly.FromDateTime(outage.From), (outage.BackExpectedOn ?? calendar.DateOf(calendar.Days)).AddDays(-1))).Where(steps => steps.Length > 0)])
        {
            MostWeight = installed.LoadMaxKg is { } most ? Mass.FromKilograms(most) : null,
        };
    }

    private static IEnumerable<StepRange> Outages(Drying.Heat.Boiler boiler, PlanCalendar calendar) =>
        boiler.Outages.Select(outage => calendar.StepsOf(outage.From, (outage.Until ?? calendar.DateOf(calendar.Days)).AddDays(-1))).Where(steps => steps.Length > 0);
}
