using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Morning;

/// <summary>The morning sheet on the demonstration yard (all invented), by the work each role names.</summary>
public sealed class SheetTests
{
    private static readonly MorningSheet Kilns = MorningSheet.For(DemonstrationBook.Yard, "Pell");
    private static readonly MorningSheet Office = MorningSheet.For(DemonstrationBook.Yard, "Oda");
    private static readonly MorningSheet Mill = MorningSheet.For(DemonstrationBook.Yard, "Bram");
    private static readonly MorningSheet Casting = MorningSheet.For(DemonstrationBook.Yard, "Wren");
    private static readonly MorningSheet Hands = MorningSheet.For(DemonstrationBook.Yard, "Tam");

    [Fact]
    public void An_empty_book_has_an_empty_sheet()
    {
        var sheet = MorningSheet.For(YardState.Of([], new(2026, 11, 2)), null);

        Assert.Empty(sheet.Tasks);
        Assert.Empty(sheet.People);
        Assert.Null(sheet.DayWords);
    }

    [Fact]
    public void People_and_their_first_hours_come_from_the_book()
    {
        Assert.Equal(["Pell", "Bram", "Oda", "Wren", "Tam"], Kilns.People.Select(one => one.Name));
        Assert.Equal(new TimeOnly(6, 0), Kilns.People[0].From);
        Assert.Equal(new TimeOnly(7, 30), Kilns.People[1].From);
        Assert.Null(Kilns.People[^1].From);
    }

    [Fact]
    public void Another_person_with_the_same_role_gets_the_same_sheet()
    {
        var yard = DemonstrationBook.Yard;
        var renamed = yard with { People = yard.People.Remove("Pell").Add("Zuzka", yard.People["Pell"] with { Person = "Zuzka" }) };

        Assert.Equal(Kilns.Tasks.Select(task => task.Do), MorningSheet.For(renamed, "Zuzka").Tasks.Select(task => task.Do));
    }

    [Fact]
    public void Work_nobodys_role_names_is_everybodys()
    {
        var alone = DemonstrationBook.Yard with { People = DemonstrationBook.Yard.People.Clear().Add("Ida", new PersonNamed("Ida", "office", 20m)) };

        Assert.Equal(MorningSheet.For(alone, null).Tasks.Count, MorningSheet.For(alone, "Ida").Tasks.Count);
    }

    [Fact]
    public void Order_is_money_at_stake_for_each_day_left()
    {
        var all = MorningSheet.For(DemonstrationBook.Yard, null).Tasks;

        Assert.Equal(all.OrderByDescending(task => task.Stake.PerDay).Select(task => task.Stake.PerDay), all.Select(task => task.Stake.PerDay));
        Assert.All(all, task => Assert.True(task.Do.EndsWith('.') && task.Stake.Basis.Length > 0 && task.Path.StartsWith('/') && task.Key.Length > 0, task.Do));
    }

