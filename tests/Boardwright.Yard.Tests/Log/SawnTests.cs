using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.LogCommands;

public sealed class SawnTests
{
    private static readonly LogChoice AsItLies = new(null, null);

    [Fact]
    public void Log_sawn_as_planned_gives_what_was_planned_and_keeps_the_plan()
    {
        var book = DemonstrationBook.Open();
        var plan = Cut(book, "L-001");

        Done(LogSawnWrite.Write(book, "L-001", Typed(AsPlanned(plan), asPlanned: true, [new("S-90", "4/4", null, null)]), AsItLies, PostedKey.None));

        var (state, log) = (book.State, book.State.Logs["L-001"]);
        var sheet = LogSawnSheet.Of(state, log)!;
        Assert.Equal(plan.Footage.Count, log.SawnBf, 0.01);
        Assert.Equal(plan.Boards.Count, log.SawnBoards.Sum(board => board.Pieces));
        Assert.Equal(plan.ValueMoney, log.SawnPlan!.SawnMoney, 0.5);
        Assert.Equal(["100", "100"], sheet.Figures.Take(2).Select(figure => figure.Value));
        Assert.Equal(("Bram", "live"), (log.SawnBy, log.SawnPlan.Pattern));
        Assert.Equal(log.SawnBf, state.Stacks["S-90"].Footage.Count, 1e-9);
    }

    [Fact]
    public void Quick_tally_goes_to_a_stack_that_is_there_and_shows_what_is_missing()
    {
        var book = DemonstrationBook.Open();
        var (stack, plan) = (book.State.Stacks["S-03"], Cut(book, "L-001"));

        Done(LogSawnWrite.Write(book, "L-001", Typed([], false, [new("S-90", "4/4", "60", "11")]) with { Minutes = "24", Sawyer = "Tam" }, AsItLies, PostedKey.None));

        var log = book.State.Logs["L-001"];
        var row = Assert.Single(LogSawnSheet.Of(book.State, log)!.Rows);
        Assert.Equal((4, plan.Boards.Count, 11, 60.0), (row.ThicknessQuarters, row.PlannedPieces, row.SawnPieces, row.SawnBf));
        Assert.Equal(60.0 * plan.ValueMoney / plan.Footage.Count, log.SawnPlan!.SawnMoney, 0.5);
        Assert.Equal((0.4, "Tam"), (log.MillHours, log.SawnBy));
        Assert.Equal("sugar maple", stack.Species.CommonName);
    }

    [Theory]
    [InlineData("S-90", "4/4", "900", "11", "Bram", "Footage")]
    [InlineData("S-07", null, "60", "11", "Bram", "Stack")]
    [InlineData("S-90", "4/4", "", "11", "Bram", "Footage of S-90")]
    [InlineData("S-90", "thick", "60", "11", "Bram", "Thickness of S-90")]
    [InlineData("S-90", "4/4", "60", "11", "Nobody", "Who")]
    [InlineData("", "4/4", "60", "11", "Bram", "Stack")]
    public void What_cannot_be_is_refused_at_its_field_and_nothing_is_written(string stack, string? thickness, string bf, string pieces, string by, string what)
    {
        var book = DemonstrationBook.Open();

        var reasons = Refused(LogSawnWrite.Write(book, "L-001", Typed([], false, [new(stack, thickness, bf, pieces)]) with { By = by }, AsItLies, PostedKey.None));

        Assert.Equal(what, Assert.Single(reasons).What);
        Assert.False(book.State.Logs["L-001"].IsSawn);
    }

    [Fact]
    public void Counted_thickness_without_a_stack_is_refused_and_a_log_is_sawn_once()
    {
        var book = DemonstrationBook.Open();
        var typed = Typed([new("8/4", "8", "8", "2")], false, [new("S-90", "4/4", "40", "8")]);

        Assert.Contains("a stack for 8/4", Refused(LogSawnWrite.Write(book, "L-001", typed, AsItLies, PostedKey.None))[0].Accepted, StringComparison.Ordinal);

        Done(LogSawnWrite.Write(book, "L-001", typed with { Onto = [.. typed.Onto, new("S-91", "8/4", null, null)] }, AsItLies, PostedKey.None));
        Assert.Equal(21.333, book.State.Stacks["S-91"].Footage.Count, 3);
        Assert.Equal("Log", Refused(LogSawnWrite.Write(book, "L-001", typed, AsItLies, PostedKey.None))[0].What);
    }

