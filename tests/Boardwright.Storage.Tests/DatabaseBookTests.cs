using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Microsoft.EntityFrameworkCore;

namespace Boardwright.Storage.Tests;

public sealed class DatabaseBookTests
{
    public static TheoryData<string> Providers => TestDatabase.Providers;

    [Theory, MemberData(nameof(Providers))]
    public void Entry_reads_back_from_the_database_as_it_was_written(string provider)
    {
        using var database = new TestDatabase(provider);
        var entry = new Entry(
            1, Guid.CreateVersion7(), new DateTime(2026, 11, 2, 12, 34, 56, 789, DateTimeKind.Utc), new DateTime(2026, 3, 29, 2, 30, 0), "Wren Ångström",
            new MoistureRead("S-07", MoistureMethod.Pin, RawPct: 0.1 + 0.2, SpeciesSetting: "black cherry", WoodC: -2.2222222222222223), AsEntered: new Dictionary<string, string> { ["raw_pct"] = "12.9", ["wood_c"] = "28°F" });
        var correction = entry with { Number = 2, Id = Guid.CreateVersion7(), Corrects = 1, Reason = "wrong board", AsEntered = null };

        Assert.True(database.Open().TryAppend([entry, correction]));

        var read = database.Open().ReadAfter(0);
        Assert.Equal([BookJson.Line(entry), BookJson.Line(correction)], read.Select(BookJson.Line));
        Assert.Equal((DateTimeKind.Utc, DateTimeKind.Unspecified), (read[0].WrittenAtUtc.Kind, read[0].HappenedAt.Kind));
        Assert.Equal([2L], database.Open().ReadAfter(1).Select(e => e.Number));
    }

    [Theory, MemberData(nameof(Providers))]
    public void Append_that_does_not_follow_on_keeps_nothing(string provider)
    {
        using var database = new TestDatabase(provider);
        var store = database.Open();
        Assert.True(store.TryAppend(TestDatabase.Notes(store, 2)));
        var late = TestDatabase.Notes(store, 2).Select(e => e with { Number = e.Number - 1 }).ToList();

        Assert.False(store.TryAppend(late));

        Assert.Equal(2, store.ReadAfter(0).Count);
    }

    [Theory, MemberData(nameof(Providers))]
    public void Entry_sent_twice_to_two_programs_is_kept_once(string provider)
    {
        using var database = new TestDatabase(provider);
        var (one, other) = (database.Book(), database.Book());
        var sent = TestDatabase.Note("tag of L-033 is gone", Guid.CreateVersion7());

        var first = Written(one.Write([sent]));
        var second = Written(other.Write([sent, TestDatabase.Note("another")]));

        Assert.Equal(first[0].Number, second[0].Number);
        Assert.Equal(2, database.Open().ReadAfter(0).Count);
    }

    [Theory, MemberData(nameof(Providers))]
    public async Task Writers_at_once_leave_no_gap_and_no_double(string provider)
    {
        using var database = new TestDatabase(provider);
        database.Open();

        await Task.WhenAll(Enumerable.Range(0, 4).Select(writer => Task.Run(() =>
        {
            var book = database.Book();
            for (var i = 0; i < 10; i++)
                Written(book.Write([TestDatabase.Note($"writer {writer} note {i}"), TestDatabase.Note($"writer {writer} note {i}, second")]));
        })));

        var store = database.Open();
        Assert.Empty(store.Verify());
        var notes = store.ReadAfter(0).Select(e => ((NoteWritten)e.Fact).Text).ToList();
        Assert.Equal(80, notes.Distinct().Count());

        // Both entries of a write stand together: a write is one act.
        Assert.All(notes.Where(text => !text.EndsWith("second", StringComparison.Ordinal)), text => Assert.Equal(text + ", second", notes[notes.IndexOf(text) + 1]));
    }

    [Theory, MemberData(nameof(Providers))]
    public void Database_itself_refuses_to_change_or_remove_an_entry(string provider)
    {
        using var database = new TestDatabase(provider);
        var store = database.Open();
        store.TryAppend(TestDatabase.Notes(store, 2));

        Assert.ThrowsAny<System.Data.Common.DbException>(() => database.Execute("UPDATE entries SET reason = 'because' WHERE number = 1"));
        Assert.ThrowsAny<System.Data.Common.DbException>(() => database.Execute("DELETE FROM entries WHERE number = 2"));
        Assert.Empty(store.Verify());
    }

    [Theory, MemberData(nameof(Providers))]
    public void Row_changed_behind_the_book_is_found(string provider)
    {
        using var database = new TestDatabase(provider);
        var store = database.Open();
        store.TryAppend(TestDatabase.Notes(store, 3));
        database.Execute(provider == "sqlite" ? "DROP TRIGGER entries_never_change" : "ALTER TABLE entries DISABLE TRIGGER ALL");

        database.Execute("UPDATE entries SET fact = replace(fact, 'note 2', 'note 7') WHERE number = 2");

        Assert.Contains("Entry 2", Assert.Single(store.Verify()), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Providers))]
    public void Book_copied_to_text_is_restored_on_the_other_provider(string provider)
    {
        using var database = new TestDatabase(provider);
        using var other = new TestDatabase(TestDatabase.Providers.First(p => p.Data != provider).Data);
        var store = database.Open();
        store.TryAppend(TestDatabase.Notes(store, 25));

        var copy = BookFile.Text(store.ReadAfter(0));
        var restored = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(BookFile.Read("copy", copy)).Value;
        Assert.True(other.Open().TryAppend(restored));

        Assert.Equal(TestDatabase.Lines(store), TestDatabase.Lines(other.Open()));
        Assert.Empty(other.Open().Verify());
    }

    [Theory, MemberData(nameof(Providers))]
    public void Migrations_agree_with_the_model(string provider)
    {
        using var database = new TestDatabase(provider);
        using var context = database.Context();

        Assert.False(context.Database.HasPendingModelChanges());
    }

    [Fact]
    public void Sqlite_waits_for_the_disk_at_every_commit()
    {
        using var database = new TestDatabase("sqlite");
        database.Open();
        using var context = database.Context();

        Assert.Equal(2, context.Database.SqlQueryRaw<int>("SELECT synchronous AS \"Value\" FROM pragma_synchronous").AsEnumerable().Single());
    }

    internal static IReadOnlyList<Entry> Written(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(outcome).Value;
}
