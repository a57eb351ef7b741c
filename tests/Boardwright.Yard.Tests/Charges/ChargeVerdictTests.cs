using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>Question 2: is this charge dry, may I pull it? And question 3, board by board.</summary>
public sealed class ChargeVerdictTests
{
    [Fact]
    public void Charge_above_its_target_dries_on_with_its_driest_and_wettest_named()
    {
        // wettest 14.1 % (sample 2), driest 9.8 % (5); equalizing begins at 5 % for 7 %. Air drier than that is set, step 8 of its schedule: 165/116 °F.
        var book = DemonstrationBook.Open();
        Done(book.Write("Pell", new SettingsChanged("C-61", Temperature.FromFahrenheit(165.0).Celsius, Temperature.FromFahrenheit(116.0).Celsius), new(2026, 11, 2, 7, 0, 0)));
        var verdict = Verdict(book)!;

        Assert.Equal(PullStep.DryOn, verdict.Step);
        Assert.StartsWith("No. Driest 9.8 % in sample 5, wettest 14.1 % in sample 2", verdict.Says, StringComparison.Ordinal);
        Assert.Contains("5.0 %", verdict.Do, StringComparison.Ordinal);
        Assert.Equal(6, verdict.Wet.Count);
        Assert.InRange(verdict.Boards!.Value, 10, 200);
    }

    [Fact]
    public void Dry_boards_beside_wet_ones_are_equalized_for_some_hours()
    {
        // A door maker found a quarter of a pack wet: equalize from the driest at target minus 2 until the wettest meets the target.
        var verdict = Verdict(At(4.9, 6.4, 6.1, 6.0, 9.0, 7.6))!;

        Assert.Equal(PullStep.Equalize, verdict.Step);
        Assert.Equal(["5", "6"], verdict.Wet.Select(sample => sample.Name));
        Assert.Contains("Equalize at 5.0 % for about", verdict.Do, StringComparison.Ordinal);
    }

