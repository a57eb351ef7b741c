using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>Accident 7: a power cut in a charge, and the way back.</summary>
public sealed class ChargeRestartTests
{
    [Fact]
    public void Restart_is_asked_step_by_step_heat_before_spray_and_each_tick_is_an_entry()
    {
        var book = Stopped();
        var count = book.State.Entries.Count;
        foreach (var step in KilnRestart.OfAir)
        {
            Assert.Equal(step, Restart(book)!.Next!.Step);
            Done(ChargeRestart.Tick(book, "C-61", step.ToString(), "Pell", PostedKey.None));
        }

        Assert.Equal(count + KilnRestart.OfAir.Count, book.State.Entries.Count);
        Assert.Equal(KilnRestart.OfAir, book.State.Charges["C-61"].Restarts.Select(tick => tick.Step));
        Assert.Null(Restart(book));
    }

    [Fact]
    public void Kiln_is_not_warm_again_while_no_boiler_runs()
    {
        var book = Stopped();
        Done(book.Write("Pell", new EquipmentDown("B2", "pump", book.State.Today.AddDays(2))));
        foreach (var step in KilnRestart.OfAir.TakeWhile(step => step != RestartStep.Heated))
        {
            Done(ChargeRestart.Tick(book, "C-61", step.ToString(), "Pell", PostedKey.None));
        }

        var reason = Refused(ChargeRestart.Tick(book, "C-61", nameof(RestartStep.Heated), "Pell", PostedKey.None));
        Assert.StartsWith("a boiler that runs: B1 and B2 are down", reason.Accepted, StringComparison.Ordinal);

        Done(book.Write("Pell", new EquipmentBack("B2")));
        Done(ChargeRestart.Tick(book, "C-61", nameof(RestartStep.Heated), "Pell", PostedKey.None));
    }

    /// <summary>While no boiler runs a charge heated by water stands: its end, and what waits for it, is later by those days.</summary>
    [Fact]
    public void Charge_without_heat_is_out_later_by_the_days_without_a_boiler()
    {
        var book = DemonstrationBook.Open();
        var charge = book.State.Charges["C-61"];
        var before = ChargeEnd.Of(book.State, charge, book.State.Today.ToDateTime(TimeOnly.MinValue))!;
        Done(book.Write("Pell", new EquipmentDown("B2", "pump", book.State.Today.AddDays(3))));

        var end = ChargeEnd.Of(book.State, book.State.Charges["C-61"], book.State.Today.ToDateTime(TimeOnly.MinValue))!;

        Assert.Equal(before.Dry.AddDays(3), end.Dry);
        Assert.StartsWith("No boiler runs: it stands 3 days", end.FinishWords, StringComparison.Ordinal);
        Assert.Equal(ChargeEnd.Of(DemonstrationBook.Yard, DemonstrationBook.Yard.Charges["V-19"], DemonstrationBook.Yard.Today.ToDateTime(TimeOnly.MinValue))!.Dry, ChargeEnd.Of(book.State, book.State.Charges["V-19"], book.State.Today.ToDateTime(TimeOnly.MinValue))!.Dry);
    }

    [Fact]
    public void Sheet_says_first_that_no_boiler_runs()
    {
        var book = DemonstrationBook.Open();
        Done(book.Write("Pell", new EquipmentDown("B2", "pump", book.State.Today.AddDays(2))));

        var task = Assert.Single(MorningSheet.For(book.State, null, SeasonNow.NotAsked).Tasks, task => task.Do.StartsWith("No boiler runs", StringComparison.Ordinal));

        Assert.Equal("No boiler runs: shut K1.", task.Do);
        Assert.Contains("B1, B2 are down", task.Why, StringComparison.Ordinal);
        Assert.DoesNotContain(MorningSheet.For(DemonstrationBook.Yard, null, SeasonNow.NotAsked).Tasks, one => one.Do.StartsWith("No boiler runs", StringComparison.Ordinal));
    }

