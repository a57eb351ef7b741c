using System.Data.Common;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Boardwright.Storage.Sqlite;

/// <summary>A book in one file.</summary>
public static class SqliteBook
{
    private const int Busy = 5;
    private const int Locked = 6;

    /// <summary>Opens the book in a file, making it when it is not there.</summary>
    public static IBookStore Open(string path, params IInterceptor[] interceptors) => new DatabaseBookStore(Options(path).AddInterceptors(interceptors).Options, new SqliteDialect());

    /// <summary>Puts a whole book in the place of the one in a file, in one step of the file system, and gives the name under which the old one is kept.</summary>
    /// <remarks>The new file is written, checked and closed before the old one is touched: killed at any moment, the old book or the new one is there.</remarks>
    /// <returns>The old book's file; refused while any program has the old book open.</returns>
    public static Outcome<string> Replace(string path, IReadOnlyList<Entry> entries)
    {
        var fresh = path + ".restoring";
        Remove(fresh);
        var store = Open(fresh);
        if (!store.TryAppend(entries) || store.Verify() is { Count: > 0 })
            throw new IOException($"{fresh} does not hold what was written; {path} was not touched.");

        SqliteConnection.ClearAllPools();
        Fold(fresh);
        if (!IsAlone(path))
        {
            Remove(fresh);
            return new Refusal("book", path, "a book that no program has open; end the program that serves it first");
        }

        var old = Enumerable.Range(1, int.MaxValue).Select(n => $"{path}.before-restore-{n}").First(name => !File.Exists(name));
        File.Replace(fresh, path, old);
        return old;
    }

    // What the write-ahead log holds goes into the file; the last connection closed takes the log away.
    private static void Fold(string path)
    {
        using (var connection = Alone(path))
        {
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
            command.ExecuteNonQuery();
        }

        if (File.Exists(path + "-wal"))
            throw new IOException($"{path} is not whole in one file; nothing was replaced.");
    }

    private static SqliteConnection Alone(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false, DefaultTimeout = 1 }.ToString());
        connection.Open();
        return connection;
    }

    // Leaving the write-ahead log needs the file for oneself, and folds the log into the file.
    private static bool IsAlone(string path)
    {
        using var connection = Alone(path);
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA journal_mode=DELETE";
        try
        {
            return (string?)command.ExecuteScalar() == "delete";
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode is Busy or Locked)
        {
            return false;
        }
    }

    private static void Remove(string path)
    {
        foreach (var ending in new[] { "", "-wal", "-shm", "-journal" })
            File.Delete(path + ending);
    }

    /// <summary>How the file is opened: every commit reaches the disk before it is believed, and writers wait for each other.</summary>
    public static DbContextOptionsBuilder<BookContext> Options(string path) => new DbContextOptionsBuilder<BookContext>()
        .UseSqlite(
            new SqliteConnectionStringBuilder { DataSource = path, DefaultTimeout = 10 }.ToString(),
            sqlite => sqlite.MigrationsAssembly(typeof(SqliteBook).Assembly.GetName().Name))
        .AddInterceptors(new FullSynchronous());
}

internal sealed class SqliteDialect : BookDialect
{
    private const int ConstraintFailed = 19;
    private const int AttemptsMax = 600;
    private const int AttemptMilliseconds = 50;

    public override bool IsTaken(DbException fault) => fault is SqliteException { SqliteErrorCode: ConstraintFailed };

    public override IEnumerable<string> Integrity(BookContext context) =>
        context.Database.SqlQueryRaw<string>("SELECT integrity_check AS \"Value\" FROM pragma_integrity_check").AsEnumerable().Where(line => line != "ok").Select(line => $"SQLite: {line}");

    // A program killed in the middle of a write may leave a journal that is to be rolled back. Whether there are tables is asked by a connection
    // that only reads, which may not do that: this one does it first.
    public override void BeforeReading(BookContext context)
    {
        if (File.Exists(((SqliteConnection)context.Database.GetDbConnection()).DataSource))
            _ = context.Database.SqlQueryRaw<int>("SELECT count(*) AS \"Value\" FROM sqlite_master").AsEnumerable().Single();
    }

    // A program killed while it makes the tables leaves its row in the migrations' lock, and every later one would wait for it for ever.
    // The lock of a file ends with the program that holds it: whoever has that one may clear the other.
    public override IDisposable? Alone(BookContext context)
    {
        var path = ((SqliteConnection)context.Database.GetDbConnection()).DataSource;
        var alone = Locked(path + ".making");
        if (context.Database.SqlQueryRaw<int>("SELECT count(*) AS \"Value\" FROM sqlite_master WHERE name = '__EFMigrationsLock'").AsEnumerable().Single() > 0)
            context.Database.ExecuteSqlRaw("DELETE FROM \"__EFMigrationsLock\"");

        // Otherwise set only with a new file, by a program that may have been killed before it came to that.
        context.Database.ExecuteSqlRaw("PRAGMA journal_mode=WAL");
        return alone;
    }

    private static FileStream Locked(string path)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (attempt < AttemptsMax)
            {
                Thread.Sleep(AttemptMilliseconds);
            }
        }
    }

    // A copy of the file beside it, so that a migration can be taken back by hand.
    public override void BeforeMigrating(BookContext context, string migration)
    {
        var source = (SqliteConnection)context.Database.GetDbConnection();
        if (!File.Exists(source.DataSource) || new FileInfo(source.DataSource).Length == 0)
            return;
        context.Database.OpenConnection();
        using var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = $"{source.DataSource}.before-{migration}", Pooling = false }.ToString());
        copy.Open();
        source.BackupDatabase(copy);
        context.Database.CloseConnection();
    }
}
