using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Tests.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>Accident 19: dry stock regained in store, the two-step redry. Question 20: heat treatment proved years later.</summary>
public sealed class RedryAndProofTests
{
    [Fact]
    public void Regained_by_a_reading_is_offered_the_two_step_redry_with_its_days()
    {
        var book = Stored(11.0, readAgain: true);
        var redry = Done(StackRedry.Of(book.State, "S-10"));

        Assert.True(redry.ByReading && redry.Regained);
        var steps = Assert.IsType<Outcome<Redry>.Done>(redry.Steps).Value;
        Assert.Equal((redry.Now.Percent + 7.0) / 2.0, steps.First.Emc.Percent, 1e-9);
        Assert.Equal(5.0, steps.Second.Emc.Percent, 1e-9);
        Assert.True(steps.ChecksEasily); // red oak
        Assert.Equal(["Redry takes", "Costs"], redry.Figures.Select(figure => figure.Label));
        Assert.Equal("/charges/redry/S-10", StackNext(book).Path);
        Assert.Contains(ChargeLoad.Loadable(book.State), stack => stack.Tag == "S-10");
    }

    [Fact]
    public void Dry_wood_in_an_unheated_store_is_forecast_to_pass_its_target()
    {
        // 6 to 8 % in an unheated building read 10 to 12 % within weeks (Wengert): the season's air holds 16 to 17 %.
        var redry = Done(StackRedry.Of(Stored(7.0).State, "S-10"));

        Assert.False(redry.Regained);
        Assert.InRange(redry.PassesOn!.Value, new DateOnly(2026, 11, 4), new DateOnly(2026, 12, 20));
        Assert.IsType<Outcome<Redry>.NoAnswer>(redry.Steps);

        var later = Done(StackRedry.Of(YardState.Of(Stored(7.0).State.Entries.Where(entry => entry.Fact is not DayTurned).ToList(), new(2026, 12, 28)), "S-10"));
        Assert.True(later.Regained);
        Assert.InRange(later.Now.Percent, 8.0, 12.5);
    }

    [Fact]
    public void Charge_of_dry_wood_runs_the_redry_not_the_woods_own_schedule()
    {
        var book = Stored(11.0, readAgain: true);
        Done(ChargeLoad.Write(book, new("C-70", "K1", ["S-10"], "7", "Pell"), PostedKey.None));

        var run = Assert.IsType<Outcome<ChargeRun>.Done>(Done(ChargeSheet.Of(book.State, "C-70", book.Now)).Run).Value;

        Assert.StartsWith("Redry", run.Schedule.Name, StringComparison.Ordinal);
        Assert.Equal(130.0, run.Next.DryBulb.Fahrenheit, 1e-6);
        Assert.Contains(Done(ChargeSheet.Of(book.State, "C-70", book.Now)).Minds, mind => mind.Contains("no spray while it warms up", StringComparison.Ordinal));
    }

    [Fact]
    public void Wood_that_never_saw_a_kiln_is_no_redry() => Assert.IsType<Outcome<StackRedry>.Refused>(StackRedry.Of(DemonstrationBook.Yard, "S-07"));

    [Fact]
    public void Treatment_is_proved_years_later_from_any_packs_lineage()
    {
        var yard = Treated(56.5);
        yard.Done(SmallYard.Noon.AddHours(-1.0), new StackDressed("S-1", "S-1D", 200.0, 190.0, 20.0), new PackTallied("P-1", "S-1D", "sugar maple", 4, 5.0, [new(7.25, 8.0)]));

        var years = YardState.Of(yard.Book.State.Entries, new(2031, 6, 1));
        var proof = Done(HeatProof.Of(years, "P-1"));

        Assert.Equal(HeatStanding.Proven, proof.Standing);
        Assert.Equal("Proven: all of it passed C-1 with its coldest core at 56.5 °C or more for 45 min on 2 Nov 2026.", proof.Says);
        Assert.Equal(["L-1", "S-1", "S-1D", "P-1"], proof.Way.Select(step => step.Tag).Distinct());
        Assert.Contains("keeps nothing out: 1672 days", proof.Since, StringComparison.Ordinal);
        Assert.Contains("sugar maple", proof.Since, StringComparison.Ordinal);
        Assert.Equal(HeatStanding.Proven, Done(HeatProof.Of(years, "C-1")).Standing);
        Assert.Equal(HeatStanding.NotProven, Done(HeatProof.Of(years, "L-1")).Standing); // the log itself saw none
    }

