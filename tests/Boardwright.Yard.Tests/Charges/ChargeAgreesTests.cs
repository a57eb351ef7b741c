using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>The same thing has the same number on every page.</summary>
public sealed class ChargeAgreesTests
{
    private static readonly DateTime Morning = new(2026, 11, 2, 0, 0, 0);

    [Theory]
    [InlineData("C-61")]
    [InlineData("V-19")]
    public void Charge_kilns_and_plan_name_the_same_day_out(string tag)
    {
        var state = DemonstrationBook.Yard;
        var end = ChargeEnd.Of(state, state.Charges[tag], Morning)!;
        var words = $"out from about {DayWords.Of(end.OutOn, state.Today)}";
        var dry = Sheet(state, tag).Figures.Single(figure => figure.Label == "Dry");
        var input = Assert.IsType<Outcome<PlanYard>.Done>(PlanYard.Of(state, 42)).Value.Input;
        var planned = input.Started.Single(charge => charge.Id == tag);
        var crew = input.Calendar.CrewWindows.First(window => window.To >= planned.DryHalf.Hours + state.Kilns[state.Charges[tag].Kiln].Installed.UnloadHours); // an hour a step

        Assert.Equal(DayWords.Of(DateOnly.FromDateTime(end.Dry), state.Today), dry.Value);
        Assert.Contains(words, dry.Basis, StringComparison.Ordinal);
        Assert.Contains(words, ChargeList.Of(state, Morning).Kilns.Single(view => view.Charge?.Tag == tag).Says, StringComparison.Ordinal);
        Assert.Equal(end.Out, Morning.AddHours(planned.DryHalf.Hours), TimeSpan.FromMinutes(1.0));
        Assert.Equal(input.Calendar.DateOf(input.Calendar.DayOf(crew.From)), end.OutOn);
        Assert.Equal(end.OutOn, ChargeEnd.OutDay(state, state.Charges[tag]));
    }

    /// <summary>A charge in air that holds more than its target never ends in it: every page and the plan go by the schedule's air, set now, and not by the day named at loading.</summary>
    [Fact]
    public void Charge_in_air_too_moist_for_its_target_is_asked_to_be_set_and_ends_by_the_schedules_air()
    {
        var yard = DemonstrationBook.Yard;
        var charge = yard.Charges["C-61"];
        var moist = charge.Settings[^1] with { DryBulb = Temperature.FromFahrenheit(120.0), WetBulb = Temperature.FromFahrenheit(112.0) };
        var state = yard with { Charges = yard.Charges.SetItem("C-61", charge with { Settings = charge.Settings.Add(moist), ExpectedOutOn = new(2026, 11, 4) }) };

        var run = Assert.IsType<Outcome<ChargeRun>.Done>(ChargeRun.Of(state, state.Charges["C-61"], Morning)).Value;
        var end = ChargeEnd.Of(state, state.Charges["C-61"], Morning)!;
        var sheet = Sheet(state, "C-61");
        var planned = Assert.IsType<Outcome<PlanYard>.Done>(PlanYard.Of(state, 42)).Value.Input.Started.Single(one => one.Id == "C-61");

        Assert.IsType<Outcome<Drying.KilnForecast>.NoAnswer>(run.Forecast);
        Assert.Equal($"Set {run.ListedWords} °F.", sheet.Next.Do);
        Assert.Contains($"With {run.ListedWords} °F set now: dry about {DayWords.Of(DateOnly.FromDateTime(end.Dry), state.Today)}", sheet.Figures.Single(figure => figure.Label == "Dry").Basis, StringComparison.Ordinal);
        Assert.Contains($"if {run.ListedWords} °F is set now: in the air that is set it does not get dry", ChargeList.Of(state, Morning).Kilns.Single(view => view.Charge?.Tag == "C-61").Says, StringComparison.Ordinal);
        Assert.Equal(end.OutOn, ChargeEnd.OutDay(state, state.Charges["C-61"]));
        Assert.True(end.OutOn > new DateOnly(2026, 11, 4));
        Assert.Equal(end.Out, Morning.AddHours(planned.DryHalf.Hours), TimeSpan.FromMinutes(1.0));
        Assert.Contains(MorningSheet.For(state, "Pell").Tasks, task => task.Charge == "C-61" && task.Do == $"Set K1 to {run.ListedWords} °F.");
    }

