using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Book;

/// <summary>Accidents of a yard: what is asked, what is kept, and what nothing is reckoned from.</summary>
public sealed class AccidentAskedTests
{
    private static readonly DateOnly Tuesday = new(2026, 11, 3);

    [Fact]
    public void Stack_whose_tag_is_lost_covers_no_order_until_it_is_proven()
    {
        var book = DemonstrationBook.Open();
        var (order, line, stack) = book.State.Orders.Values.SelectMany(order => order.Lines.Select(line => (order, line.Asked))).Where(one => one.Asked.Stacks.Count == 1)
            .Select(one => (one.order, one.Asked, Stack: book.State.Stacks.GetValueOrDefault(one.Asked.Stacks[0]))).First(one => one is { Stack: not null, Asked: { Species: not null, ThicknessQuarters: not null, CustomerWood: false } }
                && book.State.Stacks.Values.Count(other => other.IsHere && (one.Asked.Stacks.Contains(other.Tag) || other.ReservedFor == one.order.Tag)) == 1 && StackParts.Of(book.State, one.Stack) is not null);
        var missing = LogTurns.Missing(book.State, order, line);

        Done(book.Write("Pell", new TagLost(stack!.Tag, ["S-01"])));

        Assert.Null(StackParts.Of(book.State, book.State.Stacks[stack.Tag]));
        Assert.True(LogTurns.Missing(book.State, book.State.Orders[order.Tag], line) > missing + 1.0);

        Done(book.Write("Pell", new TagProven(stack.Tag, "end grain and size")));

        Assert.NotNull(StackParts.Of(book.State, book.State.Stacks[stack.Tag]));
        Assert.Equal(missing, LogTurns.Missing(book.State, book.State.Orders[order.Tag], line), 1e-6);
    }

    [Fact]
    public void Morning_sheet_counts_no_unproven_wood_for_a_promise()
    {
        // C-61 dries S-10 for an order that is due within the sheet's days.
        var book = DemonstrationBook.Open();
        Done(book.Write("Pell", new TagLost("S-10", ["S-01"])));

        var task = Assert.Single(MorningSheet.For(book.State, null).Tasks, one => one.Why.Contains("counts for nothing until it is proven", StringComparison.Ordinal));

        Assert.Contains("S-10 lost its tag", task.Why, StringComparison.Ordinal);
        Assert.Equal("0", task.Much.Value);
    }

    [Fact]
    public void Frozen_wood_above_fibre_saturation_is_no_moisture_content_and_only_the_raw_reading_is_kept()
    {
        var book = DemonstrationBook.Open();
        var before = book.State.Stacks["S-23"].Moisture;
        ReadingTyped typed = new("31", "20", "6", "Pell");

        var asked = Refused(StackRead.Write(book, "S-23", typed, PostedKey.None));
        Assert.True(Question.Asks(asked));
        Assert.Equal("No moisture content", asked[0].What);
        Assert.Equal(before, book.State.Stacks["S-23"].Moisture);

        Done(StackRead.Write(book, "S-23", typed with { Keep = true }, PostedKey.None));

        var kept = book.State.Stacks["S-23"].Readings[^1];
        Assert.Equal(31.0, kept.Raw!.Value.Percent, 1e-9);
        Assert.Null(kept.Mean);
        Assert.Equal(before, book.State.Stacks["S-23"].Moisture);
        var sheet = ((Outcome<StackSheet>.Done)StackSheet.Of(book.State, "S-23")).Value;
        Assert.Equal("No moisture content.", sheet.Caution!.Value.First);
        Assert.Contains("Weigh a sample", sheet.Caution.Value.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("31", "40")] // wet, but not frozen: over 28, kept as that
    [InlineData("14", "20")] // frozen, but not wet: corrected, with a wider band
    public void Wood_that_is_only_wet_or_only_frozen_keeps_its_figure(string reading, string wood)
    {
        var book = DemonstrationBook.Open();

        Done(StackRead.Write(book, "S-23", new(reading, wood, "6", "Pell", Keep: true), PostedKey.None));

        Assert.NotNull(book.State.Stacks["S-23"].Readings[^1].Mean);
    }

    [Fact]
    public void Retired_sample_is_cut_anew_from_the_same_stack()
    {
        var book = DemonstrationBook.Open(Tuesday);
        var weight = book.State.Charges["C-61"].Samples.Single(one => one.Name == "2").Weighings[^1].Weight.Grams;
        Assert.Empty(SampleRecut.Of(book.State.Charges["C-61"]));

        Done(ChargeWeigh.Write(book, "C-61", new(new Dictionary<string, string?>(), "2", $"{weight}", "", "Pell"), PostedKey.None));

        var recut = Assert.Single(SampleRecut.Of(book.State.Charges["C-61"]));
        Assert.Equal(("2", "7", "S-10"), (recut.Retired.Name, recut.Name, recut.Stack));
        Assert.Contains("a board of S-10", recut.Where, StringComparison.Ordinal);

        Done(ChargeSample.Write(book, "C-61", new("7", recut.Stack, "152.4", "140.1", "149.0", "137.0", "3100", "Pell"), PostedKey.None));

        Assert.Empty(SampleRecut.Of(book.State.Charges["C-61"]));
    }

    [Fact]
    public void Gain_of_a_sample_is_kept_with_its_cause()
    {
        var book = DemonstrationBook.Open(Tuesday);
        var row = SampleRow.Of(book.State.Charges["C-61"], book.Now).First(one => !one.Sample.Retired);
        var grams = (row.HighG + 8.0).ToString("0", System.Globalization.CultureInfo.InvariantCulture);
        RoundTyped round = new(new Dictionary<string, string?> { [row.Sample.Name] = grams }, null, null, null, "Pell", Keep: true);
        var count = book.State.Entries.Count;

        var refused = Assert.Single(Refused(ChargeWeigh.Write(book, "C-61", round, PostedKey.None)));
        Assert.Equal(ChargeWeigh.WhyGained, refused.What);
        Assert.Equal(count, book.State.Entries.Count);

        Done(ChargeWeigh.Write(book, "C-61", round with { Gained = "spray or steam ran" }, PostedKey.None));

        Assert.Equal($"Sample {row.Sample.Name} gained: spray or steam ran.", book.State.Entries[^1].Fact is NoteWritten { About: "C-61" } note ? note.Text : "");
    }

    [Fact]
    public void Gain_behind_an_open_door_on_record_is_not_asked_about_twice()
    {
        var book = DemonstrationBook.Open(Tuesday);
        var row = SampleRow.Of(book.State.Charges["C-61"], book.Now).First(one => !one.Sample.Retired);
        Done(book.Write("Pell", new Interrupted("C-61", InterruptionCause.DoorOpen, book.Now.AddHours(-3.0), book.Now.AddHours(-1.0))));

        Done(ChargeWeigh.Write(book, "C-61", new(new Dictionary<string, string?> { [row.Sample.Name] = (row.HighG + 8.0).ToString("0", System.Globalization.CultureInfo.InvariantCulture) }, null, null, null, "Pell", Keep: true), PostedKey.None));
    }

    [Fact]
    public void Low_water_is_a_cause_of_its_own_and_no_water_goes_into_a_hot_boiler()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeStop.Write(book, "C-61", new(nameof(InterruptionCause.LowWater), "2026-11-02 06:00", null, null, "shut", "shut", "ran", null, "Pell"), PostedKey.None));

