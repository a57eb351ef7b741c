using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Book;

/// <summary>The demonstration yard, all of it invented: its tables must fill the book without one misfit and add up to what the scenario says.</summary>
public sealed class DemoYardTests
{
    private static readonly string Folder = DemonstrationBook.Folder;
    private static readonly Lazy<YardState> Loaded = new(() => DemonstrationBook.Yard);

    [Fact]
    public void Demonstration_fills_an_empty_book_without_a_misfit()
    {
        var yard = Loaded.Value;

        Assert.Empty(yard.Misfits);
        Assert.Equal((new DateOnly(2026, 11, 2), true), (yard.Today, yard.IsDemonstration));
        Assert.Equal((40, 13, 3, 2), (yard.Logs.Keys.Count(tag => tag.StartsWith('L')), yard.Orders.Values.Count(o => o.IsOpen), yard.Kilns.Count, yard.Boilers.Count));
    }

    [Fact]
    public void Stacks_add_up_to_their_cards()
    {
        var stacks = Loaded.Value.Stacks.Values.Where(s => s.Tag.StartsWith('S')).ToList();

        Assert.Equal((25, 13925.0), (stacks.Count, stacks.Sum(s => s.Footage.Count)));
    }

    [Fact]
    public void Every_stack_is_the_sum_of_the_logs_sawn_onto_it()
    {
        var yard = Loaded.Value;

        Assert.All(yard.Stacks.Values.Where(s => s.Tag.StartsWith('S')), stack =>
        {
            var into = stack.FromLogs.SelectMany(log => yard.Logs[log].Into).Where(i => i.Stack == stack.Tag).ToList();
            Assert.Equal((stack.FootageBuilt.Count, stack.Pieces), (into.Sum(i => i.Bf), into.Sum(i => i.Pieces)));
        });
    }

    [Fact]
    public void Price_paid_for_the_forty_logs_by_source()
    {
        var paid = Loaded.Value.Logs.Values.Where(l => l.Tag.StartsWith('L')).GroupBy(l => l.Source[0]).ToDictionary(g => g.Key, g => g.Sum(l => l.PaidMoney));

        Assert.Equal((190.00m, 71.00m, 395.25m, 461.00m), (paid['T'], paid['S'], paid['W'], paid['Y']));
    }

    [Fact]
    public void Meter_reading_of_the_cherry_is_corrected_for_cold_wood() =>
        Assert.InRange(Loaded.Value.Stacks["S-07"].Moisture!.Mean!.Value.Percent, 15.0 - 0.05, 15.0 + 0.05);

    [Fact]
    public void Samples_of_the_oak_charge_after_one_was_dropped()
    {
        var charge = Loaded.Value.Charges["C-61"];

        Assert.Equal(2808.2, charge.Samples.Find(s => s.Name == "4")!.CalculatedDry.Grams, 0.3);
        Assert.Equal(12.1, charge.SampleMean!.Value.Percent, 0.1);
        Assert.Equal(("2", "5"), (charge.Wettest!.Name, charge.Driest!.Name));
        Assert.Equal(14.1, charge.Wettest.Moisture.Percent, 0.1);
        Assert.Equal(9.8, charge.Driest.Moisture.Percent, 0.1);
    }

    [Fact]
    public void Pack_tallied_twice_stands_with_both_counts()
    {
        var pack = Loaded.Value.Packs["P-118"];

        Assert.True(pack.IsDisputed);
        Assert.Equal([("Bram", 36, 218.0), ("Pell", 35, 214.0)], pack.Tallies.Select(t => (t.By, t.Boards.Count, t.Footage.Count)));
        Assert.Equal((204.0, 198.0), (Loaded.Value.Packs["P-119"].Agreed!.Footage.Count, Loaded.Value.Packs["P-120"].Agreed!.Footage.Count));
    }

