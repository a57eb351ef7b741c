using Microsoft.EntityFrameworkCore.Design;

namespace Boardwright.Storage.Postgres;

/// <summary>Used by the migrations tool only; it does not connect.</summary>
public sealed class DesignTime : IDesignTimeDbContextFactory<BookContext>
{
    public BookContext CreateDbContext(string[] args) => new(PostgresBook.Options("Host=localhost;Database=design_time").Options);
}
