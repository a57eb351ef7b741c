using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Lineage;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.Tests.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests;

/// <summary>Wood is in one place at a time: on its stack, in a pack, or gone.</summary>
public sealed class CustodyTests
{
    private static readonly DateTime Tallied = SmallYard.Noon.AddDays(-20.0);

    [Fact]
    public void Tallied_boards_are_off_their_stack()
    {
        var yard = Packed();

        Assert.Equal(900.0, yard.Book.State.Stacks["S-1"].Footage.Count, 1e-9);
        Assert.Equal((100.0, "P-1"), (yard.Book.State.Packs["P-1"].Footage.Count, Assert.Single(yard.Book.State.Stacks["S-1"].IntoPacks)));
    }

    [Fact]
    public void Second_count_changes_what_is_left_by_its_difference_and_only_when_it_holds()
    {
        var yard = Packed();
        yard.Done(Tallied.AddHours(1.0), Tally("P-1", 99, by: "second"));
        Assert.Equal(900.0, yard.Book.State.Stacks["S-1"].Footage.Count, 1e-9);

        yard.Done(Tallied.AddHours(2.0), new TallyChosen("P-1", yard.Book.State.Packs["P-1"].Tallies[1].Entry, "one board was called twice"));

        Assert.Equal(901.0, yard.Book.State.Stacks["S-1"].Footage.Count, 1e-9);
    }

    [Fact]
    public void Count_of_the_stack_says_what_is_left_whatever_the_packs_are_found_to_hold_later()
    {
        var yard = Packed();
        yard.Done(Tallied.AddHours(1.0), Tally("P-1", 99, by: "second"), new StackCounted("S-1", 850.0));
        yard.Done(Tallied.AddHours(2.0), new TallyChosen("P-1", yard.Book.State.Packs["P-1"].Tallies[1].Entry, "one board was called twice"));

        Assert.Equal(850.0, yard.Book.State.Stacks["S-1"].Footage.Count, 1e-9);
        Closes(yard, "S-1");
    }

    [Fact]
    public void Stack_with_nothing_left_cannot_be_loaded_planned_or_packed()
    {
        var yard = Packed(boards: 100, bf: 100.0);
        var stack = yard.Book.State.Stacks["S-1"];

        Assert.False(stack.IsHere);
        Assert.Contains("used up", yard.Refused(new ChargeLoaded("D-1", "K1", ["S-1"], 7.0)).Accepted, StringComparison.Ordinal);
        Assert.Contains("nothing is left", yard.Refused(Tally("P-2", 10)).Accepted, StringComparison.Ordinal);
        Assert.DoesNotContain(ChargeLoad.Loadable(yard.Book.State), loadable => loadable.Tag == "S-1");
    }

    [Fact]
    public void Boards_found_by_a_count_are_what_the_stack_was_before()
    {
        var yard = Packed(boards: 100, bf: 100.0);

        yard.Done(Tallied.AddHours(1.0), new StackCounted("S-1", 12.0));

        Assert.Equal((StackStage.AirDrying, 12.0), (yard.Book.State.Stacks["S-1"].Stage, yard.Book.State.Stacks["S-1"].Footage.Count));
        Closes(yard, "S-1");
    }

    [Fact]
    public void Kiln_afterwards_takes_only_the_rest_and_changes_neither_cost_nor_tag_of_the_pack()
    {
        var yard = Packed();
        var (costBefore, tagBefore) = (Cost(yard, "P-1"), TagWords(yard, "P-1"));

        yard.Done(Tallied.AddDays(1.0), new ChargeLoaded("D-1", "K1", ["S-1"], 7.0));
        yard.Done(Tallied.AddDays(8.0), new ChargeUnloaded("D-1", [new("S-1", 870.0, "store", McMeanPct: 7.2)]));
        yard.Done(Tallied.AddDays(9.0), new StackCounted("S-1", 860.0));

        Assert.Equal(900.0, yard.Book.State.Charges["D-1"].FootageIn.Count, 1e-9);
        Assert.Equal((costBefore, tagBefore), (Cost(yard, "P-1"), TagWords(yard, "P-1")));
        var kilned = Cost(yard, "S-1");
        Assert.True(kilned.Money / kilned.Bf > costBefore.Money / costBefore.Bf, "the dried rest carries its kiln");
        Closes(yard, "S-1");
    }

