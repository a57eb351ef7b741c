using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Boardwright.Storage.Sqlite;

/// <summary>A book of record waits for the disk: a commit that was answered survives a power cut.</summary>
internal sealed class FullSynchronous : DbConnectionInterceptor
{
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA synchronous=FULL";
        command.ExecuteNonQuery();
    }

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        ConnectionOpened(connection, eventData);
        return Task.CompletedTask;
    }
}
