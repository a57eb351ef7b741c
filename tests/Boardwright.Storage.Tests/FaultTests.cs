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

    [Fact]
    public async Task Killed_writer_leaves_whole_acts_only()
    {
        for (var round = 0; round < 4; round++)
        {
            using var database = new TestDatabase("sqlite");
            database.Open();
            using var child = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, ThisProgram) { Environment = { [KilledChild] = database.Target }, RedirectStandardOutput = true })!;
            await child.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
            await Task.Delay(13 * (round + 1), TestContext.Current.CancellationToken);
            child.Kill();
            await child.WaitForExitAsync(TestContext.Current.CancellationToken);

            var store = database.Open();
            Assert.Empty(store.Verify());
            var count = store.ReadAfter(0).Count;
            Assert.True(count > 0 && count % EntriesPerAct == 0, $"{count} entries, {EntriesPerAct} an act");
            Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(database.Book().Write([TestDatabase.Note("after")]));
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

    // The test program started again by the test above writes until it is killed.
    [ModuleInitializer]
    internal static void WriteUntilKilled()
    {
        if (Environment.GetEnvironmentVariable(KilledChild) is not { } path)
            return;
        var store = SqliteBook.Open(path);
        while (true)
        {
            store.TryAppend(TestDatabase.Notes(store, EntriesPerAct));
            Console.WriteLine("written");
        }
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
