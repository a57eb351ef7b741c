using Boardwright.Yard.Book;

namespace Boardwright.Cli;

/// <summary>Fills an empty book with the demonstration yard.</summary>
public static class DemoStart
{
    public static void Fill(YardBook book, string folder, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(book);
    }
}
