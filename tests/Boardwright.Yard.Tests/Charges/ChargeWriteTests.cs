using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

public sealed class ChargeWriteTests
{
    private static readonly DateOnly Tuesday = new(2026, 11, 3);

    [Fact]
    public void Round_of_all_samples_is_one_act_and_is_taken_back_as_one()
    {
        var book = DemonstrationBook.Open(Tuesday);
        var before = book.State.Charges["C-61"].Wettest!.Moisture;
        Done(ChargeWeigh.Write(book, "C-61", Round(Next(book)), PostedKey.None));

        Assert.True(book.State.Charges["C-61"].Wettest!.Moisture < before);
        var last = LastWritten.Of(book.State, book.State.Charges["C-61"].History, book.Now)!;
        Assert.Equal(6, last.Numbers.Count);
        Done(last.TakeBack(book));

        Assert.Equal(before, book.State.Charges["C-61"].Wettest!.Moisture);
    }

    [Fact]
    public void Weight_out_of_trend_is_asked_about_and_nothing_of_the_round_is_written_until_confirmed()
    {
        var book = DemonstrationBook.Open(Tuesday);
        var weights = Next(book);
        weights["4"] = "3000";
        var count = book.State.Entries.Count;

        var reasons = Refused(ChargeWeigh.Write(book, "C-61", Round(weights), PostedKey.None));
        Assert.True(Question.Asks(reasons));
        Assert.Equal("Sample 4 is out of trend", Assert.Single(reasons).What);
        Assert.Contains("wood lost", reasons[0].Accepted, StringComparison.Ordinal);
        Assert.Equal(count, book.State.Entries.Count);

        Done(ChargeWeigh.Write(book, "C-61", Round(weights) with { Keep = true }, PostedKey.None));
        Assert.Equal(count + 6, book.State.Entries.Count);
    }

    [Fact]
    public void Weight_in_pounds_is_asked_about_as_pounds_and_taken_with_its_unit()
    {
        var book = DemonstrationBook.Open(Tuesday);
        var grams = double.Parse(Next(book)["1"]!, System.Globalization.CultureInfo.InvariantCulture);
        var pounds = (grams / 453.59237).ToString("0.000", System.Globalization.CultureInfo.InvariantCulture);

        var reasons = Refused(ChargeWeigh.Write(book, "C-61", Round(new() { ["1"] = (grams / 453.59237 * 1000.0).ToString("0", System.Globalization.CultureInfo.InvariantCulture) }), PostedKey.None));
        Assert.Contains("pounds", reasons[0].Accepted, StringComparison.Ordinal);
        Done(ChargeWeigh.Write(book, "C-61", Round(new() { ["1"] = pounds + "lb" }), PostedKey.None));

        Assert.Equal(grams, book.State.Charges["C-61"].Samples.Single(sample => sample.Name == "1").Weighings[^1].Weight.Grams, 0.5);
    }

    [Fact]
    public void Wood_lost_from_a_sample_never_shows_as_drying()
    {
        var book = DemonstrationBook.Open(Tuesday);
        var sample = book.State.Charges["C-61"].Samples.Single(one => one.Name == "2");
        var (before, dry) = (sample.Weighings[^1], sample.CalculatedDry);

        Done(ChargeWeigh.Write(book, "C-61", Round(new() { ["2"] = "" }) with { LostFrom = "2", LostBefore = $"{before.Weight.Grams}", LostAfter = $"{before.Weight.Grams - 50.0}" }, PostedKey.None));

        var after = book.State.Charges["C-61"].Samples.Single(one => one.Name == "2");
        Assert.Equal(before.Moisture.Percent, after.Moisture.Percent, 0.01);
        Assert.Equal(dry.Grams * (before.Weight.Grams - 50.0) / before.Weight.Grams, after.CalculatedDry.Grams, 0.01);
    }

    [Theory]
    [InlineData("C-99", "1", "3000", "Charge")]
    [InlineData("C-61", "9", "3000", "Sample")]
    [InlineData("C-61", "1", "heavy", "Sample 1")]
    [InlineData("C-61", "1", "", "Weights")]
    public void Bad_round_is_refused(string charge, string sample, string weight, string what) =>
        Assert.Equal(what, Refused(ChargeWeigh.Write(DemonstrationBook.Open(), charge, Round(new() { [sample] = weight }), PostedKey.None))[0].What);