    [Fact]
    public void Spray_before_heat_is_refused_with_what_comes_next()
    {
        var book = Stopped();
        Done(ChargeRestart.Tick(book, "C-61", nameof(RestartStep.Safe), "Pell", PostedKey.None));

        var reason = Refused(ChargeRestart.Tick(book, "C-61", nameof(RestartStep.Humid), "Pell", PostedKey.None));

        Assert.Equal("Step", reason.What);
        Assert.Contains("Heat comes before spray", reason.Accepted, StringComparison.Ordinal);
        Assert.Contains("vents", reason.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Last_step_ends_a_stop_that_was_still_open_and_the_gap_stays_a_gap()
    {
        var book = Stopped();
        Assert.Null(book.State.Charges["C-61"].Gaps[^1].To);
        foreach (var step in KilnRestart.OfAir)
            Done(ChargeRestart.Tick(book, "C-61", step.ToString(), "Pell", PostedKey.None));

        var gap = book.State.Charges["C-61"].Gaps[^1];
        Assert.Equal(book.State.Charges["C-61"].Restarts[^1].At, gap.To);
        Assert.Contains(Sheet(book).Minds, mind => mind.StartsWith("Power cut 2 Nov", StringComparison.Ordinal) && mind.Contains("nothing is drawn across it", StringComparison.Ordinal));
    }

    [Fact]
    public void Tick_taken_back_asks_for_the_step_again()
    {
        var book = Stopped();
        Done(ChargeRestart.Tick(book, "C-61", nameof(RestartStep.Safe), "Bram", PostedKey.None));
        Done(LastWritten.Of(book.State, book.State.Charges["C-61"].History, book.Now)!.TakeBack(book));

        Assert.Equal(RestartStep.Safe, Restart(book)!.Next!.Step);
    }

    [Fact]
    public void Forecast_is_moved_by_the_time_it_stood_and_the_step_due_with_it()
    {
        var book = DemonstrationBook.Open();
        var before = Run(book);
        Done(ChargeStop.Write(book, "C-61", Cut() with { From = "2026-11-02 06:30", To = "2026-11-02 08:30" }, PostedKey.None));
        var after = Run(book);

        // Weighed on 2 November at 06:10: both hours are after it.
        Assert.Equal(2.0, after.StoodSince.Hours, 1e-6);
        Assert.Equal(2.0, (after.DryAt(f => f.HoursP50)!.Value - before.DryAt(f => f.HoursP50)!.Value).TotalHours, 1e-6);
        Assert.Equal(2.0, (after.Next.DueAt!.Value - before.Next.DueAt!.Value).TotalHours, 1e-6);
    }

    /// <summary>Weights taken while it stands hold what it lost meanwhile: on fewer hours they would tell of quicker drying, and an open stop would bring the end nearer.</summary>
    [Fact]
    public void Open_stop_in_which_the_samples_were_weighed_makes_nothing_quicker()
    {
        var book = DemonstrationBook.Open();
        var before = Run(book);
        Done(ChargeStop.Write(book, "C-61", Cut() with { From = "2026-11-01 18:00", To = null }, PostedKey.None));
        var after = Run(book);

        Assert.Equal(new(2026, 11, 2, 6, 10, 0), after.WeighedAt);
        Assert.True(after.DryAt(f => f.HoursP50) > before.DryAt(f => f.HoursP50));
        Assert.Equal(before.Fastest!.DailyLossPct!.Value, after.Fastest!.DailyLossPct!.Value, 1e-9);
        Assert.True(ChargeEnd.Of(book.State, book.State.Charges["C-61"], book.Now)!.Out >= ChargeEnd.Of(DemonstrationBook.Yard, DemonstrationBook.Yard.Charges["C-61"], book.Now)!.Out);
    }

    [Fact]
    public void Red_oak_below_20_percent_is_at_low_risk()
    {
        // E-02 of the demonstration: red oak below 20 % = low risk.
        var restart = Restart(Stopped())!;

        Assert.Equal(StopDanger.Low, restart.Risk.Danger);
        Assert.InRange(restart.Warm!.Value.Hours, 0.2, 24.0);
        Assert.Contains("150 °F", restart.Lines.Single(line => line.Step == RestartStep.Heated).Do, StringComparison.Ordinal);
        Assert.Contains("112 °F", restart.Lines.Single(line => line.Step == RestartStep.Humid).Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Charge_that_was_weighed_or_set_after_the_stop_is_back()
    {
        // The cut of 30 October in the demonstration: weighed and set since.
        Assert.Null(Restart(DemonstrationBook.Open()));

        var book = Stopped("2026-11-02 08:00");
        Assert.NotNull(Restart(book));
        Done(ChargeSet.Write(book, "C-61", new("150", "112", null, "Pell"), PostedKey.None));
        Assert.Null(Restart(book));
    }

    [Fact]
    public void Vacuum_kiln_has_its_own_order_without_a_wick()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeStop.Write(book, "V-19", Cut(), PostedKey.None));

        Assert.Equal(KilnRestart.OfVacuum, ChargeRestart.Of(book.State, book.State.Charges["V-19"], book.Now)!.Lines.Select(line => line.Step));
    }

    [Theory]
    [InlineData("C-99", "PowerCut", "2026-11-02 05:00", "", "", "Charge")]
    [InlineData("C-61", "Moonlight", "2026-11-02 05:00", "", "", "What happened")]
    [InlineData("C-61", "PowerCut", "yesterday", "", "", "It began")]
    [InlineData("C-61", "PowerCut", "2026-09-02 05:00", "", "", "It began")]
    [InlineData("C-61", "PowerCut", "2026-11-02 05:00", "2026-11-02 04:00", "", "It was back")]
    [InlineData("C-61", "PowerCut", "2026-11-02 05:00", "", "cold", "Lowest dry bulb")]
    public void Bad_stop_is_refused(string tag, string cause, string from, string to, string lowest, string what) =>
        Assert.Equal(what, Refused(ChargeStop.Write(DemonstrationBook.Open(), tag, new(cause, from, to, lowest, null, null, null, null, "Pell"), PostedKey.None)).What);

    [Fact]
    public void Stop_is_kept_with_its_doors_vents_and_fans()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeStop.Write(book, "C-61", Cut() with { Lowest = "97", Doors = "shut", Vents = "open", Fans = "" }, PostedKey.None));

        var gap = book.State.Charges["C-61"].Gaps[^1];
        Assert.Equal(97.0, gap.DryBulbLowest!.Value.Fahrenheit, 1e-6);
        Assert.True(gap.DoorsShut);
        Assert.False(gap.VentsShut);
        Assert.Null(gap.FansRan);
    }

    private static StopTyped Cut() => new(nameof(InterruptionCause.PowerCut), "2026-11-02 07:00", null, null, "shut", "shut", "stood", null, "Pell");

    private static YardBook Stopped(string? to = null)
    {
        var book = DemonstrationBook.Open();
        Done(ChargeStop.Write(book, "C-61", Cut() with { To = to, Lowest = "97" }, PostedKey.None));
        return book;
    }

    private static ChargeRestart? Restart(YardBook book) => ChargeRestart.Of(book.State, book.State.Charges["C-61"], book.Now);

    private static ChargeSheet Sheet(YardBook book) => Done(ChargeSheet.Of(book.State, "C-61", book.Now));

    private static ChargeRun Run(YardBook book) => Assert.IsType<Outcome<ChargeRun>.Done>(Sheet(book).Run).Value;

    private static Refusal Refused<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Refused>(outcome).Reasons[0];

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
