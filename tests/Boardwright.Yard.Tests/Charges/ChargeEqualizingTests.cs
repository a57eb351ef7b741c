using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>How a charge in its last step comes to its target; the rule of the Dry Kiln Operator's Manual (1991), ch. 7, from memory of the source.</summary>
public sealed class ChargeEqualizingTests
{
    private static readonly DateTime Morning = new(2026, 11, 2, 8, 0, 0);

    [Fact]
    public void Air_of_equalizing_takes_no_sample_down_to_itself_so_that_the_wettest_calls_for_the_next_change()
    {
        // 150/112 °F holds 5.0 %, what equalizing for 7 % holds; the driest sample stands at 9.8 % (X-07).
        var run = Run(DemonstrationBook.Open());

        Assert.Equal(run.Schedule.Steps.Count - 1, run.StepNow);
        Assert.True(run.Equalizing!.IsOn);
        Assert.Null(run.Equalizing.DriestThere);
        Assert.Equal(ChangeKind.Condition, run.Next.Kind);
        Assert.Equal(7.0, run.Next.At.Percent, 1e-6);
        Assert.Equal(11.0, ChargeRun.EmcOf(run.Next.DryBulb, run.Next.WetBulb)!.Value.Percent, 0.01);
        Assert.False(run.Next.IsDue);
        Assert.Equal(run.ClockFrom.AddHours(run.Equalizing.WettestThere!.Value.Half.Hours), run.Next.DueAt);
    }