    [Fact]
    public void Setting_is_written_in_fahrenheit_or_celsius()
    {
        var book = DemonstrationBook.Open();

        Done(ChargeSet.Write(book, "C-61", new("155", "45C", "slow", "Pell"), PostedKey.None));

        var set = book.State.Charges["C-61"].Settings[^1];
        Assert.Equal(155.0, set.DryBulb.Fahrenheit, 1e-6);
        Assert.Equal(45.0, set.WetBulb.Celsius, 1e-6);
        Assert.Equal("slow", set.Note);
        Assert.StartsWith("was 150 / 112", ((Outcome<ChargeSheet>.Done)ChargeSheet.Of(book.State, "C-61", book.Now)).Value.Figures[0].Basis, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("170", "112", "Dry bulb")]
    [InlineData("150", "150", "Wet bulb")]
    [InlineData("", "112", "Dry bulb")]
    public void Setting_the_kiln_cannot_hold_is_refused(string dry, string wet, string what) =>
        Assert.Equal(what, Refused(ChargeSet.Write(DemonstrationBook.Open(), "C-61", new(dry, wet, null, "Pell", Keep: true), PostedKey.None))[0].What);

    [Fact]
    public void Large_step_is_asked_about()
    {
        var book = DemonstrationBook.Open();

        Assert.True(Question.Asks(Refused(ChargeSet.Write(book, "C-61", new("110", "90", null, "Pell"), PostedKey.None))));
        Done(ChargeSet.Write(book, "C-61", new("110", "90", null, "Pell", Keep: true), PostedKey.None));
    }

    [Fact]
    public void Air_read_beside_the_load_is_kept_with_its_note()
    {
        var book = DemonstrationBook.Open();

        Done(ChargeGauge.Write(book, "C-61", new("150", "118", "hand bulb", "Pell"), PostedKey.None));

        var gauge = book.State.Charges["C-61"].Gauges[^1];
        Assert.Equal(118.0, gauge.WetBulb!.Value.Fahrenheit, 1e-6);
        Assert.Equal("hand bulb", gauge.Note);
    }

    [Theory]
    [InlineData("", "", "Reading")]
    [InlineData("150", "", "Wet bulb")]
    [InlineData("150", "160", "Wet bulb")]
    public void Air_that_says_nothing_is_refused(string dry, string wet, string what) =>
        Assert.Equal(what, Refused(ChargeGauge.Write(DemonstrationBook.Open(), "C-61", new(dry, wet, null, "Pell", Keep: true), PostedKey.None))[0].What);

    [Fact]
    public void Dry_wick_is_asked_about() => Assert.True(Question.Asks(Refused(ChargeGauge.Write(DemonstrationBook.Open(), "C-61", new("150", "150", null, "Pell"), PostedKey.None))));

    [Fact]
    public void Charge_as_wanted_comes_out_with_its_readings()
    {
        var book = DemonstrationBook.Open();

        Done(ChargeUnload.Write(book, "C-61", [new("S-10", "2990", "store", "6.8 7.1 7.0 7.2 6.9 7.1")], "Pell", keep: false, PostedKey.None));

        var stack = book.State.Stacks["S-10"];
        Assert.Equal("store", stack.Place);
        Assert.Equal(7.02, stack.Moisture!.Mean!.Value.Percent, 0.01);
        Assert.False(book.State.Charges["C-61"].IsRunning);
        Assert.Null(book.State.Kilns["K1"].Charge);
    }

    [Fact]
    public void Lot_that_is_too_wet_is_asked_about()
    {
        var book = DemonstrationBook.Open();
        OutTyped[] wet = [new("S-10", "2990", "store", "6.9 8.4 11.5 7.0 9.2")];

        var reasons = Refused(ChargeUnload.Write(book, "C-61", wet, "Pell", keep: false, PostedKey.None));
        Assert.True(Question.Asks(reasons));
        Assert.Contains("mean 8.6 %", reasons[0].Given, StringComparison.Ordinal);
        Done(ChargeUnload.Write(book, "C-61", wet, "Pell", keep: true, PostedKey.None));
    }

    [Theory]
    [InlineData("S-10", "2990", "store", "", "Readings of S-10")]
    [InlineData("S-10", "", "store", "7 7 7 7 7", "Footage of S-10")]
    [InlineData("S-10", "4990", "store", "7 7 7 7 7", "bf")]
    [InlineData("S-07", "800", "store", "7 7 7 7 7", "stack")]
    public void Bad_unloading_is_refused(string stack, string bf, string place, string readings, string what) =>
        Assert.Equal(what, Refused(ChargeUnload.Write(DemonstrationBook.Open(), "C-61", [new(stack, bf, place, readings)], "Pell", keep: true, PostedKey.None))[0].What);

    [Fact]
    public void Unloading_is_taken_back()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeUnload.Write(book, "C-61", [new("S-10", "2990", "store", "7 7.1 7 6.9 7")], "Pell", keep: false, PostedKey.None));

        Done(LastWritten.Of(book.State, book.State.Charges["C-61"].History, book.Now)!.TakeBack(book));

