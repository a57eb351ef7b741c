using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Tables;
using Boardwright.Yard.Book.Tables.Writing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>A charge dried by a schedule of the house's own: its step, its next setting, its clock and its end follow it.</summary>
public sealed class ChargeScheduleTests
{
    private const string Hours = "hours,dry_bulb_f,wet_bulb_f\n24,110,106\n36,115,108\n,150,112\n";
    private static readonly DateTime Morning = new(2026, 11, 2, 8, 0, 0);

    [Fact]
    public void Charge_loaded_by_hours_asks_for_its_first_air_and_then_for_the_next_when_the_hours_are_run()
    {
        var book = Loaded();
        var first = Run(book, Morning);
        Assert.Equal(("110 / 106", true), (Bulbs(first.Next), first.Next.IsDue));

        Done(book.Write("Pell", new SettingsChanged("X-1", F(110), F(106)), Morning));
        var running = Run(book, Morning.AddHours(10.0));
        Assert.Equal((0, "115 / 108", false, Morning.AddHours(24.0)), (running.StepNow, Bulbs(running.Next), running.Next.IsDue, running.Next.DueAt!.Value));
        Assert.Equal("the 24 h of this step are run, 10 so far", running.Next.CallsWords);

        var over = Run(book, Morning.AddHours(24.5));
        Assert.Equal((1, "115 / 108", true, "the hours of the step before are run"), (over.StepNow, Bulbs(over.Next), over.Next.IsDue, over.Next.CallsWords));
    }

    [Fact]
    public void Air_dried_charge_on_the_listed_schedule_begins_in_mild_air_and_goes_on_after_twelve_hours()
    {
        // The small book's cherry, S-07, lies at about 15 %.
        var book = SmallBook.Open();
        Done(ChargeLoad.Write(book, new("X-1", "K1", ["S-07"], "7", "Pell"), new(null, null, "2026-11-02 08:00")));
        var first = Run(book, Morning);
        Assert.Equal(10.0, (first.Next.DryBulb - first.Next.WetBulb).FahrenheitDegrees, 1e-6);
        Assert.True(first.Next.IsDue);

        Done(book.Write("Pell", new SettingsChanged("X-1", first.Next.DryBulb.Celsius, first.Next.WetBulb.Celsius), Morning));
        Assert.False(Run(book, Morning.AddHours(6.0)).Next.IsDue);
        var after = Run(book, Morning.AddHours(12.5));
        Assert.True(after.Next.IsDue);
        Assert.True((after.Next.DryBulb - after.Next.WetBulb).FahrenheitDegrees > 20.0);
    }

    [Fact]
    public void Stop_moves_the_step_and_the_end_by_its_hours()
    {
        var book = Loaded();
        Done(book.Write("Pell", new SettingsChanged("X-1", F(110), F(106)), Morning));
        var before = Run(book, Morning.AddHours(20.0));
        Done(book.Write("Pell", new Interrupted("X-1", InterruptionCause.PowerCut, Morning.AddHours(5.0), Morning.AddHours(11.0)), Morning.AddHours(11.0)));
        var after = Run(book, Morning.AddHours(20.0));

        Assert.Equal(before.Next.DueAt!.Value.AddHours(6.0), after.Next.DueAt!.Value);
        Assert.Equal(14.0, after.Clock!.Run!.Value.Hours, 1e-9);
    }

    [Fact]
    public void Sheet_and_page_name_the_own_schedule_and_its_hours()
    {
        var book = Loaded();
        Done(book.Write("Pell", new SettingsChanged("X-1", F(110), F(106)), Morning));
        var sheet = Done(ChargeSheet.Of(book.State, "X-1", Morning.AddHours(3.0)));

        Assert.Contains(sheet.Figures, figure => figure.Label == "Set next" && figure.Basis.Contains("24 h of this step", StringComparison.Ordinal));
        Assert.Equal("By hours", Done(sheet.Run).Schedule.Name);
        Assert.Null(Done(sheet.Run).Schedule.Code);
    }

