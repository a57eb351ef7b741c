using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Entries;

/// <summary>What was written on paper while the phone was drowned is typed in later and keeps its own time.</summary>
public sealed class PaperTimeTests
{
    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void Lines_of_a_paper_typed_in_later_keep_their_own_times()
    {
        var log = new LogEntry { Tag = "L-041", Species = "sugar maple", SmallEndA = "16", LargeEnd = "20", ScaleLength = "8", ActualLength = "8ft5in", Source = "T-23", Scan = "Clear", By = "Bram" };

        var written = Done(LogReceive.Write(book, log, new(Guid.CreateVersion7().ToString(), null, "2026-10-31T07:40")))[0];
        var carried = Done(StackCarry.Write(book, "S-04", "shed A", "Pell", new(null, null, "2026-11-01 16:05")))[0];
        var shop = Done(PourWarmth.Write(book, "17.5", null, "Wren", new(null, null, "2026-11-02 06:10")))[0];

        Assert.Equal(new DateTime(2026, 10, 31, 7, 40, 0), book.State.Logs["L-041"].ReceivedAt);
        Assert.Equal(new DateTime(2026, 11, 1, 16, 5, 0), carried.HappenedAt);
        Assert.Equal(17.5, book.State.ShopC[new(2026, 11, 2, 6, 10, 0)]);
        Assert.All(new[] { written, carried, shop }, entry => Assert.Equal(book.Now, entry.WrittenAtUtc));
    }

    [Theory]
    [InlineData("yesterday")]
    [InlineData("2026-11-03 06:10")]
    [InlineData("02.11.2026 06:10")]
    public void A_time_that_cannot_be_read_or_is_ahead_is_refused_and_nothing_is_written(string happened)
    {
        var before = book.State.Entries.Count;

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(StackCarry.Write(book, "S-04", "shed A", "Pell", new(null, null, happened))).Reasons[0];

        Assert.Equal(("When it happened", happened), (refused.What, refused.Given));
        Assert.Equal(before, book.State.Entries.Count);
    }

    private static IReadOnlyList<Entry> Done(Outcome<IReadOnlyList<Entry>> written) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(written).Value;
}
