using Boardwright.Storage.Postgres;
using Boardwright.Storage.Sqlite;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Boardwright.Storage.Tests;

/// <summary>An empty database of one provider. Every test runs on each; a missing provider fails.</summary>
public sealed class TestDatabase : IDisposable
{
    private readonly string? folder;
    private readonly string target;

    public TestDatabase(string provider)
    {
        folder = provider == "sqlite" ? Directory.CreateTempSubdirectory("boardwright-book-").FullName : null;
        target = folder is null ? PostgresServer.NewDatabase() : Path.Combine(folder, "yard.db");
    }

    public static TheoryData<string> Providers => ["sqlite", "postgres"];

    public string Target => target;

    public IBookStore Open(params IInterceptor[] interceptors) =>
        folder is null ? PostgresBook.Open(target, interceptors) : SqliteBook.Open(target, interceptors);

    public YardBook Book(params IInterceptor[] interceptors) => new(Open(interceptors), TimeProvider.System);

    public BookContext Context() => new((folder is null ? PostgresBook.Options(target) : SqliteBook.Options(target)).Options);

    /// <summary>Runs a statement past the program.</summary>
    public void Execute(string sql)
    {
        using var context = Context();
        context.Database.ExecuteSqlRaw(sql);
    }

    public void Dispose()
    {
        if (folder is null)
            return;
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    public static NewEntry Note(string text, Guid? id = null) => new("Pell", new NoteWritten(text), new DateTime(2026, 11, 2, 7, 0, 0), Id: id);

    public static IReadOnlyList<Entry> Notes(IBookStore store, int count)
    {
        var from = store.ReadAfter(0).Count;
        return [.. Enumerable.Range(from + 1, count).Select(n => new Entry(
            n, Guid.CreateVersion7(), new DateTime(2026, 11, 2, 12, 0, 0, 250, DateTimeKind.Utc), new DateTime(2026, 11, 2, 7, 0, 0), "Pell", new NoteWritten($"note {n}")))];
    }

    public static IReadOnlyList<string> Lines(IBookStore store) => [.. store.ReadAfter(0).Select(BookJson.Line)];
}