    [Fact]
    public void What_was_typed_stays_beside_the_figure()
    {
        var yard = Loaded.Value;
        var received = yard.Entry(yard.Logs["L-001"].History[0]);

        Assert.Equal(("15in", "8 ft 5 in"), (received.Typed("small_end_a_mm"), received.Typed("actual_length_m")));
    }

    [Fact]
    public void Weather_of_each_month_has_the_mean_of_its_normal()
    {
        var yard = Loaded.Value;

        Assert.All(Enumerable.Range(1, 10), month =>
        {
            var days = yard.Weather.Values.Where(d => d.Observed && d.Date.Year == 2026 && d.Date.Month == month).ToList();
            Assert.Equal(yard.Normals[month].MeanC, days.Average(d => d.MeanC), 0.1);
            Assert.Equal(yard.Normals[month].MeanRhPct, days.Average(d => d.MeanRhPct), 0.6);
        });
        Assert.Equal(-14.0, yard.Weather[new(2026, 11, 20)].MeanC);
    }

    [Theory]
    [InlineData("2027-06-17", "2027-06-14")]
    [InlineData("2026-11-01", "2026-10-26")]
    [InlineData("2025-01-06", "2025-01-06")]
    public void Dates_move_by_whole_weeks_to_the_real_day(string real, string monday)
    {
        var yard = Filled(DateOnly.Parse(real, null)).State;

        Assert.Empty(yard.Misfits);
        Assert.Equal(DateOnly.Parse(monday, null), yard.Today);
        Assert.Equal(yard.Today.AddDays(11), yard.Orders["O-301"].DueOn);
        Assert.Equal(DayOfWeek.Monday, yard.Today.DayOfWeek);
    }

    [Fact]
    public void Demonstration_is_never_mixed_with_real_wood()
    {
        var yard = new SmallYard();
        yard.Done(SmallYard.Log("L-900"));

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(DemoYard.Fill(yard.Book, Folder));
    }

    [Fact]
    public void Season_plays_to_the_end_of_the_year_with_all_its_events()
    {
        var book = Filled(null);

        var played = Assert.IsType<Outcome<IReadOnlyList<DemoYard.PlayedDay>>.Done>(DemoYard.PlayForward(book, Folder, new(2026, 12, 31))).Value;

        Assert.Empty(played.SelectMany(day => day.Left).Select(left => $"{left.Line.HappenedAt} {left.Line.Event}: {left.Why}"));
        Assert.Empty(book.State.Misfits);
        var told = DemoYard.Season(Folder, 0).Select(line => line.Event).OfType<string>().ToHashSet();
        Assert.Equal(Enumerable.Range(1, 20).Select(n => $"E-{n:00}").ToHashSet(), told);
        Assert.Equal(new DateOnly(2026, 12, 31), book.State.Today);
        Assert.False(book.State.Orders["O-301"].IsOpen);
        Assert.True(book.State.Weather[new(2026, 12, 30)].Observed);
    }

    private static YardBook Filled(DateOnly? today)
    {
        var book = new YardBook(new MemoryBookStore(), new StandingClock(new DateTime(2026, 11, 2, 16, 0, 0)));
        return DemoYard.Fill(book, Folder, today) switch
        {
            Outcome<IReadOnlyList<Entry>>.Done => book,
            Outcome<IReadOnlyList<Entry>>.Refused(var reasons) => throw new InvalidOperationException(string.Join("\n", reasons.Take(20))),
            var other => throw new InvalidOperationException($"{other}"),
        };
    }

    [Fact]
    public void Who_opens_the_demonstration_early_can_still_label_what_was_tallied_at_eleven()
    {
        var early = new YardBook(new MemoryBookStore(DemonstrationBook.Entries(DemonstrationBook.FirstDay)), new StandingClock(DemonstrationBook.FirstDay.ToDateTime(new(7, 14))));

        var written = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(early.Write("Pell", new PackLabelled("P-119"))).Value;

        Assert.True(written[0].HappenedAt >= early.State.Entries.Where(entry => entry.Fact is PackTallied { Pack: "P-119" }).Max(entry => entry.HappenedAt));
    }
}
