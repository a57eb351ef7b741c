using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>The demonstration yard as it comes with the program, on the day its tables were written for.</summary>
public static class DemonstrationYard
{
    private static readonly Lazy<YardState> Made = new(() => OpenIn(new YardBook(new MemoryBookStore(), TimeProvider.System)).State);

    /// <summary>The folder of its tables, beside the program.</summary>
    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "demo");

    /// <summary>The yard, for reading; made once.</summary>
    public static YardState State => Made.Value;

    /// <summary>Fills an empty book with it.</summary>
    /// <exception cref="InvalidDataException">The tables beside the program are not those it was built with.</exception>
    public static YardBook OpenIn(YardBook book) => DemoYard.Fill(book, Folder) is Outcome<IReadOnlyList<Entry>>.Refused(var reasons)
        ? throw new InvalidDataException($"The demonstration's tables do not fit: {string.Join("; ", reasons.Take(3))}")
        : book;
}
