using Boardwright.Yard.Book;
using Interruption = Boardwright.Planning.Interruption;
using Core = Boardwright.Drying.Heat;

namespace Boardwright.Yard.UseCases;

/// <summary>One way through days on which heat is short.</summary>
/// <param name="Way">What is done.</param>
/// <param name="DaysLost">Drying days lost by the charges concerned; 0 where none is.</param>
/// <param name="Money">What it costs, orders late included.</param>
/// <param name="Enough">True when it covers every short day.</param>
/// <param name="Basis">How it is reckoned.</param>
/// <param name="Late">Orders that come late by it, with days; empty when none does.</param>
public sealed record HeatChoice(string Way, double DaysLost, decimal Money, bool Enough, string Basis, IReadOnlyList<string> Late);

/// <summary>The ways through a shortage of heat, compared in days and money: the cheapest that is enough first.</summary>
/// <param name="ShortDays">Days on which heat is short, should what is down come back on its late day.</param>
/// <param name="WorstKw">Most that is missing.</param>
/// <param name="MissingKwh">All that is missing.</param>
/// <param name="Choices">The ways.</param>
public sealed record HeatChoices(IReadOnlyList<HeatDay> ShortDays, double WorstKw, double MissingKwh, IReadOnlyList<HeatChoice> Choices)
{
    /// <summary>The comparison for what the season's plan runs.</summary>
    public static HeatChoices Of(YardState state, SeasonSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(sheet);
        return Of(state, [.. sheet.ShortDays.Select(day => Day(sheet, day))], HeatUse.ByPlan(state, sheet));
    }

    /// <summary>The comparison over some days ahead with all kilns held hot, where there is no plan.</summary>
    public static HeatChoices Of(YardState state, int days, IReadOnlyList<Interruption>? without = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Of(state, [.. BoilerSheet.DaysOf(AtWorst(state), days, without).Where(day => day.ShortKw > 0.0)], HeatUse.ByBook(state));
    }

    private static HeatChoices Of(YardState state, List<HeatDay> shorts, IReadOnlyList<HeatUse> uses)
    {
        if (shorts.Count == 0)
            return new([], 0.0, 0.0, []);

        var reckoning = new HeatReckoning(state, PlanFigures.Of(state), shorts, uses);
        IReadOnlyList<HeatChoice?> all = [reckoning.ShopCooler(), reckoning.SlowDown(), reckoning.Hold(), reckoning.Postpone(), reckoning.Electric()];
        var enough = all.OfType<HeatChoice>().Where(choice => choice.Enough).Select(choice => choice.Money).DefaultIfEmpty(decimal.MaxValue).Min();
        if (!all.Any(choice => choice is { Enough: true } && !choice.Way.Contains(';', StringComparison.Ordinal)) && reckoning.Together() is { } together && together.Money < enough)
            all = [.. all, together];
        return new(shorts, shorts.Max(day => day.ShortKw), reckoning.MissingKwh, [.. all.OfType<HeatChoice>().OrderByDescending(choice => choice.Enough).ThenBy(choice => choice.Money)]);
    }

    // A day of the plan in the form of the boiler's own sheet.
    private static HeatDay Day(SeasonSheet sheet, SeasonHeat day)
    {
        IReadOnlyList<(string, double)> kilns = [.. sheet.HeatUses.Skip(1).Zip(day.KilowattsByUse.Skip(1))];
        return new(new Core.HeatDay(day.Day, day.GivenKw, day.KilowattsByUse[0], kilns.Sum(kiln => kiln.Item2)), day.OutsideC, "the season’s plan", kilns);
    }

    /// <summary>The yard where all that is down comes back on its late day.</summary>
    internal static YardState AtWorst(YardState state) => state with
    {
        Boilers = state.Boilers.SetItems(state.Boilers.Values.Where(boiler => boiler.Down is { BackLateOn: not null }).Select(boiler =>
            KeyValuePair.Create(boiler.Name, boiler with { Outages = boiler.Outages.Replace(boiler.Down!, boiler.Down! with { BackExpectedOn = boiler.Down!.BackLateOn }) }))),
    };
}
