using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.Commands;

/// <summary>What a command may reach outside itself: files and books named by the person who asks.</summary>
public interface IAskHost
{
    /// <summary>The text of a file; refused with <paramref name="what"/> when it cannot be read.</summary>
    Outcome<string> ReadFile(string what, string path);

    /// <summary>A book; refused with <paramref name="what"/> when there is none or it cannot be opened.</summary>
    /// <param name="what">The option that names it.</param>
    /// <param name="place">Where it is; null for the one usual here.</param>
    /// <param name="make">Whether an empty book is made where there is none.</param>
    Outcome<YardBook> OpenBook(string what, BookPlace? place, bool make) => new Refusal(what, $"{place}", "no book: none can be opened here");

    /// <summary>Puts a whole book in the place of one, in one step, and gives the name under which the old one is kept.</summary>
    Outcome<string> ReplaceBook(string what, BookPlace place, IReadOnlyList<Entry> entries) => new Refusal(what, $"{place}", "an empty book");
}
