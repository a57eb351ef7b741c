using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

public sealed class StackWriteTests
{
    [Fact]
    public void Reading_in_trend_is_written_as_typed_and_moves_the_forecast()
    {
        var book = DemonstrationBook.Open();
        var before = Drying(book, "S-07");

        var written = Done(StackRead.Write(book, "S-07", new("12.9", "28", "12", "Pell"), PostedKey.None));

        Assert.Equal("12.9", written[0].Typed("raw_pct"));
        Assert.Equal(15.0, book.State.Stacks["S-07"].Moisture!.Mean!.Value.Percent, 0.01);
        Assert.NotEqual(before.Now.P50, Drying(book, "S-07").Now.P50);
        // It says what the reading before it said, by the same meter: the forecast is surer, and moves hardly.
        Assert.True(Width(Drying(book, "S-07").Now) < Width(before.Now));

        static double Width(Boardwright.Drying.DryingDay day) => day.P90.Percent - day.P10.Percent;
    }

    [Fact]
    public void Reading_out_of_trend_is_asked_about_at_once_and_kept_when_confirmed()
    {
        var book = DemonstrationBook.Open();
        var reasons = Refused(StackRead.Write(book, "S-07", new("22", "42", "", "Pell"), PostedKey.None));

        Assert.True(Question.Asks(reasons));
        Assert.Equal("Out of trend", reasons[0].What);
        Assert.Contains("23.4 % corrected", reasons[0].Given, StringComparison.Ordinal);
        Assert.Equal(15.0, book.State.Stacks["S-07"].Moisture!.Mean!.Value.Percent, 0.01);

        Done(StackRead.Write(book, "S-07", new("22", "42", "", "Pell", Keep: true), PostedKey.None));

        Assert.Equal(23.4, book.State.Stacks["S-07"].Moisture!.Mean!.Value.Percent, 0.01);
        Assert.Contains(book.State.Notes, note => note.About == "S-07" && note.Text.StartsWith("Out of trend and kept", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "42F", "12", "Pell", "Reading")]
    [InlineData("wet", "42F", "12", "Pell", "Reading")]
    [InlineData("13", "", "12", "Pell", "Temperature of the wood")]
    [InlineData("13", "42F", "a few", "Pell", "Boards read")]
    [InlineData("13", "42F", "12", "Nobody", "Who")]
    public void Bad_reading_is_refused_at_its_field_and_is_no_question(string reading, string wood, string boards, string by, string what)
    {
        var reasons = Refused(StackRead.Write(DemonstrationBook.Open(), "S-07", new(reading, wood, boards, by, Keep: true), PostedKey.None));

        Assert.Equal(what, Assert.Single(reasons).What);
        Assert.False(Question.Asks(reasons));
    }

    [Fact]
    public void Form_sent_twice_writes_one_reading()
    {
        var book = DemonstrationBook.Open();
        var key = new PostedKey(Guid.CreateVersion7().ToString(), null);
        var count = book.State.Stacks["S-07"].Readings.Count;

        Done(StackRead.Write(book, "S-07", new("13.4", "40", "", "Pell"), key));
        Done(StackRead.Write(book, "S-07", new("13.4", "40", "", "Pell"), key));

        Assert.Equal(count + 1, book.State.Stacks["S-07"].Readings.Count);
    }

    [Fact]
    public void Last_entry_is_taken_back_by_a_correction()
    {
        var book = DemonstrationBook.Open();
        var before = Drying(book, "S-07");
        Assert.Null(LastWritten.Of(book.State, book.State.Stacks["S-07"].History, book.Now));
        Done(StackRead.Write(book, "S-07", new("12.9", "28", "12", "Pell"), PostedKey.None));

        var last = LastWritten.Of(book.State, book.State.Stacks["S-07"].History, book.Now)!;
        Assert.Contains("S-07 read: 12.9", last.Words, StringComparison.Ordinal);
        Done(last.TakeBack(book));

        Assert.Equal(before.Forecast, Drying(book, "S-07").Forecast);
        Assert.Null(LastWritten.Of(book.State, book.State.Stacks["S-07"].History, book.Now));
    }

    [Fact]
    public void Sections_need_a_dry_weight_for_each_wet_one()
    {
        var book = DemonstrationBook.Open();

        Assert.Equal("Weight out of the oven", Refused(StackSections.Write(book, "S-23", new("119.9, 122.5", "96.3", "Pell"), PostedKey.None))[0].What);
        Done(StackSections.Write(book, "S-23", new("119.9 122.5", "96.3 98.5", "Pell"), PostedKey.None));

        // 24.51 and 24.37 %.
        Assert.Equal(24.44, book.State.Stacks["S-23"].Moisture!.Mean!.Value.Percent, 0.02);
    }

    [Fact]
    public void Move_from_row_to_shed_changes_place_and_forecast()
    {
        var book = DemonstrationBook.Open();

        Done(StackCarry.Write(book, "S-23", "shed A", "Pell", PostedKey.None));

        Assert.Equal("shed A", book.State.Stacks["S-23"].Place);
        Assert.Single(Drying(book, "S-23").Input.Moves);
    }

    [Theory]
    [InlineData("S-23", "row 3", "To")]
    [InlineData("S-23", "attic", "To")]
    [InlineData("S-10", "shed A", "Stack")]
    [InlineData("S-99", "shed A", "Stack")]
    public void Move_to_nowhere_or_out_of_a_kiln_is_refused(string stack, string place, string what) =>
        Assert.Equal(what, Refused(StackCarry.Write(DemonstrationBook.Open(), stack, place, "Pell", PostedKey.None))[0].What);

    [Fact]
    public void Stack_made_from_logs_opens_them_and_has_their_tally()
    {
        var book = DemonstrationBook.Open();
        var typed = Maple() with { Tag = StackBuild.NextTag(book.State) };

        Done(StackBuild.Write(book, typed, PostedKey.None));

        var stack = book.State.Stacks["S-26"];
        Assert.Equal(150.0, stack.Footage.Count, 1e-9);
        Assert.Equal(31, stack.Pieces);
        Assert.Equal("sugar maple", stack.Species.CommonName);
        Assert.Equal(["L-001", "L-002"], stack.FromLogs);
        Assert.True(book.State.Logs["L-001"].IsSawn);
        Assert.IsType<Outcome<StackForecast>.Done>(StackForecast.Of(book.State, "S-26"));
    }

    [Fact]
    public void New_stack_with_its_logs_is_taken_back_as_one()
    {
        var book = DemonstrationBook.Open();
        Done(StackBuild.Write(book, Maple(), PostedKey.None));

        Done(LastWritten.Of(book.State, book.State.Stacks["S-26"].History, book.Now)!.TakeBack(book));

        Assert.False(book.State.Stacks.ContainsKey("S-26"));
        Assert.False(book.State.Logs["L-001"].IsSawn);
    }

    [Fact]
    public void New_stack_names_everything_that_is_wrong_at_once()
    {
        var typed = Maple() with { Tag = "S-07", Thickness = "thick", Place = "attic", Logs = [new("L-001", "none", "16"), new("L-999", "70", "15")] };

        var reasons = Refused(StackBuild.Write(DemonstrationBook.Open(), typed, PostedKey.None));

        Assert.Equal(["Stack", "Footage of L-001", "Log", "Thickness", "Place"], reasons.Select(reason => reason.What).Where(what => what != "Wood"));
    }

    [Fact]
    public void Log_of_another_wood_is_refused_by_the_book_and_nothing_is_written()
    {
        var book = DemonstrationBook.Open();
        var count = book.State.Entries.Count;

        Refused(StackBuild.Write(book, Maple() with { Logs = [new("L-001", "72", "16"), new("L-009", "70", "15")] }, PostedKey.None));

        Assert.Equal(count, book.State.Entries.Count);
    }

    private static StackTyped Maple() =>
        new("S-26", "", "4/4", "Boards", "Flat", "row 1", "", [new("L-001", "72", "16"), new("L-002", "78", "15"), new("", "", "")], "", "", "Bram");

    private static StackForecast Drying(YardBook book, string tag) => Done(StackForecast.Of(book.State, tag));

    private static IReadOnlyList<Refusal> Refused<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Refused>(outcome).Reasons;

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
