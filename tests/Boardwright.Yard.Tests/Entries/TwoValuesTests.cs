using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Entries;

/// <summary>Two people who did not know of each other say two things of one: nothing is overwritten, both lie side by side by field, and one press takes one or the other.</summary>
public class TwoValuesTests
{
    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void Two_corrections_of_one_field_lie_side_by_side_until_one_is_chosen()
    {
        var (log, seen) = Received("L-001");
        Done(EntryCorrect.Write(book, log, "Bram", "measured again", Form(log, ("small_end_a_mm", "16")), Opened(seen)));

        var written = Done(EntryCorrect.Write(book, log, "Tam", "measured again", Form(log, ("small_end_a_mm", "17"), seen), Opened(seen)));

        Assert.Equal(new ValueBeside(book.State.Entries.Count - 1, "small_end_a_mm", "17 in"), Assert.Single(written).Fact);
        Assert.Equal(16.0, book.State.Logs["L-001"].SmallEndA.Inches, 1e-9);
        var two = Assert.Single(TwoValues.Of(book.State));
        Assert.Equal(("L-001", "16 in", "Bram", "17 in", "Tam"), (two.About, two.Standing, two.Said.By, two.Value, two.Other.By));
        Assert.Contains(MorningSheet.For(book.State, null).Tasks, task => task.At == "L-001" && task.Path == "/book/beside" && task.Why.Contains("17 in says Tam", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(true, 17.0)]
    [InlineData(false, 16.0)]
    public void Choosing_one_is_a_correction_that_names_the_other_and_nothing_is_removed(bool isOther, double inches)
    {
        var (log, seen) = Received("L-001");
        Done(EntryCorrect.Write(book, log, "Bram", "measured again", Form(log, ("small_end_a_mm", "16")), Opened(seen)));
        var other = Done(EntryCorrect.Write(book, log, "Tam", "measured again", Form(log, ("small_end_a_mm", "17"), seen), Opened(seen)))[0];
        var before = book.State.Entries.Count;
        var key = new PostedKey(Guid.CreateVersion7().ToString(), null);

        var chosen = Done(TwoValues.Settle(book, other.Number, isOther, "Oda", key));

        Assert.Equal(inches, book.State.Logs["L-001"].SmallEndA.Inches, 1e-9);
        Assert.Empty(TwoValues.Of(book.State));
        Assert.Equal(before + chosen.Count, book.State.Entries.Count);
        Assert.Contains(chosen, entry => entry.Corrects == other.Number && entry.Reason!.Contains(isOther ? "17 in of Tam" : "16 in of Bram", StringComparison.Ordinal));
        Done(TwoValues.Settle(book, other.Number, isOther, "Oda", key));     // sent twice
        Assert.Equal(before + chosen.Count, book.State.Entries.Count);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(TwoValues.Settle(book, other.Number, !isOther, "Tam", PostedKey.None));
    }

    [Fact]
    public void Other_fields_of_an_unseen_correction_are_not_put_back()
    {
        var (log, seen) = Received("L-001");
        Done(EntryCorrect.Write(book, log, "Bram", "measured again", Form(log, ("small_end_a_mm", "16")), Opened(seen)));

        // Tam's form still shows the old small end; only the large end was typed.
        Done(EntryCorrect.Write(book, log, "Tam", "the butt too", Form(log, ("large_end_mm", "21"), seen), Opened(seen)));

        Assert.Equal((16.0, 21.0), (Math.Round(book.State.Logs["L-001"].SmallEndA.Inches, 9), Math.Round(book.State.Logs["L-001"].LargeEnd.Inches, 9)));
        Assert.Empty(TwoValues.Of(book.State));
    }

    [Fact]
    public void One_field_agrees_one_is_taken_and_one_waits()
    {
        var (log, seen) = Received("L-001");
        Done(EntryCorrect.Write(book, log, "Bram", "measured again", Form(log, ("small_end_a_mm", "16"), ("small_end_b_mm", "16")), Opened(seen)));

        var written = Done(EntryCorrect.Write(book, log, "Tam", "measured again", Form(log, seen, ("small_end_a_mm", "16"), ("small_end_b_mm", "17.5"), ("large_end_mm", "21")), Opened(seen)));

        Assert.Equal(2, written.Count);
        Assert.Equal((16.0, 16.0, 21.0), (Math.Round(book.State.Logs["L-001"].SmallEndA.Inches, 9), Math.Round(book.State.Logs["L-001"].SmallEndB.Inches, 9), Math.Round(book.State.Logs["L-001"].LargeEnd.Inches, 9)));
        Assert.Equal("17.5 in", Assert.Single(TwoValues.Of(book.State)).Value);
    }

    [Fact]
    public void One_person_who_corrects_twice_corrects_himself()
    {
        var (log, seen) = Received("L-001");
        Done(EntryCorrect.Write(book, log, "Tam", "measured again", Form(log, ("small_end_a_mm", "16")), Opened(seen)));
        Done(EntryCorrect.Write(book, log, "Tam", "no: 17", Form(log, ("small_end_a_mm", "17"), seen), Opened(seen)));

        Assert.Equal(17.0, book.State.Logs["L-001"].SmallEndA.Inches, 1e-9);
        Assert.Empty(TwoValues.Of(book.State));
    }

    [Fact]
    public void An_entry_corrected_meanwhile_is_not_taken_out_unseen()
    {
        var (log, seen) = Received("L-040");
        Done(EntryCorrect.Write(book, log, "Bram", "measured again", Form(log, ("large_end_mm", "30")), Opened(seen)));

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(EntryCorrect.Withdraw(book, log, "Tam", "no such log", Opened(seen))).Reasons[0];

        Assert.Contains("Bram corrected it", refused.Accepted, StringComparison.Ordinal);
    }

    // One rule over kinds of entry: what one answers a customer, keeps a stack for, counts, or sets in the house.
    [Fact]
    public void Two_answers_to_one_customer_are_not_overwritten()
    {
        var seen = book.State.Entries.Count;
        Done(Opened(seen).Write(book, "Oda", new OrderAnswered("O-303", Answer.Yes, new(2026, 11, 27))));

        var written = Done(Opened(seen).Write(book, "Pell", new OrderAnswered("O-303", Answer.Yes, new(2026, 12, 4))));

        Assert.Equal(new DateOnly(2026, 11, 27), book.State.Orders["O-303"].Lines[0].PromisedOn);
        Assert.Equal(("promised_on", "2026-12-04"), (((ValueBeside)Assert.Single(written).Fact).Field, ((ValueBeside)written[0].Fact).Value));
        Done(TwoValues.Settle(book, written[0].Number, true, "Oda", PostedKey.None));
        Assert.Equal(new DateOnly(2026, 12, 4), book.State.Orders["O-303"].Lines[0].PromisedOn);
    }

    [Fact]
    public void A_figure_of_the_house_set_by_two_waits_and_who_has_seen_the_first_sets_it()
    {
        var seen = book.State.Entries.Count;
        Done(Opened(seen).Write(book, "Oda", new SettingSet("kerf_sawmill", 0.06, "in")));
        Done(Opened(seen).Write(book, "Bram", new SettingSet("kerf_sawmill", 0.08, "in")));

        Assert.Equal(0.06, book.State.Setting("kerf_sawmill"));
        Assert.Equal("0.08", Assert.Single(TwoValues.Of(book.State)).Value);

        Done(Opened(book.State.Entries.Count).Write(book, "Bram", new SettingSet("kerf_sawmill", 0.09, "in")));
        Assert.Equal(0.09, book.State.Setting("kerf_sawmill"));
    }

    [Fact]
    public void What_merely_happened_is_kept_from_both()
    {
        var seen = book.State.Entries.Count;
        var before = book.State.Stacks["S-12"].Readings.Count;
        Done(Opened(seen).Write(book, "Tam", new MoistureRead("S-12", MoistureMethod.Pin, RawPct: 12.0, Boards: 6, WoodC: 5.0)));
        Done(Opened(seen).Write(book, "Bram", new MoistureRead("S-12", MoistureMethod.Pin, RawPct: 13.0, Boards: 6, WoodC: 5.0)));

        Assert.Equal(before + 2, book.State.Stacks["S-12"].Readings.Count);
        Assert.Empty(TwoValues.Of(book.State));
    }

    [Fact]
    public void A_value_beside_sent_twice_is_kept_once()
    {
        var seen = book.State.Entries.Count;
        Done(Opened(seen).Write(book, "Oda", new StackReserved("S-12", "O-301")));
        var late = new PostedKey(Guid.CreateVersion7().ToString(), "3600", null, $"{seen}");

        Done(late.Write(book, "Bram", new StackReserved("S-12", "O-303")));
        var count = book.State.Entries.Count;
        Done(late.Write(book, "Bram", new StackReserved("S-12", "O-303")));

        Assert.Equal(count, book.State.Entries.Count);
        Assert.Equal("O-301", book.State.Stacks["S-12"].ReservedFor);
        Assert.True(TwoValues.Of(book.State)[0].Other.HappenedAt < book.Now);
    }

    private (long Number, long Seen) Received(string log) => (book.State.Logs[log].History[0], book.State.Entries.Count);

    private static PostedKey Opened(long seen) => new(Guid.CreateVersion7().ToString(), null, null, $"{seen}");

    private Dictionary<string, string> Form(long number, (string Key, string Value) typed, long? seen = null) => Form(number, seen ?? book.State.Entries.Count, typed);

    private Dictionary<string, string> Form(long number, (string Key, string Value) typed, (string Key, string Value) also) => Form(number, book.State.Entries.Count, typed, also);

    // A form sends every field as it was shown when it was opened, and what was typed over it.
    private Dictionary<string, string> Form(long number, long seen, params (string Key, string Value)[] typed)
    {
        var shown = EntryCorrect.Fields(Corrections.Standing([.. book.State.Entries.Take((int)seen)]).First(one => one.Place == number).Entry).ToDictionary(field => field.Key, field => field.Value);
        foreach (var (key, value) in typed)
            shown[key] = value;
        return shown;
    }

    private static IReadOnlyList<Entry> Done(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(outcome).Value;
}
