using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

public sealed class ChargeSheetTests
{
    [Fact]
    public void Red_oak_stands_where_its_samples_say()
    {
        // sample 4 with its lost corner 12.5 %; mean 12.1, wettest 14.1 (2), driest 9.8 (5).
        var sheet = Sheet("C-61");

        Assert.Equal(12.5, sheet.Samples.Single(row => row.Sample.Name == "4").Last.Moisture.Percent, 0.1);
        Assert.Equal("9.8 to 14.1", Figure(sheet, "Driest to wettest").Value);
        Assert.Contains("mean 12.1", Figure(sheet, "Driest to wettest").Basis, StringComparison.Ordinal);
        // Wettest half: (14.1 + 13.5 + 12.5) / 3.
        Assert.Equal("13.4", Figure(sheet, "Wettest half").Value);
        Assert.Contains("2, 4, 6", Figure(sheet, "Wettest half").Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Setting_is_shown_with_what_it_was()
    {
        var set = Figure(Sheet("C-61"), "Set now");

        Assert.Equal("150 / 112", set.Value);
        Assert.StartsWith("was 140 / 108", set.Basis, StringComparison.Ordinal);
    }


    [Fact]
    public void Charge_dries_on_at_the_rate_its_samples_showed()
    {
        // The owner's own guess is 13 November, the mean at its target.
        var run = Run("C-61");

        var rate = Assert.IsType<Outcome<KilnRate>.Done>(run.Rate).Value;
        Assert.InRange(rate.Factor, 0.7, 1.0);
        Assert.InRange(run.DryAt(f => f.HoursP50)!.Value, new DateTime(2026, 11, 9), new DateTime(2026, 11, 14));
        Assert.True(run.DryAt(f => f.HoursP10) < run.DryAt(f => f.HoursP50) && run.DryAt(f => f.HoursP50) < run.DryAt(f => f.HoursP90));
    }

    [Fact]
    public void Loss_leaves_out_the_power_cut()
    {
        var state = DemonstrationBook.Yard;

        Assert.Equal(5.5, SampleRow.Stood(state.Charges["C-61"], new(2026, 10, 29), new(2026, 10, 31)).Hours, 0.01);
        Assert.Equal(0.0, SampleRow.Stood(state.Charges["C-61"], new(2026, 10, 31), new(2026, 11, 2)).Hours, 1e-9);
    }

    [Fact]
    public void Green_wood_that_loses_too_fast_is_cautioned()
    {
        var book = DemonstrationBook.Open();
        Done(book, new ChargeLoaded("T-1", "K2", ["S-23"], 7.0), At(1, 5));
        Done(book, new SampleCut("T-1", "1", [new(147.0, 100.0)], 1470.0, "S-23"), At(1, 7));
        Done(book, new SettingsChanged("T-1", 43.3, 40.0), At(1, 8));
        Done(book, new SampleWeighed("T-1", "1", 1400.0), At(2, 7));

        var sheet = Sheet(book, "T-1", At(2, 9));

        Assert.Equal("Drying too fast.", sheet.Caution?.First);
        Assert.Contains("7.0 % a day", sheet.Caution!.Value.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Cherry_that_hung_is_told_as_a_diagnosis()
    {
        // 9.1 %; set 120/95 holds 6.9, found 120/103 holds 9.1.
        var stall = Sheet("D-40").Stall!;

        Assert.Equal(StallCause.AirWetterThanSet, stall.Stall.Cause);
        Assert.Equal(9.1, stall.Stall.Wood.Percent, 0.2);
        Assert.Equal(6.9, stall.Stall.EmcSet.Percent, 0.2);
        Assert.Equal(9.1, stall.Stall.EmcFound!.Value.Percent, 0.2);
        Assert.Equal(new DateOnly(2026, 10, 23), DateOnly.FromDateTime(stall.From));
        Assert.Contains(stall.After, note => note.Note.Contains("dripping", StringComparison.Ordinal));
        Assert.Null(Sheet("C-61").Stall);
    }

    [Fact]
    public void Heat_treatment_is_proven_by_a_probe_or_not_at_all()
    {
        Assert.Equal("proven", Sheet("B-37").Treatment.Value);
        Assert.Equal("not proven", Sheet("C-61").Treatment.Value);

        var book = DemonstrationBook.Open();
        Done(book, new HeatTreated("C-61", 56.0, 20.0));
        Assert.Equal("not proven", Sheet(book, "C-61", book.Now).Treatment.Value);
        Done(book, new HeatTreated("C-61", 56.0, 30.0));
        Assert.Equal("proven", Sheet(book, "C-61", book.Now).Treatment.Value);
    }

    [Fact]
    public void Vacuum_charge_is_followed_by_its_condensate()
    {
        var vacuum = Assert.IsType<Outcome<ChargeVacuum>.Done>(Sheet("V-19").Vacuum).Value;

        // 21 L of 0.95 caught from 575 bf of cherry and hackberry.
        Assert.InRange(vacuum.ByCondensate!.Value.Percent, 16.0, 19.5);
        Assert.True(vacuum.Forecast.HoursP50 is > 48.0 and < 240.0);
    }

    [Fact]
    public void Moisture_read_in_a_vacuum_kiln_is_taken_in_with_its_condensate()
    {
        var book = DemonstrationBook.Open();
        var before = Assert.IsType<Outcome<ChargeVacuum>.Done>(Sheet(book, "V-19", book.Now).Vacuum).Value;
        var wetter = before.ByCondensate!.Value.Percent + 2.0;
        Done(book, new MoistureRead(before.Slowest.Tag, MoistureMethod.OvenSections, MeanPct: wetter, SdPct: 0.5, Boards: 4), book.State.Charges["V-19"].Gauges.Last(gauge => gauge.CondensateL is not null).At);

        var sheet = Sheet(book, "V-19", book.Now);
        var after = Assert.IsType<Outcome<ChargeVacuum>.Done>(sheet.Vacuum).Value;

        Assert.Equal(1, after.ReadInside);
        Assert.InRange(after.ByCondensate!.Value.Percent, wetter - 1.5, wetter);
        Assert.True(after.Standing!.High.Percent - after.Standing.Low.Percent < before.Standing!.High.Percent - before.Standing.Low.Percent);
        Assert.Contains("1 reading in the kiln", Figure(sheet, "By condensate and reading").Basis, StringComparison.Ordinal);
        Assert.DoesNotContain("never stop on condensate alone", Figure(sheet, "By condensate and reading").Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_charge_is_refused_with_the_nearest_names() =>
        Assert.Equal("charge", Assert.IsType<Outcome<ChargeSheet>.Refused>(ChargeSheet.Of(DemonstrationBook.Yard, "C-99", At(2, 9))).Reasons[0].What);

    private static ChargeSheet Sheet(string tag) => Sheet(DemonstrationBook.Open(), tag, At(2, 9));

    private static ChargeSheet Sheet(YardBook book, string tag, DateTime now) => Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(book.State, tag, now)).Value;

    private static ChargeRun Run(string tag) => Assert.IsType<Outcome<ChargeRun>.Done>(Sheet(tag).Run).Value;

    private static Traced Figure(ChargeSheet sheet, string label) => sheet.Figures.Single(figure => figure.Label == label);

    private static DateTime At(int day, int hour) => new(2026, 11, day, hour, 0, 0);

    private static void Done(YardBook book, Fact fact, DateTime? at = null)
    {
        if (book.Write("Pell", fact, at) is Outcome<IReadOnlyList<Entry>>.Refused(var reasons))
            throw new InvalidOperationException(string.Join("; ", reasons));
    }
}