    [Fact]
    public void Last_pack_carries_what_falls_down_when_the_stack_is_said_to_be_empty()
    {
        // 100 bf cost 36.67 green on stickers and more; the first pack takes half of it, the last the other half with 40 bf.
        var yard = Packed(boards: 50, bf: 100.0);
        var first = Cost(yard, "P-1").Money;

        yard.Done(Tallied.AddMinutes(5.0), Tally("P-2", 40) with { StackEmpty = true });

        Assert.False(yard.Book.State.Stacks["S-1"].IsHere);
        Assert.Equal(first, Cost(yard, "P-1").Money, 1e-9);
        var tallied = 50.0 * Rates(yard).PackingMoneyPerBf;
        Assert.Equal(first - tallied, Cost(yard, "P-2").Money - 40.0 * Rates(yard).PackingMoneyPerBf, 0.01);
        var balance = Closes(yard, "S-1");
        Assert.Equal((90.0, 10.0, 0.0), (balance.Packed, balance.WrittenOff, balance.Stacked));
    }

    [Fact]
    public void Log_sawn_onto_a_stack_after_a_pack_left_it_costs_the_pack_nothing()
    {
        var yard = Money();
        yard.Done(Tallied.AddDays(-10.0), SmallYard.Log("L-1") with { PaidMoney = 60m }, SmallYard.Log("L-2") with { PaidMoney = 600m }, SmallYard.Stack("S-1", bf: null), new LogSawn("L-1", [new("S-1", 100.0, 20)]));
        yard.Done(Tallied, Tally("P-1", 50));
        var before = Cost(yard, "P-1");

        yard.Done(Tallied.AddHours(1.0), new LogSawn("L-2", [new("S-1", 100.0, 20)]));

        Assert.Equal(before, Cost(yard, "P-1"));
        Assert.Equal(150.0, yard.Book.State.Stacks["S-1"].Footage.Count, 1e-9);
        Closes(yard, "S-1");
        Closes(yard, "L-2");
    }

    [Fact]
    public void Pack_put_on_stickers_again_is_dried_and_packed_anew_and_all_its_cost_comes_with_it()
    {
        var yard = Packed();
        var before = Cost(yard, "P-1").Money;

        yard.Done(Tallied.AddDays(1.0), new PackRestacked("P-1", "S-9", "shed A", "15 % for an order at 6 to 8"));

        var stack = yard.Book.State.Stacks["S-9"];
        Assert.Equal((100.0, "S-1", StackStage.AirDrying), (stack.Footage.Count, stack.FromStack, stack.Stage));
        Assert.False(yard.Book.State.Packs["P-1"].IsHere);
        Assert.False(yard.Book.State.Packs["P-1"].MayBeLabelled);
        Assert.Contains("S-9", yard.Refused(new PackLabelled("P-1")).Accepted, StringComparison.Ordinal);
        Assert.Contains("S-9", yard.Refused(Tally("P-1", 100)).Accepted, StringComparison.Ordinal);
        yard.Done(Tallied.AddDays(2.0), new ChargeLoaded("D-1", "K1", ["S-9"], 7.0));
        yard.Done(Tallied.AddDays(9.0), new ChargeUnloaded("D-1", [new("S-9", 96.0, "store", McMeanPct: 7.2)]));
        yard.Done(Tallied.AddDays(10.0), Tally("P-2", 96) with { Stack = "S-9" });
        Assert.True(Cost(yard, "P-2").Money > before);
        var forms = Done(WoodHistory.Of(yard.Book.State, "P-2")).Steps.OrderBy(step => step.Level).Select(step => step.Step.Form);
        Assert.Equal([WoodForm.Log, WoodForm.Stack, WoodForm.Pack, WoodForm.Stack, WoodForm.FromKiln, WoodForm.Pack], forms);
        Closes(yard, "S-1");
    }

