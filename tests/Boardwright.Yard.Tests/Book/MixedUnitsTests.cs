using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Tables;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Book;

/// <summary>Imperial and metric mixed: what may be either is asked about, each meaning is one press, and what was typed is kept beside what was meant.</summary>
public class MixedUnitsTests
{
    private static readonly Length Longest = Length.FromFeet(18.0); // the demonstration's mill

    // Boards are cut in whole feet from 4 to 16 (National Hardwood Lumber Association rules, nhla-rules): a bare figure under 4, or with a point, that is a length in metres is asked about.
    [Theory]
    [InlineData("2.6", "2.6 = 2.6m;2.6 = 2ft6in;2.6 = 2.6ft", "2.6 m (8 ft 6 in);2 ft 6 in;2.6 ft")]
    [InlineData("2.44", "2.44 = 2.44m;2.44 = 2.44ft", "2.44 m (8 ft);2.44 ft")]
    [InlineData("3", "3 = 3m;3 = 3ft", "3 m (9 ft 10 in);3 ft")]
    [InlineData("4.5", "4.5 = 4.5m;4.5 = 4.5ft", "4.5 m (14 ft 9 in);4.5 ft")]
    [InlineData("8.6", "8.6 = 8ft6in;8.6 = 8.6ft", "8 ft 6 in;8.6 ft")]
    [InlineData("260", "260 = 260cm;260 = 260ft", "260 cm (8 ft 6 in);260 ft")]
    public void A_length_that_is_hardly_feet_is_asked_about(string typed, string ways, string words)
    {
        var refused = Assert.Single(Assert.IsType<Outcome<SizeTyped>.Refused>(SizeTyped.Along("Length", typed, "ft", Longest)).Reasons);

        Assert.Equal(ways, string.Join(';', refused.Meant.Select(meaning => meaning.Typed)));
        Assert.Equal(words, string.Join(';', refused.Meant.Select(meaning => meaning.Words)));
        Assert.All(refused.Meant, meaning => Assert.IsType<Outcome<SizeTyped>.Done>(SizeTyped.Along("Length", meaning.Typed, "ft", Longest)));
    }

    [Theory]
    [InlineData("8", 8.0)]
    [InlineData("4", 4.0)]
    [InlineData("5", 5.0)]
    [InlineData("16", 16.0)]
    [InlineData("8.5", 8.5)]
    [InlineData("8.60", 8.6)]
    [InlineData("12ft6in", 12.5)]
    [InlineData("2.6 ft", 2.6)]
    [InlineData("1", 1.0)]
    public void A_length_of_boards_in_feet_is_not_asked_about(string typed, double feet) =>
        Assert.Equal(feet, Assert.IsType<Outcome<SizeTyped>.Done>(SizeTyped.Along("Length", typed, "ft", Longest)).Value.Length.Feet, 1e-9);

    [Fact]
    public void Eight_where_metres_stand_is_asked_about_as_feet()
    {
        var refused = Assert.IsType<Outcome<SizeTyped>.Refused>(SizeTyped.Along("Length", "8", "m", Longest)).Reasons[0];

        Assert.Equal(["8 = 8ft", "8 = 8m"], refused.Meant.Select(meaning => meaning.Typed));
    }

