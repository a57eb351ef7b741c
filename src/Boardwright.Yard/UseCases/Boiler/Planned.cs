using System.Globalization;

namespace Boardwright.Yard.UseCases;

/// <summary>Heat of what is really planned to run, in the same numbers as the season's page.</summary>
/// <param name="Sheet">The season.</param>
/// <param name="Figures">Left today, the worst day, and how many days are short.</param>
public sealed record BoilerPlanned(SeasonSheet Sheet, IReadOnlyList<Traced> Figures)
{
    private const string Source = "the season’s plan: holding, warming up and drying of each charge; the yard’s weather and boilers";

    /// <summary>The figures of a plan.</summary>
    public static BoilerPlanned Of(SeasonSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new(sheet, sheet.HeatShown.Count == 0 ? [] : [LeftToday(sheet), Worst(sheet), Short(sheet)]);
    }

    /// <summary>Heat left today with what runs by the plan.</summary>
    internal static Traced LeftToday(SeasonSheet sheet)
    {
        var day = sheet.HeatShown[0];
        return Figure(sheet, day, day.WantedKw > day.GivenKw ? "Short today by the plan" : "Left today by the plan", Math.Abs(day.GivenKw - day.WantedKw), Words($"by the plan: {day.GivenKw:0.#} kW given, {day.WantedKw:0.0} wanted at {DayWords.Celsius(day.OutsideC)}"));
    }

    private static Traced Worst(SeasonSheet sheet)
    {
        var day = sheet.Shortage ?? sheet.HeatShown.MinBy(one => one.GivenKw - one.WantedKw)!;
        return Figure(sheet, day, sheet.Shortage is null ? "Least left" : "Short at worst", Math.Abs(day.GivenKw - day.WantedKw), Words($"{day.Day:ddd d MMM}, {DayWords.Celsius(day.OutsideC)}{(day.OnlyIfLate ? ", if what is down comes back late" : "")}"));
    }

    private static Traced Short(SeasonSheet sheet)
    {
        var days = sheet.ShortDays;
        var late = days.Count(day => day.OnlyIfLate);
        return new("Days short", Words($"{days.Count}"), "", days.Count == 0 ? Words($"none to {sheet.HeatShown[^1].Day:d MMM}")
            : Words($"{days[0].Day:d MMM}{(days.Count > 1 ? Words($" to {days[^1].Day:d MMM}") : "")}{(late == 0 ? "" : late == days.Count ? ", all only if what is down comes back late" : Words($", {late} of them only if what is down comes back late"))}"))
        {
            Method = "kiln-plan",
            Source = Source,
            Inputs = [.. days.Select(day => (Words($"{day.Day:ddd d MMM}"), Words($"{day.ShortKw:0.0} kW")))],
        };
    }

    private static Traced Figure(SeasonSheet sheet, SeasonHeat day, string label, double kilowatts, string basis) => new(label, Words($"{kilowatts:0.0}"), "kW", basis)
    {
        Method = "kiln-plan",
        Source = Source,
        Inputs = [("boilers", Words($"{day.GivenKw:0} kW")), .. sheet.HeatUses.Zip(day.KilowattsByUse, (use, wanted) => (use, Words($"{wanted:0.0} kW")))],
    };

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