    [Fact]
    public void Running_charge_may_be_given_another_schedule_and_the_listed_one_again()
    {
        var book = DemonstrationBook.Open();
        Written(book, "By hours", Hours);
        Assert.Equal("Schedule", Assert.Single(Refused(ChargeSchedules.Choose(book, "C-61", "By luck", null, "Pell", PostedKey.None))).What);
        Done(ChargeSchedules.Choose(book, "C-61", "By hours", "trial", "Pell", PostedKey.None));
        Assert.Equal("By hours", Done(ChargeRun.Of(book.State, book.State.Charges["C-61"], Morning)).Schedule.Name);
        Assert.Contains(ChargeSchedules.Of(book.State), kept => kept.Running.Contains("C-61"));
        Done(ChargeSchedules.Choose(book, "C-61", "", null, "Pell", PostedKey.None));
        Assert.NotNull(Done(ChargeRun.Of(book.State, book.State.Charges["C-61"], Morning)).Schedule.Code);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(ChargeSchedules.Choose(book, "V-19", "By hours", null, "Pell", PostedKey.None));
    }

    [Fact]
    public void Equalizing_and_conditioning_as_written_take_the_place_of_the_rule()
    {
        var book = Loaded("phase,hours,dry_bulb_f,wet_bulb_f,emc_pct\n,,150,112,\nequalize,10,150,,4.5\ncondition,12,150,,10.5\n");
        var finish = ChargeFinish.Of(book.State, book.State.Charges["X-1"])!;

        Assert.Equal([4.5, 4.5, 7.0, 10.5], new[] { finish.EqualizeEmc, finish.EqualizeFromDriest, finish.EqualizeUntilWettest, finish.ConditionEmc }.Select(one => Math.Round(one.Percent, 2)));
        Assert.Equal("Equalizing and conditioning take 22 h on top", ChargeEnd.Of(book.State, book.State.Charges["X-1"], Morning)!.FinishWords);
    }

    [Fact]
    public void Bad_line_typed_is_refused_with_its_line_and_column_and_nothing_is_kept()
    {
        var book = DemonstrationBook.Open();
        var reasons = Refused(ChargeSchedules.Write(book, new("By hours", "hours,dry_bulb_f,wet_bulb_f\n24,110,116\n,150,112\n", null, "Pell"), PostedKey.None));

        Assert.Equal("Steps, line 2, wet_bulb_f", Assert.Single(reasons).What);
        Assert.Empty(book.State.Schedules);
        Assert.Equal("Steps", Assert.Single(Refused(ChargeSchedules.Write(book, new("By hours", " ", null, "Pell"), PostedKey.None))).What);
    }

    [Fact]
    public void Kept_schedule_goes_out_as_a_table_and_comes_back_the_same()
    {
        var book = DemonstrationBook.Open();
        Written(book, "By hours", Hours);
        Written(book, "Ours", "phase,mc_above_pct,dry_bulb_c,depression_c\n,50,43,2\n,,68,25\nequalize,,70,22\n");
        var table = Assert.Single(YardExport.Of(book.State).Tables, one => one.Table == "schedules");
        var read = YardImport.Read([("schedules.csv", table.Text)], "Oda");

        Assert.Empty(read.Refusals);
        Assert.Equal(2, read.Entries.Count);
        Assert.Equal(book.State.Entries.Where(entry => entry.Fact is ScheduleWritten).Select(entry => BookJson.Line(entry.Fact)), read.Entries.Select(entry => BookJson.Line(entry.Entry.Fact)));

        // What the form shows of a kept one is read back as the same steps.
        var ours = book.State.Schedules["By hours"];
        Assert.Equal(ours.Steps, Done(ScheduleTable.ReadOne("again", ChargeSchedules.Table(ours), "By hours").Then(ScheduleTable.Schedule)).Steps);
    }

