using System.Data.Common;
using Boardwright.Quantities;
using Boardwright.Storage.Postgres;
using Boardwright.Storage.Sqlite;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;
using Boardwright.Yard.UseCases;

namespace Boardwright.Cli;

/// <summary>Files and books as the person at the terminal names them; a single dash is standard input. A book once opened stays open.</summary>
public sealed class FileHost(TextReader input, TimeProvider? clock = null) : IAskHost
{
    private const long BytesMax = 64 * 1024 * 1024;

    private readonly Dictionary<BookPlace, YardBook> open = [];

    public Outcome<string> ReadFile(string what, string path)
    {
        if (path == "-")
        {
            return input.ReadToEnd();
        }

        var file = new FileInfo(path);
        if (!file.Exists)
        {
            return new Refusal(what, path, "a file that exists, or - for standard input");
        }

        return file.Length > BytesMax ? new Refusal(what, path, "a file of at most 64 MiB") : File.ReadAllText(path);
    }

    public Outcome<YardBook> OpenBook(string what, BookPlace? place, bool make)
    {
        var where = place ?? BookPlace.Usual;
        if (open.TryGetValue(where, out var known))
        {
            return known;
        }

        if (where is BookPlace.InFile { Path: var path } && !make && !File.Exists(path))
        {
            return new Refusal(what, path, "a file with a book; \"boardwright demo\" makes a demonstration yard, \"boardwright import\" a yard from tables");
        }

        try
        {
            var book = Open(where);
            _ = where is BookPlace.InMemory ? DemonstrationYard.OpenIn(book) : book;
            return open[where] = book;
        }
        catch (Exception fault) when (fault is DbException or IOException or UnauthorizedAccessException || fault.InnerException is DbException)
        {
            return new Refusal(what, where.ToString()!, $"a book that can be opened; the database says: {(fault.InnerException ?? fault).Message.ReplaceLineEndings(" ").Trim()}");
        }
    }

    public Outcome<string> ReplaceBook(string what, BookPlace place, IReadOnlyList<Entry> entries)
    {
        open.Remove(place);
        return place is BookPlace.InFile { Path: var path }
            ? SqliteBook.Replace(path, entries)
            : new Refusal(what, place.ToString()!, "a book in a file; for a server, make an empty database and restore into that one");
    }

    private YardBook Open(BookPlace place) => new(
        place switch
        {
            BookPlace.InFile { Path: var path } => SqliteBook.Open(Made(path)),
            BookPlace.OnServer { Connection: var connection } => PostgresBook.Open(connection),
            BookPlace.InMemory => new MemoryBookStore(),
            _ => throw new InvalidOperationException("A book is in a file, on a server or in memory."),
        },
        clock ?? TimeProvider.System);

    private static string Made(string path)
    {
        if (Path.GetDirectoryName(path) is { Length: > 0 } folder)
        {
            Directory.CreateDirectory(folder);
        }

        return path;
    }
}
