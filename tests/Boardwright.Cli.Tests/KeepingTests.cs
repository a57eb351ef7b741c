using System.Text.Json;
using Boardwright.Storage.Postgres;
using Boardwright.Storage.Sqlite;
using Boardwright.Yard.Book;
using Microsoft.EntityFrameworkCore;

namespace Boardwright.Cli.Tests;

/// <summary>Making, copying, checking and restoring a book, on both databases.</summary>
public sealed class KeepingTests
{
    public static TheoryData<string> Providers => BookAt.Providers;

    [Theory, MemberData(nameof(Providers))]
    public void Demonstration_is_made_once_and_turned_forward(string provider)
    {
        using var book = new BookAt(provider);

        var made = book.Json("demo");
        var again = book.Json("demo");
        var turned = book.Json("demo", "--until", "2026-11-04");

        Assert.Equal("2026-11-02", made.GetProperty("today").GetString());
        Assert.Equal(made.GetProperty("entries").GetInt32(), made.GetProperty("entries_written").GetInt32());
        Assert.Equal(0, again.GetProperty("entries_written").GetInt32());
        Assert.Equal("2026-11-04", turned.GetProperty("today").GetString());
        Assert.True(turned.GetProperty("entries_written").GetInt32() > 0);
    }

    [Theory, MemberData(nameof(Providers))]
    public void Demonstration_is_never_mixed_with_a_real_yard(string provider)
    {
        using var book = new BookAt(provider);
        Assert.Equal(ExitCode.Done, book.Run("restore", Path.GetFullPath("demo/examples/book-copy.jsonl", Boardwright.Testing.Repository.Root)).Exit);

        var (exit, _, error) = book.Run("demo");

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains("an empty book", error, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Providers))]
    public void Copy_restores_the_same_book_on_either_database(string provider)
    {
        using var book = new BookAt(provider);
        book.Json("demo");
        var copy = book.Json("backup", Path.Combine(book.Folder, "copies")).GetProperty("copy").GetString()!;

        foreach (var other in Providers)
        {
            using var restored = new BookAt(other.Data);
            Assert.Equal(book.Entries().Length, restored.Json("restore", copy).GetProperty("entries_written").GetInt32());
            Assert.Equal(book.Entries(), restored.Entries());
            Assert.True(restored.Json("verify").GetProperty("sound").GetBoolean());
            Assert.Equal(0, restored.Json("restore", copy).GetProperty("entries_written").GetInt32());
        }
    }

    [Theory, MemberData(nameof(Providers))]
    public void Restore_does_not_touch_a_book_with_entries(string provider)
    {
        using var book = new BookAt(provider);
        book.Json("demo");
        var before = book.Entries();
        var copy = Path.GetFullPath("demo/examples/book-copy.jsonl", Boardwright.Testing.Repository.Root);

        var (exit, output, error) = book.Run("restore", copy);

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Empty(output);
        Assert.Contains("--replace", error, StringComparison.Ordinal);
        Assert.Equal(before, book.Entries());
    }

    [Fact]
    public void Replaced_book_is_kept_beside_the_restored_one()
    {
        using var book = new BookAt("sqlite");
        book.Json("demo");
        var before = book.Entries();
        var copy = Path.GetFullPath("demo/examples/book-copy.jsonl", Boardwright.Testing.Repository.Root);

        var restored = book.Json("restore", copy, "--replace");

        Assert.Equal(4, book.Entries().Length);
        var old = SqliteBook.Open(restored.GetProperty("old_book").GetString()!);
        Assert.Equal(before, old.ReadAfter(0).Select(BookJson.Line));
        Assert.Empty(old.Verify());
    }

    [Fact]
    public void Book_that_a_program_has_open_is_not_replaced()
    {
        using var book = new BookAt("sqlite");
        book.Json("demo");
        var before = book.Entries();
        using var served = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={Path.Combine(book.Option[1], "yard.db")};Pooling=False");
        served.Open();
        using (var reading = served.CreateCommand())
        {
            reading.CommandText = "SELECT count(*) FROM entries";
            reading.ExecuteScalar();
        }

        var (exit, _, error) = book.Run("restore", Path.GetFullPath("demo/examples/book-copy.jsonl", Boardwright.Testing.Repository.Root), "--replace");

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains("end the program", error, StringComparison.Ordinal);
        Assert.Equal(before, book.Entries());
    }

    [Fact]
    public void Server_s_book_is_never_replaced()
    {
        using var book = new BookAt("postgres");
        book.Json("demo");

        var (exit, _, error) = book.Run("restore", Path.GetFullPath("demo/examples/book-copy.jsonl", Boardwright.Testing.Repository.Root), "--replace");

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains("empty database", error, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Providers))]
    public void Verify_names_the_entry_that_was_changed_behind_the_book(string provider)
    {
        using var book = new BookAt(provider);
        book.Json("demo");
        Execute(book, provider, "UPDATE entries SET by = 'nobody' WHERE number = 17");

        var (exit, output, error) = book.Run("verify");

        Assert.Equal(ExitCode.NoAnswer, exit);
        Assert.Empty(output);
        Assert.Contains("Entry 17 ", error, StringComparison.Ordinal);
        Assert.DoesNotContain("Entry 18 ", error, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Providers))]
    public void Copy_of_a_broken_book_is_written_and_said_to_be_broken(string provider)
    {
        using var book = new BookAt(provider);
        book.Json("demo");
        Execute(book, provider, "DELETE FROM entries WHERE number = 20");

        var (exit, _, error) = book.Run("backup", Path.Combine(book.Folder, "copies"));

        Assert.Equal(ExitCode.NoAnswer, exit);
        Assert.Contains("Entry 20 is missing", error, StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(Path.Combine(book.Folder, "copies"), "*.jsonl"));
    }

    [Fact]
    public void Entry_that_cannot_be_read_stops_the_copy_with_its_number()
    {
        using var book = new BookAt("sqlite");
        book.Json("demo");
        Execute(book, "sqlite", "UPDATE entries SET fact = '{{' WHERE number = 9");

        Assert.Contains("Entry 9 ", book.Run("verify").Error, StringComparison.Ordinal);
        Assert.Contains("Entry 9 ", book.Run("backup").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.5, "cut short")]
    [InlineData(0.999, "damaged")]
    public void Copy_cut_short_is_refused(double share, string words)
    {
        using var book = new BookAt("sqlite");
        book.Json("demo");
        var text = File.ReadAllText(book.Json("backup", Path.Combine(book.Folder, "copies")).GetProperty("copy").GetString()!);
        var end = text.LastIndexOf("# entries", StringComparison.Ordinal);
        var cut = share > 0.9 ? text[..(end - 40)] + "\n" + text[end..] : text[..(int)(text.Length * share)];
        using var other = new BookAt("sqlite");

        var (exit, _, error) = other.Run("restore", book.Write("cut.jsonl", cut));

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains(words, error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(other.Option[1], "yard.db")));
    }

    [Theory, MemberData(nameof(Providers))]
    public void Person_is_added_once_and_changed_by_what_is_given(string provider)
    {
        using var book = new BookAt(provider);
        book.Json("demo");

        var added = book.Json("user", "Ida", "--role", "kiln hand", "--paid-per-hour", "24");
        var again = book.Json("user", "Ida", "--role", "kiln hand");
        var changed = book.Json("user", "Ida", "--loads-kilns", "yes");

        Assert.Equal("Ida", added.GetProperty("added").GetString());
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null), (again.GetProperty("added").ValueKind, again.GetProperty("changed").ValueKind));
        Assert.Equal("Ida", changed.GetProperty("changed").GetString());
        var ida = changed.GetProperty("people").EnumerateArray().Single(p => p.GetProperty("name").GetString() == "Ida");
        Assert.Equal(("kiln hand", 24.0, true), (ida.GetProperty("role").GetString(), ida.GetProperty("paid_per_hour_money").GetDouble(), ida.GetProperty("loads_kilns").GetBoolean()));
        Assert.Contains("Oda, who is in the book", book.Run("user", "oda", "--role", "owner").Error, StringComparison.Ordinal);
        Assert.Contains("--paid-per-hour", book.Run("user", "Una", "--role", "planer").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Book_that_is_not_there_is_not_made_by_asking()
    {
        using var book = new BookAt("sqlite");

        foreach (var words in new[] { "verify", "backup", "user" })
        {
            var (exit, _, error) = book.Run(words);
            Assert.Equal(ExitCode.Refused, exit);
            Assert.Contains("--data", error, StringComparison.Ordinal);
        }

        Assert.False(Directory.Exists(book.Option[1]));
    }

    // Past the triggers that keep every program from changing an entry.
    private static void Execute(BookAt book, string provider, string sql)
    {
        var options = provider == "sqlite" ? SqliteBook.Options(Path.Combine(book.Option[1], "yard.db")) : PostgresBook.Options(book.Option[1]);
        using var context = new Storage.BookContext(options.Options);
        if (provider == "sqlite")
        {
            context.Database.ExecuteSqlRaw("DROP TRIGGER entries_never_change");
            context.Database.ExecuteSqlRaw("DROP TRIGGER entries_never_go");
        }
        else
        {
            context.Database.ExecuteSqlRaw("ALTER TABLE entries DISABLE TRIGGER ALL");
        }

        context.Database.ExecuteSqlRaw(sql.Replace(" by ", " \"by\" ", StringComparison.Ordinal));
    }
}
