using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Boardwright.Storage;

/// <summary>The tables of the book. The same model on every provider; only the column types of times differ.</summary>
public sealed class BookContext(DbContextOptions<BookContext> options) : DbContext(options)
{
    public DbSet<EntryRow> Entries => Set<EntryRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ArgumentNullException.ThrowIfNull(modelBuilder);

        // SQLite gives times back without their kind; PostgreSQL refuses the wrong one.
        var utc = new ValueConverter<DateTime, DateTime>(v => v.ToUniversalTime(), v => DateTime.SpecifyKind(v, DateTimeKind.Utc));
        var local = new ValueConverter<DateTime, DateTime>(v => DateTime.SpecifyKind(v, DateTimeKind.Unspecified), v => DateTime.SpecifyKind(v, DateTimeKind.Unspecified));
        modelBuilder.Entity<EntryRow>(row =>
        {
            row.ToTable("entries");
            row.HasKey(e => e.Number);
            row.Property(e => e.Number).HasColumnName("number").ValueGeneratedNever();
            row.Property(e => e.Id).HasColumnName("id");
            row.HasIndex(e => e.Id).IsUnique();
            row.Property(e => e.WrittenAtUtc).HasColumnName("written_at_utc").HasConversion(utc);
            var happened = row.Property(e => e.HappenedAt).HasColumnName("happened_at").HasConversion(local);
            if (Database.ProviderName!.Contains("PostgreSQL", StringComparison.Ordinal))
                happened.HasColumnType("timestamp without time zone");
            row.Property(e => e.By).HasColumnName("by");
            row.Property(e => e.Kind).HasColumnName("kind");
            row.Property(e => e.Fact).HasColumnName("fact");
            row.Property(e => e.Corrects).HasColumnName("corrects");
            row.Property(e => e.Reason).HasColumnName("reason");
            row.Property(e => e.AsEntered).HasColumnName("as_entered");
            row.Property(e => e.Seal).HasColumnName("seal");
        });
    }
}
