using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.Book.Tables;
using Boardwright.Yard.Book.Tables.Writing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.LogCommands;

/// <summary>What is seen on a log beyond its ends shapes its plan, its scale and its worth (yard invented).</summary>
public sealed class SeenTests
{
    private static readonly LogEntry Plain = new()
    {
        Tag = "L-900",
        Species = "northern red oak",
        SmallEndA = "18",
        SmallEndB = "18",
        LargeEnd = "20",
        ScaleLength = "8",
        ActualLength = "8ft5in",
        Source = "Y-90",
        Scan = "Clear",
        PlannedFor = "4/4",
        By = "Bram",
    };

    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void One_form_writes_the_log_and_what_was_seen_on_it_at_once()
    {
        var entries = Receive(Plain with { Mid = "19.5", Sweep = "2", SweepHour = "3", HeartRot = "4", PithOff = "1.5", PithHour = "9", SplitSmall = "3", SplitLarge = "10", Bark = "0.8", Grade = "F2", MetalMarks = true });

        Assert.Equal(2, entries.Count);
        var seen = book.State.Logs["L-900"].Seen;
        Assert.Equal((19.5, 2.0, 3.0), (seen.MidDibMm!.Value / 25.4, seen.SweepMm!.Value / 25.4, seen.SweepTowardsHour!.Value));
        Assert.Equal((LogGrade.F2, true), (seen.Grade, seen.MetalMarks));
        Assert.Equal("10 in", entries[1].Typed("split_large_end_m"));
        var under = Assert.IsType<Outcome<LogSheet>.Done>(LogSheet.Of(book.State, "L-900")).Value.Under;
        Assert.Contains("Sweep 2 in towards 3 o’clock. Heart rot or shake 4 in. Heart 1.5 in off the middle towards 9 o’clock. Split 3 in at the small end. Split 10 in at the large end. Log grade F2. Marks of metal.", under, StringComparison.Ordinal);
        Assert.Single(Receive(Plain with { Tag = "L-901" }));
    }

    [Fact]
    public void Every_fault_makes_it_worth_no_more_on_paper()
    {
        var plain = Value("L-910", Plain);

        Assert.All(
            new[] { Plain with { Sweep = "3" }, Plain with { HeartRot = "6" }, Plain with { SplitLarge = "24" }, Plain with { SplitSmall = "14", SplitLarge = "14" } }.Select((typed, i) => Value($"L-92{i}", typed)),
            value => Assert.True(value < plain));
    }

    // Bowed towards 3 o'clock the oval log is not its own mirror: the bow lies across the long way of the oval or along it.
    [Fact]
    public void The_way_the_sweep_points_counts_where_the_log_is_oval()
    {
        var oval = Plain with { SmallEndA = "20", SmallEndB = "15", Sweep = "3" };
        var (up, side) = (Value("L-930", oval), Value("L-931", oval with { SweepHour = "3" }));

        Assert.NotEqual(up, side);
        Assert.Equal(up, Value("L-932", oval with { SweepHour = "12" }), 1e-6);
        Assert.Equal(up, Value("L-933", oval with { SweepHour = "6" }), 0.01 * up);
    }

    [Fact]
    public void Boards_keep_clear_of_split_ends_and_scale_loses_what_the_trim_does_not_hold()
    {
        Receive(Plain with { SplitSmall = "12", SplitLarge = "5" });
        var log = book.State.Logs["L-900"];

        var shape = Assert.IsType<Outcome<LogShape>.Done>(LogShapes.Of(log)).Value;

        Assert.Equal(101.0 - 17.0, shape.Length.Inches, 1e-6);
        Assert.Equal(18.0 + (2.0 * 12.0 / 101.0), shape.Sections[0].DiameterX.Inches, 1e-6);
        var rule = YardLog.Rules(book.State, log).Rules.Single(row => row.Rule == LogRule.Doyle).Scaled!;
        Assert.Equal(98.0 * 12.0 / 96.0, rule.Deductions.Single().BoardFeet, 1e-6);      // (18 - 4)² x 8/16 = 98; 17 in of split less 5 in of trim
    }

    // Newton by hand: (254.47 + 4 x 298.65 + 314.16)/6 square inches x 101 in = 29,680.9 in³; Smalian 28,715.7.
    [Fact]
    public void A_middle_diameter_gives_the_volume_by_Newton()
    {
        Receive(Plain with { Mid = "19.5" });

        Assert.Equal(29680.9, YardLog.Volume(book.State.Logs["L-900"])!.Value.CubicMetres / 1.6387064e-5, 1.0);
        Assert.Equal("Newton's formula, with the middle", YardLog.SolidBy(book.State.Logs["L-900"]));
    }

    [Fact]
    public void A_heart_off_the_middle_is_the_centre_of_the_rings_and_of_the_rot()
    {
        Receive(Plain with { PithOff = "2", PithHour = "3" });

        var section = Assert.IsType<Outcome<LogShape>.Done>(LogShapes.Of(book.State.Logs["L-900"])).Value.Sections[0];

        Assert.Equal(7.0 * 25.4, section.RadiusMm(Math.PI / 2.0), 1e-6);
        Assert.Equal(11.0 * 25.4, section.RadiusMm(-Math.PI / 2.0), 1e-6);
        Assert.Equal(Math.Sqrt(81.0 - 4.0) * 25.4, section.RadiusMm(0.0), 1e-6);
    }

