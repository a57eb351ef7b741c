using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Tables.Writing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A yard as plain files.</summary>
public static class Export
{
    public static Command Command { get; } = Command.Of("export", "", $"Writes the whole book as tables and as a log ({Import.LogFile}); import gives the same book back", Run) with
    {
        AtTerminalOnly = true,
        Argument = new("FOLDER", "where the files go; made when it is not there"),
        Options = [.. BookPlace.Options, Option.Flag("replace", "write over the files of an earlier export")],
        Examples = ["export data/exported --replace --yard demonstration"],
    };

    /// <summary>One table written.</summary>
    public sealed record Table(string File, int Rows);

    /// <summary>Facts of one kind that no table can hold.</summary>
    public sealed record InLog(string Kind, int Entries);

    public sealed record Answer(string Book, string Folder, int Entries, IReadOnlyList<Table> Tables, IReadOnlyList<InLog> InLogOnly);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var place = ask.BookPlace() ?? BookPlace.Usual;
        if (ask.Book() is not { } book)
            return ask.Refused<Answer>();

        var folder = ask.Argument!;
        var yard = book.State;
        var (tables, left) = YardExport.Of(yard);
        List<(string File, string Text)> files = [.. tables.Select(table => (table.Table + ".csv", table.Text)), (Import.LogFile, BookFile.Text(yard.Entries))];
        var standing = files.Select(file => Path.Combine(folder, file.File)).Where(File.Exists).ToList();
        if (standing.Count > 0 && !ask.Has("replace"))
            return new Refusal("FOLDER", folder, $"a folder without {Path.GetFileName(standing[0])}{(standing.Count > 1 ? $" and {standing.Count - 1} more files of these names" : "")}; --replace writes over them");

        try
        {
            Directory.CreateDirectory(folder);
            foreach (var (file, text) in files)
                WriteWhole(Path.Combine(folder, file), text);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new Refusal("FOLDER", folder, $"a folder that can be written: {fault.Message}");
        }

        return new Answer(place.ToString()!, folder, yard.Entries.Count, [.. tables.Select(table => new Table(table.Table + ".csv", table.Rows))], [.. left.Select(kind => new InLog(kind.Key, kind.Value))]);
    }

    // A file is there whole or as it was before.
    private static void WriteWhole(string path, string text)
    {
        File.WriteAllText(path + ".partial", text);
        File.Move(path + ".partial", path, overwrite: true);
    }
}
