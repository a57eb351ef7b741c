using Microsoft.EntityFrameworkCore.Design;

namespace Boardwright.Storage.Sqlite;

/// <summary>Used by the migrations tool only.</summary>
public sealed class DesignTime : IDesignTimeDbContextFactory<BookContext>
{
    public BookContext CreateDbContext(string[] args) => new(SqliteBook.Options("design-time.db").Options);
}