    [Fact]
    public void Footage_of_everything_closes_on_every_day_of_the_season()
    {
        foreach (var day in new[] { DemonstrationBook.FirstDay, new(2026, 11, 12), new(2026, 11, 20), DemonstrationBook.LastDay })
        {
            var yard = DemonstrationBook.On(day);
            var way = WoodWay.Of(yard);
            foreach (var tag in yard.Logs.Values.Where(log => log.IsSawn).Select(log => log.Tag).Concat(yard.Stacks.Keys).Concat(yard.Packs.Keys).Concat(yard.Charges.Keys))
            {
                var balance = FootageBalance.Of(way, way.Of(tag).Select(step => step.Key));
                Assert.True(Math.Abs(balance.Open) < 1e-6, $"{day:d MMM}, {tag}: {balance}");
            }
        }
    }

    [Fact]
    public void Closing_the_last_tally_may_say_that_the_stack_is_empty()
    {
        var book = DemonstrationBook.Open();
        var what = new TallyOf("P-121", "S-12", "Tam");
        PackWrite.Board(book, what, new("7", "0.25", "in", "8", "ft"));
        PackWrite.Board(book, what with { Pack = "P-122" }, new("7", "0.25", "in", "8", "ft"));

        var early = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PackWrite.Close(book, "P-121", "Tam", stackEmpty: true)).Reasons[0];
        Assert.Contains("P-122", early.Accepted, StringComparison.Ordinal);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PackWrite.Close(book, "P-122", "Tam", stackEmpty: true));

        Assert.False(book.State.Stacks["S-12"].IsHere);
        Assert.Equal("closed with 1 boards, S-12 is empty", book.State.Entries[^1].Reason);
    }

    private static SmallYard Packed(int boards = 100, double bf = 1000.0)
    {
        var yard = Money();
        yard.Done(
            Tallied.AddDays(-10.0), SmallYard.Log("L-1") with { PaidMoney = 60m }, SmallYard.Stack("S-1", bf: null), new LogSawn("L-1", [new("S-1", bf, 20)]),
            new MoistureRead("S-1", MoistureMethod.OvenSections, MeanPct: 15.0));
        yard.Done(Tallied, Tally("P-1", boards));
        return yard;
    }

    // Boards of 12 in and a foot: one board foot each.
    private static PackTallied Tally(string pack, int boards, string? by = null) =>
        new(pack, "S-1", "sugar maple", 4, boards, [.. Enumerable.Repeat(new TallyBoard(12.0, 1.0, by), boards)], McPct: 15.0);

    private static SmallYard Money()
    {
        var yard = SmallYard.WithKiln();
        yard.Done(SmallYard.Noon.AddDays(-60.0), [
            new PlaceNamed("store", PlaceKind.Store),
            new PersonNamed("Bram", "sawyer", 26m, LoadsKilns: true, LeadsLoading: true),
            .. DemonstrationBook.Yard.Settings.Values.Select(setting => new SettingSet(setting.Name, setting.Value, setting.Unit))]);
        return yard;
    }

    private static (double Money, double Bf) Cost(SmallYard yard, string tag) => Done(WoodHistory.Of(yard.Book.State, tag)) is var history ? (history.Cost.Money, history.CostBf) : default;

    private static CostRates Rates(SmallYard yard) => Done(CostRates.Of(yard.Book.State));

    private static string TagWords(SmallYard yard, string tag) =>
        Done(PackSheet.Of(yard.Book.State, tag)) is var sheet ? $"{sheet.Drying} {sheet.Weight} {sheet.Pack.Stage} {sheet.Ordered.Mean}" : "";

    private static FootageBalance Closes(SmallYard yard, string tag)
    {
        var way = WoodWay.Of(yard.Book.State);
        var balance = FootageBalance.Of(way, way.Of(tag).Select(step => step.Key));
        Assert.Equal(0.0, balance.Open, 1e-6);
        return balance;
    }

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;
}
