using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Cli;

/// <summary>Fills an empty book with the demonstration yard.</summary>
public static class DemoStart
{
    /// <param name="book">An empty book.</param>
    /// <param name="folder">The demonstration's tables.</param>
    /// <param name="today">The day to show, moved to by whole weeks.</param>
    public static void Fill(YardBook book, string folder, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (DemoYard.Fill(book, folder, today) is Outcome<IReadOnlyList<Entry>>.Refused(var reasons))
        {
            throw new InvalidDataException($"The demonstration's tables do not fit: {string.Join("; ", reasons.Take(3))}");
        }
    }
}
