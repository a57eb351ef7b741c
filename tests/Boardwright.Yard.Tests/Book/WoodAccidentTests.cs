using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Book;

/// <summary>More accidents of a real yard: in the count, on the phone, with wood that is not the mill's, and with machines that die.</summary>
public sealed class WoodAccidentTests
{
    private readonly SmallYard yard = SmallYard.WithKiln();

    [Fact]
    public void Tally_with_shrinkage_added_back_is_refused()
    {
        yard.Done(SmallYard.Stack("S-07", "black cherry"));

        // 7.25 in x 8 ft and 5.5 in x 10 ft are 10 bf; 10.7 would be the green footage.
        var refusal = yard.Refused(new PackTallied("P-118", "S-07", "black cherry", 4, 10.7, [new(7.25, 8.0), new(5.5, 10.0)]));

        Assert.Equal("bf", refusal.What);
        Assert.Contains("10 bf, what its boards measure; nothing is added for shrinkage", refusal.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_of_a_customer_may_share_a_charge_but_no_pack_of_another_order()
    {
        yard.Done(
            SmallYard.Stack("S-24", "silver maple") with { Owner = "Y-71" }, SmallYard.Stack("S-03"), new ChargeLoaded("D-42", "K1", ["S-24", "S-03"], 8.0),
            new OrderTaken("O-1", "a shop", [new(1, "silver maple 4/4", 100.0, OrderUnit.Bf, new(2026, 12, 1), "rough", [])], 3, 0m));

        var refusal = yard.Refused(new PackTallied("P-1", "S-24", "silver maple", 4, 5.0, [new(7.25, 8.0)], Order: "O-1"));

        Assert.Equal(("stack", "S-24, wood of Y-71"), (refusal.What, refusal.Given));
    }

    [Fact]
    public void Wood_of_a_customer_is_not_shipped_to_another()
    {
        yard.Done(
            SmallYard.Stack("S-24", "silver maple") with { Owner = "Y-71" },
            new OrderTaken("O-1", "a shop", [new(1, "silver maple 4/4", 100.0, OrderUnit.Bf, new(2026, 12, 1), "rough", [])], 3, 0m),
            new OrderTaken("O-312", "Y-71", [new(1, "own silver maple", 385.0, OrderUnit.Bf, new(2026, 12, 22), "8 %", [], CustomerWood: true)], 3, 10m));
        Assert.Equal("stacks", yard.Refused(new Shipped("SH-1", "O-1", [], [new("S-24", 100.0)])).What);

        yard.Done(SmallYard.Noon, new Shipped("SH-1", "O-312", [], [new("S-24", 385.0)]));

        Assert.Equal(115.0, yard.Book.State.Stacks["S-24"].Footage.Count);
    }

    [Fact]
    public void A_pack_is_never_made_of_two_stacks()
    {
        yard.Done(SmallYard.Stack("S-07", "black cherry"), SmallYard.Stack("S-08", "black cherry"), new PackTallied("P-118", "S-07", "black cherry", 4, 5.0, [new(7.25, 8.0)]));

        Assert.Equal("stack", yard.Refused(new PackTallied("P-118", "S-08", "black cherry", 4, 5.0, [new(7.25, 8.0)])).What);
    }

    [Fact]
    public void Unproven_wood_is_not_packed_for_sale_labelled_or_shipped()
    {
        yard.Done(
            SmallYard.Stack("S-07", "black cherry"), new PackTallied("P-118", "S-07", "black cherry", 4, 5.0, [new(7.25, 8.0)]), new TagLost("P-118", ["P-119"]),
            new OrderTaken("O-1", "a shop", [new(1, "black cherry 4/4", 5.0, OrderUnit.Bf, new(2026, 12, 1), "rough", [])], 3, 0m));

        Assert.Contains("proven species", yard.Refused(new PackLabelled("P-118")).Accepted, StringComparison.Ordinal);
        Assert.Contains("proven species", yard.Refused(new Shipped("SH-1", "O-1", ["P-118"], [])).Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Regain_behind_an_open_door_is_kept_as_a_reading()
    {
        // The event of 11 November: the sample is 16 g heavier than two days before, and the gap says why.
        var charge = DemonstrationBook.On(new(2026, 11, 11)).Charges["D-41"];
        var weighings = charge.Samples.Single().Weighings;

        Assert.True(weighings[^1].Weight.Grams > weighings[^2].Weight.Grams);
        Assert.Equal(0.6, 100.0 * (weighings[^1].Weight.Grams / weighings[^2].Weight.Grams - 1.0), 0.05);
        Assert.True(weighings[^1].Moisture > weighings[^2].Moisture);
        Assert.Equal(InterruptionCause.DoorOpen, charge.Gaps.Single().Cause);
    }

    [Fact]
    public void Power_cut_is_a_gap_with_its_hours_and_lowest_temperature()
    {
        var gap = DemonstrationBook.Yard.Charges["C-61"].Gaps.Single();

        Assert.Equal((InterruptionCause.PowerCut, 5.5), (gap.Cause, (gap.To!.Value - gap.From).TotalHours));
        Assert.Equal(97.0, gap.DryBulbLowest!.Value.Fahrenheit, 0.01);
        Assert.Equal((true, true, false), (gap.DoorsShut, gap.VentsShut, gap.FansRan));
    }

    [Fact]
    public void Wet_bulb_that_reads_as_the_dry_one_tells_of_its_wick()
    {
        yard.Done(SmallYard.Stack("S-10"), new ChargeLoaded("C-61", "K1", ["S-10"], 7.0), new GaugeRead("C-61", DryBulbC: 60.0, WetBulbC: 45.0), new GaugeRead("C-61", DryBulbC: 60.0, WetBulbC: 59.8));

        Assert.Equal([false, true], yard.Book.State.Charges["C-61"].Gauges.Select(gauge => gauge.WickInDoubt));
        Assert.Contains("is its wick dry?", EntryWords.Of(new GaugeRead("C-61", DryBulbC: 60.0, WetBulbC: 59.8)), StringComparison.Ordinal);
        Assert.Equal("wet_bulb_c", yard.Refused(new GaugeRead("C-61", DryBulbC: 60.0, WetBulbC: 66.0)).What);
    }

    [Fact]
    public void Thirty_one_entries_of_a_phone_without_signal_merge_without_loss_or_doubling()
    {
        var played = DemonstrationBook.Entries(new(2026, 11, 5)).Where(entry => entry.By == "Tam" && entry.HappenedAt.Date == new DateTime(2026, 11, 5) && entry.Id.ToString().StartsWith("01931000", StringComparison.Ordinal)).ToList();
        Assert.Equal(31, played.Count);
        var book = DemonstrationBook.Open(new(2026, 11, 5));
        var count = book.State.Entries.Count;

        // The phone sends all of them again.
        var again = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write([.. played.Select(entry => new NewEntry(entry.By, entry.Fact, entry.HappenedAt, Id: entry.Id))])).Value;

        Assert.Equal(count, book.State.Entries.Count);
        Assert.Equal(played.Select(entry => entry.Number), again.Select(entry => entry.Number));
    }

    [Fact]
    public void Eight_point_six_is_asked_about_and_what_was_typed_is_kept()
    {
        var book = DemonstrationBook.Open();
        var tally = new TallyOf("P-121", "S-12", "Tam");

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Board(book, tally, new("7", "0", "in", "8.6", "ft"))).Reasons[0];
        Assert.Contains("8ft6in or 8.60", refused.Accepted, StringComparison.Ordinal);

        PackWrite.Board(book, tally, new("7", "0", "in", "8ft6in", "ft"));
        PackWrite.Board(book, tally, new("7", "0", "in", "8.60", "ft"));
        Assert.Equal([8.5, 8.6], book.State.Packs["P-121"].Tallies[0].Boards.Select(board => Math.Round(board.LengthFt, 6)));
        Assert.Equal("7 in x 8.60 ft", book.State.Entries[^1].Typed("board_2"));
    }

    [Fact]
    public void Entries_written_late_keep_their_own_time_beside_the_books()
    {
        var entry = yard.Done(SmallYard.Noon.AddDays(-3.0), SmallYard.Log("L-001"))[0];

        Assert.Equal((SmallYard.Noon.AddDays(-3.0), SmallYard.Noon), (entry.HappenedAt, entry.WrittenAtUtc));
    }

    [Fact]
    public void Two_tallies_print_nothing_until_one_is_chosen_and_then_one_with_its_history()
    {
        var before = Assert.IsType<Outcome<PackSheet>.Done>(PackSheet.Of(DemonstrationBook.Yard, "P-118")).Value;
        var after = Assert.IsType<Outcome<PackSheet>.Done>(PackSheet.Of(DemonstrationBook.On(new(2026, 11, 3)), "P-118")).Value;

        Assert.Null(before.Agreed);
        Assert.Equal((218.0, "third look at the boards that differ"), (after.Agreed!.Measured.BoardFeet.Count, after.Pack.ChosenWhy));
        Assert.Equal(2, after.Counts.Count);
    }

    [Fact]
    public void Pack_says_what_it_was_when_it_left_and_not_what_its_stack_became()
    {
        var book = DemonstrationBook.Open();
        PackWrite.Board(book, new("P-121", "S-07", "Tam"), new("7", "0.25", "in", "8", "ft"));
        PackWrite.Close(book, "P-121", "Tam");
        book.Write("Pell", new ChargeLoaded("D-41", "K2", ["S-07"], 7.0));

        var sheet = Assert.IsType<Outcome<PackSheet>.Done>(PackSheet.Of(book.State, "P-121")).Value;

        Assert.Null(sheet.Drying.Charge);
        Assert.False(sheet.Drying.IsHeatTreated);
    }
}
