namespace Boardwright.Yard.Book;

/// <summary>Where the book is kept. Nothing in it is ever changed or removed.</summary>
public interface IBookStore
{
    /// <summary>Entries with a number above the given one, in order.</summary>
    IReadOnlyList<Entry> ReadAfter(long number);

    /// <summary>
    /// Adds entries in one transaction, all or none. False, with nothing kept, when somebody else wrote meanwhile
    /// (the first number is not the next one); the caller reads on and tries again.
    /// </summary>
    bool TryAppend(IReadOnlyList<Entry> entries);

    /// <summary>Faults found in what is kept, in words; empty when it is sound.</summary>
    IReadOnlyList<string> Verify();
}
