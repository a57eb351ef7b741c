using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests;

public sealed class LoadTests
{
    [Fact]
    public void Ash_for_bending_goes_from_its_stack_with_its_weight_and_moisture()
    {
        var book = DemonstrationBook.Open();
        var sheet = Sheet(book, "O-307");
        var part = Assert.Single(sheet.Parts);
        Assert.Equal(("S-02", 350.0, 390.0), (part.Tag, part.Usual, part.Bf));
        Assert.Empty(sheet.Cautions);
        Assert.Equal(1, sheet.Trips);

        var left = LoadWrite.Left(book, "O-307", 1, new([], new Dictionary<string, string> { ["S-02"] = "350" }, null, "collected", "Tam"), PostedKey.None);

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(left);
        Assert.False(book.State.Orders["O-307"].IsOpen);
        Assert.Equal(40.0, book.State.Stacks["S-02"].Footage.Count);
        var shipped = book.State.Shipments["SH-082"].Fact;
        Assert.Equal(14.6, shipped.McPct!.Value, 0.01);
        Assert.Equal(sheet.Kilograms!.Value, shipped.WeightKg!.Value, 1e-6);
    }

    [Fact]
    public void Few_board_feet_short_are_asked_about_and_close_the_line_when_nothing_follows()
    {
        var book = DemonstrationBook.Open();
        Outcome<IReadOnlyList<Entry>> Leave(string? rest) => LoadWrite.Left(book, "O-307", 1, new([], new Dictionary<string, string> { ["S-02"] = "346" }, null, null, "Tam", Rest: rest), PostedKey.None);

        var asked = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(Leave(null));
        Assert.Equal(("The rest", "4 bf short of the line"), (asked.Reasons[0].What, asked.Reasons[0].Given));
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(Leave("nothing"));

        Assert.False(book.State.Orders["O-307"].IsOpen);
        Assert.True(book.State.Orders["O-307"].Lines[0].Closed);
        Assert.Equal(346.0, book.State.Orders["O-307"].Lines[0].Shipped, 6);
    }

    [Fact]
    public void Rest_that_follows_keeps_the_line_open()
    {
        var book = DemonstrationBook.Open();

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(LoadWrite.Left(book, "O-307", 1, new([], new Dictionary<string, string> { ["S-02"] = "346" }, null, null, "Tam", Rest: "follows"), PostedKey.None));

        Assert.True(book.State.Orders["O-307"].IsOpen);
    }

    /// <summary>What the papers of a load say was counted stays what they said.</summary>
    [Fact]
    public void Tally_of_a_pack_that_left_is_not_chosen_anew()
    {
        var book = DemonstrationBook.Open();
        var tallies = book.State.Packs["P-118"].Tallies;
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new TallyChosen("P-118", tallies[1].Entry, "counted again")));
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new Shipped("SH-900", "O-300", ["P-118"], [])));
        var left = book.State.Packs["P-118"].Agreed!.Footage;

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(book.Write("Pell", new TallyChosen("P-118", tallies[0].Entry, "third look")));

        Assert.Contains("left with SH-900", refused.Reasons[0].Accepted, StringComparison.Ordinal);
        Assert.Equal(left, book.State.Packs["P-118"].Agreed!.Footage);
    }

    [Fact]
    public void Oak_order_takes_two_trips()
    {
        // 2900 bf of red oak at 7 % weigh about 4600 kg; the trailer carries 2400.
        var sheet = Sheet(DemonstrationBook.Open(new(2026, 11, 15)), "O-303");

        Assert.Equal(4600.0, sheet.Kilograms!.Value, 100.0);
        Assert.Equal(2, sheet.Trips);
    }

    [Fact]
    public void Wood_that_is_not_as_asked_is_named()
    {
        var sheet = Sheet(DemonstrationBook.Open(new(2026, 11, 15)), "O-302");

        Assert.Contains(sheet.Cautions, caution => caution.Contains("S-11 is at 10.4 %; asked for 6 to 8 %", StringComparison.Ordinal));
    }

    [Fact]
    public void Heat_treatment_asked_for_and_not_proven_is_named() =>
        Assert.Contains(Sheet(DemonstrationBook.Open(), "O-310").Cautions, caution => caution.Contains("unproven", StringComparison.Ordinal));

    [Fact]
    public void Walnut_in_the_bin_is_named_and_refused()
    {
        var book = DemonstrationBook.Open(new(2026, 11, 12));

        Assert.Contains(LoadSheet.Of(book.State, "O-308", 2) is Outcome<LoadSheet>.Done(var sheet) ? sheet.Cautions : [], caution => caution.Contains("black walnut", StringComparison.Ordinal));
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(LoadWrite.Left(book, "O-308", 2, new([], new Dictionary<string, string>(), "4", null, "Wren"), PostedKey.None));
        Assert.Contains("empty the shavings bin", refused.Reasons[0].Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_disputed_pack_stays()
    {
        var sheet = Sheet(DemonstrationBook.Open(), "O-300");

        Assert.Equal("two tallies differ", sheet.Parts.Single(part => part.Tag == "P-118").MayNot);
        Assert.Equal(402.0, sheet.Parts.Where(part => part.MayNot is null).Sum(part => part.Usual));
    }

    [Fact]
    public void Bad_loads_are_refused_by_field()
    {
        var book = DemonstrationBook.Open();

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(LoadWrite.Left(book, "O-307", 1, new([], new Dictionary<string, string> { ["S-02"] = "lots" }, null, null, null), PostedKey.None));
        Assert.Equal(["Board feet of S-02", "Load", "Who"], refused.Reasons.Select(reason => reason.What));
        Assert.Contains("at most the 390 bf", Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(
            LoadWrite.Left(book, "O-307", 1, new([], new Dictionary<string, string> { ["S-02"] = "500" }, null, null, "Tam"), PostedKey.None)).Reasons[0].Accepted, StringComparison.Ordinal);
        Assert.IsType<Outcome<LoadSheet>.Refused>(LoadSheet.Of(book.State, "O-999", 1));
    }

    [Fact]
    public void Every_open_order_of_every_tenth_day_has_a_load_sheet()
    {
        for (var day = DemonstrationBook.FirstDay; day <= DemonstrationBook.LastDay; day = day.AddDays(10))
        {
            var yard = DemonstrationBook.On(day);
            Assert.All(yard.Orders.Values.SelectMany(order => order.Lines.Select(line => (order.Tag, line.Asked.Line))), one => Assert.IsType<Outcome<LoadSheet>.Done>(LoadSheet.Of(yard, one.Tag, one.Line)));
        }
    }

    private static LoadSheet Sheet(YardBook book, string order) => Assert.IsType<Outcome<LoadSheet>.Done>(LoadSheet.Of(book.State, order, 1)).Value;
}
