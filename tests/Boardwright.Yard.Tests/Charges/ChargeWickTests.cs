using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>Accident 9: a dry wick freezes the setting. And what a charge that hangs is tested for, and the pressure of a vacuum kiln.</summary>
public sealed class ChargeWickTests
{
    [Fact]
    public void Dry_wick_freezes_the_setting_until_both_bulbs_are_sound()
    {
        var book = Doubtful();
        var sheet = Sheet(book);

        Assert.StartsWith("Wet or change the wick", sheet.Next.Do, StringComparison.Ordinal);
        Assert.Equal("Leave the setting.", sheet.Caution!.Value.First);
        Assert.Equal("wait for the wick", sheet.Figures.Single(figure => figure.Label == "Set next").Value);

        Done(ChargeGauge.Write(book, "C-61", new("150", "113", null, "Pell"), PostedKey.None));
        Assert.Null(((Outcome<ChargeRun>.Done)Sheet(book).Run).Value.Frozen);
        Assert.DoesNotContain("wick", Sheet(book).Next.Do, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("149", "148")]
    [InlineData("149", "147")]
    public void Bulbs_nearly_alike_under_a_setting_far_apart_tell_of_a_dry_wick(string dry, string wet)
    {
        var book = DemonstrationBook.Open();
        Assert.True(Question.Asks(Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(ChargeGauge.Write(book, "C-61", new(dry, wet, null, "Pell"), PostedKey.None)).Reasons));

        Done(ChargeGauge.Write(book, "C-61", new(dry, wet, null, "Pell", Keep: true), PostedKey.None));
        Assert.NotNull(((Outcome<ChargeRun>.Done)Sheet(book).Run).Value.Frozen);
        Assert.StartsWith("Wet or change the wick", Sheet(book).Next.Do, StringComparison.Ordinal);
        Assert.Equal("Leave the setting.", Sheet(book).Caution!.Value.First);
    }

    [Fact]
    public void Bulbs_near_each_other_are_believed_where_they_are_set_so()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeSet.Write(book, "C-61", new("150", "145", "conditioning", "Pell"), PostedKey.None));

        Done(ChargeGauge.Write(book, "C-61", new("149", "147", null, "Pell"), PostedKey.None));
        Assert.Null(((Outcome<ChargeRun>.Done)Sheet(book).Run).Value.Frozen);
    }

    [Fact]
    public void What_would_have_been_set_is_said_but_not_proposed()
    {
        var book = Doubtful();
        var run = ((Outcome<ChargeRun>.Done)Sheet(book).Run).Value;
        var would = FormattableString.Invariant($"{run.Next.DryBulb.Fahrenheit:0} / {run.Next.WetBulb.Fahrenheit:0}");

        Assert.Contains("With a sound wick", Sheet(book).Next.Why, StringComparison.Ordinal);
        Assert.Contains(would, Sheet(book).Next.Why, StringComparison.Ordinal);
        Assert.DoesNotContain(MorningSheet.For(book.State, null).Tasks, task => task.Do.StartsWith("Set K1", StringComparison.Ordinal));
        Assert.Contains(MorningSheet.For(book.State, null).Tasks, task => task.Do.StartsWith("Wet or change the wick of K1", StringComparison.Ordinal));
    }

    [Fact]
    public void Setting_on_a_doubtful_wick_is_asked_about()
    {
        var book = Doubtful();

        var reasons = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(ChargeSet.Write(book, "C-61", new("155", "114", null, "Pell"), PostedKey.None)).Reasons;
        Assert.True(Question.Asks(reasons));
        Assert.Equal("The wick is in doubt", reasons[0].What);
        Done(ChargeSet.Write(book, "C-61", new("155", "114", null, "Pell", Keep: true), PostedKey.None));
    }

    [Fact]
    public void Sensor_that_is_not_believed_freezes_it_too()
    {
        var book = DemonstrationBook.Open();
        Done(book.Write("Pell", new Interrupted("C-61", InterruptionCause.Sensor, book.Now.AddHours(-2.0))));

        Assert.NotNull(((Outcome<ChargeRun>.Done)Sheet(book).Run).Value.Frozen);
    }

    [Fact]
    public void Charge_that_hangs_has_its_causes_in_the_order_to_test_them()
    {
        // a drip of the mist valve; the hand bulb found wetter air than set.
        var checks = Done(ChargeSheet.Of(DemonstrationBook.Yard, "D-40", new(2026, 11, 2, 9, 0, 0))).Checks;

        Assert.Equal(10, checks.Count);
        Assert.Contains(checks.TakeWhile(check => check.Standing == StallStanding.Likely), check => check.Cause.StartsWith("Water comes in", StringComparison.Ordinal));
        Assert.Contains(checks, check => check is { Standing: StallStanding.Likely } && check.Cause.StartsWith("The meter", StringComparison.Ordinal));
        Assert.All(checks, check => Assert.NotEqual("", check.Test));
        Assert.Equal(checks.Select(check => check.Standing).Order(), checks.Select(check => check.Standing));
    }

    [Fact]
    public void Pressure_of_a_vacuum_kiln_is_kept_with_its_unit_and_drives_its_forecast()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeGauge.Write(book, "V-19", new(null, null, null, "Pell") { Pressure = "50mmHg" }, PostedKey.None));
        Assert.Equal(6666.1, book.State.Charges["V-19"].Gauges[^1].Pressure!.Value.Pascals, 0.1);

        Done(ChargeGauge.Write(book, "V-19", new(null, null, null, "Pell") { Pressure = "82" }, PostedKey.None));
        Assert.Equal(82.0, Assert.IsType<Outcome<ChargeVacuum>.Done>(ChargeVacuum.Of(book.State, book.State.Charges["V-19"])).Value.Chamber.Millibars, 1e-6);
    }

    [Theory]
    [InlineData("C-61", "60")]
    [InlineData("V-19", "2")]
    [InlineData("V-19", "28inHg vacuum")]
    [InlineData("V-19", "3000")]
    public void Pressure_that_cannot_be_is_refused(string charge, string pressure) => Assert.Equal(
        "Chamber pressure, absolute", Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(ChargeGauge.Write(DemonstrationBook.Open(), charge, new(null, null, null, "Pell") { Pressure = pressure }, PostedKey.None)).Reasons[0].What);

    private static YardBook Doubtful()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeGauge.Write(book, "C-61", new("150", "150", null, "Pell", Keep: true), PostedKey.None));
        return book;
    }

    private static ChargeSheet Sheet(YardBook book) => Done(ChargeSheet.Of(book.State, "C-61", book.Now));

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
