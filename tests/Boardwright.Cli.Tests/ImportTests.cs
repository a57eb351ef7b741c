using System.Diagnostics;
using System.Text.Json;
using Boardwright.Testing;

namespace Boardwright.Cli.Tests;

/// <summary>Tables into a book and out of it again, on both databases.</summary>
public sealed class ImportTests
{
    private const string Stacks = "stack,species,thickness,product,sawn,place,owner,net_bf\n";

    public static TheoryData<string> Providers => BookAt.Providers;

    private static string OwnYard => Repository.PathOf("demo", "examples", "own-yard");

    [Theory, MemberData(nameof(Providers))]
    public void Own_tables_make_a_yard_and_add_nothing_the_second_time(string provider)
    {
        using var book = new BookAt(provider);

        var first = book.Json("import", OwnYard);
        var entries = book.Entries();
        var second = book.Json("import", OwnYard);

        Assert.Equal(entries.Length, first.GetProperty("entries_written").GetInt32());
        Assert.Equal((0, entries.Length), (second.GetProperty("entries_written").GetInt32(), second.GetProperty("entries_known_before").GetInt32()));
        Assert.Equal(entries, book.Entries());
        Assert.True(book.Json("verify").GetProperty("sound").GetBoolean());
    }

    [Theory, MemberData(nameof(Providers))]
    public void Exported_book_imported_is_the_same_book(string provider)
    {
        using var book = new BookAt(provider);
        book.Json("demo", "--until", "2026-11-03");
        var folder = Path.Combine(book.Folder, "exported");
        var exported = book.Json("export", folder);

        // Into the other database.
        using var again = new BookAt(Providers.Single(other => other.Data != provider).Data);
        Assert.Equal(exported.GetProperty("entries").GetInt32(), again.Json("import", folder).GetProperty("entries_written").GetInt32());
        Assert.Equal(book.Entries(), again.Entries());
        Assert.Equal(0, book.Json("import", folder).GetProperty("entries_written").GetInt32());
    }

    [Fact]
    public void Bad_row_is_named_with_file_line_column_found_and_accepted_and_nothing_is_written()
    {
        using var book = new BookAt("sqlite");
        Copy(OwnYard, book.Folder);
        book.Write("logs.csv", File.ReadAllText(Path.Combine(book.Folder, "logs.csv")).Replace("13,13,16in", "thirteen,13,16in", StringComparison.Ordinal));

        var (exit, output, error) = book.Run("import", book.Folder);

        var lines = error.TrimEnd().Split('\n');
        Assert.Equal(ExitCode.Refused, exit);
        Assert.Empty(output);
        Assert.StartsWith("logs.csv, line 3, se_dib_a_in: given \"thirteen\"; accepted: ", lines[0], StringComparison.Ordinal);

        // The sawn log that needs the bad one is refused with it.
        Assert.Contains(lines, line => line.StartsWith("sawing.csv, line 3, log: given \"H-002\"", StringComparison.Ordinal));
        Assert.Contains("--good-rows", lines[^1], StringComparison.Ordinal);
        Assert.False(Directory.Exists(book.Option[1]));
    }

    [Fact]
    public void Every_bad_column_of_a_row_is_told_and_nothing_at_all_is_left_behind()
    {
        using var book = new BookAt("sqlite");
        var tables = Path.Combine(book.Folder, "tables");
        Directory.CreateDirectory(tables);
        Copy(OwnYard, tables);
        var logs = File.ReadAllLines(Path.Combine(tables, "logs.csv"));
        var columns = logs[0].Split(',').ToList();
        var row = logs[2].Split(',');
        (row[columns.IndexOf("species")], row[columns.IndexOf("se_dib_a_in")]) = ("mapel", "thirteen");
        logs[2] = string.Join(',', row);
        File.WriteAllLines(Path.Combine(tables, "logs.csv"), logs);
        var data = Path.Combine(book.Folder, "fresh");

        var (exit, _, error) = Terminals.Run(["import", tables, "--data", data]);

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains("logs.csv, line 3, species: given \"mapel\"", error, StringComparison.Ordinal);
        Assert.Contains("logs.csv, line 3, se_dib_a_in: given \"thirteen\"", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(data));
    }