    [Fact]
    public void Logs_teach_and_a_reset_forgets_and_taking_it_back_remembers()
    {
        var book = DemonstrationBook.Open();
        var (before, prior) = (LogYield.Of(book.State).Next("sugar maple", "Bram"), LogYield.Prior(book.State));

        Assert.Equal(1.06, prior.Ratio);
        Assert.Equal((23, true), (before.Logs, before.OwnWeight > 0.8));
        Assert.DoesNotContain(LogYield.Sawn(book.State), sawn => sawn.Counts && sawn.Ratio.Ratio < 0.5);

        var reset = Done(LogYield.Reset(book, "sugar maple", "", "a new blade", "Bram", PostedKey.None));
        Assert.Equal(0, LogYield.Of(book.State).Next("sugar maple", "Bram").Logs);
        Assert.True(LogYield.Of(book.State).Next("white ash", "Bram").Logs > 0);

        Done(book.Write([new NewEntry("Bram", new Withdrawn(), Corrects: reset[0].Number, Reason: "the old blade again")]));
        Assert.Equal(before, LogYield.Of(book.State).Next("sugar maple", "Bram"));
    }

    [Fact]
    public void Thin_yields_lower_what_a_log_is_worth_and_give_it_a_spread()
    {
        var book = DemonstrationBook.Open();
        double Sold() => YardLog.Worth(book.State, book.State.Logs["L-003"]) is Outcome<LogWorth>.Done(var worth) ? worth.SoldPerScale : double.NaN;
        var before = Sold();

        Done(LogSawnWrite.Write(book, "L-001", Typed([], false, [new("S-90", "4/4", "60", "11")]), AsItLies, PostedKey.None));

        Assert.InRange(Sold(), 0.7, before - 0.001);
        var (likely, low, high) = LogYield.SoldPerScale(book.State, "sugar maple");
        Assert.True(low < likely && likely < high);
    }

    [Fact]
    public void Sizes_and_plan_go_out_and_come_back_as_a_table()
    {
        var book = DemonstrationBook.Open();
        var fact = Done(LogSawnWrite.Write(book, "L-001", Typed(AsPlanned(Cut(book, "L-001")), true, [new("S-90", "4/4", null, null)]) with { Sawyer = "Tam" }, AsItLies, PostedKey.None)).Select(entry => entry.Fact).OfType<LogSawn>().Single();
        var (tables, _) = Yard.Book.Tables.Writing.YardExport.Of(book.State);
        var text = tables.Single(table => table.Table == "sawing").Text;

        Assert.Contains($"{fact.Boards![0].Pieces} of 4/4 x ", text, StringComparison.Ordinal);
        Assert.Contains($"{fact.Plan!.Parts[0].Pieces} of 4/4, ", text, StringComparison.Ordinal);
        Assert.Contains(",Tam", text, StringComparison.Ordinal);
        var read = Yard.Book.Tables.YardImport.Read([("sawing.csv", text)], "import");
        Assert.Empty(read.Refusals);
        Assert.Contains(BookJson.Line(fact), read.Entries.Select(row => BookJson.Line(row.Entry.Fact)));
    }

    private static CuttingPlan Cut(YardBook book, string log) => LogCutting.Of(book.State, book.State.Logs[log]) is Outcome<LogCutting>.Done(var cut) ? cut.Plan : throw new InvalidOperationException();

    private static List<CountTyped> AsPlanned(CuttingPlan plan) =>
        [.. LogSawnWrite.Sizes(plan).Select(one => new CountTyped(one.Size.Thickness.ToString(), $"{one.Size.Width.Inches:0.##}", $"{one.Size.Length.Feet:0.##}", null, one.Pieces))];

    private static LogSawnTyped Typed(IReadOnlyList<CountTyped> counts, bool asPlanned, IReadOnlyList<OntoTyped> onto) => new(counts, asPlanned, onto, "shed A", null, "Bram");

    private static IReadOnlyList<Entry> Done(Outcome<IReadOnlyList<Entry>> outcome) => outcome is Outcome<IReadOnlyList<Entry>>.Refused(var reasons)
        ? throw new InvalidOperationException(string.Join("; ", reasons)) : Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(outcome).Value;

    private static IReadOnlyList<Refusal> Refused(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(outcome).Reasons;
}
