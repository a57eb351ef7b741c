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

/// <summary>Radii measured along a log stay in the book, and everything that asks for its shape goes by them (yard invented).</summary>
public sealed class RadiiTests
{
    private const string Tag = "L-014";
    private readonly YardBook book = DemonstrationBook.Open();

    private Log Log => book.State.Logs[Tag];

    [Fact]
    public void Kept_radii_shape_plan_deck_weight_and_not_the_scale()
    {
        var (plan, weight, scale) = (Plan(), Kg(), Scaled());

        var entry = Assert.Single(Keep(Lines(7.0)));

        Assert.Equal(book.State.Entries.Count, entry.Number);
        Assert.Equal("Bram", entry.By);
        Assert.Equal((entry.Number, 3), (Log.RadiiEntry, Log.Radii.Count));
        Assert.Equal(7.0, Log.Radii[0].RadiiMm[0] / 25.4, 1e-9);
        Assert.True(Plan().Plan.ValueMoney < plan.Plan.ValueMoney);
        Assert.All(Plan().Shape.Sections, section => Assert.NotNull(section.RadiiMm));
        Assert.True(Kg() < weight);
        Assert.Equal(scale, Scaled());
        Assert.Contains("8 radii at 3 places", Assert.IsType<Outcome<LogSheet>.Done>(LogSheet.Of(book.State, Tag)).Value.Under, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_is_the_one_that_was_worked_out_before_it_was_kept()
    {
        var before = Assert.IsType<Outcome<LogCutting>.Done>(LogMeasured.Of(book.State, Log, Lines(8.0), null, null)).Value;

        Keep(Lines(8.0));

        var after = Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(book.State, Log, null, null, OrdersWanted.None)).Value;
        Assert.Equal(before.Plan.ValueMoney, after.Plan.ValueMoney, 1e-9);
        Assert.Equal(Lines(8.0), LogMeasured.Lines(Log));
    }

    [Fact]
    public void Measured_again_the_newer_holds_and_a_correction_takes_the_place_of_what_it_corrects()
    {
        Keep(Lines(7.0));
        Keep(Lines(7.5));
        Assert.Equal(7.5, Log.Radii[0].RadiiMm[0] / 25.4, 1e-9);

        var second = Log.RadiiEntry!.Value;
        var corrected = Assert.Single(Keep(Lines(7.25), "tape read wrong"));

        Assert.Equal((second, "tape read wrong"), (corrected.Corrects, corrected.Reason));
        Assert.Equal(7.25, Log.Radii[0].RadiiMm[0] / 25.4, 1e-9);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(EntryCorrect.Withdraw(book, corrected.Number, "Bram", "never measured"));
        Assert.Equal(7.5, Log.Radii[0].RadiiMm[0] / 25.4, 1e-9);
    }

    [Fact]
    public void What_cannot_be_is_refused_and_nothing_is_written()
    {
        var entries = book.State.Entries.Count;

        Assert.Equal("radii", Refused(LogMeasured.Keep(book, Tag, " ", null, "Bram", PostedKey.None)).What);
        Assert.Equal("line 2, distance", Refused(LogMeasured.Keep(book, Tag, "0: 7 7 7 7 7 7 7 7\n3: 7 7 7 7 7 7 7 7", null, "Bram", PostedKey.None)).What);
        Assert.Equal("distance", Refused(book.Write("Bram", new LogRadiiMeasured(Tag, [new(0.0, Round(7.0)), new(0.5, Round(7.0))]))).What);
        Assert.Equal("diameter", Refused(book.Write("Bram", new LogRadiiMeasured(Tag, [new(0.0, Round(0.5)), new(Log.ActualLength.Metres, Round(0.5))]))).What);
        Assert.Equal("log", Refused(book.Write("Bram", new LogRadiiMeasured(book.State.Logs.Values.First(log => log.IsSawn).Tag, [new(0.0, Round(7.0)), new(2.5, Round(7.0))]))).What);
        Assert.Equal(entries, book.State.Entries.Count);
    }

    [Fact]
    public void Radii_go_out_in_a_table_and_come_back_to_the_last_digit()
    {
        Keep(Lines(7.3));

        var table = YardExport.Of(book.State).Tables.Single(one => one.Table == "log_radii");

        Assert.Equal(3, table.Rows);
        var read = YardTables.For("log_radii.csv")!.Read("log_radii.csv", table.Text, "Bram");
        Assert.Empty(read.Refusals);
        var fact = Assert.IsType<LogRadiiMeasured>(Assert.Single(read.Entries).Entry.Fact);
        Assert.Equal(BookJson.Line(book.State.Entries[^1].Fact), BookJson.Line(fact));
    }

    private IReadOnlyList<Entry> Keep(string lines, string? wrong = null) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(LogMeasured.Keep(book, Tag, lines, wrong, "Bram", PostedKey.None)).Value;

    private static Refusal Refused(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(outcome).Reasons[0];

    private static double[] Round(double inches) => [.. Enumerable.Repeat(inches * 25.4, 8)];

    private string Lines(double inches)
    {
        string Row(double at) => FormattableString.Invariant($"{at:0.###}: {string.Join(' ', Enumerable.Repeat(FormattableString.Invariant($"{inches}"), 8))}");
        return string.Join('\n', Row(0.0), Row(4.0), Row(Log.ActualLength.Feet));
    }

    private LogCutting Plan() => Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(book.State, Log)).Value;

    private double Kg() => Assert.IsType<Outcome<Mass>.Done>(YardLog.Weight(Log)).Value.Kilograms;

    private double? Scaled() => Assert.IsType<Outcome<ScaledLog>.Done>(YardLog.Scale(Log)).Value.GrossUnrounded;
}
