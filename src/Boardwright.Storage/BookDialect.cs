using System.Data.Common;

namespace Boardwright.Storage;

/// <summary>What differs between databases.</summary>
public abstract class BookDialect
{
    /// <summary>True when an insert failed because the number or the id is there already.</summary>
    public abstract bool IsTaken(DbException fault);

    /// <summary>Faults the database finds in its own files, in words.</summary>
    public abstract IEnumerable<string> Integrity(BookContext context);

    /// <summary>Called before the tables of an existing book are changed.</summary>
    public virtual void BeforeMigrating(BookContext context, string migration)
    {
    }
}
