using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes that resin went into a mould.</summary>
public static class PourFill
{
    /// <param name="book">The book.</param>
    /// <param name="tag">The pour's.</param>
    /// <param name="depth">Depth poured, mm; empty for the planned one.</param>
    /// <param name="by">Who poured.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, string? depth, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var poured = read.Millimetres("Depth poured, mm", depth);
        if (poured is { Millimetres: < 1.0 or > 500.0 })
            read.Refuse("Depth poured, mm", depth, "1 to 500 mm");
        if (book.State.Pours.TryGetValue(tag, out var pour))
            PourSign.Demand(pour, read);
        if (pour is { Mixes.Count: 0 })
            read.Refuse(tag, "nothing weighed yet", "a pour whose mix was weighed and written: its lots and ratio have to be known");
        var who = read.By(book.State, by);
        return read.Then(() => key.Write(book, who, new Poured(tag, poured?.Millimetres)));
    }
}
