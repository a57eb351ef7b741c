using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Entries;

public sealed class EntryTests
{
    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void Every_entry_of_the_season_has_a_sentence()
    {
        foreach (var entry in DemonstrationBook.Entries(DemonstrationBook.LastDay))
        {
            var words = EntryWords.Of(entry.Fact);
            Assert.True(words.Length is > 3 and < 400 && !words.Contains("Boardwright", StringComparison.Ordinal), $"{entry.Number}: {words}");
        }
    }

    [Fact]
    public void Corrected_reading_is_understood_anew_and_the_old_entry_stays()
    {
        var old = book.State.Stacks["S-07"].Moisture!.Entry;
        var before = book.State.Entry(old);

        var written = Done(EntryCorrect.Write(book, old, "Oda", "read the scale wrong", new Dictionary<string, string> { ["raw_pct"] = "14.6" }));

        Assert.Equal((old, "read the scale wrong", "14.6"), (written[0].Corrects, written[0].Reason, written[0].Typed("raw_pct")));
        Assert.Equal(before, book.State.Entry(old));
        Assert.Equal(16.0, book.State.Stacks["S-07"].Moisture!.Mean!.Value.Percent, 0.01);
        Assert.Equal(before.HappenedAt, written[0].HappenedAt);
    }

    [Fact]
    public void A_correction_can_be_corrected_from_any_of_its_versions()
    {
        var old = book.State.Stacks["S-07"].Moisture!.Entry;
        Done(EntryCorrect.Write(book, old, "Oda", "first", new Dictionary<string, string> { ["raw_pct"] = "14.6" }));

        Done(EntryCorrect.Write(book, old, "Oda", "second", new Dictionary<string, string> { ["raw_pct"] = "14.0" }));

        var found = Done(EntryCorrect.Find(book.State, old));
        Assert.Equal([null, "first", "second"], found.Versions.Select(version => version.Reason));
        Assert.Equal("second", found.Standing!.Reason);
        Assert.Equal(15.4, book.State.Stacks["S-07"].Moisture!.Mean!.Value.Percent, 0.01);
    }

    [Fact]
    public void A_figure_may_be_corrected_in_a_unit_of_its_own()
    {
        var old = book.State.Stacks["S-07"].Moisture!.Entry;

        Done(EntryCorrect.Write(book, old, "Oda", "thermometer read again", new Dictionary<string, string> { ["wood_c"] = "52F", ["raw_pct"] = "13.6", ["boards"] = "12" }));

        Assert.Equal(14.5, book.State.Stacks["S-07"].Moisture!.Mean!.Value.Percent, 0.01);
    }

    [Fact]
    public void Entry_taken_out_counts_no_more_and_can_be_brought_back()
    {
        var readings = book.State.Stacks["S-07"].Readings.Count;
        var old = book.State.Stacks["S-07"].Moisture!.Entry;

        var taken = Done(EntryCorrect.Withdraw(book, old, "Oda", "wrong stack"))[0];
        Assert.Equal(readings - 1, book.State.Stacks["S-07"].Readings.Count);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(EntryCorrect.Write(book, old, "Oda", "again", new Dictionary<string, string> { ["raw_pct"] = "14.0" }));

        book.Write([new NewEntry("Oda", new Withdrawn(), Corrects: taken.Number, Reason: "right stack after all")]);
        Assert.Equal(readings, book.State.Stacks["S-07"].Readings.Count);
    }

    [Theory]
    [InlineData("raw_pct", "fourteen", "number of %")]
    [InlineData("raw_pct", "140", "0 to 100")]
    [InlineData("species_setting", "unobtainium", "species")]
    [InlineData("happened_at", "yesterday", "a time as")]
    [InlineData("stack", "S-77", "in the book")]
    public void Bad_correction_is_refused_with_what_is_accepted(string key, string value, string accepted)
    {
        var entries = book.State.Entries.Count;

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(EntryCorrect.Write(book, book.State.Stacks["S-07"].Moisture!.Entry, "Oda", "x", new Dictionary<string, string> { [key] = value }));

        Assert.Contains(accepted, string.Join(' ', refused.Reasons), StringComparison.OrdinalIgnoreCase);
        Assert.Equal(entries, book.State.Entries.Count);
    }

    [Fact]
    public void Correction_needs_a_reason_a_name_and_a_change()
    {
        var number = book.State.Stacks["S-07"].Moisture!.Entry;
        var changed = new Dictionary<string, string> { ["raw_pct"] = "14.6" };

        Assert.Equal("reason", Refused(EntryCorrect.Write(book, number, "Oda", " ", changed)));
        Assert.Equal("by", Refused(EntryCorrect.Write(book, number, null, "x", changed)));
        Assert.Equal("correction", Refused(EntryCorrect.Write(book, number, "Oda", "x", new Dictionary<string, string>())));
        Assert.Equal("entry", Refused(EntryCorrect.Write(book, 0, "Oda", "x", changed)));
    }

    [Fact]
    public void Taking_out_what_later_entries_stand_on_is_refused()
    {
        var log = book.State.Logs[book.State.Stacks["S-07"].FromLogs[0]];

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(EntryCorrect.Withdraw(book, log.History[0], "Oda", "never came"));
    }

    private static string Refused(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(outcome).Reasons[0].What;

    [Fact]
    public void Figures_are_corrected_in_the_unit_they_were_typed_in_or_a_mill_says_and_stay_when_left_alone()
    {
        var book = DemonstrationBook.Open();
        var read = book.State.Entries.Last(entry => entry.Fact is MoistureRead { Stack: "S-07", WoodC: not null }).Number;

        var field = EntryCorrect.Fields(book.State.Entry(read)).Single(one => one.Key == "wood_c");
        Assert.Equal(("wood temperature", "°F", "42"), (field.Label, field.Unit, field.Value));
        Assert.Equal("meter showed", EntryCorrect.Fields(book.State.Entry(read)).Single(one => one.Key == "raw_pct").Label);

        Assert.Equal("nothing changed", Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(EntryCorrect.Write(book, read, "Oda", "no change", new Dictionary<string, string> { ["wood_c"] = "42" })).Reasons[0].Given);
        Done(EntryCorrect.Write(book, read, "Oda", "thermometer read again", new Dictionary<string, string> { ["wood_c"] = "50" }));
        Assert.Equal(10.0, ((MoistureRead)book.State.Entries[^1].Fact).WoodC!.Value, 1e-9);
        Done(EntryCorrect.Write(book, read, "Oda", "it was Celsius", new Dictionary<string, string> { ["wood_c"] = "11 C" }));
        Assert.Equal(11.0, ((MoistureRead)book.State.Entries[^1].Fact).WoodC!.Value, 1e-9);
    }

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;
}
