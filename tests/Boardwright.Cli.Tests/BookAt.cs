using System.Text.Json;
using Boardwright.Storage.Tests;
using Microsoft.Data.Sqlite;

namespace Boardwright.Cli.Tests;

/// <summary>A place for a book of its own, on SQLite or PostgreSQL, and the program run on it.</summary>
internal sealed class BookAt : IDisposable
{
    public BookAt(string provider)
    {
        Folder = Directory.CreateTempSubdirectory("boardwright-cli-").FullName;
        Option = provider == "sqlite" ? ["--data", Path.Combine(Folder, "data")] : ["--yard", PostgresServer.NewDatabase()];
    }

    public static TheoryData<string> Providers => ["sqlite", "postgres"];

    /// <summary>A folder for files of the test.</summary>
    public string Folder { get; }

    /// <summary>The option that names the book.</summary>
    public string[] Option { get; }

    public (int Exit, string Output, string Error) Run(params string[] words) => Terminals.Run([.. words, .. Option]);

    public JsonElement Json(params string[] words)
    {
        var (exit, output, error) = Run([.. words, "--json"]);
        Assert.True(exit == ExitCode.Done, $"exit {exit}: {error}");
        return JsonSerializer.Deserialize<JsonElement>(output);
    }

    /// <summary>Every entry of the book as its copy shows it.</summary>
    public string[] Entries()
    {
        var copy = Json("backup", Path.Combine(Folder, "seen")).GetProperty("copy").GetString()!;
        return [.. File.ReadAllLines(copy).SkipLast(1)];
    }

    public string Write(string name, string text)
    {
        var path = Path.Combine(Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(Folder, recursive: true);
    }
}
