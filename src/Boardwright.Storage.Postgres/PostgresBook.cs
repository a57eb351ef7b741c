using System.Data.Common;
using Boardwright.Yard.Book;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Npgsql;

namespace Boardwright.Storage.Postgres;

/// <summary>A book in a PostgreSQL database, for a yard that has a server.</summary>
public static class PostgresBook
{
    /// <summary>Opens the book in a database that exists, making its tables when they are not there.</summary>
    public static IBookStore Open(string connection, params IInterceptor[] interceptors) =>
        new DatabaseBookStore(Options(connection).AddInterceptors(interceptors).Options, new PostgresDialect());

    /// <summary>How the database is opened.</summary>
    public static DbContextOptionsBuilder<BookContext> Options(string connection) => new DbContextOptionsBuilder<BookContext>()
        .UseNpgsql(connection, postgres => postgres.MigrationsAssembly(typeof(PostgresBook).Assembly.GetName().Name));
}

internal sealed class PostgresDialect : BookDialect
{
    public override bool IsTaken(DbException fault) => fault is PostgresException { SqlState: PostgresErrorCodes.UniqueViolation };

    // PostgreSQL keeps no check of its own files to ask for; the seals of the entries are checked by the caller.
    public override IEnumerable<string> Integrity(BookContext context) => [];
}