        Assert.True(book.State.Charges["C-61"].IsRunning);
        Assert.Equal("K1", book.State.Stacks["S-10"].Place);
    }

    [Fact]
    public void Planned_charge_of_the_cherry_is_loaded()
    {
        // D-41, 1855 of 2000 bf.
        var book = DemonstrationBook.Open();

        Done(ChargeLoad.Write(book, new("D-41", "K2", ["S-07", "S-01", "S-05"], "7", "Pell"), PostedKey.None));

        Assert.Equal("D-41", book.State.Kilns["K2"].Charge);
        Assert.Equal(1855.0, book.State.Charges["D-41"].Stacks.Sum(tag => KilnRoom.AsFourQuarter(book.State.Stacks[tag].Footage, book.State.Stacks[tag].Thickness).Count), 1.0);
        Assert.Equal(new DateOnly(2026, 11, 10), book.State.Charges["D-41"].ExpectedOutOn);
    }

    [Theory]
    [InlineData("S-07,S-02", "Never kiln", "S-02")]
    [InlineData("S-07,S-15", "Together", "points of moisture apart")]
    [InlineData("S-07,S-14", "Together", "times in thickness")]
    [InlineData("S-01,S-24", "Together", "do not both agree")]
    [InlineData("S-01,S-03,S-04", "Room", "2,000")]
    public void Wood_that_may_not_be_dried_together_is_refused_by_name(string stacks, string what, string why)
    {
        var reasons = Refused(ChargeLoad.Write(DemonstrationBook.Open(), new("D-41", "K2", stacks.Split(','), "7", "Pell"), PostedKey.None));

        var reason = Assert.Single(reasons, reason => reason.What == what && $"{reason.Given} {reason.Accepted}".Contains(why, StringComparison.Ordinal));
        Assert.Contains("S-", reason.Given + reason.Accepted + "S-", StringComparison.Ordinal);
    }

    [Fact]
    public void Customers_wood_shares_a_charge_when_the_owners_agree()
    {
        var book = DemonstrationBook.Open();

        Done(ChargeLoad.Write(book, new("D-41", "K2", ["S-01", "S-24"], "7", "Pell", OwnersAgree: true), PostedKey.None));

        Assert.Equal(["S-01", "S-24"], book.State.Charges["D-41"].Stacks);
    }

    [Fact]
    public void Full_kiln_is_refused_and_the_next_name_goes_one_on()
    {
        var book = DemonstrationBook.Open();

        Assert.Equal("kiln", Refused(ChargeLoad.Write(book, new("C-70", "K1", ["S-07"], "7", "Pell"), PostedKey.None))[0].What);
        Assert.Equal("D-44", ChargeLoad.NextTag(book.State, "K2"));
    }

    [Fact]
    public void Charge_just_loaded_asks_for_its_first_setting_then_for_samples_then_runs_by_them()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeLoad.Write(book, new("D-41", "K2", ["S-07", "S-01", "S-05"], "7", "Pell"), PostedKey.None));

        var loaded = Sheet(book);
        Assert.StartsWith("Set ", loaded.Next.Do, StringComparison.Ordinal);
        var run = Assert.IsType<Outcome<ChargeRun>.Done>(loaded.Run).Value;
        // The wettest stack, S-05, was read at 15.8 %; by footage the mean of 15.0, 15.2 and 15.8 is 15.1.
        Assert.Equal(15.8, run.Controlling.Percent, 0.01);
        Assert.Equal(15.15, run.Mean.Percent, 0.05);
        Assert.False(run.BySamples);

        Done(ChargeSet.Write(book, "D-41", new($"{run.Next.DryBulb.Fahrenheit:0}", $"{run.Next.WetBulb.Fahrenheit:0}", null, "Pell"), PostedKey.None));
        Assert.StartsWith("Cut the samples", Sheet(book).Next.Do, StringComparison.Ordinal);

        Done(ChargeSample.Write(book, "D-41", new("1", "S-07", "119.9", "96.3", "122.5", "98.5", "3540", "Pell"), PostedKey.None));
        var sampled = Assert.IsType<Outcome<ChargeRun>.Done>(Sheet(book).Run).Value;
        Assert.True(sampled.BySamples);
        //
        Assert.Equal(24.44, sampled.Mean.Percent, 0.02);
        Assert.Equal(2844.8, book.State.Charges["D-41"].Samples[0].CalculatedDry.Grams, 0.3);

        ChargeSheet Sheet(YardBook one) => Done(ChargeSheet.Of(one.State, "D-41", one.Now));
    }

    [Theory]
    [InlineData("S-10", "118.6", "", "3412", "Dry first section")]
    [InlineData("S-07", "118.6", "95.8", "3412", "Stack")]
    [InlineData("S-10", "95.8", "118.6", "3412", "Dry first section")]
    [InlineData("S-10", "118.6", "95.8", "much", "Sample when cut")]
    public void Bad_sample_is_refused(string stack, string wet, string dry, string weight, string what) =>
        Assert.Equal(what, Refused(ChargeSample.Write(DemonstrationBook.Open(), "C-61", new("7", stack, wet, dry, "", "", weight, "Pell"), PostedKey.None))[0].What);

    private static Dictionary<string, string?> Next(YardBook book) => SampleRow.Of(book.State.Charges["C-61"], book.Now).Where(row => !row.Sample.Retired)
        .ToDictionary(row => row.Sample.Name, row => (string?)((row.LowG + row.HighG) / 2.0).ToString("0", System.Globalization.CultureInfo.InvariantCulture));

    private static RoundTyped Round(Dictionary<string, string?> weights) => new(weights, null, null, null, "Pell");

    private static IReadOnlyList<Refusal> Refused<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Refused>(outcome).Reasons;

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