    [Fact]
    public void Trial_of_each_schedule_says_when_it_would_be_dry_and_what_it_would_endanger()
    {
        // Red oak at 60 %: its own listed schedule keeps it, 150 over 112 °F at once does not.
        var book = DemonstrationBook.Open();
        Written(book, "Too hot", "dry_bulb_f,wet_bulb_f\n150,112\n");
        var charge = book.State.Charges["C-61"];
        var green = charge with { Settings = [], Samples = [.. charge.Samples.Select(sample => sample with { Weighings = [sample.Weighings[0] with { Moisture = MoistureContent.FromPercent(60.0) }] })] };
        var trials = ScheduleTrial.Of(book.State, green, Morning);

        Assert.Equal([null, "Too hot"], trials.Select(trial => trial.Schedule));
        Assert.All(trials, trial => Assert.StartsWith("dry about", trial.Dry, StringComparison.Ordinal));
        Assert.False(Done(trials[0].Risk).IsOver, string.Join("; ", Done(trials[0].Risk).Steps.Select(step => $"{step.Step} {step.Held.DryBulbFahrenheit}/{step.Held.WetBulbFloored90Fahrenheit} {StepRisk.Which(step.Over[0])} {StepRisk.HowMuch(step.Over[0])}")));
        var risk = Done(trials[1].Risk);
        Assert.True(risk.IsOver);
        Assert.Contains("all of S-10", StepRisk.Which(risk.Steps[0].Over[0]), StringComparison.Ordinal);
        Assert.Empty(ScheduleTrial.Of(book.State, green with { UnloadedAt = Morning }, Morning));
    }

    [Fact]
    public void Morning_sheet_tells_of_a_step_that_is_run_out_in_the_course_of_the_day()
    {
        // Hours from the first setting of C-61 to 14:00 today, its stops left out.
        var book = DemonstrationBook.Open();
        var charge = book.State.Charges["C-61"];
        var (first, end) = (charge.Settings[0].At, new DateTime(2026, 11, 2, 14, 0, 0));
        var hours = Math.Floor(2.0 * ((end - first).TotalHours - SampleRow.Stood(charge, first, end).Hours)) / 2.0;
        Written(book, "By hours", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"hours,dry_bulb_f,wet_bulb_f\n{hours},140,106\n,152,113\n"));
        Done(ChargeSchedules.Choose(book, "C-61", "By hours", null, "Pell", PostedKey.None));

        var task = MorningSheet.For(book.State, null).Tasks.First(one => one.Charge == "C-61");
        Assert.True(task.Why.Contains("of its step are run then", StringComparison.Ordinal) || task.Do.Contains("Weigh", StringComparison.Ordinal), task.Do + " " + task.Why);
        Assert.Contains("at 1", Done(ChargeRun.Of(book.State, book.State.Charges["C-61"], new(2026, 11, 2))).Next.DueAt!.Value.ToString("'at' HH:mm", System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
    }

    // The ash of the small book, S-01, in an empty K1.
    private static YardBook Loaded(string table = Hours)
    {
        var book = SmallBook.Open();
        Written(book, "By hours", table);
        Done(ChargeLoad.Write(book, new("X-1", "K1", ["S-01"], "7", "Pell") { Schedule = "By hours" }, new(null, null, "2026-11-02 08:00")));
        return book;
    }

    private static void Written(YardBook book, string name, string table) => Done(ChargeSchedules.Write(book, new(name, table, null, "Pell"), PostedKey.None));

    private static ChargeRun Run(YardBook book, DateTime now) => Done(ChargeRun.Of(book.State, book.State.Charges["X-1"], now));

    private static string Bulbs(ChargeChange change) => ChargeFigures.Bulbs(change.DryBulb, change.WetBulb);

    private static double F(double degrees) => Temperature.FromFahrenheit(degrees).Celsius;

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new Xunit.Sdk.XunitException(outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");

    private static IReadOnlyList<Refusal> Refused(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(outcome).Reasons;
}