    [Fact]
    public void House_may_equalize_from_three_points_under_the_target()
    {
        var book = At(4.9, 6.4, 6.1, 6.0, 9.0, 7.6);
        Done(book.Write("Oda", new SettingSet("equalize_below_target", 3.0, "%")));

        Assert.Equal(PullStep.DryOn, Verdict(book)!.Step);
        Assert.Contains("4.0 %", Verdict(book)!.Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Dry_charge_is_conditioned_then_tested_then_pulled()
    {
        var book = At(6.8, 6.4, 6.1, 6.0, 6.9, 6.6);
        Assert.Equal(PullStep.Condition, Verdict(book)!.Step);
        Assert.Contains("11.0 %", Verdict(book)!.Do, StringComparison.Ordinal);

        // 160/149 °F holds 11 %: FOR-128, p. 54.
        Done(book.Write("Pell", new SettingsChanged("C-61", Temperature.FromFahrenheit(160.0).Celsius, Temperature.FromFahrenheit(149.0).Celsius), book.Now.AddHours(-23.0)));
        Assert.Equal(PullStep.Test, Verdict(book)!.Step);

        Write(book, nameof(ProngTurn.Straight), settled: false);
        Assert.Contains("Read it again", Verdict(book)!.Do, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(nameof(ProngTurn.Straight), PullStep.Pull, "Yes.")]
    [InlineData(nameof(ProngTurn.SlightlyIn), PullStep.Pull, "Yes, to be planed")]
    [InlineData(nameof(ProngTurn.In), PullStep.Condition, "Not yet.")]
    [InlineData(nameof(ProngTurn.Out), PullStep.Pull, "Yes, with a warning")]
    public void Settled_prongs_decide(string turn, PullStep step, string says)
    {
        var book = At(6.8, 6.4, 6.1, 6.0, 6.9, 6.6);
        Write(book, turn, settled: true);

        Assert.Equal(step, Verdict(book)!.Step);
        Assert.StartsWith(says, Verdict(book)!.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Worst_of_the_sections_decides_and_a_test_before_the_last_setting_does_not()
    {
        var book = At(6.8, 6.4, 6.1, 6.0, 6.9, 6.6);
        Write(book, nameof(ProngTurn.Straight), settled: true);
        Write(book, nameof(ProngTurn.In), settled: true);
        Assert.Equal(PullStep.Condition, Verdict(book)!.Step);

        Done(book.Write("Pell", new SettingsChanged("C-61", Temperature.FromFahrenheit(160.0).Celsius, Temperature.FromFahrenheit(149.0).Celsius), book.Now.AddMinutes(1.0)));
        Assert.Contains("It is conditioned since", Verdict(book)!.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Old_weights_answer_nothing()
    {
        var book = DemonstrationBook.Open();
        var sheet = Done(ChargeSheet.Of(book.State, "C-61", book.Now.AddDays(3.0)));

        Assert.Equal(PullStep.Weigh, sheet.Verdict!.Step);
        Assert.StartsWith("Not known", sheet.Verdict.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Measured_prongs_are_kept_and_judged_by_their_index()
    {
        var book = At(6.8, 6.4, 6.1, 6.0, 6.9, 6.6);
        Done(ChargeStress.Write(book, "C-61", new(null, true, "2", "100", "8.0", "3.5", null, "Pell"), PostedKey.None));

        var test = book.State.Charges["C-61"].StressTests[^1].Test;
        Assert.Equal(ProngTurn.In, test.Turn);
        Assert.Equal(100.0, test.ProngLengthMm!.Value, 1e-9);
        Assert.Equal("2", test.Sample);
    }

    [Theory]
    [InlineData("C-99", "In", "", "", "", "Charge")]
    [InlineData("C-61", "Sideways", "", "", "", "Prongs")]
    [InlineData("C-61", null, "", "", "", "Prongs")]
    [InlineData("C-61", "In", "100", "8", "", "Measures")]
    [InlineData("C-61", "In", "long", "8", "4", "Length of the prongs")]
    public void Bad_stress_test_is_refused(string tag, string? turn, string prong, string sawn, string read, string what) =>
        Assert.Equal(what, Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(ChargeStress.Write(DemonstrationBook.Open(), tag, new(turn, true, null, prong, sawn, read, null, "Pell"), PostedKey.None)).Reasons[0].What);

    [Fact]
    public void Loss_is_judged_board_by_board_by_its_own_wood_and_thickness()
    {
        var book = DemonstrationBook.Open();
        Done(book.Write("Pell", new ChargeLoaded("T-1", "K2", ["S-23", "S-22"], 7.0)));
        var loaded = book.Now;
        foreach (var (name, stack) in new[] { ("1", "S-23"), ("2", "S-22") })
        {
            Done(book.Write("Pell", new SampleCut("T-1", name, [new(150.0, 100.0)], 1500.0, stack), loaded.AddMinutes(10.0)));
            Done(book.Write("Pell", new SampleWeighed("T-1", name, 1480.0), loaded.AddMinutes(10.0).AddDays(1.0)));
        }

        var safety = Done(ChargeSheet.Of(book.State, "T-1", loaded.AddDays(1.1))).Safety;

        // 2 points in a day: 5/4 red oak bears 3.8 x 1.25^-1.34, 8/4 white oak 1.0 (conners-for-128, table 9).
        Assert.Equal(2.0, safety[0].Row.DailyLossPct!.Value, 0.01);
        Assert.InRange(safety[0].Times!.Value, 2.0 / 2.85, 2.0 / 2.75);
        Assert.InRange(safety[1].Times!.Value, 1.9, 2.2);
        Assert.False(safety[0].TooFast);
        Assert.True(safety[1].TooFast);
        Assert.Equal((148.0 / 100.0 * 100.0 - 100.0 - 30.0) / 2.0 * 24.0, safety[1].HoursInDanger!.Value, 0.5);
    }

    private static void Write(YardBook book, string turn, bool settled) => Done(ChargeStress.Write(book, "C-61", new(turn, settled, null, null, null, null, null, "Pell"), PostedKey.None));

    // All six samples of C-61 at these moistures on 2 November, an hour ago.
    private static YardBook At(params double[] percents)
    {
        var book = DemonstrationBook.Open(new DateOnly(2026, 11, 3));
        foreach (var (sample, percent) in book.State.Charges["C-61"].Samples.Zip(percents))
            Done(book.Write("Pell", new SampleWeighed("C-61", sample.Name, sample.CalculatedDry.Grams * (1.0 + percent / 100.0)), book.Now.AddHours(-1.0)));
        return book;
    }

    private static ChargeVerdict? Verdict(YardBook book) => Done(ChargeSheet.Of(book.State, "C-61", book.Now)).Verdict;

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