    [Fact]
    public void Core_a_degree_too_cold_proves_nothing()
    {
        var proof = Done(HeatProof.Of(Treated(55.0).Book.State, "S-1"));

        Assert.Equal(HeatStanding.NotProven, proof.Standing);
        Assert.Contains("C-1 reached 55 °C for 45 min", proof.Says, StringComparison.Ordinal);
        Assert.False(Assert.Single(proof.Charges).IsMet);
    }

    [Fact]
    public void Pack_made_before_the_kiln_is_not_proved_by_what_was_dried_after()
    {
        var yard = SmallYard.WithKiln();
        yard.Done(SmallYard.Stack("S-1"), new PackTallied("P-0", "S-1", "sugar maple", 4, 5.0, [new(7.25, 8.0)]));
        yard.Done(SmallYard.Noon.AddHours(-2.0), new ChargeLoaded("C-1", "K1", ["S-1"], 7.0), new HeatTreated("C-1", 60.0, 60.0), new ChargeUnloaded("C-1", [new("S-1", 480.0, "shed A", 7.0)]));

        Assert.Equal(HeatStanding.NotProven, Done(HeatProof.Of(yard.Book.State, "P-0")).Standing);
    }

    [Fact]
    public void Lost_tag_ends_the_proof()
    {
        var yard = Treated(60.0);
        yard.Done(SmallYard.Noon.AddHours(-1.0), new TagLost("S-1", ["S-2"]));

        Assert.Equal(HeatStanding.TagLost, Done(HeatProof.Of(yard.Book.State, "S-1")).Standing);
    }

    [Fact]
    public void Bench_sold_in_spring_is_proved_from_its_old_charge()
    {
        // E-20: B-37, March, coldest probe 56 °C or more for 9 h 20 min.
        var proof = Done(HeatProof.Of(DemonstrationBook.Yard, "B-37"));

        Assert.Equal(HeatStanding.Proven, proof.Standing);
        Assert.Contains("560 min", proof.Says, StringComparison.Ordinal);
        Assert.Equal(HeatStanding.NotProven, Done(HeatProof.Of(DemonstrationBook.Yard, "C-61")).Standing);
        Assert.IsType<Outcome<HeatProof>.Refused>(HeatProof.Of(DemonstrationBook.Yard, "X-1"));
    }

    private static SmallYard Treated(double celsius)
    {
        var yard = SmallYard.WithKiln();
        yard.Done(SmallYard.Log("L-1"), SmallYard.Stack("S-1", bf: null), new LogSawn("L-1", [new("S-1", 300.0, 50)]));
        yard.Done(SmallYard.Noon.AddHours(-2.0), new ChargeLoaded("C-1", "K1", ["S-1"], 7.0), new HeatTreated("C-1", celsius, 45.0, "coldest of four"), new ChargeUnloaded("C-1", [new("S-1", 290.0, "shed A", 7.0)]));
        return yard;
    }

    // S-10 out of C-61 on 2 November at 7 %, in the store; read again at this moisture where asked.
    private static YardBook Stored(double percent, bool readAgain = false)
    {
        var book = DemonstrationBook.Open();
        Done(ChargeUnload.Write(book, "C-61", [new("S-10", "2990", "store", "6.8 7.1 7.0 7.2 6.9 7.1")], "Pell", keep: false, PostedKey.None));
        if (readAgain)
            Done(book.Write("Pell", new SectionsWeighed("S-10", [new(100.0 + percent, 100.0), new(100.0 + percent, 100.0)])));
        return book;
    }

    private static StackNext StackNext(YardBook book) => Done(StackSheet.Of(book.State, "S-10")).Next;

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
