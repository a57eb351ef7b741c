using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Tables;
using Boardwright.Yard.Book.Tables.Writing;
using CsCheck;

namespace Boardwright.Yard.Tests.Book;

/// <summary>Tables written from a book read back as the same facts.</summary>
public sealed class YardExportTests
{
    // What no table holds today; a kind that gets a table leaves this list.
    private static readonly string[] LogOnly = ["day_turned", "interrupted", "note_written", "sample_damaged", "tag_lost"];

    private static readonly string[] Units = ["mm", "cm", "in", "ft", "m"];

    [Fact]
    public void Every_standing_fact_of_the_demonstration_is_in_a_table_or_in_the_log()
    {
        var yard = DemonstrationBook.Yard;

        var (tables, left) = YardExport.Of(yard);

        var read = Read(tables);
        Assert.Empty(read.Refusals);
        Assert.All(left.Keys, kind => Assert.Contains(kind, LogOnly));
        Assert.Equal(
            Corrections.Standing(yard.Entries).Where(standing => !LogOnly.Contains(BookJson.Kind(standing.Entry.Fact))).Select(standing => Line(standing.Entry.Fact)).Order(StringComparer.Ordinal),
            read.Entries.Select(row => Line(row.Entry.Fact)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Tables_alone_make_the_same_logs_stacks_charges_and_orders()
    {
        var first = DemonstrationBook.Yard;
        var book = new YardBook(new MemoryBookStore(), new StandingClock(new(2026, 11, 2, 16, 0, 0)));
        var found = YardImport.Check(book, Read(YardExport.Of(first).Tables));
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write([.. found.Good.Select(row => row.Entry)]));

        var again = book.State;

        Assert.Empty(found.Refused);
        Assert.Equal(first.Logs.Keys, again.Logs.Keys);
        Assert.Equal(first.Stacks.Values.Select(s => (s.Tag, s.Footage.Count, s.Place, s.Moisture?.Mean)), again.Stacks.Values.Select(s => (s.Tag, s.Footage.Count, s.Place, s.Moisture?.Mean)));
        Assert.Equal(first.Charges.Keys, again.Charges.Keys);
        Assert.Equal(first.Orders.Keys, again.Orders.Keys);
        Assert.Equal(first.Packs.Keys, again.Packs.Keys);
        Assert.Equal(first.Kilns.Values.Select(k => Line(k.Installed)), again.Kilns.Values.Select(k => Line(k.Installed)));
    }

    [Fact]
    public void Corrected_fact_is_written_as_it_stands_and_a_withdrawn_one_not_at_all()
    {
        var book = new YardBook(new MemoryBookStore(), new StandingClock(new(2026, 11, 2, 16, 0, 0)));
        Done(book.Write([new("Ida", new PlaceNamed("shed 1", PlaceKind.Shed)), new("Ida", new PlaceNamed("shed 2", PlaceKind.Shed))]));
        Done(book.Write([new("Ida", new PlaceNamed("shed one", PlaceKind.Shed), Corrects: 1, Reason: "spelt out"), new("Ida", new Withdrawn(), Corrects: 2, Reason: "pulled down")]));

        var table = Assert.Single(YardExport.Of(book.State).Tables);

        Assert.Equal(("places", 1), (table.Table, table.Rows));
        Assert.Contains("shed one", table.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_text_comes_back_letter_by_letter_or_stays_in_the_log() => Gen.Select(Texts, Texts, (name, role) => (name, role)).Always(
        texts =>
        {
            var book = new YardBook(new MemoryBookStore(), new StandingClock(new(2026, 11, 2, 16, 0, 0)));
            if (book.Write("Ida", new PersonNamed(texts.name, texts.role, 20m)) is not Outcome<IReadOnlyList<Entry>>.Done)
                return;

            var (tables, left) = YardExport.Of(book.State);
            if (left.Count > 0)
                return;

            var row = Assert.Single(Read(tables).Entries);
            Assert.Equal(new PersonNamed(texts.name, texts.role, 20m), row.Entry.Fact);
        },
        draws: 500);

    [Fact]
    public void Any_size_as_people_type_it_comes_back_to_the_last_digit() => Gen.Select(Gen.Int[100, 90000], Gen.Int[0, Units.Length - 1], (hundredths, unit) => FormattableString.Invariant($"{hundredths / 100.0}{Units[unit]}")).Always(
        text =>
        {
            var mm = Assert.IsType<Outcome<Length>.Done>(Quantities.Reading.Read.Length("size", text)).Value.Millimetres;
            var planned = new PourPlanned("T-1", "R", new(MouldShape.Circle, DiameterMm: mm), mm, 0.08, [], new(2026, 11, 2), new(2026, 11, 9));
            var yard = YardState.Of([new(1, Guid.NewGuid(), new(2026, 11, 2, 12, 0, 0, DateTimeKind.Utc), new(2026, 11, 2, 7, 0, 0), "Ida", planned)], new(2026, 11, 2));

            var row = Assert.Single(Read(YardExport.Of(yard).Tables).Entries);
            Assert.Equal(mm, ((PourPlanned)row.Entry.Fact).DepthMm);
        },
        draws: 300);

    private static Gen<string> Texts => Gen.String[Gen.Char["ab, ;#\"'\n\t=é–|1"], 0, 12];

    private static ReadTables Read(IEnumerable<(string Table, string Text, int Rows)> tables) => YardImport.Read(tables.Select(table => (table.Table + ".csv", table.Text)), "import");

    private static string Line(Fact fact) => BookJson.Line(fact);

    private static void Done(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(outcome);
}