    [Fact]
    public void Drier_air_calls_for_equalizing_on_the_day_the_driest_sample_itself_comes_there()
    {
        // The driest at 6 %, the others far behind.
        var book = Set(165.0, 116.0);
        foreach (var (sample, percent) in book.State.Charges["C-61"].Samples.Zip([11.0, 13.0, 9.0, 12.0, 6.0, 12.5]))
            Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new SampleWeighed("C-61", sample.Name, sample.CalculatedDry.Grams * (1.0 + (percent / 100.0))), Morning));
        var run = Run(book);
        var there = Assert.IsType<Outcome<KilnForecast>.Done>(KilnDrying.Forecast(new()
        {
            Species = DemonstrationBook.Yard.Stacks["S-10"].Species,
            Thickness = DemonstrationBook.Yard.Stacks["S-10"].SawnThickness ?? DemonstrationBook.Yard.Stacks["S-10"].Thickness.Length,
            From = run.Driest,
            To = MoistureContent.FromPercent(5.0),
            Kiln = new KilnEquipment("K1", Temperature.FromFahrenheit(165.0)),
            Schedule = run.Schedule.Holding(run.Set!.DryBulb, run.Set.WetBulb, run.StepNow),
            Rate = Assert.IsType<Outcome<KilnRate>.Done>(run.Rate).Value,
        })).Value;

        Assert.False(run.Equalizing!.IsOn);
        Assert.Equal(ChangeKind.Equalize, run.Next.Kind);
        Assert.Equal(5.0, run.Next.At.Percent, 1e-6);
        Assert.Equal(run.ClockFrom.AddHours(there.HoursP50), run.Next.DueAt!.Value, TimeSpan.FromMinutes(1.0));
        Assert.True(run.Equalizing.WettestThere!.Value.Half > run.Equalizing.DriestThere!.Value);
    }

    [Fact]
    public void Where_the_wettest_is_at_the_target_before_the_driest_is_low_nothing_is_left_to_equalize()
    {
        // In 3.6 % air: 14.1 to 7 % leaves 3.4 of 10.5 points over it, 9.8 to 5 % only 1.4 of 6.2.
        var book = Set(165.0, 116.0);
        var run = Run(book);

        Assert.True(run.Equalizing is { IsOn: false, WettestComesFirst: true });
        Assert.Equal(ChangeKind.Condition, run.Next.Kind);
        Assert.Equal(7.0, run.Next.At.Percent, 1e-6);
        Assert.Contains("nothing is left to equalize", Sheet(book).Verdict!.Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Moister_air_names_no_day_and_says_why()
    {
        // 140/108 °F holds 5.8 %: nothing comes to 5 % in it.
        var book = Set(140.0, 108.0);

        Assert.Null(Run(book).Next.DueAt);
        Assert.Contains("not in the air that is set", Figure(book, "Set next").Basis, StringComparison.Ordinal);
        Assert.Contains("which holds 5.8 %, it does not come there: the schedule lists 165 / 116 °F", Sheet(book).Verdict!.Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Setting_off_the_schedule_says_so_where_both_stand()
    {
        var (here, listed) = (Figure(DemonstrationBook.Open(), "Set now"), Figure(Set(165.0, 116.0), "Set now"));

        Assert.Contains("milder and slower than step 8 of the schedule: 165 / 116 °F", here.Basis, StringComparison.Ordinal);
        Assert.DoesNotContain("than step", listed.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Charge_comes_out_once_its_wettest_sample_is_there_and_conditioned()
    {
        var state = DemonstrationBook.Yard;
        var run = Run(DemonstrationBook.Open());
        var end = ChargeEnd.Of(state, state.Charges["C-61"], Morning)!;
        var conditioning = StressTest.UsualConditioning(state.Stacks["S-10"].SawnThickness ?? state.Stacks["S-10"].Thickness.Length);

        Assert.Equal(run.Next.DueAt!.Value.AddHours(conditioning.Hours), end.Out, TimeSpan.FromMinutes(1.0));
        Assert.True(end.Out > end.Dry);
        Assert.Contains("The wettest sample is likely at 7 % on", Figure(DemonstrationBook.Open(), "Dry").Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Day_out_that_is_not_the_day_it_is_ready_says_what_it_waits_for()
    {
        // Weighed again on 4 November it is ready on Sunday 15 November.
        var state = DemonstrationBook.On(new(2026, 11, 4));
        var end = ChargeEnd.Of(state, state.Charges["C-61"], new(2026, 11, 4, 8, 0, 0))!;

        Assert.Equal(DayOfWeek.Sunday, end.Out.DayOfWeek);
        Assert.Equal(DayOfWeek.Monday, end.OutOn.DayOfWeek);
        Assert.Contains("On Sunday 15 Nov no crew that may unload is there: out from about 16 Nov", end.OutWords(state.Today), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_and_charge_ask_for_the_same_setting()
    {
        // Set on 2 November in the last step, milder than it: the operator's choice, also once weighed again.
        foreach (var day in new[] { 2, 4, 6, 8 })
        {
            var state = DemonstrationBook.On(new(2026, 11, day));
            var round = MorningSheet.For(state, "Pell").Tasks.First(task => task.Charge == "C-61" && task.Path.StartsWith("/charges/C-61/", StringComparison.Ordinal));
            var page = Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(state, "C-61", state.Today.ToDateTime(new(8, 0)))).Value.Next;

            Assert.Equal(page.Do.StartsWith("Set", StringComparison.Ordinal), round.Do.StartsWith("Set", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Step_the_wettest_half_has_passed_into_since_the_setting_is_due_on_sheet_and_page()
    {
        // Set as for 20 to 15 % on 30 October, weighed at 14.1 % and less on 2 November: 165/116 °F is due.
        var book = DemonstrationBook.Open();
        var state = book.State;
        var charge = state.Charges["C-61"];
        var before = state with { Charges = state.Charges.SetItem("C-61", charge with { Settings = charge.Settings.RemoveAt(charge.Settings.Count - 1) }) };
        var run = Assert.IsType<Outcome<ChargeRun>.Done>(ChargeRun.Of(before, before.Charges["C-61"], Morning)).Value;
        var page = Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(before, "C-61", Morning)).Value;

        Assert.True(run.Next is { IsDue: true, Kind: ChangeKind.NextStep });
        Assert.Equal(15.0, run.Next.At.Percent, 1e-6);
        Assert.StartsWith("Set 165 / 116 °F", page.Next.Do, StringComparison.Ordinal);
        Assert.Contains(MorningSheet.For(before, "Pell").Tasks, task => task.Charge == "C-61" && task.Do == "Set K1 to 165 / 116 °F.");
    }

    [Fact]
    public void Charge_whose_step_is_due_is_forecast_in_that_step_on_page_kilns_and_plan()
    {
        // D-41 was set to 120/100 °F at 15.7 %, which holds 8.2 %; weighed at 11.7 % on 5 November, 150/103 °F is due: only in that it comes to 7 %.
        var state = DemonstrationBook.On(new(2026, 11, 6));
        var now = state.Today.ToDateTime(TimeOnly.MinValue);
        var sheet = Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(state, "D-41", now)).Value;
        var end = ChargeEnd.Of(state, state.Charges["D-41"], now)!;

        Assert.Equal(DayWords.Of(end.Dry.Day(), state.Today), sheet.Figures.Single(figure => figure.Label == "Dry").Value);
        Assert.Contains(("air", "as due now, later steps as listed"), sheet.Figures.Single(figure => figure.Label == "Dry").Inputs);
        Assert.Contains($"out from about {DayWords.Of(end.OutOn, state.Today)}", ChargeList.Of(state, now).Kilns.Single(view => view.Charge?.Tag == "D-41").Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Unload_day_of_a_plan_whose_crew_is_elsewhere_is_said_beside_the_first_day_a_crew_may()
    {
        var state = DemonstrationBook.Yard;
        var end = ChargeEnd.Of(state, state.Charges["C-61"], Morning)!;
        var season = SeasonNow.Of(state, Plan.DemonstrationPlan.Made());
        var planned = season.Sheet!.Kilns.SelectMany(row => row.Charges).Single(charge => charge.Tag == "C-61");
        var later = season with { Sheet = season.Sheet with { Kilns = [.. season.Sheet.Kilns.Select(row => (row.Kiln, (IReadOnlyList<SeasonCharge>)[.. row.Charges.Select(charge => charge == planned ? charge with { Out = end.OutOn.AddDays(2).ToDateTime(new(12, 0)) } : charge)]))] } };

        Assert.Equal($", by the season’s plan on {DayWords.Of(end.OutOn.AddDays(2), state.Today)}", end.LaterWords(later, "C-61", state.Today));
        Assert.Equal("", end.LaterWords(SeasonNow.NotAsked, "C-61", state.Today));
        Assert.Contains(end.LaterWords(later, "C-61", state.Today), ChargeList.Of(state, Morning, later).Kilns.Single(view => view.Charge?.Tag == "C-61").Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Order_that_waits_for_the_charge_is_named() => Assert.Equal(["O-303"], Sheet(DemonstrationBook.Open()).Orders.Select(order => order.Tag));

    private static YardBook Set(double dryFahrenheit, double wetFahrenheit)
    {
        var book = DemonstrationBook.Open();
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new SettingsChanged("C-61", Temperature.FromFahrenheit(dryFahrenheit).Celsius, Temperature.FromFahrenheit(wetFahrenheit).Celsius), Morning.AddHours(-1.0)));
        return book;
    }

    private static ChargeRun Run(YardBook book) => Assert.IsType<Outcome<ChargeRun>.Done>(Sheet(book).Run).Value;

    private static Traced Figure(YardBook book, string label) => Sheet(book).Figures.Single(figure => figure.Label == label);

    private static ChargeSheet Sheet(YardBook book) => Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(book.State, "C-61", Morning)).Value;
}
