using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Days on which shop and kilns want more heat than the boilers give, should what is down come back on its late day where there is no plan, as /boiler counts it; by the season's plan; without one, with all kilns held hot.</summary>
internal static class HeatShort
{
    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season) => state.Boilers.Count == 0 ? []
        : season.Sheet is { } sheet ? ByPlan(state, sheet)
        : BoilerSheet.Days(HeatChoices.AtWorst(state), SheetSettings.HeatDays).Where(day => day.ShortKw > 0.0).Take(1).Select(day => Decide(state, day.Date, day.Date, day.OutsideC, "Were all kilns held hot; what is planned to run is told once the season’s plan is worked out. ", Figure(state, day)));

    /// <summary>The shortage of a day with all kilns held hot.</summary>
    internal static Traced Figure(YardState state, HeatDay day) => new("Heat short", $"{day.ShortKw:0.0}", "kW", $"short on {DayWords.Of(day.Date, state.Today)}, were all kilns held hot")
    {
        Method = "boiler-and-shop-heat",
        Source = "the book’s forecast, boilers and holding heat",
        Inputs = [("outside", Celsius(day.OutsideC)), ("boilers", $"{day.CapacityKw:0.0} kW"), ("shop and house", $"{day.ShopKw:0.0} kW"), ("kilns held hot", $"{day.KilnsKw:0.0} kW")],
    };

    /// <summary>The shortage of a day of the plan.</summary>
    internal static Traced Figure(YardState state, SeasonSheet sheet, SeasonHeat day) => new("Heat short", $"{day.ShortKw:0.0}", "kW", $"short on {DayWords.Of(day.Day, state.Today)} by the season’s plan")
    {
        Method = "kiln-plan",
        Source = "the season’s plan: what is planned to run",
        Inputs = [("outside", Celsius(day.OutsideC)), ("boilers", $"{day.GivenKw:0.0} kW"), .. sheet.HeatUses.Zip(day.KilowattsByUse, (use, kilowatts) => (use, $"{kilowatts:0.0} kW"))],
    };

    internal static decimal Margin(YardState state) =>
        (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * state.Kilns.Values.Where(kiln => kiln.Installed.HeatAtWaterC is not null).Sum(kiln => kiln.Installed.CapacityBf) / 1000.0);

    // What is at stake in the kilns themselves while nothing keeps them warm.
    private static decimal RunningWorth(YardState state) => state.Charges.Values.Where(charge => charge.IsRunning && state.Kilns[charge.Kiln].Installed.HeatAtWaterC is not null).Sum(charge => WoodWorth.Of(state, charge));

    // The kiln whose charge is in danger soonest comes first; running charges of which nothing can be worked out are shut too.
    private static string Kilns(YardState state)
    {
        var stop = BoilerStop.Of(state);
        List<string> kilns = [.. stop.Charges.Select(one => one.Charge.Kiln), .. stop.Untold.Select(tag => state.Charges[tag].Kiln)];
        return kilns.Count == 0 ? "the loop down as its card says" : string.Join(", then ", kilns.Distinct());
    }

    internal static string Celsius(double celsius) => DayWords.Celsius(celsius);

    // The worst of the days that are short in any case; the days to act end with the first of them.
    private static IEnumerable<DayTask> ByPlan(YardState state, SeasonSheet sheet)
    {
        var days = sheet.ShortDays.Where(day => !day.OnlyIfLate && day.Day.DayNumber - state.Today.DayNumber < SheetSettings.HeatDays).ToList();
        if (days.MaxBy(day => day.ShortKw) is not { } worst)
            yield break;
        yield return Decide(state, worst.Day, days[0].Day, worst.OutsideC, days.Count == 1 ? "" : $"{days.Count} days are short by the season’s plan, {DayWords.Of(days[0].Day, state.Today)} to {DayWords.Of(days[^1].Day, state.Today)}; this is the worst. ", Figure(state, sheet, worst));
    }

    private static DayTask Decide(YardState state, DateOnly day, DateOnly first, double outsideC, string more, Traced figure) => state.Boilers.Values.All(boiler => boiler.Down is not null)
        ? new("now", $"No boiler runs: shut {Kilns(state)}.", $"{string.Join(", ", state.Boilers.Values.Select(boiler => boiler.Name))} {(state.Boilers.Count == 1 ? "is" : "are")} down. {more}{Celsius(outsideC)} outside. The boiler’s page tells in how many hours each charge stains, regains or its coil freezes.", figure,
            new(Margin(state) + RunningWorth(state), 1, "the kilns’ day and the wood in them"), Duties.Office | Duties.Kilns, "/boiler", "What to shut first")
        : new(
        $"{DayWords.Of(day, state.Today)}", "Decide how to get through the cold day.", $"{more}{Celsius(outsideC)} outside: turn the shop down, let one kiln drift, or warm up slower.", figure,
        new(Margin(state), Math.Max(1, first.DayNumber - state.Today.DayNumber), "a day of all heated kilns, at the kiln-day margin"), Duties.Office | Duties.Kilns, "/boiler", "See the boiler");
}
