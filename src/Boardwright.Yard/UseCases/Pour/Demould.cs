using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes that a table came out of its mould, and what was seen: hard, or soft where.</summary>
public static class PourDemould
{
    /// <summary>What may be seen, in words the advice understands.</summary>
    public static IReadOnlyList<string> Sights { get; } = ["hard everywhere", "thin edge soft, centre hard", "soft all over", "soft patches between hard resin"];

    /// <param name="book">The book.</param>
    /// <param name="tag">The pour's.</param>
    /// <param name="sight">One of <see cref="Sights"/>.</param>
    /// <param name="more">Anything else seen: bubbles, sinking, gaps.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, string? sight, string? more, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        if (sight is null || !Sights.Contains(sight))
            read.Refuse("What was seen", sight, string.Join("; ", Sights));
        if (book.State.Pours.TryGetValue(tag, out var pour) && pour.PouredAt is null)
            read.Refuse(tag, "not poured", "a table that was poured");
        var who = read.By(book.State, by);
        return read.Then(() => key.Write(book, who, new Demoulded(tag, string.IsNullOrWhiteSpace(more) ? sight! : $"{sight}; {more.Trim()}")));
    }
}