    [Fact]
    public void Order_of_which_one_small_pack_is_there_waits_for_the_kiln()
    {
        var yard = DemonstrationBook.On(new(2026, 11, 6));
        var order = yard.Orders["O-301"];
        var pack = DemonstrationBook.Yard.Packs["P-118"]; // as it was before it was shipped
        var state = yard with { Orders = yard.Orders.SetItem("O-301", order with { Packs = order.Packs.Add("P-118") }), Packs = yard.Packs.SetItem("P-118", pack with { Order = "O-301", Line = 1 }) };

        var why = MorningSheet.For(state, null, SeasonNow.NotAsked).Tasks.First(task => task.At == "O-301").Why;

        Assert.Equal(Boardwright.Yard.Book.State.StackStage.InKiln, state.Stacks["S-07"].Stage);
        Assert.Contains($"; {pack.Footage.Count:#,0} bf of it are packed, the rest is not out of the kiln", why, StringComparison.Ordinal);
    }

    [Fact]
    public void White_oak_loaded_in_the_vacuum_kiln_against_the_plan_is_cautioned_on_its_charge() =>
        Assert.Equal("Loaded against its wood.", Sheet(DemonstrationBook.On(new(2026, 11, 8)), "V-20").Caution?.First);

    [Fact]
    public void Charge_weighed_every_other_day_is_weighed_again_on_the_day_the_sheet_names()
    {
        // Weighed on 21, 24, 27, 29, 31 October and 2 November: gaps of 3, 3, 2, 2 and 2 days.
        var state = DemonstrationBook.Yard;
        var next = new DateOnly(2026, 11, 4);

        Assert.Equal(next, WeighingRhythm.Next(state.Charges["C-61"]));
        Assert.Contains("weigh again on Wed 4 Nov", Sheet(state, "C-61").Next.Do, StringComparison.Ordinal);
        Assert.Contains(MorningSheet.For(state, "Pell").Tasks, task => task.Charge == "C-61" && task.Why.Contains("next on Wed 4 Nov", StringComparison.Ordinal));
        Assert.True(WeighingRhythm.IsDueOn(state.Charges["C-61"], next));
    }

    [Fact]
    public void Percentages_before_a_loss_of_wood_name_the_dry_weight_they_are_over()
    {
        var sample = DemonstrationBook.Yard.Charges["C-61"].Samples.Single(one => one.Name == "4");
        var before = sample.Weighings[sample.Weighings.FindIndex(weighing => weighing.AfterDamage) - 1];

        Assert.Equal(before.Moisture.Percent, 100.0 * ((before.Weight.Grams / before.DryWeight.Grams) - 1.0), 1e-9);
        Assert.True(before.DryWeight.Grams > sample.CalculatedDry.Grams + 1.0);
        Assert.Contains(Sheet(DemonstrationBook.Yard, "C-61").Minds, mind => mind.Contains($"over {before.DryWeight.Grams.ToString("0.0", CultureInfo.InvariantCulture)} g dry", StringComparison.Ordinal));
    }

    [Fact]
    public void Cost_over_a_count_in_dispute_says_so()
    {
        var state = DemonstrationBook.Yard;
        Assert.True(state.Packs["P-118"].IsDisputed);

        Assert.Contains("P-118, which differ and are not settled", Cost("P-118"), StringComparison.Ordinal);
        Assert.DoesNotContain("not settled", Cost("S-10"), StringComparison.Ordinal);

        string Cost(string tag) => Assert.IsType<Outcome<WoodHistory>.Done>(WoodHistory.Of(state, tag)).Value.Figures.Single(figure => figure.Label == "Cost so far").Basis;
    }

    private static ChargeSheet Sheet(YardState state, string tag) => Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(state, tag, Morning)).Value;
}
