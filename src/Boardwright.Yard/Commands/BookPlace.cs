using Boardwright.Quantities;

namespace Boardwright.Yard.Commands;

/// <summary>Where a book is kept, as a person names it.</summary>
public abstract record BookPlace
{
    /// <summary>The word for the demonstration yard in memory.</summary>
    public const string DemonstrationWord = "demonstration";

    /// <summary>The book's file in a data folder.</summary>
    public const string FileName = "yard.db";

    private BookPlace()
    {
    }

    /// <summary>A file of one book.</summary>
    public sealed record InFile(string Path) : BookPlace
    {
        public override string ToString() => Path;
    }

    /// <summary>A database of a PostgreSQL server, by its connection text.</summary>
    public sealed record OnServer(string Connection) : BookPlace
    {
        // A password in the text is never shown.
        public override string ToString() => "PostgreSQL, " + string.Join(';', Connection.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(part => part.StartsWith("Host", StringComparison.OrdinalIgnoreCase) || part.StartsWith("Database", StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>The demonstration yard, made in memory and gone when the program ends.</summary>
    public sealed record InMemory : BookPlace
    {
        public override string ToString() => DemonstrationWord + " (in memory: nothing is kept)";
    }

    /// <summary>The options by which a command names its book; the same words as serve.</summary>
    public static IReadOnlyList<Option> Options { get; } =
    [
        Option.Optional("data", "FOLDER", $"the book in a folder, FOLDER/{FileName} (default ./data)"),
        Option.Optional("yard", "DATABASE", $"instead: a book's file, a PostgreSQL connection text with Host=, or {DemonstrationWord} (in memory, nothing is kept)"),
    ];

    /// <summary>The book at a terminal where nobody names one.</summary>
    public static BookPlace Usual { get; } = OfFolder("data");

    /// <summary>The book of a data folder.</summary>
    public static BookPlace OfFolder(string folder) => new InFile(Path.Combine(folder, FileName));

    /// <summary>A book by the text of --yard.</summary>
    public static Outcome<BookPlace> Of(string what, string text) =>
        string.Equals(text, DemonstrationWord, StringComparison.OrdinalIgnoreCase) ? new InMemory()
        : text.Contains("Host=", StringComparison.OrdinalIgnoreCase) ? new OnServer(text)
        : text.Contains("://", StringComparison.Ordinal) ? new Refusal(what, text, "a connection text of names and values, such as \"Host=127.0.0.1;Database=yard;Username=yard\"")
        : text.Trim().Length == 0 ? new Refusal(what, text, Options[1].Help)
        : Directory.Exists(text) ? OfFolder(text)
        : (Outcome<BookPlace>)new InFile(text);
}