    [Fact]
    public void Marks_of_metal_count_as_a_fence_line_until_it_is_scanned_clear()
    {
        Receive(Plain with { Scan = "NotScanned" });
        Receive(Plain with { Tag = "L-901", Scan = "NotScanned", MetalMarks = true });
        Receive(Plain with { Tag = "L-902", MetalMarks = true });
        double Strikes(string tag) => Assert.IsType<Outcome<LogWorth>.Done>(YardLog.Worth(book.State, book.State.Logs[tag])).Value.StrikesExpected;

        Assert.Equal((book.State.Setting("strikes_not_scanned"), book.State.Setting("strikes_fence_line"), book.State.Setting("strikes_clear")), (Strikes("L-900"), Strikes("L-901"), Strikes("L-902")));
    }

    [Fact]
    public void A_house_that_knows_its_log_grades_prices_by_them()
    {
        Receive(Plain);
        Receive(Plain with { Tag = "L-901", Grade = "F3" });
        Assert.Equal(Plan("L-900"), Plan("L-901"), 1e-9);

        foreach (var (grade, share) in new[] { ("fas", 5.0), ("1c", 20.0), ("2a", 35.0), ("below", 40.0) })
            Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Bram", new SettingSet($"log_grade_share_{grade}_f3", share, "%")));

        Assert.True(Plan("L-901") < Plan("L-900"));
    }

    [Fact]
    public void Wane_the_house_allows_widens_boards_and_a_net_scale_is_said_where_something_is_taken_off()
    {
        Receive(Plain);
        Receive(Plain with { Tag = "L-901", Sweep = "5" });
        var before = Plan("L-900");
        Assert.DoesNotContain("Net of", ScaleOf("L-900"), StringComparison.Ordinal);
        Assert.Contains("Net of sweep, rot and splits", ScaleOf("L-901"), StringComparison.Ordinal);

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Bram", new SettingSet("wane_full_size", 30.0, "%")));

        Assert.True(Plan("L-900") >= before);
        Assert.Contains(Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(book.State, book.State.Logs["L-900"])).Value.Prices, row => row.Wane == Share.FromPercent(30.0));
    }

    private string ScaleOf(string tag) => Assert.IsType<Outcome<LogSheet>.Done>(LogSheet.Of(book.State, tag)).Value.Figures.Single(figure => figure.Label == "Log scale").Basis;

    [Fact]
    public void A_later_look_adds_to_the_first_and_leaves_what_it_does_not_name()
    {
        Receive(Plain with { Sweep = "2" });
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(EntryWrite.Write(book, "log_seen", new Dictionary<string, string>(StringComparer.Ordinal) { ["log"] = "L-900", ["pith_off_mm"] = "1in", ["grade"] = "" }, "Bram", PostedKey.None));

        Assert.Null(book.State.Logs["L-900"].Seen.Grade);
        Assert.Equal((50.8, 25.4), (book.State.Logs["L-900"].Seen.SweepMm, book.State.Logs["L-900"].Seen.PithOffMm));
    }

    [Theory]
    [InlineData("Mid", "25", "between the small end, 18 in, and the large, 20 in")]
    [InlineData("Sweep", "19", "at most the small end")]
    [InlineData("SweepHour", "14", "an hour of the clock, 0 to 12")]
    [InlineData("HeartRot", "18", "less than the small end")]
    [InlineData("PithOff", "8", "at most a third of the small end off its middle")]
    [InlineData("SplitLarge", "96", "a foot left of the 8.42 ft between them")]
    [InlineData("Bark", "9", "0 to 100 mm")]
    public void What_cannot_be_is_refused_by_its_field_and_nothing_is_written(string field, string text, string accepted)
    {
        var typed = Plain with
        {
            Mid = Of(field, "Mid", text),
            Sweep = Of(field, "Sweep", text),
            SweepHour = Of(field, "SweepHour", text),
            HeartRot = Of(field, "HeartRot", text),
            PithOff = Of(field, "PithOff", text),
            SplitLarge = Of(field, "SplitLarge", text),
            Bark = Of(field, "Bark", text),
        };
        var entries = book.State.Entries.Count;

        var refusal = Assert.Single(Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(LogReceive.Write(book, typed)).Reasons);

        Assert.Equal((field, text, accepted), (refusal.What, refusal.Given, refusal.Accepted));
        Assert.Equal(entries, book.State.Entries.Count);
    }

    [Fact]
    public void It_goes_out_in_a_table_and_comes_back_the_same()
    {
        Receive(Plain with { Mid = "19.5", Sweep = "2.3", SweepHour = "4.5", SplitLarge = "7", Grade = "Below", MetalMarks = true });

        var table = YardExport.Of(book.State).Tables.Single(one => one.Table == "log_seen");
        var read = YardTables.For("log_seen.csv")!.Read("log_seen.csv", table.Text, "Bram");

        Assert.Empty(read.Refusals);
        Assert.Equal(BookJson.Line(book.State.Entries[^1].Fact), BookJson.Line(Assert.Single(read.Entries).Entry.Fact));
    }

    private static string? Of(string field, string name, string text) => field == name ? text : null;

    private IReadOnlyList<Entry> Receive(LogEntry typed) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(LogReceive.Write(book, typed)).Value;

    private double Value(string tag, LogEntry typed)
    {
        Receive(typed with { Tag = tag });
        return Plan(tag);
    }

    private double Plan(string tag) => Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(book.State, book.State.Logs[tag], null, null, OrdersWanted.None)).Value.Plan.ValueMoney;
}
