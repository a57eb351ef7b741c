using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>The first day on which shop and kilns want more heat than the boilers give.</summary>
internal static class HeatShort
{
    public static IEnumerable<DayTask> Of(YardState state) => state.Boilers.Count == 0 ? [] :
        BoilerSheet.Days(state, SheetSettings.HeatDays).Where(day => day.ShortKw > 0.0).Take(1).Select(day => new DayTask(
            $"{day.Date:d MMM}", "Decide how to get through the cold day.", $"{day.OutsideC:0} °C outside: turn the shop down, let one kiln drift, or warm up slower.", Figure(day),
            new(Margin(state), Math.Max(1, day.Date.DayNumber - state.Today.DayNumber), "a day of all heated kilns, at the kiln-day margin"), Duties.Office | Duties.Kilns, "/boiler", "See the boiler"));

    internal static Traced Figure(HeatDay day) => new("Heat short", $"{day.ShortKw:0.0}", "kW", $"short on {day.Date:d MMM}")
    {
        Method = "boiler-and-shop-heat",
        Source = "the book’s forecast, boilers and holding heat",
        Inputs = [("outside", $"{day.OutsideC:0} °C"), ("boilers", $"{day.CapacityKw:0.0} kW"), ("shop and house", $"{day.ShopKw:0.0} kW"), ("kilns held hot", $"{day.KilnsKw:0.0} kW")],
    };

    internal static decimal Margin(YardState state) =>
        (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * state.Kilns.Values.Where(kiln => kiln.Installed.HeatAtWaterC is not null).Sum(kiln => kiln.Installed.CapacityBf) / 1000.0);
}