        Assert.Equal(InterruptionCause.LowWater, book.State.Charges["C-61"].Gaps[^1].Cause);
        Assert.Contains(MorningSheet.For(book.State, null).Tasks, one => one.Why.StartsWith("Low water in the boiler since", StringComparison.Ordinal));
        var (act, why) = Assert.Single(BoilerStop.Of(book.State).Shut, step => step.Do.StartsWith("Low water", StringComparison.Ordinal));
        Assert.Contains("no water in", act, StringComparison.Ordinal);
        Assert.Contains("certified", act, StringComparison.Ordinal);
        Assert.Contains("local code", why, StringComparison.Ordinal);
    }

    [Fact]
    public void About_footage_shows_its_age_and_a_count_that_surprises_is_counted()
    {
        var book = DemonstrationBook.Open(Tuesday);
        var stack = book.State.Stacks["S-23"];
        Done(book.Write("Pell", new StackTakenFrom("S-23", 60.0), book.Now.AddDays(-3.0)));

        var title = ((Outcome<StackSheet>.Done)StackSheet.Of(book.State, "S-23")).Value.Under;
        Assert.Contains("about (taken from, not counted for 3 days) ", title, StringComparison.Ordinal);

        Done(book.Write("Pell", new StackCounted("S-23", 0.8 * (stack.Footage.Count - 60.0))));

        Assert.True(book.State.Stacks["S-23"].FootageSure);
        Assert.True(Assert.Single(book.State.Stacks["S-23"].Counts).IsSurprise);
        var list = ((Outcome<StackList>.Done)StackList.Of(book.State)).Value;
        Assert.StartsWith("Surprises: 1 of ", list.Surprises, StringComparison.Ordinal);
        Assert.Contains("S-23", list.Surprises, StringComparison.Ordinal);
    }

    [Fact]
    public void Stack_that_is_about_is_asked_about_when_it_is_picked()
    {
        var book = DemonstrationBook.Open();
        var (order, line, sheet) = book.State.Orders.Values.Where(one => one.IsOpen).SelectMany(one => one.Lines.Select(line => (one.Tag, line.Asked.Line)))
            .Select(one => (one.Tag, one.Line, Sheet: LoadSheet.Of(book.State, one.Tag, one.Line) is Outcome<LoadSheet>.Done(var done) ? done : null))
            .First(one => one.Sheet?.Parts.Any(part => part is { IsPack: false, MayNot: null }) == true);
        var tag = sheet!.Parts.First(part => part is { IsPack: false, MayNot: null }).Tag;
        Done(book.Write("Pell", new StackTakenFrom(tag, 5.0)));

        var picked = ((Outcome<LoadSheet>.Done)LoadSheet.Of(book.State, order, line)).Value;

        Assert.Contains(picked.Cautions, words => words.Contains($"bf on {tag}?", StringComparison.Ordinal));
    }

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;

    private static IReadOnlyList<Refusal> Refused<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Refused>(outcome).Reasons;
}
