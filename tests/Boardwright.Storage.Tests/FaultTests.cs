using System.Data.Common;
using System.Diagnostics;
using System.Runtime.CompilerServices;
using Boardwright.Quantities;
using Boardwright.Storage.Sqlite;
using Boardwright.Yard.Book;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Boardwright.Storage.Tests;

/// <summary>Whatever fails while writing, the reopened book is one of the legal states: before the act, or after it.</summary>
public sealed class FaultTests
{
    private const string KilledChild = "BOARDWRIGHT_TEST_WRITE_UNTIL_KILLED";
    private const int EntriesPerAct = 3;
    private const int CutBytes = 1000;

    public static TheoryData<string> Providers => TestDatabase.Providers;

    [Theory, MemberData(nameof(Providers))]
    public void Failure_at_any_step_of_a_write_leaves_all_of_it_or_nothing(string provider)
    {
        using var database = new TestDatabase(provider);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(database.Book().Write([TestDatabase.Note("before")]));
        var before = TestDatabase.Lines(database.Open());
        var (failures, kept) = (0, 0);
        for (var step = 1; ; step++)
        {
            var fault = new FailAt();
            var book = database.Book(fault);
            _ = book.State;
            fault.Step = step;

            var failed = Failed(() => book.Write([TestDatabase.Note("one"), TestDatabase.Note("two"), TestDatabase.Note("three")]));

            fault.Step = 0;
            var after = TestDatabase.Lines(database.Open());
            Assert.True(after.Count == before.Count || after.Count == before.Count + 3, $"step {step}: {before.Count} entries became {after.Count}");
            Assert.Equal(before, after.Take(before.Count));
            Assert.Empty(database.Open().Verify());

            // The book that saw the failure tells the same as the store.
            Assert.Equal(after.Count, book.State.Entries.Count);
            if (!failed)
                break;
            failures++;
            kept += after.Count > before.Count ? 1 : 0;
            before = after;
        }

        // At least reading on, the insert and the commit were made to fail; the failure after the commit kept the act.
        Assert.True(failures >= 4, $"{failures} steps were made to fail");
        Assert.Equal(1, kept);
    }

    [Theory]
    [InlineData(KillMoment.Inserting, 1)]
    [InlineData(KillMoment.Committing, 1)]
    [InlineData(KillMoment.Committed, 2)]
    public async Task Killed_writer_leaves_whole_acts_only(KillMoment moment, int wholeActs)
    {
        using var database = new TestDatabase("sqlite");
        database.Open();
        using var child = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, ThisProgram) { Environment = { [KilledChild] = $"{moment} {database.Target}" }, RedirectStandardError = true })!;
        var said = await child.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await child.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(child.ExitCode != 0 && said.Length == 0, $"the writer was not killed but ended with {child.ExitCode}: {said}");

        var store = database.Open();
        Assert.Empty(store.Verify());
        Assert.Equal(wholeActs * EntriesPerAct, store.ReadAfter(0).Count);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(database.Book().Write([TestDatabase.Note("after")]));
    }

    /// <summary>What a power cut leaves of the write-ahead log is any part of what was being written to it.</summary>
    [Fact]
    public void Log_cut_off_anywhere_in_an_act_leaves_whole_acts_only()
    {
        using var database = new TestDatabase("sqlite");
        var store = database.Open();
        store.TryAppend(TestDatabase.Notes(store, EntriesPerAct));
        var (file, before) = (Shared(database.Target), Shared(database.Target + "-wal").Length);
        store.TryAppend(TestDatabase.Notes(store, EntriesPerAct));
        var log = Shared(database.Target + "-wal");
        Assert.Equal(file, Shared(database.Target));
        Assert.True(log.Length > before, $"the act is not in the log: {before} and {log.Length} bytes");

        for (var length = before; length <= log.Length; length = length < log.Length ? Math.Min(length + CutBytes, log.Length) : length + 1)
        {
            using var cut = new TestDatabase("sqlite");
            File.WriteAllBytes(cut.Target, file);
            File.WriteAllBytes(cut.Target + "-wal", log[..length]);

            var left = cut.Open();

            Assert.Equal((length, length < log.Length ? EntriesPerAct : 2 * EntriesPerAct), (length, left.ReadAfter(0).Count));
            Assert.Empty(left.Verify());
        }
    }

    [Fact]
    public void Lock_left_by_a_program_killed_while_it_made_the_tables_is_cleared()
    {
        using var database = new TestDatabase("sqlite");
        database.Execute("CREATE TABLE \"__EFMigrationsLock\" (\"Id\" INTEGER NOT NULL CONSTRAINT \"PK___EFMigrationsLock\" PRIMARY KEY, \"Timestamp\" TEXT NOT NULL)");
        database.Execute("INSERT INTO \"__EFMigrationsLock\" VALUES (1, '2026-11-02 07:00:00+00:00')");

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(database.Book().Write([TestDatabase.Note("first")]));

        Assert.Empty(database.Open().Verify());
    }

    // Started as "dotnet PROGRAM.dll" the process is dotnet itself and needs the program named; started as a program of its own it needs nothing.
    private static IEnumerable<string> ThisProgram =>
        Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet" ? [typeof(FaultTests).Assembly.Location] : [];

    // The test program started again by the test above writes one whole act, and is killed in the second.
    [ModuleInitializer]
    internal static void WriteUntilKilled()
    {
        if (Environment.GetEnvironmentVariable(KilledChild) is not { } asked)
            return;
        var (moment, path) = (Enum.Parse<KillMoment>(asked.Split(' ', 2)[0]), asked.Split(' ', 2)[1]);
        var kill = new KillAt(moment);
        var store = SqliteBook.Open(path, kill);
        store.TryAppend(TestDatabase.Notes(store, EntriesPerAct));
        var second = TestDatabase.Notes(store, EntriesPerAct);
        kill.IsArmed = true;
        store.TryAppend(second);
        Environment.FailFast("nobody killed the writer");
    }

    // A file somebody has open.
    private static byte[] Shared(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    private static bool Failed(Action act)
    {
        try
        {
            act();
            return false;
        }
        catch (Exception fault) when (fault is IOException || fault.InnerException is IOException)
        {
            return true;
        }
    }
}

/// <summary>Makes the nth step that touches the database fail, as a disk or a cable would.</summary>
internal sealed class FailAt : DbCommandInterceptor, IDbTransactionInterceptor
{
    private int taken;

    /// <summary>Which step fails; 0 for none.</summary>
    public int Step
    {
        get;
        set
        {
            field = value;
            taken = 0;
        }
    }

    public override InterceptionResult<DbDataReader> ReaderExecuting(DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result)
    {
        Take();
        return result;
    }

    public override DbDataReader ReaderExecuted(DbCommand command, CommandExecutedEventData eventData, DbDataReader result)
    {
        Take();
        return result;
    }

    public override InterceptionResult<int> NonQueryExecuting(DbCommand command, CommandEventData eventData, InterceptionResult<int> result)
    {
        Take();
        return result;
    }

    public InterceptionResult TransactionCommitting(DbTransaction transaction, TransactionEventData eventData, InterceptionResult result)
    {
        Take();
        return result;
    }

    public void TransactionCommitted(DbTransaction transaction, TransactionEndEventData eventData) => Take();

    private void Take()
    {
        if (Step > 0 && ++taken == Step)
            throw new IOException($"made to fail at step {taken}");
    }
}
