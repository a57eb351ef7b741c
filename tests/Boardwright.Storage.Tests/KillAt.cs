using System.Data.Common;
using System.Diagnostics;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Boardwright.Storage.Tests;

/// <summary>When in an act a writer is killed.</summary>
public enum KillMoment
{
    /// <summary>An entry of the act is in, the next is not.</summary>
    Inserting,

    /// <summary>All entries are in, and not yet committed.</summary>
    Committing,

    /// <summary>The commit is done, and nobody was told.</summary>
    Committed,
}

/// <summary>Kills its own process at a moment of an act, as a power cut would: nothing is closed, nothing is said.</summary>
/// <remarks>Killed from outside after some milliseconds, a busy machine decides what is tested, and whether the writer had begun at all.</remarks>
internal sealed class KillAt(KillMoment moment) : DbCommandInterceptor, IDbTransactionInterceptor
{
    public bool IsArmed { get; set; }

    public override int NonQueryExecuted(DbCommand command, CommandExecutedEventData eventData, int result)
    {
        Take(KillMoment.Inserting, command.CommandText.Contains("INSERT INTO", StringComparison.Ordinal));
        return result;
    }

    public override DbDataReader ReaderExecuted(DbCommand command, CommandExecutedEventData eventData, DbDataReader result)
    {
        Take(KillMoment.Inserting, command.CommandText.Contains("INSERT INTO", StringComparison.Ordinal));
        return result;
    }

    public InterceptionResult TransactionCommitting(DbTransaction transaction, TransactionEventData eventData, InterceptionResult result)
    {
        Take(KillMoment.Committing);
        return result;
    }

    public void TransactionCommitted(DbTransaction transaction, TransactionEndEventData eventData) => Take(KillMoment.Committed);

    private void Take(KillMoment now, bool counts = true)
    {
        if (!IsArmed || !counts || now != moment)
            return;
        using var self = Process.GetCurrentProcess();
        self.Kill();
        Thread.Sleep(Timeout.Infinite);
    }
}
