using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Orders;

public sealed class OrderTakeTests
{
    private static readonly OrderTyped Ash = new(
        "O-320", "Harbour of Paper Boats", "white ash 4/4", "200", "Bf", "2026-12-01", "rough, 6 to 8 %", "white ash", "4/4", "6", "8", "3", "10", "S-01", false, false, false, false, "Oda", false);

    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void Order_is_taken_with_its_line()
    {
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(OrderTake.Write(book, Ash, PostedKey.None));

        var line = book.State.Orders["O-320"].Lines[0].Asked;
        Assert.Equal((200.0, OrderUnit.Bf, new DateOnly(2026, 12, 1), 4, 6.0, 8.0), (line.Quantity, line.Unit, line.DueOn, line.ThicknessQuarters, line.McLowPct, line.McHighPct));
        Assert.Equal("O-321", OrderTake.NextOrder(book.State));
    }

    [Fact]
    public void Due_day_of_another_year_says_its_year_wherever_the_order_is_named()
    {
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(OrderTake.Write(book, Ash with { DueOn = "2027-03-01" }, PostedKey.None));

        var link = YardForm.All(book.State).SelectMany(form => form.Links).Single(one => one.Path == "/promises/O-320/ship");
        Assert.Contains("due 1 Mar 2027", $"{link}", StringComparison.Ordinal);
        Assert.Contains("due 13 Nov", $"{YardForm.All(book.State).SelectMany(form => form.Links).Single(one => one.Path == "/promises/O-301/ship")}", StringComparison.Ordinal);
    }

    [Fact]
    public void Price_shortest_piece_and_forbidden_woods_are_of_the_line()
    {
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(OrderTake.Write(book, Ash with { Price = "4.25", ShortestPiece = "8ft", Forbidden = "black walnut, black cherry" }, PostedKey.None));

        var line = book.State.Orders["O-320"].Lines[0].Asked;
        Assert.Equal(4.25m, line.PriceMoneyPerBf);
        Assert.Equal(8.0 * 0.3048, line.PieceLengthMinM!.Value, 9);
        Assert.Equal(["black walnut", "black cherry"], line.ForbiddenSpecies!);
    }

    [Theory]
    [InlineData("-1", null, null, "Price a board foot")]
    [InlineData(null, "90", null, "Shortest piece")]
    [InlineData(null, "8.6", null, "Shortest piece")]
    [InlineData(null, null, "unobtainium", "Not in it")]
    [InlineData(null, null, "white ash", "Not in it")]
    public void Wrong_price_length_or_wood_is_named(string? price, string? shortest, string? forbidden, string what) =>
        Assert.Equal(what, Assert.Single(Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(OrderTake.Write(book, Ash with { Price = price, ShortestPiece = shortest, Forbidden = forbidden }, PostedKey.None)).Reasons).What);

    [Theory]
    [InlineData("Brindle Toad Cabinet Shop", "black cherry 4/4", "620", "2026-11-13", "The same order?")]
    [InlineData("brindle-toad cabinet shop", "Black Cherry, 4/4", "625", "2026-11-16", "The same order?")]
    [InlineData("Brindel Toad Cabinet Shop", "white oak 5/4", "100", "2026-12-16", "The same customer?")]
    public void Order_typed_twice_or_under_another_name_is_asked_about(string customer, string goods, string quantity, string due, string asked)
    {
        var like = Ash with { Customer = customer, Goods = goods, Quantity = quantity, DueOn = due };
        var entries = book.State.Entries.Count;

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(OrderTake.Write(book, like, PostedKey.None)).Reasons[0];

        Assert.Equal(asked, refused.What);
        Assert.Contains("O-301", refused.Accepted, StringComparison.Ordinal);
        Assert.Equal(entries, book.State.Entries.Count);
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(OrderTake.Write(book, like with { IsAnother = true }, PostedKey.None));
    }

    [Fact]
    public void A_known_customer_who_wants_something_else_is_not_asked_about() =>
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(OrderTake.Write(book, Ash with { Customer = "Brindle Toad Cabinet Shop" }, PostedKey.None));

    [Fact]
    public void Every_wrong_field_is_named_at_once()
    {
        var wrong = Ash with { Customer = "", Quantity = "some", Unit = "yards", DueOn = "2026-10-01", Species = "unobtainium", Thickness = "thick", McLow = "9", McHigh = "8", Importance = "7", By = "nobody" };

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(OrderTake.Write(book, wrong, PostedKey.None));

        Assert.Equal(["Customer", "Quantity", "Unit", "Due", "Species", "Thickness", "Moisture", "Importance", "Who"], refused.Reasons.Select(reason => reason.What));
    }

    [Fact]
    public void A_form_that_arrives_twice_is_kept_once()
    {
        var key = new PostedKey(Guid.CreateVersion7().ToString(), null);
        OrderTake.Write(book, Ash, key);
        var entries = book.State.Entries.Count;

        OrderTake.Write(book, Ash with { IsAnother = true }, key);

        Assert.Equal(entries, book.State.Entries.Count);
    }
}
