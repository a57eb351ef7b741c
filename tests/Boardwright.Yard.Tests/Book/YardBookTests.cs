using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Tests.Book;

public sealed class YardBookTests
{
    [Fact]
    public void Entry_sent_twice_is_kept_once_and_the_kept_one_is_returned()
    {
        var yard = new SmallYard();
        var sent = new NewEntry("Tam", SmallYard.Log("L-001"), SmallYard.Noon, Id: Guid.CreateVersion7());

        var first = Written(yard.Book.Write([sent]));
        var second = Written(yard.Book.Write([sent, new NewEntry("Tam", SmallYard.Log("L-002"), SmallYard.Noon, Id: Guid.CreateVersion7())]));
        var third = Written(yard.Book.Write([sent, sent]));

        Assert.Equal(first[0], second[0]);
        Assert.Equal(2, second[1].Number);
        Assert.Equal([first[0], first[0]], third);
        Assert.Equal(2, yard.Store.ReadAfter(0).Count);
    }

    [Fact]
    public void Late_entries_of_a_phone_without_signal_are_read_in_the_order_things_happened()
    {
        var yard = SmallYard.WithKiln();
        yard.Done(SmallYard.Noon.AddDays(-1.0), SmallYard.Stack("S-01"));
        yard.Done(SmallYard.Noon.AddHours(-1.0), new StackMoved("S-01", "shed A"));

        yard.Done(SmallYard.Noon.AddHours(-3.0), new StackMoved("S-01", "row 1"));

        Assert.Equal("shed A", yard.Book.State.Stacks["S-01"].Place);
    }

    [Fact]
    public void Small_end_past_the_throat_is_refused_and_centimetres_are_offered()
    {
        var yard = SmallYard.WithKiln();
        var typed = new Dictionary<string, string> { ["small_end_a_mm"] = "51in" };

        var refusal = yard.Refused(new NewEntry("Tam", SmallYard.Log("L-037", inches: 51.0), AsEntered: typed))[0];

        Assert.Equal(("small_end_a_mm", "51in"), (refusal.What, refusal.Given));
        Assert.Contains("36 in", refusal.Accepted, StringComparison.Ordinal);
        Assert.Contains("51 cm (20 in)", refusal.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void One_refused_entry_keeps_all_of_a_write_out()
    {
        var yard = new SmallYard();

        yard.Refused(new NewEntry("Tam", SmallYard.Log("L-001")), new NewEntry("Tam", new EndCoated("L-404")));

        Assert.Empty(yard.Store.ReadAfter(0));
        Assert.Empty(yard.Book.State.Logs);
    }

    [Fact]
    public void Check_names_the_entries_that_fail_and_those_that_hang_on_them()
    {
        var yard = SmallYard.WithKiln();

        var why = yard.Book.Check([
            new("Tam", SmallYard.Log("L-001")),
            new("Tam", SmallYard.Log("L-002", inches: 51.0)),
            new("Tam", new EndCoated("L-002")),
            new("Tam", new EndCoated("L-001"))]);

        Assert.Equal([true, false, false, true], why.Select(w => w is null));
    }

    [Fact]
    public void Time_ahead_of_the_clock_is_asked_about()
    {
        var yard = new SmallYard();

        Assert.Equal("happened_at", yard.Refused(new NewEntry("Tam", SmallYard.Log("L-001"), SmallYard.Noon.AddDays(3.0)))[0].What);
    }

    [Fact]
    public void Today_is_the_demonstration_day_where_there_is_one()
    {
        var yard = new SmallYard();
        Assert.Equal(new DateOnly(2026, 11, 2), yard.Book.State.Today);

        yard.Done(new DayTurned(new(2027, 1, 5)));

        Assert.Equal(new DateOnly(2027, 1, 5), yard.Book.State.Today);
        Assert.True(yard.Book.State.IsDemonstration);
        Assert.Equal(new DateTime(2027, 1, 5, 12, 0, 0), yard.Book.Now);
    }

    [Fact]
    public void What_another_program_wrote_is_seen_and_written_after()
    {
        var store = new MemoryBookStore();
        var (one, other) = (new SmallYard(store), new SmallYard(store));
        one.Done(SmallYard.Log("L-001"));

        other.Done(SmallYard.Log("L-002"));

        Assert.Equal(["L-001", "L-002"], one.Book.State.Logs.Keys);
        Assert.Empty(one.Book.Verify());
    }

    [Fact]
    public void Many_writers_leave_no_gap_and_no_double()
    {
        var store = new MemoryBookStore();
        Parallel.For(0, 4, writer =>
        {
            var book = new YardBook(store, new StandingClock(SmallYard.Noon));
            for (var i = 0; i < 20; i++)
                Written(book.Write("Tam", SmallYard.Log($"L-{writer}{i:00}")));
        });

        Assert.Empty(store.Verify());
        Assert.Equal(80, YardState.Of(store.ReadAfter(0), new(2026, 11, 2)).Logs.Count);
    }

    [Fact]
    public void Entry_reads_back_from_its_line_as_it_was()
    {
        var entry = new SmallYard().Done(SmallYard.Log("L-001"))[0] with { AsEntered = new Dictionary<string, string> { ["small_end_a_mm"] = "16in" } };

        var line = BookJson.Line(entry);

        Assert.Equal(line, BookJson.Line(BookJson.ReadEntry(line)));
        Assert.Equal(entry.Fact, BookJson.ReadEntry(line).Fact);
        Assert.Contains("\"kind\":\"log_received\"", line, StringComparison.Ordinal);
        Assert.Contains("\"small_end_a_mm\":406.4", line, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_kind_of_fact_has_a_name_of_its_own()
    {
        var facts = typeof(Fact).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Fact)) && !t.IsAbstract).ToHashSet();
        var named = typeof(Fact).GetCustomAttributes(typeof(System.Text.Json.Serialization.JsonDerivedTypeAttribute), false)
            .Cast<System.Text.Json.Serialization.JsonDerivedTypeAttribute>().ToList();

        Assert.Equal(facts, named.Select(n => n.DerivedType).ToHashSet());
        Assert.All(named, n => Assert.Equal(System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(n.DerivedType.Name), n.TypeDiscriminator));
    }

    private static IReadOnlyList<Entry> Written(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(outcome).Value;
}
