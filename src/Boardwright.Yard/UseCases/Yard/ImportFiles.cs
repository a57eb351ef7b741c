using System.Text;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Tables;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The files of an import: tables by name, and the whole log of an exported book where it lies beside them.</summary>
/// <param name="Folder">Where they are.</param>
/// <param name="Tables">Names and texts of the tables.</param>
/// <param name="Log">The whole log, if there is one.</param>
public sealed record ImportFiles(string Folder, IReadOnlyList<(string Name, string Text)> Tables, string? Log)
{
    /// <summary>Names a table may have.</summary>
    public static IReadOnlyList<string> Names => [.. YardTables.All.Select(table => table.Name + ".csv")];

    /// <summary>Files that look like a table and have not its name, or all of them where none is a table: they would be left out without a word.</summary>
    public IReadOnlyList<Refusal> Misnamed
    {
        get
        {
            var unknown = Tables.Select(table => Path.GetFileName(table.Name)).Where(name => YardTables.For(name) is null).ToList();
            var meant = unknown.Select(name => (Name: name, Near: Near(name.Split('.')[0]))).Where(file => file.Near is not null).ToList();
            return meant.Count > 0 ? [.. meant.Select(file => new Refusal(file.Name, "a table of that name", $"{file.Near}.csv? Otherwise take it out of the folder"))]
                : unknown.Count == Tables.Count && Log is null ? [new Refusal("FOLDER|FILE", string.Join(", ", unknown), $"tables named {string.Join(", ", Names)}; logs.2025.csv is a table of logs too")]
                : [];
        }
    }

    /// <summary>The files of a folder, or one file; refused when there is none.</summary>
    public static Outcome<ImportFiles> Of(string path)
    {
        if (File.Exists(path))
            return new ImportFiles(Path.GetDirectoryName(path) ?? "", [(path, File.ReadAllText(path))], null);
        if (!Directory.Exists(path))
            return new Refusal("FOLDER|FILE", path, "a folder or file that exists");

        var tables = Directory.EnumerateFiles(path, "*.csv").Order(StringComparer.Ordinal).Select(file => (file, File.ReadAllText(file))).ToList();
        var log = Path.Combine(path, Import.LogFile);
        return tables.Count == 0 && !File.Exists(log)
            ? new Refusal("FOLDER|FILE", path, "a folder with at least one table (.csv)")
            : new ImportFiles(path, tables, File.Exists(log) ? File.ReadAllText(log) : null);
    }

    /// <summary>Writes the rows kept out, with why, into a folder beside the tables, each under the name of its table; gives that folder.</summary>
    public string PutAside(string folder, CheckedTables found)
    {
        ArgumentNullException.ThrowIfNull(found);
        var target = Path.Combine(Folder, folder);
        Directory.CreateDirectory(target);
        foreach (var file in found.RefusedLines.GroupBy(row => row.File))
        {
            var text = Tables.Single(table => Path.GetFileName(table.Name) == file.Key).Text;
            if (CsvTable.Read(file.Key, text) is not Outcome<CsvTable>.Done(var table))
                continue;

            var lines = file.Select(row => row.Line).ToHashSet();
            var rows = new StringBuilder(CsvText.Line([.. table.Columns, "#why"]));
            foreach (var row in table.Rows.Where(row => lines.Contains(row.Line)))
                rows.Append(CsvText.Line([.. table.Columns.Select(row.Text), Why(found, file.Key, row.Line)]));
            File.WriteAllText(Path.Combine(target, file.Key), rows.ToString());
        }

        return target;
    }

    private static string? Near(string name) =>
        YardTables.All.FirstOrDefault(table => name.StartsWith(table.Name + "-", StringComparison.OrdinalIgnoreCase) || name.StartsWith(table.Name + "_", StringComparison.OrdinalIgnoreCase) || name.StartsWith(table.Name + " ", StringComparison.OrdinalIgnoreCase))?.Name
        ?? NearestWord.Of(name, YardTables.All.Select(table => table.Name));

    private static string Why(CheckedTables found, string file, int line)
    {
        var here = $"{file}, line {line}, ";
        return string.Join("; ", found.Refused.Where(fault => fault.What.StartsWith(here, StringComparison.Ordinal)).Select(fault => (fault with { What = fault.What[here.Length..] }).ToString()));
    }
}
