using System.Data.Common;
using Boardwright.Yard.Book;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Boardwright.Storage.Sqlite;

/// <summary>A book in one file.</summary>
public static class SqliteBook
{
    /// <summary>Opens the book in a file, making it when it is not there.</summary>
    public static IBookStore Open(string path, params IInterceptor[] interceptors) => new DatabaseBookStore(Options(path).AddInterceptors(interceptors).Options, new SqliteDialect());

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

    public override bool IsTaken(DbException fault) => fault is SqliteException { SqliteErrorCode: ConstraintFailed };

    public override IEnumerable<string> Integrity(BookContext context) =>
        context.Database.SqlQueryRaw<string>("SELECT integrity_check AS \"Value\" FROM pragma_integrity_check").AsEnumerable().Where(line => line != "ok").Select(line => $"SQLite: {line}");

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
