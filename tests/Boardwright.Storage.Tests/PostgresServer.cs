using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Npgsql;

[assembly: AssemblyFixture(typeof(Boardwright.Storage.Tests.PostgresServer))]

namespace Boardwright.Storage.Tests;

/// <summary>A PostgreSQL server of its own for the tests, started on first use from the installed programs and stopped at the end.</summary>
public sealed class PostgresServer : IDisposable
{
    private static readonly Lock Gate = new();
    private static PostgresServer? current;
    private static int databases;

    private string? folder;
    private string binaries = "";
    private int port;

    public PostgresServer() => current = this;

    /// <summary>A connection to an empty database.</summary>
    public static string NewDatabase()
    {
        lock (Gate)
        {
            var server = current ?? throw new InvalidOperationException("The fixture was not made.");
            server.Start();
            var name = $"book_{++databases}";
            using var connection = new NpgsqlConnection(server.Connection("postgres"));
            connection.Open();
            using var command = new NpgsqlCommand($"CREATE DATABASE {name}", connection);
            command.ExecuteNonQuery();
            return server.Connection(name);
        }
    }

    public void Dispose()
    {
        if (folder is null)
            return;
        NpgsqlConnection.ClearAllPools();
        Run("pg_ctl", "-D", Path.Combine(folder, "data"), "-m", "immediate", "stop");
        Directory.Delete(folder, recursive: true);
        folder = null;
    }

    private string Connection(string database) => $"Host=127.0.0.1;Port={port};Username=yard;Database={database};Include Error Detail=true";

    private void Start()
    {
        if (folder is not null)
            return;
        binaries = Directory.Exists("/usr/lib/postgresql")
            ? Directory.EnumerateDirectories("/usr/lib/postgresql").OrderByDescending(d => d, StringComparer.Ordinal).Select(d => Path.Combine(d, "bin")).FirstOrDefault(d => File.Exists(Path.Combine(d, "initdb"))) ?? ""
            : "";
        if (binaries.Length == 0)
        {
            throw new InvalidOperationException(
                "The storage tests run on SQLite and on PostgreSQL, and no PostgreSQL server programs are in /usr/lib/postgresql/*/bin. Install them: apt-get install postgresql");
        }

        folder = Directory.CreateTempSubdirectory("boardwright-pg-").FullName;
        port = FreePort();
        if (Environment.UserName == "root")
            Execute("chown", "postgres:", folder);
        Run("initdb", "-D", Path.Combine(folder, "data"), "-A", "trust", "-U", "yard", "--no-sync", "-E", "UTF8", "--locale=C.UTF-8");
        Run("pg_ctl", "-D", Path.Combine(folder, "data"), "-w", "-s", "-l", Path.Combine(folder, "log"), "-o",
            $"-c listen_addresses=127.0.0.1 -p {port} -k {folder} -c fsync=off -c synchronous_commit=off -c full_page_writes=off -c max_connections=60", "start");
    }

    // The server refuses to run as root; Debian's package brings a user for it.
    private void Run(string program, params string[] arguments)
    {
        var path = Path.Combine(binaries, program);
        if (Environment.UserName == "root")
            Execute("runuser", ["-u", "postgres", "--", path, .. arguments]);
        else
            Execute(path, arguments);
    }

    private static void Execute(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = "/", RedirectStandardOutput = true })!;
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}."));
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
