using System.Data.Common;
using Boardwright.Yard.Book;
using Microsoft.EntityFrameworkCore;

namespace Boardwright.Storage;

/// <summary>A book in a database.</summary>
public sealed class DatabaseBookStore : IBookStore
{
    private const string FirstSeal = "boardwright book";

    private readonly DbContextOptions<BookContext> options;
    private readonly BookDialect dialect;

    /// <summary>Opens a book, making or migrating its tables.</summary>
    /// <exception cref="InvalidOperationException">The database cannot be brought to this program's tables.</exception>
    public DatabaseBookStore(DbContextOptions<BookContext> options, BookDialect dialect)
    {
        (this.options, this.dialect) = (options, dialect);
        using var context = Open();
        dialect.BeforeReading(context);
        if (context.Database.GetPendingMigrations().Any())
        {
            using var alone = dialect.Alone(context);

            // Another program may have done it meanwhile.
            if (context.Database.GetPendingMigrations().LastOrDefault() is { } pending)
            {
                dialect.BeforeMigrating(context, pending);
                context.Database.Migrate();
            }
        }

        // A program built without its migrations would make no table and say nothing.
        if (!context.Database.GetAppliedMigrations().Any())
            throw new InvalidOperationException("The program holds no migration for this database.");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Entry> ReadAfter(long number)
    {
        using var context = Open();
        return [.. context.Entries.AsNoTracking().Where(e => e.Number > number).OrderBy(e => e.Number).AsEnumerable().Select(row => row.ToEntry())];
    }

    /// <inheritdoc/>
    public bool TryAppend(IReadOnlyList<Entry> entries)
    {
        if (entries.Count == 0)
            return true;
        using var context = Open();
        using var transaction = context.Database.BeginTransaction();
        var last = context.Entries.AsNoTracking().OrderByDescending(e => e.Number).Select(e => new { e.Number, e.Seal }).FirstOrDefault();
        if (entries[0].Number != (last?.Number ?? 0) + 1)
            return false;

        var seal = last?.Seal ?? FirstSeal;
        foreach (var entry in entries)
        {
            var row = EntryRow.Of(entry, seal);
            seal = row.Seal;
            context.Add(row);
        }

        try
        {
            context.SaveChanges();
            transaction.Commit();
            return true;
        }
        catch (DbUpdateException fault) when (fault.InnerException is DbException inner && dialect.IsTaken(inner))
        {
            return false;
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Verify()
    {
        using var context = Open();
        var faults = new List<string>(dialect.Integrity(context));
        var seal = FirstSeal;
        var entries = new List<Entry>();
        foreach (var row in context.Entries.AsNoTracking().OrderBy(e => e.Number))
        {
            if (row.Seal != row.ExpectedSeal(seal))
                faults.Add($"Entry {row.Number} is not as it was written, or the one before it is gone.");
            seal = row.Seal;
            try
            {
                entries.Add(row.ToEntry());
            }
            catch (System.Text.Json.JsonException fault)
            {
                faults.Add($"Entry {row.Number} cannot be read: {fault.Message}");
            }
        }

        return [.. faults, .. BookAudit.Faults(entries)];
    }

    private BookContext Open() => new(options);
}
