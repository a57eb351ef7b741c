using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>The boiler's page answers first whether there is heat for what is planned to run, in the season's own numbers.</summary>
public sealed class BoilerPlannedTests
{
    private static readonly SeasonSheet Sheet = SeasonSheet.Of(DemonstrationBook.Yard, DemonstrationPlan.Made());
    private static readonly HeatChoices Choices = HeatChoices.Of(DemonstrationBook.Yard, Sheet);

    [Fact]
    public void Figures_are_the_seasons_own()
    {
        var figures = BoilerPlanned.Of(Sheet).Figures;

        Assert.Equal(["Left today by the plan", "Short at worst", "Days short"], figures.Select(figure => figure.Label));
        Assert.Equal($"{Sheet.HeatShown[0].GivenKw - Sheet.HeatShown[0].WantedKw:0.0}", figures[0].Value);
        Assert.Equal($"{Sheet.HeatShown.Max(day => day.ShortKw):0.0}", figures[1].Value);
        Assert.Contains($"{Sheet.Shortage!.Day:d MMM}", figures[1].Basis, StringComparison.Ordinal);
        Assert.Equal($"{Sheet.HeatShown.Count(day => day.ShortKw > 0.05)}", figures[2].Value);
    }

    [Fact]
    public void Sheet_of_the_day_shows_the_boiler_pages_figure_under_its_name()
    {
        var state = DemonstrationBook.Yard;
        var planned = BoilerPlanned.Of(Sheet).Figures[0];
        var hot = Assert.IsType<Outcome<BoilerSheet>.Done>(BoilerSheet.Of(state, 42)).Value.Figures[0];

        Assert.Equal((planned.Label, planned.Value, planned.Basis), Fire(SeasonNow.NotAsked with { Sheet = Sheet }));
        Assert.Equal((hot.Label, hot.Value, hot.Basis), Fire(SeasonNow.NotAsked));
        Assert.NotEqual(planned.Label, hot.Label);

        (string, string, string) Fire(SeasonNow season)
        {
            var figure = MorningSheet.For(state, "Pell", season).Tasks.First(task => task.Do.StartsWith("Stoke", StringComparison.Ordinal)).Much;
            return (figure.Label, figure.Value, figure.Basis);
        }
    }

    [Fact]
    public void What_is_down_counts_from_its_late_day_in_both_questions()
    {
        var hot = Assert.IsType<Outcome<BoilerSheet>.Done>(BoilerSheet.Of(DemonstrationBook.Yard, Sheet.HeatShown.Count)).Value.ByDay.ToDictionary(day => day.Date);

        Assert.All(Sheet.HeatShown, day => Assert.Equal(day.GivenKw, hot[day.Day].CapacityKw, 0.1));
        Assert.Contains(DemonstrationBook.Yard.Boilers.Values, boiler => boiler.Down is { BackLateOn: not null });
    }

    [Fact]
    public void Plan_with_heat_enough_says_what_is_least_left()
    {
        var warm = Sheet with { Heat = [.. Sheet.Heat.Select(day => day with { GivenKw = 200.0, PerhapsKw = 200.0 })] };
        var figures = BoilerPlanned.Of(warm).Figures;

        Assert.Equal("Least left", figures[1].Label);
        Assert.Equal("0", figures[2].Value);
        Assert.Empty(HeatChoices.Of(DemonstrationBook.Yard, warm).Choices);
    }

    [Fact]
    public void Ways_through_are_for_the_plans_own_short_days()
    {
        Assert.Equal(Sheet.ShortDays.Select(day => day.Day), Choices.ShortDays.Select(day => day.Date));
        Assert.Equal(Sheet.Shortage!.ShortKw, Choices.WorstKw, 9);
        Assert.Equal(24.0 * Sheet.ShortDays.Sum(day => day.ShortKw), Choices.MissingKwh, 6);
    }

    [Fact]
    public void No_kiln_that_the_plan_loads_is_called_empty() =>
        Assert.DoesNotContain(Choices.Choices, choice => choice.Way.Contains("cold", StringComparison.Ordinal) && Sheet.Kilns.Any(row => choice.Way.Contains(row.Kiln, StringComparison.Ordinal) && row.Charges.Any(charge => charge.In.Day() <= Sheet.Shortage!.Day && charge.Out.Day() >= Sheet.Shortage.Day)));

    [Fact]
    public void Load_put_off_is_one_of_the_plans()
    {
        var off = Assert.Single(Choices.Choices, choice => choice.Way.StartsWith("Load ", StringComparison.Ordinal));
        var last = Sheet.ShortDays[^1].Day;
        var next = Sheet.Kilns.SelectMany(row => row.Charges).Where(charge => charge.Tag is null && charge.Kiln != "K3" && charge.In.Day() <= last).MaxBy(charge => charge.In)!;

        Assert.Contains($"in {next.Kiln} on {last.AddDays(1):d MMM} instead of {next.In:d MMM}", off.Way, StringComparison.Ordinal);
        Assert.Equal(last.DayNumber + 1 - next.In.Day().DayNumber, off.DaysLost);
    }

    [Fact]
    public void Drift_that_would_be_another_schedule_is_not_enough()
    {
        var drift = Assert.Single(Choices.Choices, choice => choice.Way.Contains("drift", StringComparison.Ordinal));

        Assert.False(drift.Enough);
        Assert.Contains("10 °C", drift.Way, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_held_kiln_leaves_missing_is_taken_from_the_shop_as_far_as_it_gives_way()
    {
        // One short day of 10 kW in which K1 draws 9.5: 0.5 kW is 0.9 °C of the shop, which gives way by 2.
        var day = Sheet.HeatShown.First(one => one.KilowattsByUse[1] > 9.0 && Sheet.Kilns[0].Charges.Any(charge => charge.In.Day() < one.Day && charge.Out.Day() > one.Day));
        var only = Sheet with { Heat = [day with { KilowattsByUse = [day.KilowattsByUse[0], 9.5, 0.0], GivenKw = day.KilowattsByUse[0] - 0.5, PerhapsKw = 0.0 }] };

        var hold = HeatChoices.Of(DemonstrationBook.Yard, only).Choices.Single(choice => choice.Way.StartsWith("Hold", StringComparison.Ordinal));

        Assert.True(hold.Enough);
        Assert.EndsWith("turn the shop down by 0.9 °C", hold.Way, StringComparison.Ordinal);
    }
}
