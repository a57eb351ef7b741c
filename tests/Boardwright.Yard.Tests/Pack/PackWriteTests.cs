using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests;

public sealed class PackWriteTests
{
    private static readonly TallyOf New = new("P-121", "S-12", "Tam");
    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void Boards_written_one_by_one_make_one_tally()
    {
        Press("7", "0.25", "8");
        Press("5", "0.5", "10");

        var pack = book.State.Packs["P-121"];
        Assert.Equal([(7.25, 8.0), (5.5, 10.0)], Assert.Single(pack.Tallies).Boards.Select(board => (board.WidthIn, board.LengthFt)));
        Assert.Equal(10.0, pack.Tallies[0].Footage.Count);
        Assert.True(pack.IsBeingTallied);
        Assert.False(pack.MayBeLabelled);
    }

    [Fact]
    public void Taking_back_removes_nothing_from_the_book()
    {
        Press("7", "0.25", "8");
        Press("5", "0.5", "10");
        var entries = book.State.Entries.Count;

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.TakeBack(book, "P-121", "Tam"));
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.TakeBack(book, "P-121", "Tam"));

        Assert.Equal(entries + 2, book.State.Entries.Count);
        Assert.Empty(book.State.Packs["P-121"].Tallies[0].Boards);
        Assert.Equal("board 1 taken back", book.State.Entries[^1].Reason);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.TakeBack(book, "P-121", "Tam"));
    }

    [Fact]
    public void A_press_sent_twice_writes_one_board()
    {
        var key = new PostedKey(Guid.CreateVersion7().ToString(), null);
        PackWrite.Board(book, New, new("7", "0", "in", "8", "ft"), key);
        PackWrite.Board(book, New, new("7", "0", "in", "8", "ft"), key);

        Assert.Single(book.State.Packs["P-121"].Tallies[0].Boards);
    }

    [Fact]
    public void Boards_pressed_without_signal_are_written_once_in_order_and_the_tally_has_its_own_time()
    {
        var keys = Enumerable.Range(0, 5).Select(_ => Guid.CreateVersion7().ToString()).ToList();
        Action[] sent =
        [
            () => PackWrite.Board(book, New, new("7", "0.25", "in", "8", "ft"), new(keys[0], "5400")),
            () => PackWrite.Board(book, New, new("5", "0.5", "in", "10", "ft"), new(keys[1], "5390")),
            () => PackWrite.TakeBack(book, "P-121", "Tam", new(keys[2], "5380")),
            () => PackWrite.Board(book, New, new("6", "0", "in", "12", "ft"), new(keys[3], "5370")),
            () => PackWrite.Close(book, "P-121", "Tam", new(keys[4], "5360")),
        ];

        // Each twice: the first answer may be lost on the way.
        foreach (var press in sent)
        {
            press();
            press();
        }

        var tally = Assert.Single(book.State.Packs["P-121"].Tallies);
        Assert.Equal([(7.25, 8.0), (6.0, 12.0)], tally.Boards.Select(board => (board.WidthIn, board.LengthFt)));
        Assert.False(tally.Open);
        Assert.Equal(book.Now.AddSeconds(-5400.0), tally.At);
        Assert.Equal(keys, book.State.Entries.TakeLast(5).Select(entry => entry.Id.ToString()));
    }

    [Fact]
    public void Closed_tally_holds_and_may_be_labelled()
    {
        Press("7", "0.25", "8");

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.Close(book, "P-121", "Tam"));

        Assert.True(book.State.Packs["P-121"].MayBeLabelled);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Close(book, "P-121", "Tam"));
    }

    [Theory]
    [InlineData("51", "in", "8", "ft", "Width", "20.08 in")]
    [InlineData("1", "in", "8", "ft", "Width", "2 to 36 in")]
    [InlineData("7", "in", "26", "ft", "Length", "18 ft")]
    [InlineData("7", "in", "8", "m", "Length", "8 ft")]
    [InlineData("seven", "in", "8", "ft", "Width", "number")]
    [InlineData(null, "in", "8", "ft", "Width", "number")]
    public void Bad_board_is_refused_with_what_is_accepted(string? width, string widthUnit, string length, string lengthUnit, string what, string accepted)
    {
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Board(book, New, new(width, "0", widthUnit, length, lengthUnit)));

        Assert.Equal(what, refused.Reasons[0].What);
        Assert.Contains(accepted, refused.Reasons[0].Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Boards_in_centimetres_and_metres_keep_what_was_pressed()
    {
        PackWrite.Board(book, New, new("20", null, "cm", "2.5", "m"));

        var entry = book.State.Entries[^1];
        Assert.Equal("20 cm x 2.5 m", entry.Typed("board_1"));
        Assert.Equal(20.0 / 2.54, book.State.Packs["P-121"].Tallies[0].Boards[0].WidthIn, 1e-9);
    }

    [Fact]
    public void More_boards_than_the_stack_holds_are_asked_about()
    {
        var slab = new TallyOf("P-122", "S-20", "Tam"); // 85 bf of 12/4
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.Board(book, slab, new("34", "0", "in", "10", "ft")));

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Board(book, slab, new("34", "0", "in", "10", "ft")));

        Assert.Contains("S-20", refused.Reasons[0].Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Second_tally_by_another_person_stands_beside_the_first()
    {
        Press("7", "0.25", "8");
        PackWrite.Close(book, "P-121", "Tam");
        PackWrite.Board(book, New with { By = "Pell" }, new("7", "0", "in", "8", "ft"));
        Assert.NotNull(book.State.Packs["P-121"].Agreed);

        PackWrite.Close(book, "P-121", "Pell");

        Assert.True(book.State.Packs["P-121"].IsDisputed);
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Label(book, "P-121", "Tam"));
        Assert.Contains("choose one first", refused.Reasons[0].Accepted, StringComparison.Ordinal);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Choose(book, "P-121", book.State.Packs["P-121"].Tallies[0].Entry, "Oda", " "));
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.Choose(book, "P-121", book.State.Packs["P-121"].Tallies[0].Entry, "Oda", "7 1/4 it is"));
        Assert.True(book.State.Packs["P-121"].MayBeLabelled);
    }

    [Fact]
    public void Packs_leave_together_on_an_order_line()
    {
        var shipped = PackWrite.Ship(book, ["P-119", "P-120"], "O-300", 1, "Tam", "collected");

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(shipped);
        Assert.Equal(402.0, book.State.Orders["O-300"].Lines[0].Shipped);
        Assert.Equal("SH-082", book.State.Packs["P-119"].Shipment);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Ship(book, ["P-118"], "O-300", 1, "Tam", null));
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Ship(book, [], "O-300", 1, "Tam", null));
    }

    [Fact]
    public void Sheet_of_a_disputed_pack_names_the_boards_to_look_at()
    {
        var sheet = Assert.IsType<Outcome<PackSheet>.Done>(PackSheet.Of(book.State, "P-118")).Value;

        Assert.Equal("Look a third time at the boards 9, 14, 30.", sheet.NextDo);
        Assert.Null(sheet.Agreed);
        Assert.Null(sheet.Drying.IsHeatTreated);
    }

    [Fact]
    public void Pack_wetter_than_its_order_goes_back_on_stickers_or_leaves_on_a_named_decision_only()
    {
        PackWrite.Board(book, new("P-121", "S-07", "Tam", "O-301", 1), new("7", "0.25", "in", "8", "ft"));
        PackWrite.Close(book, "P-121", "Tam");
        var sheet = Assert.IsType<Outcome<PackSheet>.Done>(PackSheet.Of(book.State, "P-121")).Value;
        Assert.Equal(("Put it back on stickers and dry it.", OrderedMoisture.Wetter), (sheet.NextDo, sheet.Ordered.Is));
        Assert.Contains("15.0 % measured, 6 to 8 % ordered", sheet.NextWhy, StringComparison.Ordinal);

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Ship(book, ["P-121"], "O-301", 1, "Tam", null)).Reasons[0];
        Assert.Equal(("Wetter than ordered", "P-121 at 15.0 %"), (refused.What, refused.Given));
        Assert.Equal("Wetter than ordered", Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(
            LoadWrite.Left(book, "O-301", 1, new(["P-121"], new Dictionary<string, string>(), null, null, "Tam"), PostedKey.None)).Reasons[0].What);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.Restack(book, "P-121", "S-26", "shed B", null, "Tam"));
        Assert.Equal(("See stack S-26.", 5.0), (Assert.IsType<Outcome<PackSheet>.Done>(PackSheet.Of(book.State, "P-121")).Value.NextDo, book.State.Stacks["S-26"].Footage.Count));

        PackWrite.Board(book, new("P-122", "S-07", "Tam", "O-301", 1), new("7", "0.25", "in", "8", "ft"));
        PackWrite.Close(book, "P-122", "Tam");
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.Ship(book, ["P-122"], "O-301", 1, "Tam", null, "Oda: the shop dries it themselves"));
        Assert.Equal("Oda: the shop dries it themselves", book.State.Shipments["SH-082"].Fact.Despite);
        Assert.Contains("Oda: the shop dries it themselves (written by Tam)", Assert.IsType<Outcome<PackSheet>.Done>(PackSheet.Of(book.State, "P-122")).Value.NextWhy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(7.0, 6.0, 8.0, OrderedMoisture.AsOrdered, "6 to 8 %")]
    [InlineData(8.04, 6.0, 8.0, OrderedMoisture.AsOrdered, "6 to 8 %")]
    [InlineData(8.2, 6.0, 8.0, OrderedMoisture.Wetter, "6 to 8 %")]
    [InlineData(5.5, 6.0, 8.0, OrderedMoisture.Drier, "6 to 8 %")]
    [InlineData(null, 6.0, 8.0, OrderedMoisture.NotMeasured, "6 to 8 %")]
    [InlineData(15.0, null, null, OrderedMoisture.NotAsked, "")]
    [InlineData(15.0, null, 12.0, OrderedMoisture.Wetter, "12 % or less")]
    public void Measured_moisture_is_laid_beside_what_was_ordered(double? mean, double? low, double? high, OrderedMoisture expected, string asked)
    {
        var ordered = new AsOrdered(mean is { } percent ? MoistureContent.FromPercent(percent) : null, low, high);

        Assert.Equal((expected, asked), (ordered.Is, ordered.Asked));
    }

    private void Press(string width, string part, string length) =>
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.Board(book, New, new(width, part, "in", length, "ft")));
}
