using System.Globalization;
using Boardwright.Drying.Heat;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Core = Boardwright.Drying.Heat;

namespace Boardwright.Yard.UseCases;

/// <summary>Heat of one day: what the boilers give, what the shop takes first, what the kilns want to stay warm.</summary>
/// <param name="Balance">Heat wanted and there.</param>
/// <param name="OutsideC">Outside mean.</param>
/// <param name="Weather">Where that is known from: observed, forecast, usual for the season.</param>
/// <param name="KilnsHoldKw">Each kiln on the boilers by name.</param>
public sealed record HeatDay(Core.HeatDay Balance, double OutsideC, string Weather, IReadOnlyList<(string Kiln, double Kw)> KilnsHoldKw)
{
    public DateOnly Date => Balance.Day;

    public double CapacityKw => Balance.CapacityKilowatts;

    public double ShopKw => Balance.ShopKilowatts;

    public double KilnsKw => Balance.KilnKilowatts;

    public double SpareKw => Balance.SpareKilowatts;

    public double ShortKw => Balance.ShortKilowatts;

    public bool Forecast => Weather != "observed";
}

/// <summary>The boiler page: heat by day, fuel, and what the figures rest on.</summary>
/// <param name="ByDay">Heat by day.</param>
/// <param name="Figures">The main figures, each with what it rests on.</param>
/// <param name="MeanKw">Mean heat wanted over the days.</param>
/// <param name="FuelLasts">Day the fuel counted is used up at that mean; null when nobody counted.</param>
public sealed record BoilerSheet(IReadOnlyList<HeatDay> ByDay, IReadOnlyList<Traced> Figures, double MeanKw, DateOnly? FuelLasts)
{
    /// <summary>Heat by day from today on. Kilns are taken to be hot, all of them: the cautious case.</summary>
    public static IReadOnlyList<HeatDay> DaysOf(YardState state, int count, IReadOnlyList<Interruption>? without = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        var boilers = YardHeat.Boilers(state).Select(boiler => boiler with { Outages = [.. boiler.Outages, .. (without ?? []).Where(one => one.Equipment == boiler.Name).Select(one => (one.From, (DateOnly?)one.To.AddDays(1)))] }).ToList();
        var shop = YardHeat.Shop(state);
        var kilns = state.Kilns.Values.Select(kiln => (kiln.Name, Holding: YardHeat.Holding(kiln))).Where(kiln => kiln.Holding is not null).ToList();
        return [.. Enumerable.Range(0, count).Select(state.Today.AddDays).Select(day =>
        {
            var (celsius, weather) = YardHeat.Outside(state, day) ?? (0.0, "not known: taken as 0 °C");
            var outside = Temperature.FromCelsius(celsius);
            IReadOnlyList<(string Kiln, double Kw)> exact = [.. kilns.Where(kiln => (without ?? []).All(one => one.Equipment != kiln.Name || day < one.From || day > one.To)).Select(kiln => (kiln.Name, kiln.Holding!.KilowattsAt(outside)))];
            var shown = HeatTenths.Of([shop.KilowattsAt(outside), .. exact.Select(kiln => kiln.Kw)]);
            return new HeatDay(new(day, Core.Boiler.CapacityKilowatts(boilers, day), shown[0], shown.Skip(1).Sum()), celsius, weather, [.. exact.Select((kiln, at) => (kiln.Kiln, shown[at + 1]))]);
        })];
    }

    /// <summary>Days as the morning sheet asks for them.</summary>
    public static IReadOnlyList<HeatDay> Days(YardState state, int count) => DaysOf(state, count);

    /// <summary>The sheet, should what is down come back on its late day, as the plan and the ways through take it; refused for equipment the yard does not have.</summary>
    public static Outcome<BoilerSheet> Of(YardState state, int count, IReadOnlyList<Interruption>? without = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if ((without ?? []).FirstOrDefault(one => !state.Boilers.ContainsKey(one.Equipment) && !state.Kilns.ContainsKey(one.Equipment)) is { } unknown)
        {
            return new Refusal("equipment", unknown.Equipment, string.Join(", ", state.Boilers.Keys.Concat(state.Kilns.Keys)));
        }

        var days = DaysOf(HeatChoices.AtWorst(state), count, without);
        var mean = days.Average(day => day.ShopKw + day.KilnsKw);
        var fuel = YardHeat.Fuel(state);
        var lasts = fuel?.DaysAt(mean) is { } inDays ? DateOnly.FromDateTime(state.Fuel!.CountedAt).AddDays((int)inDays) : (DateOnly?)null;
        return new BoilerSheet(days, [LeftToday(state, days[0]), Worst(state, days), .. fuel is null || lasts is null ? Array.Empty<Traced>() : [Lasts(state, fuel, mean, lasts.Value, count)]], mean, lasts);
    }

