using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Tests.Book;

public sealed class CorrectionTests
{
    private readonly SmallYard yard = new();

    [Fact]
    public void Correction_takes_the_place_of_the_old_entry_and_both_stay()
    {
        var old = yard.Done(SmallYard.Log("L-001", inches: 16.0))[0];

        var corrected = Correct(old, SmallYard.Log("L-001", inches: 18.0));

        Assert.Equal(18.0, yard.Book.State.Logs["L-001"].ScalingDiameter.Inches, 9);
        Assert.Equal([old, corrected], yard.Book.State.Versions(old.Number));
        Assert.Equal(old, yard.Store.ReadAfter(0)[0]);
        Assert.Equal(("Oda", "read the wrong end"), (corrected.By, corrected.Reason));
        Assert.Equal(old.HappenedAt, corrected.HappenedAt);
    }

    [Fact]
    public void Correction_of_an_early_entry_is_read_before_what_followed_it()
    {
        var old = yard.Done(SmallYard.Log("L-001"), new MetalScanned("L-001", MetalScan.HitsDugOut, 2))[0];

        Correct(old, SmallYard.Log("L-001", inches: 18.0));

        Assert.Equal(2, yard.Book.State.Logs["L-001"].MetalHits);
    }

    [Fact]
    public void Newest_correction_stands_and_a_withdrawn_one_gives_way_to_the_one_before()
    {
        var old = yard.Done(SmallYard.Log("L-001", inches: 16.0))[0];
        var first = Correct(old, SmallYard.Log("L-001", inches: 17.0));
        var second = Correct(first, SmallYard.Log("L-001", inches: 18.0));
        Assert.Equal(18.0, Inches());

        var struck = Correct(second, new Withdrawn());
        Assert.Equal(17.0, Inches());

        Correct(struck, new Withdrawn());
        Assert.Equal(18.0, Inches());
        Assert.Equal(5, yard.Book.State.Versions(old.Number).Count);
    }

    [Fact]
    public void Withdrawn_entry_does_not_count_any_more()
    {
        var entries = yard.Done(SmallYard.Log("L-001"), SmallYard.Log("L-002"));

        Correct(entries[0], new Withdrawn());

        Assert.Equal(["L-002"], yard.Book.State.Logs.Keys);
    }

    [Fact]
    public void Withdrawal_that_leaves_later_entries_without_ground_is_refused()
    {
        var old = yard.Done(SmallYard.Log("L-001"), new EndCoated("L-001"))[0];

        var refusal = yard.Refused(new NewEntry("Oda", new Withdrawn(), Corrects: old.Number, Reason: "a mistake"))[0];

        Assert.Equal(("log", "L-001"), (refusal.What, refusal.Given));
        Assert.Equal(2, yard.Store.ReadAfter(0).Count);
    }

    [Fact]
    public void Correction_without_a_reason_or_of_nothing_is_refused()
    {
        yard.Done(SmallYard.Log("L-001"));

        Assert.Equal("reason", yard.Refused(new NewEntry("Oda", new Withdrawn(), Corrects: 1))[0].What);
        Assert.Equal("corrects", yard.Refused(new NewEntry("Oda", new Withdrawn(), Corrects: 2, Reason: "no such entry"))[0].What);
        Assert.Equal("corrects", yard.Refused(new Withdrawn()).What);
    }

    private Entry Correct(Entry old, Fact fact) =>
        Assert.IsType<Quantities.Outcome<IReadOnlyList<Entry>>.Done>(yard.Book.Write([new NewEntry("Oda", fact, Corrects: old.Number, Reason: "read the wrong end")])).Value[0];

    private double Inches() => Math.Round(yard.Book.State.Logs["L-001"].ScalingDiameter.Inches, 6);
}