    [Fact]
    public void Kiln_hand_begins_with_the_charge_worth_most()
    {
        var first = Kilns.Tasks[0];

        Assert.Equal("C-61", first.Charge);
        Assert.Equal("06:00 21:00", first.At);
        Assert.Equal("14.1", first.Much.Value);
        Assert.Equal("sample 2; 7 wanted", first.Much.Basis);
        Assert.Contains("150 / 112 °F", first.Why, StringComparison.Ordinal);
        Assert.Equal("Sample 4 lost wood", first.Caution!.Value.First);
        Assert.Contains("2,808.2 g", first.Caution!.Value.Then, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_boiler_that_runs_is_stoked_at_its_own_hours()
    {
        var fire = Assert.Single(Kilns.Tasks, task => task.Do.StartsWith("Stoke", StringComparison.Ordinal));

        Assert.Equal("Stoke B2.", fire.Do);
        Assert.Equal("06:00 14:00 22:00", fire.At);
    }

    [Fact]
    public void Stoking_hours_follow_the_boilers_setting()
    {
        var yard = DemonstrationBook.Yard;
        var six = yard.Boilers["B2"] with { Installed = yard.Boilers["B2"].Installed with { StokedEveryHours = 6.0 } };

        Assert.Equal("06:00 12:00 18:00", Assert.Single(MorningSheet.For(yard with { Boilers = yard.Boilers.SetItem("B2", six) }, "Pell").Tasks, task => task.Do == "Stoke B2.").At);
    }

    [Fact]
    public void Stacks_of_tomorrows_charge_are_staged_with_their_load_in_4_4()
    {
        var stage = Assert.Single(Kilns.Tasks, task => task.At == "K2");

        Assert.Equal("Stage S-07, S-01 and S-05 by the door of K2.", stage.Do);
        Assert.Equal("1,855", stage.Much.Value);
        Assert.Equal("of 2,000 in 4/4", stage.Much.Basis);
    }

    [Fact]
    public void Promised_wood_read_in_the_cold_is_read_again()
    {
        var row = Assert.Single(Kilns.Tasks, task => task.Path == "/stacks/S-04/read");

        Assert.Equal("row 1", row.At);
        Assert.Contains("34 °F", row.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Office_begins_with_the_promise_that_may_fall_short()
    {
        var first = Office.Tasks[0];

        Assert.Equal("O-303", first.At);
        Assert.Equal("at risk", first.Standing);
        Assert.Equal(OrderCover.Watch("O-303"), first.Do); // without the plan nobody knows when other wood would be ready, so none is named
        Assert.Equal(2903.0, first.Band!.Likely, 3.0);
        Assert.Equal(2900.0, first.Band.Sold);
        Assert.Equal(9860m, first.Stake.Money);
    }

    [Fact]
    public void Office_sees_the_refusal_the_boiler_and_the_wood_that_only_gets_wetter()
    {
        Assert.Equal("cannot", Assert.Single(Office.Tasks, task => task.At == "O-309").Standing);
        var boiler = Assert.Single(Office.Tasks, task => task.At == "B1");
        Assert.Equal("0.5", boiler.Much.Value);
        Assert.Contains("20 Nov", boiler.Much.Basis, StringComparison.Ordinal);
        Assert.Contains("16.5", Assert.Single(Office.Tasks, task => task.At == "O-307").Why, StringComparison.Ordinal);
        Assert.Contains(Office.Tasks, task => task.At == "L-039");
    }

    [Fact]
    public void Sawyer_sees_what_to_open_next_and_how_thick()
    {
        var open = Mill.Tasks.Where(task => task.Do.StartsWith("Open ", StringComparison.Ordinal)).ToList();

        Assert.Equal(5, open.Count);
        Assert.Contains(open, task => task.Why.Contains("4/4: set 1‑1/8 in", StringComparison.Ordinal));
        Assert.Contains(Mill.Tasks, task => task.Do.StartsWith("Scan L-021", StringComparison.Ordinal));
        Assert.Contains(Mill.Tasks, task => task.At == "L-033");
    }

    [Fact]
    public void Caster_sees_the_short_part_the_wet_table_and_the_soft_ones()
    {
        Assert.Equal("2.16", Casting.Tasks[0].Much.Value);
        Assert.Contains("2.2 kg of part B", Casting.Tasks[0].Do, StringComparison.Ordinal);
        Assert.Equal("13.8", Assert.Single(Casting.Tasks, task => task.At == "T-8").Much.Value);
        Assert.Contains(Casting.Tasks, task => task.At == "Q-3");
        Assert.Contains("black walnut or butternut", Assert.Single(Casting.Tasks, task => task.At == "O-308").Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_names_no_trade_bands_and_loads_on_their_day()
    {
        Assert.Equal("Tam works on Saturday: this waits until then.", Hands.DayWords);
        Assert.Contains(Hands.Tasks, task => task.At == "P-118" && task.Much.Value == "4");
        Assert.Contains(Hands.Tasks, task => task.Do == "Band and tag P-119 and P-120.");
        Assert.Contains(Hands.Tasks, task => task.At == "S-02");
    }

    [Fact]
    public void Samples_are_due_after_the_usual_gap_between_weighings()
    {
        var third = MorningSheet.For(DemonstrationBook.Yard with { Today = new(2026, 11, 3) }, "Pell");
        var fourth = MorningSheet.For(DemonstrationBook.Yard with { Today = new(2026, 11, 4) }, "Pell");

        Assert.DoesNotContain(third.Tasks, task => task.Do.StartsWith("Weigh", StringComparison.Ordinal));
        Assert.Equal("Weigh the 6 samples of C-61, then see the setting.", fourth.Tasks[0].Do);
    }

    [Fact]
    public void A_setting_the_schedule_has_passed_is_due()
    {
        // Without the setting of 2 November, made in the last step and milder than it by the operator's choice, that of 29 October stands: the wettest half has passed 15 % since.
        var state = DemonstrationBook.On(new(2026, 11, 6));
        var charge = state.Charges["C-61"];
        var before = state with { Charges = state.Charges.SetItem("C-61", charge with { Settings = charge.Settings.RemoveAt(charge.Settings.Count - 1) }) };

        Assert.StartsWith("Set K1 to 165 / ", MorningSheet.For(before, "Pell").Tasks[0].Do, StringComparison.Ordinal);
        Assert.DoesNotContain(MorningSheet.For(state, "Pell").Tasks, task => task.Do.StartsWith("Set K1", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dry_charge_is_pulled_and_not_set_any_more()
    {
        var sheet = MorningSheet.For(DemonstrationBook.On(new(2026, 11, 10)), null);

        Assert.Contains(sheet.Tasks, task => task.Do == "Check whether D-41 may come out.");
        Assert.DoesNotContain(sheet.Tasks, task => task.Do.StartsWith("Set K2", StringComparison.Ordinal));
    }

    [Fact]
    public void One_line_about_an_order_is_enough_and_its_change_is_asked_about()
    {
        var office = MorningSheet.For(DemonstrationBook.On(new(2026, 11, 10)), "Oda");

        Assert.DoesNotContain(office.Tasks, task => task.Do.StartsWith("Get northern red oak", StringComparison.Ordinal));
        Assert.Contains("700 bf", Assert.Single(office.Tasks, task => task.Do.Contains("a change is asked for", StringComparison.Ordinal)).Why, StringComparison.Ordinal);
        Assert.DoesNotContain(office.Tasks, task => task.Do.Contains("S-26", StringComparison.Ordinal));
    }

    [Fact]
    public void Class_day_is_poured_and_the_nights_are_read()
    {
        var before = MorningSheet.For(DemonstrationBook.On(new(2026, 11, 27)), "Wren");
        var after = MorningSheet.For(DemonstrationBook.On(new(2026, 11, 29)), "Wren");

        Assert.Contains(before.Tasks, task => task.Do.StartsWith("Prepare the moulds", StringComparison.Ordinal));
        Assert.Contains(after.Tasks, task => task.Path == "/pours/shop");
    }

    [Fact]
    public void A_day_off_ahead_is_planned_round()
    {
        var sheet = MorningSheet.For(DemonstrationBook.On(new(2026, 11, 20)), "Wren");

        Assert.Contains(sheet.Tasks, task => task.Do == "Plan round Thursday 26 Nov: closed.");
    }

    [Theory]
    [InlineData(10)]
    [InlineData(18)]
    [InlineData(28)]
    [InlineData(30)]
    public void Every_day_of_the_season_has_a_sheet(int day)
    {
        var sheet = MorningSheet.For(DemonstrationBook.On(new(2026, 11, day)), null);

        Assert.NotEmpty(sheet.Tasks);
    }

    [Fact]
    public void Walnut_in_the_bin_stops_the_shavings()
    {
        var sheet = MorningSheet.For(DemonstrationBook.On(new(2026, 11, 12)), "Wren");

        var stop = Assert.Single(sheet.Tasks, task => task.At == "O-308");
        Assert.StartsWith("Stop", stop.Do, StringComparison.Ordinal);
        Assert.Contains("horses", stop.Caution!.Value.First, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_off_is_said_and_the_kilns_run_on()
    {
        var sheet = MorningSheet.For(DemonstrationBook.On(new(2026, 11, 26)), "Oda");

        Assert.Contains("Kilns and boilers run on", sheet.DayWords, StringComparison.Ordinal);
    }
}