    /// <summary>Heat left today should every kiln be held hot.</summary>
    internal static Traced LeftToday(YardState state, HeatDay day)
    {
        var shop = YardHeat.Shop(state);
        var left = day.SpareKw - day.KilnsKw;
        return new(left < 0.0 ? "Short today, all kilns hot" : "Left today, all kilns hot", Number(Math.Abs(left)), "kW", Words($"were all kilns held hot: {day.CapacityKw:0.#} kW given, shop {day.ShopKw:0.0}, kilns {day.KilnsKw:0.0} at {DayWords.Celsius(day.OutsideC)}"))
        {
            Method = "boiler-and-shop-heat",
            Source = "the yard's own settings and what was noted of its kilns",
            Inputs =
            [
                ("outside", Words($"{day.OutsideC:0.0} °C, {day.Weather}")),
                .. YardHeat.Boilers(state).Select(boiler => (boiler.Name, Words($"{boiler.SteadyOutput.Kilowatts:0} kW{(boiler.RunsOn(day.Date) ? "" : ", down")}"))),
                ("shop and house", Words($"{shop.KilowattsPerKelvin:0.##} kW for each °C below {shop.NeedsNoneAt.Celsius:0.#} °C")),
                .. day.KilnsHoldKw.Select(kiln => ($"{kiln.Kiln} held hot", Words($"{kiln.Kw:0.0} kW"))),
            ],
        };
    }

    private static Traced Worst(YardState state, IReadOnlyList<HeatDay> days)
    {
        var worst = days.MinBy(day => day.SpareKw - day.KilnsKw)!;
        var left = worst.SpareKw - worst.KilnsKw;
        return new(left < 0.0 ? "Short at worst, all kilns hot" : "Least left, all kilns hot", Number(Math.Abs(left)), "kW", Words($"{DayWords.Weekday(worst.Date, state.Today)}, {DayWords.Celsius(worst.OutsideC)}, {worst.Weather}"))
        {
            Method = "boiler-and-shop-heat",
            Source = "the yard's own settings, its weather and what was noted of its kilns",
            Inputs =
            [
                ("boilers", Words($"{worst.CapacityKw:0} kW")), ("shop and house", Words($"{worst.ShopKw:0.0} kW")), .. worst.KilnsHoldKw.Select(kiln => ($"{kiln.Kiln} held hot", Words($"{kiln.Kw:0.0} kW"))),
                ("turning the shop down 1 °C saves", Words($"{YardHeat.Shop(state).KilowattsPerKelvin:0.##} kW")),
            ],
        };
    }

    private static Traced Lasts(YardState state, FuelStock fuel, double mean, DateOnly lasts, int count) =>
        new(lasts < state.Today ? "Fuel" : "Fuel lasts until", lasts < state.Today ? "count the pile again" : DayWords.Of(lasts, state.Today), "",
            Words($"{fuel.Cords:0.#} cords counted {DayWords.Of(state.Fuel!.CountedAt, state.Today)}{(lasts < state.Today ? " would be burnt by now" : "")}, at a mean of {mean:0} kW"))
        {
            Method = "fuel",
            Source = "count of the yard; heating value and share delivered are settings",
            Inputs =
            [
                ("solid share of a cord", Words($"{fuel.SolidShare.Fraction:0.##}")), ("oven-dry per solid m³", Words($"{fuel.OvenDry.KilogramsPerCubicMetre:0} kg")),
                ("heating value", Words($"{fuel.DryMegajoulesPerKilogram:0.0} MJ/kg oven-dry")), ("reaches the water", Words($"{fuel.Delivered.Percent:0} %")),
                ("heat in the stack", Words($"{fuel.KilowattHours:#,0} kWh")), ("mean wanted", Words($"{mean:0.0} kW over {count} days, all kilns held hot")), ("days", Words($"{fuel.DaysAt(mean):0}")),
            ],
        };

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