    [Theory]
    [InlineData("51", "in", "51 = 51cm", "51 cm (20.08 in)")]
    [InlineData("510", "in", "510 = 510mm", "510 mm (20.08 in)")]
    [InlineData("410", "cm", "410 = 410mm", "410 mm (16.14 in)")]
    public void A_size_past_the_throat_is_offered_in_the_unit_it_could_be_in(string typed, string unit, string way, string words)
    {
        var refused = Assert.IsType<Outcome<SizeTyped>.Refused>(SizeTyped.Across("Width", typed, unit, Length.FromInches(36.0), "the throat of the mill")).Reasons[0];

        Assert.Equal(new Meaning(words, way), Assert.Single(refused.Meant));
        Assert.Contains(words, refused.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plain_length_reads_back_without_a_question()
    {
        for (var sixteenths = 16 * 12; sixteenths <= 16 * 12 * 18; sixteenths += 7)
        {
            var length = Length.FromInches(sixteenths / 16.0);
            Assert.Equal(length.Inches, Assert.IsType<Outcome<SizeTyped>.Done>(SizeTyped.Along("Length", SizeTyped.Plain(length), "ft", Longest)).Value.Length.Inches, 0.006);
        }
    }

    // 4/4 is 25.4 mm by name and sawn 1-1/8 in = 28.6 mm green in the demonstration; 27 mm is the metric size nearest to it dry (EN 1313-2, from memory).
    [Theory]
    [InlineData("27 mm", "27 mm = 4/4;27 mm = 5/4")]
    [InlineData("27", "27 = 4/4;27 = 5/4")]
    [InlineData("28.6mm", "28.6mm = 4/4;28.6mm = 5/4")]
    [InlineData("1-1/8in", "1-1/8in = 4/4;1-1/8in = 5/4")]
    [InlineData("50 mm", "50 mm = 8/4;50 mm = 10/4")]
    [InlineData("2", "2 = 8/4;2 = 10/4")]
    [InlineData("5", "5 = 5/4")]
    public void A_sawn_size_is_offered_as_the_quarters_that_lie_near(string typed, string ways)
    {
        var refused = Assert.IsType<Outcome<NominalThickness>.Refused>(QuartersTyped.Of(DemonstrationBook.Yard, "Thickness", typed)).Reasons[0];

        Assert.Equal(ways, string.Join(';', refused.Meant.Select(meaning => meaning.Typed)));
        Assert.All(refused.Meant, meaning => Assert.IsType<Outcome<NominalThickness>.Done>(QuartersTyped.Of(DemonstrationBook.Yard, "Thickness", meaning.Typed)));
    }

    [Fact]
    public void The_sizes_near_27_mm_are_told_with_what_the_mill_saws() => Assert.Equal(
        ["4/4 (25.4 mm, sawn 28.6 green)", "5/4 (31.8 mm, sawn 34.9 green)"],
        Assert.IsType<Outcome<NominalThickness>.Refused>(QuartersTyped.Of(DemonstrationBook.Yard, "Thickness", "27 mm")).Reasons[0].Meant.Select(meaning => meaning.Words));

    [Fact]
    public void An_order_in_millimetres_keeps_the_least_it_takes_beside_the_quarters_sawn_for_it()
    {
        var book = DemonstrationBook.Open();
        var asked = new OrderTyped("O-400", "A new shop", "sugar maple 27 mm", "1.5", "M3", "2026-12-18", "", "sugar maple", "27 mm", "7", "9", "3", null, null, false, false, false, false, "Oda", false, ShortestPiece: "2.4");

        var reasons = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(OrderTake.Write(book, asked, PostedKey.None)).Reasons;
        Assert.Equal(["Thickness", "Shortest piece"], reasons.Select(reason => reason.What));

        var entry = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(OrderTake.Write(book, asked with { Thickness = reasons[0].Meant[0].Typed, ShortestPiece = reasons[1].Meant[0].Typed }, PostedKey.None)).Value[0];
        var line = book.State.Orders["O-400"].Lines[0].Asked;
        Assert.Equal((4, 27.0, 2.4), (line.ThicknessQuarters, Math.Round(line.ThicknessMinMm!.Value, 9), Math.Round(line.PieceLengthMinM!.Value, 9)));
        Assert.Equal(("27 mm = 4/4", "2.4 = 2.4m"), (entry.Typed("thickness_quarters"), entry.Typed("piece_length_min_m")));
    }

    // The same sizes as scenario answer 12: 28.6 mm green is 27.6 mm flatsawn and 26.5 mm quartersawn at 8 %; 27.0 is asked.
    [Fact]
    public void An_order_in_millimetres_says_what_it_means_for_inch_stock()
    {
        var words = DryThickness.Words(DemonstrationBook.Yard, DemonstrationBook.Yard.Orders["O-310"].Lines[0].Asked);

        Assert.Equal("At least 27.0 mm is asked, rough and dry. 4/4 is the name of what is sawn for it (25.4 mm, set at 28.6 mm green). 28.6 mm of green sugar maple is 27.6 mm flatsawn at 8 %, 26.5 mm quartersawn (too thin).", words);
        Assert.Null(DryThickness.Words(DemonstrationBook.Yard, DemonstrationBook.Yard.Orders["O-301"].Lines[0].Asked));
    }

    [Fact]
    public void A_stack_in_millimetres_is_asked_about_and_keeps_its_sawn_size()
    {
        var book = DemonstrationBook.Open();
        var typed = new StackTyped("S-90", "black cherry", "28 mm", "Boards", "Flat", "shed A", null, [], "300", null, "Bram");

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(StackBuild.Write(book, typed, PostedKey.None)).Reasons[0];
        var entry = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(StackBuild.Write(book, typed with { Thickness = refused.Meant[0].Typed }, PostedKey.None)).Value[0];

        Assert.Equal((4, 28.0), (book.State.Stacks["S-90"].Thickness.Quarters, Math.Round(book.State.Stacks["S-90"].SawnThickness!.Value.Millimetres, 9)));
        Assert.Equal("28 mm = 4/4", entry.Typed("thickness_quarters"));
    }

    [Fact]
    public void A_board_of_2_6_is_asked_about_at_the_tally_and_what_was_meant_is_kept_with_it()
    {
        var book = DemonstrationBook.Open();
        var tally = new TallyOf("P-121", "S-12", "Tam");

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Board(book, tally, new("7", "0.25", "in", "2.6", "ft"))).Reasons[0];
        Assert.Equal(["2.6 m (8 ft 6 in)", "2 ft 6 in", "2.6 ft"], refused.Meant.Select(meaning => meaning.Words));

        PackWrite.Board(book, tally, new("7", "0.25", "in", refused.Meant[0].Typed, "ft"));
        var board = book.State.Packs["P-121"].Tallies[0].Boards[0];
        Assert.Equal((7.25, 2.6), (board.WidthIn, Math.Round(board.LengthFt * 0.3048, 6)));
        Assert.Equal("7 + 0.25 in x 2.6 = 2.6m", book.State.Entries[^1].Typed("board_1"));
    }

    [Fact]
    public void The_same_question_is_asked_of_a_table_and_of_a_correction()
    {
        const string header = "tag,date_in,source,species,se_dib_a_in,se_dib_b_in,le_dib_in,scale_len_ft,actual_len,metal_scan,end_coated,owner\n";
        var read = YardImport.Read([("logs.csv", header + "L-301,2026-10-30,T-1,sugar maple,15,15,18,2.6,2.7 m,clear,yes,mill\n")], "Bram");
        Assert.Equal("2.6 = 2.6m", Assert.Single(read.Refusals).Meant[0].Typed);

        var meant = YardImport.Read([("logs.csv", header + "L-301,2026-10-30,T-1,sugar maple,15,15,18,2.6 = 2.6m,2.7 m,clear,yes,mill\n")], "Bram");
        Assert.Equal(2.6, ((LogReceived)Assert.Single(meant.Entries).Entry.Fact).ScaleLengthM, 1e-9);

        var book = DemonstrationBook.Open();
        var log = book.State.Entry(book.State.Logs["L-001"].History[0]);
        var refused = Assert.Single(Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(EntryCorrect.Write(book, log.Number, "Bram", "measured again", new Dictionary<string, string> { ["scale_length_m"] = "2.4" })).Reasons);
        Assert.Contains(refused.Meant, meaning => meaning.Typed == "2.4 = 2.4m");
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(EntryCorrect.Write(book, log.Number, "Bram", "measured again", new Dictionary<string, string> { ["scale_length_m"] = "2.4 = 2.4m" }));
        Assert.Equal(2.4, book.State.Logs["L-001"].ScaleLength.Metres, 1e-9);
    }

    [Fact]
    public void A_log_is_taken_in_the_units_of_its_switches_and_they_are_kept_with_each_figure()
    {
        var book = DemonstrationBook.Open();

        var entry = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(LogReceive.Write(book, new LogEntry
        {
            Tag = "L-302",
            Species = "sugar maple",
            SmallEndA = "40",
            LargeEnd = "46",
            ScaleLength = "2.4",
            ActualLength = "2.55",
            DiameterUnit = "cm",
            LengthUnit = "m",
            Source = "T-23",
            Scan = "Clear",
            By = "Bram",
        })).Value[0];

        Assert.Equal((400.0, 2.4), (Math.Round(book.State.Logs["L-302"].SmallEndA.Millimetres, 6), Math.Round(book.State.Logs["L-302"].ScaleLength.Metres, 6)));
        Assert.Equal(("40 cm", "2.4 m"), (entry.Typed("small_end_a_mm"), entry.Typed("scale_length_m")));
    }
}