    [Theory]
    [InlineData("log.csv", "logs.csv?")]
    [InlineData("logs-2025.csv", "logs.csv?")]
    [InlineData("zebra.csv", "tables named yard.csv, ")]
    public void File_that_is_no_table_is_refused_with_the_names_that_are(string name, string accepted)
    {
        using var book = new BookAt("sqlite");
        var tables = Path.Combine(book.Folder, "tables");
        Directory.CreateDirectory(tables);
        File.Copy(Path.Combine(OwnYard, "logs.csv"), Path.Combine(tables, name));

        var (exit, _, error) = Terminals.Run(["import", tables, "--data", Path.Combine(book.Folder, "fresh")]);

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains(name, error, StringComparison.Ordinal);
        Assert.Contains(accepted, error, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Providers))]
    public void Good_rows_are_written_and_the_bad_ones_imported_once_they_are_mended(string provider)
    {
        using var book = new BookAt(provider);
        using var whole = new BookAt(provider);
        Copy(OwnYard, book.Folder);
        var good = File.ReadAllText(Path.Combine(book.Folder, "logs.csv"));
        book.Write("logs.csv", good.Replace("13,13,16in", "thirteen,13,16in", StringComparison.Ordinal));

        var first = book.Json("import", book.Folder, "--good-rows");
        var aside = first.GetProperty("refused_folder").GetString()!;
        var refused = Path.Combine(aside, "logs.csv");
        Assert.Contains("#why", File.ReadAllLines(refused)[0], StringComparison.Ordinal);
        Assert.Contains("thirteen", File.ReadAllLines(refused)[1], StringComparison.Ordinal);
        File.WriteAllText(refused, File.ReadAllText(refused).Replace(",thirteen,", ",13,", StringComparison.Ordinal));
        var second = book.Json("import", aside);

        whole.Json("import", OwnYard);
        Assert.Equal(6, first.GetProperty("entries_written").GetInt32());
        Assert.Equal(3, first.GetProperty("files").EnumerateArray().Count(file => file.GetProperty("lines_refused").GetInt32() == 0));
        Assert.Equal(2, second.GetProperty("entries_written").GetInt32());
        Assert.Equal(Facts(whole).Order(StringComparer.Ordinal), Facts(book).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Check_writes_nothing_and_makes_no_book()
    {
        using var book = new BookAt("sqlite");

        var answer = book.Json("import", OwnYard, "--check");

        Assert.Equal((8, false), (answer.GetProperty("entries_written").GetInt32(), answer.GetProperty("written").GetBoolean()));
        Assert.False(Directory.Exists(book.Option[1]));
    }

    [Theory]
    [InlineData("stack,species,thickness,product,sawn,place,owner,net_bf,nott\n", ",x", "stacks.csv, line 1, nott", "note?")]
    [InlineData("stack,species,thickness,product,sawn,place,owner,net_bf,feet\n", ",x", "stacks.csv, line 1, feet", "a column of stacks")]
    [InlineData("stack,species,thickness,product,sawn,place\n", "", "stacks.csv", "owner")]
    public void Column_that_nobody_reads_or_that_is_missing_is_refused(string header, string more, string what, string accepted)
    {
        using var book = new BookAt("sqlite");
        var file = book.Write("stacks.csv", header + "W-09,black walnut,5/4,boards,2025-04-21,lean-to,mill,96" + more + "\n");

        var line = book.Run("import", file).Error.Split('\n')[0];

        Assert.StartsWith(what + ":", line, StringComparison.Ordinal);
        Assert.Contains(accepted, line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("W-09,black walnut,5/4,boards,2025-04-21,moon,mill,96", "place: given \"moon\"")]
    [InlineData("W-09,black walnut,5 quarters,boards,2025-04-21,lean-to,mill,96", "thickness: given \"5 quarters\"")]
    [InlineData("W-09,black wallnut,5/4,boards,2025-04-21,lean-to,mill,96", "species: given \"black wallnut\"")]
    [InlineData("W-09,black walnut,5/4,planks,2025-04-21,lean-to,mill,96", "product: given \"planks\"")]
    [InlineData("W-09,black walnut,5/4,boards,21 April,lean-to,mill,96", "sawn: given \"21 April\"")]
    [InlineData("W-09,black walnut,5/4,boards,2025-04-21,lean-to,mill,lots", "net_bf: given \"lots\"")]
    [InlineData(",black walnut,5/4,boards,2025-04-21,lean-to,mill,96", "stack: given \"nothing\"")]
    public void Each_kind_of_bad_field_is_refused_in_its_column(string row, string expected)
    {
        using var book = new BookAt("sqlite");
        book.Json("import", OwnYard);

        var (exit, _, error) = book.Run("import", book.Write("stacks.csv", Stacks + row + "\n"));

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains("stacks.csv, line 2, " + expected, error, StringComparison.Ordinal);
        Assert.Contains("accepted", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Exported_row_changed_by_hand_is_refused_and_a_new_row_beside_it_taken()
    {
        using var book = new BookAt("sqlite");
        book.Json("import", OwnYard);
        var folder = Path.Combine(book.Folder, "exported");
        book.Json("export", folder);
        var stacks = Path.Combine(folder, "stacks.csv");
        var text = File.ReadAllText(stacks);

        File.WriteAllText(stacks, text.Replace(",96,14,", ",69,14,", StringComparison.Ordinal));
        var changed = book.Run("import", folder).Error;
        File.WriteAllText(stacks, text + text.Split('\n')[1].Replace("W-01", "W-02", StringComparison.Ordinal)[..^36] + "\n");
        var added = book.Json("import", folder);

        Assert.Contains("stacks.csv, line 2, entry_id", changed, StringComparison.Ordinal);
        Assert.Equal(1, added.GetProperty("entries_written").GetInt32());
    }

    [Fact]
    public void Export_writes_over_nothing_unless_it_is_told()
    {
        using var book = new BookAt("sqlite");
        book.Json("import", OwnYard);
        var folder = Path.Combine(book.Folder, "exported");
        book.Json("export", folder);

        Assert.Contains("--replace", book.Run("export", folder).Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, book.Run("export", folder, "--replace").Exit);
    }

    [Fact]
    public void Log_of_another_book_is_not_mixed_in()
    {
        using var book = new BookAt("sqlite");
        using var other = new BookAt("sqlite");
        book.Json("import", OwnYard);
        other.Json("demo");
        var folder = Path.Combine(other.Folder, "exported");
        other.Json("export", folder);

        var (exit, _, error) = book.Run("import", folder);

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains("entries.jsonl", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_killed_at_any_moment_leaves_all_of_it_or_nothing()
    {
        string[] words = [.. Program.Skip(1), "import", Path.Combine(AppContext.BaseDirectory, "demo")];
        var counts = new List<int>();
        for (var round = 0; round < 6; round++)
        {
            using var book = new BookAt("sqlite");
            using var child = Process.Start(new ProcessStartInfo(Program[0], [.. words, .. book.Option]) { RedirectStandardOutput = true, RedirectStandardError = true })!;

            // Killed from the moment the book's file is there, later each time; the last one is left to end.
            while (!File.Exists(Path.Combine(book.Option[1], "yard.db")) && !child.HasExited)
                await Task.Delay(2, TestContext.Current.CancellationToken);
            if (round < 5)
            {
                await Task.Delay(150 * round, TestContext.Current.CancellationToken);
                child.Kill();
            }

            await child.WaitForExitAsync(TestContext.Current.CancellationToken);
            counts.Add(book.Entries().Length);
            Assert.True(book.Json("verify").GetProperty("sound").GetBoolean());
        }

        Assert.True(counts[^1] > 900, $"{counts[^1]} entries");
        Assert.All(counts, count => Assert.True(count == 0 || count == counts[^1], $"{count} of {counts[^1]} entries"));
    }

    // Started as "dotnet PROGRAM.dll" the process is dotnet itself and needs the program named.
    private static string[] Program => Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet"
        ? [Environment.ProcessPath!, Path.Combine(AppContext.BaseDirectory, "boardwright.dll")]
        : [Path.Combine(AppContext.BaseDirectory, "boardwright")];

    private static IEnumerable<string> Facts(BookAt book) => book.Entries().Select(line => JsonDocument.Parse(line).RootElement.GetProperty("fact").GetRawText());

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
    }
}
