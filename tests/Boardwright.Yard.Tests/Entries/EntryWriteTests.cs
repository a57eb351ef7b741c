using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Entries;

public sealed class EntryWriteTests
{
    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void Every_kind_offered_has_a_form()
    {
        foreach (var (kind, words) in EntryWrite.Offered)
        {
            var inputs = Assert.IsType<Outcome<IReadOnlyList<EntryInput>>.Done>(EntryWrite.Inputs(book.State, kind)).Value;
            Assert.True(inputs.Count > 0 || kind == "shavings_emptied", $"{kind}: {words}");
        }
    }

    [Fact]
    public void Boiler_that_is_promised_later_is_written_with_its_days()
    {
        Written("equipment_promised", ("equipment", "B1"), ("back_expected_on", "2026-11-23"), ("why", "the part slips"));

        Assert.Equal(new DateOnly(2026, 11, 23), book.State.Boilers["B1"].Down!.BackExpectedOn);
    }

    [Fact]
    public void Power_cut_is_written_with_its_hours_and_a_temperature_in_its_own_unit()
    {
        Written("interrupted", ("charge", "C-61"), ("cause", "power_cut"), ("from", "2026-11-02 02:10"), ("to", "2026-11-02 07:40"), ("dry_bulb_lowest_c", "97F"), ("doors_shut", "true"));

        var gap = book.State.Charges["C-61"].Gaps[^1];
        Assert.Equal((InterruptionCause.PowerCut, 5.5, true), (gap.Cause, (gap.To!.Value - gap.From).TotalHours, gap.DoorsShut!.Value));
        Assert.Equal(97.0, gap.DryBulbLowest!.Value.Fahrenheit, 1e-6);
    }

    [Fact]
    public void Species_is_corrected_with_how_it_was_seen()
    {
        Written("species_corrected", ("item", "S-16"), ("species", "hackberry"), ("how", "end grain"));

        Assert.Equal("hackberry", book.State.Stacks["S-16"].Species.CommonName);
    }

    [Fact]
    public void Lost_tag_names_what_it_may_be()
    {
        Written("tag_lost", ("item", "L-009"), ("confused_with", "L-010, L-011"));

        Assert.Equal(["L-010", "L-011"], book.State.Logs["L-009"].ConfusedWith);
    }

    [Fact]
    public void Wrong_and_missing_fields_are_named_at_once()
    {
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(EntryWrite.Write(
            book, "interrupted", new Dictionary<string, string> { ["cause"] = "gremlins", ["from"] = "last night", ["dry_bulb_lowest_c"] = "cold" }, "nobody", PostedKey.None));

        Assert.Equal(["charge", "cause", "from", "dry bulb lowest", "Who"], refused.Reasons.Select(reason => reason.What));
    }

    [Fact]
    public void What_does_not_fit_the_book_is_refused_by_the_book() =>
        Assert.Equal("equipment", Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(
            EntryWrite.Write(book, "equipment_down", new Dictionary<string, string> { ["equipment"] = "B9", ["why"] = "leak" }, "Pell", PostedKey.None)).Reasons[0].What);

    [Fact]
    public void A_kind_that_is_not_offered_is_refused() =>
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(EntryWrite.Write(book, "log_received", new Dictionary<string, string>(), "Pell", PostedKey.None));

    private void Written(string kind, params (string Key, string Value)[] values) =>
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(EntryWrite.Write(book, kind, values.ToDictionary(pair => pair.Key, pair => pair.Value), "Pell", PostedKey.None));
}
