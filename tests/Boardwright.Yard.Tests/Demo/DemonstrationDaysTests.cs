using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Demo;

public sealed class DemonstrationDaysTests
{
    private readonly YardBook book = DemonstrationBook.Open();
    private readonly DemonstrationDays days;

    public DemonstrationDaysTests() => days = new(book, DemonstrationBook.Folder);

    [Fact]
    public void Next_day_writes_what_happens_on_it_and_by_whom()
    {
        Assert.IsType<Outcome<IReadOnlyList<DemoYard.PlayedDay>>.Done>(days.Turn(1));

        Assert.Equal(new DateOnly(2026, 11, 3), book.State.Today);
        var (entry, told) = days.On(new(2026, 11, 3))[0];
        Assert.Equal(("Pell", "E-06", new DateTime(2026, 11, 3, 7, 30, 0)), (entry.By, told, entry.HappenedAt));
        Assert.Empty(days.LeftOut());
    }

    [Fact]
    public void Every_told_event_stands_in_the_book_with_who_and_when()
    {
        days.Turn(40);

        var told = Enumerable.Range(-10, 51).Select(DemonstrationBook.FirstDay.AddDays).SelectMany(day => days.On(day)).Where(row => row.Event is not null).ToList();

        Assert.Equal(Enumerable.Range(1, 20).Select(n => $"E-{n:00}"), told.Select(row => row.Event!).Distinct().Order(StringComparer.Ordinal));
        Assert.All(told, row => Assert.Contains(row.Entry.By, book.State.People.Keys));
    }

    [Fact]
    public void Book_stands_after_every_single_entry_of_the_season()
    {
        // Told one by one, in the order they were written: what the book says at any moment of the season must fit.
        var entries = DemonstrationBook.Entries(DemonstrationBook.LastDay);
        for (var count = DemonstrationBook.Entries(DemonstrationBook.FirstDay).Count; count <= entries.Count; count += 3)
        {
            var yard = YardState.Of([.. entries.Take(count)], DemonstrationBook.FirstDay);
            Assert.True(yard.Misfits.Count == 0, $"after entry {count}: {yard.Misfits.FirstOrDefault()?.Why}");
        }
    }

    [Fact]
    public void A_line_that_does_not_fit_any_more_is_left_out_and_named()
    {
        book.Write("Pell", new ChargeLoaded("D-90", "K2", ["S-12"], 8.0));

        days.Turn(1);

        Assert.Contains(days.LeftOut(), line => line.Fact is ChargeLoaded { Charge: "D-41" });
        Assert.Empty(book.State.Misfits);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(61)]
    public void Days_are_turned_forward_a_few_at_a_time(int count) =>
        Assert.Equal("days", Assert.IsType<Outcome<IReadOnlyList<DemoYard.PlayedDay>>.Refused>(days.Turn(count)).Reasons[0].What);

    [Fact]
    public void Without_its_files_no_day_is_turned()
    {
        var none = new DemonstrationDays(book, null);

        Assert.False(none.CanTurn);
        Assert.IsType<Outcome<IReadOnlyList<DemoYard.PlayedDay>>.Refused>(none.Turn(1));
    }
}
