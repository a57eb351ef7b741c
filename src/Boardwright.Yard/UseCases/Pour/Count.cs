using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes what is left of one part of a resin, by lot.</summary>
public static class PourCount
{
    /// <param name="book">The book.</param>
    /// <param name="resin">Its name in the book.</param>
    /// <param name="part">A or B.</param>
    /// <param name="kilograms">On hand, kg.</param>
    /// <param name="lot">On the can.</param>
    /// <param name="expires">Use by, as year-month-day; empty when the can does not say.</param>
    /// <param name="by">Who counted.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string? resin, string? part, string? kilograms, string? lot, string? expires, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        if (resin is null || !book.State.Resins.ContainsKey(resin))
            read.Refuse("Resin", resin, $"one of {string.Join(", ", book.State.Resins.Keys)}");
        if (!Enum.TryParse<ResinPart>(part, out var which) || !Enum.IsDefined(which))
            read.Refuse("Part", part, "A or B");
        var mass = read.Mass("On hand, kg", kilograms);
        var can = read.Named("Lot", lot, "the lot on the can");
        DateOnly? day = null;
        if (!string.IsNullOrWhiteSpace(expires))
        {
            if (DateOnly.TryParseExact(expires.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var read10))
                day = read10;
            else
                read.Refuse("Use by", expires, "a date as year-month-day, such as 2027-06-30");
        }

        var who = read.By(book.State, by);
        return read.Then(() => key.Write(book, who, new ResinCounted(resin!, which, mass.Kilograms, can, day), new Dictionary<string, string>(StringComparer.Ordinal) { ["kg"] = kilograms! }));
    }
}
