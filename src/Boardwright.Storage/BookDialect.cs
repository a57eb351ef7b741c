using System.Data.Common;

namespace Boardwright.Storage;

/// <summary>What differs between databases.</summary>
public abstract class BookDialect
{
    /// <summary>True when an insert failed because the number or the id is there already.</summary>
    public abstract bool IsTaken(DbException fault);

    /// <summary>Faults the database finds in its own files, in words.</summary>
    public abstract IEnumerable<string> Integrity(BookContext context);

    /// <summary>Called when a book is opened, before anything is asked of it; puts right what a killed program left half written.</summary>
    public virtual void BeforeReading(BookContext context)
    {
    }

    /// <summary>Keeps other programs from changing the tables of this book until it is disposed of, and clears what a killed one left.</summary>
    public virtual IDisposable? Alone(BookContext context) => null;

    /// <summary>Called before the tables of an existing book are changed.</summary>
    public virtual void BeforeMigrating(BookContext context, string migration)
    {
    }
}
