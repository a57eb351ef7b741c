using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Orders;

/// <summary>One customer under two names (all invented), joined afterwards and parted again.</summary>
public sealed class CustomerTests
{
    private const string First = "Brindle Toad Cabinet Shop";
    private const string Second = "B. Toad, cabinets";

    private readonly YardBook book = DemonstrationBook.Open();

    public CustomerTests() => Done(book.Write("Oda", new OrderTaken("O-320", Second, [new(1, "white ash 4/4", 80.0, OrderUnit.Bf, new(2026, 12, 1), "rough", [])], 3, 0m)));

    [Fact]
    public void Two_names_of_one_customer_are_joined_and_nothing_is_renamed()
    {
        Done(Customers.Join(book, First, Second, "same telephone", "Oda", PostedKey.None));

        Assert.True(book.State.Customers.AreOne(Second, First));
        Assert.Equal((First, Second), (book.State.Orders["O-301"].Customer, book.State.Orders["O-320"].Customer));
        var row = Assert.Single(Customers.Of(book.State), one => one.Names.Contains(First));
        Assert.Equal([Second, First], row.Names);
        Assert.Equal(["O-320", "O-301"], row.Orders.Select(order => order.Tag));
    }

    [Theory]
    [InlineData("Brindle Toad")]
    [InlineData("B. Toad")]
    public void Both_names_find_the_orders_of_both(string text)
    {
        Assert.Single(Orders(text));

        Done(Customers.Join(book, First, Second, null, "Oda", PostedKey.None));

        Assert.Equal(["O-301", "O-320"], Orders(text).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Joined_names_are_parted_again_and_the_joining_stays_in_the_book()
    {
        var joined = Done(Customers.Join(book, First, Second, null, "Oda", PostedKey.None))[0];

        Done(Customers.Part(book, joined.Number, "Oda"));

        Assert.False(book.State.Customers.AreOne(First, Second));
        Assert.IsType<CustomersJoined>(book.State.Entry(joined.Number).Fact);
        Assert.Equal(2, Customers.Of(book.State).Count(one => one.Names.Contains(First) || one.Names.Contains(Second)));
    }

    [Fact]
    public void Joining_reaches_over_a_third_name()
    {
        Done(book.Write("Oda", new OrderTaken("O-321", "Toad", [new(1, "white ash 4/4", 80.0, OrderUnit.Bf, new(2026, 12, 1), "rough", [])], 3, 0m)));

        Done(Customers.Join(book, First, Second, null, "Oda", PostedKey.None));
        Done(Customers.Join(book, Second, "Toad", null, "Oda", PostedKey.None));

        Assert.True(book.State.Customers.AreOne(First, "Toad"));
        Assert.Equal("same_as", Refused(Customers.Join(book, "Toad", First, null, "Oda", PostedKey.None))[0].What);
    }

    [Fact]
    public void A_joined_name_is_not_asked_about_again_but_the_same_order_is()
    {
        var typed = new OrderTyped("O-322", Second, "black cherry 4/4", "620", "Bf", "2026-11-13", "rough", "black cherry", "4/4", "6", "8", "3", "10", "S-07", false, false, false, false, "Oda", false);
        Done(Customers.Join(book, First, Second, null, "Oda", PostedKey.None));

        var asked = Refused(OrderTake.Write(book, typed, PostedKey.None));

        Assert.Equal("The same order?", Assert.Single(asked).What);
        Done(OrderTake.Write(book, typed with { Goods = "white oak 5/4" }, PostedKey.None));
    }

    [Fact]
    public void Names_the_book_does_not_have_are_refused_with_the_nearest()
    {
        var refused = Refused(Customers.Join(book, "Brindle Frog", Second, null, "Oda", PostedKey.None))[0];

        Assert.Equal(("customer", "Brindle Frog"), (refused.What, refused.Given));
        Assert.Contains(First, refused.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_nearly_alike_are_offered()
    {
        Assert.Empty(Customers.Likely(book.State));

        Done(book.Write("Oda", new OrderTaken("O-323", "Brindel Toad cabinet shop", [new(1, "white ash 4/4", 80.0, OrderUnit.Bf, new(2026, 12, 1), "rough", [])], 3, 0m)));

        Assert.Equal(new LikelyOne("Brindel Toad cabinet shop", First), Assert.Single(Customers.Likely(book.State)));
    }

    private IEnumerable<string> Orders(string text) => FindSearch.For(book.State, new(text)).Where(found => found.Kind == "order").Select(found => found.Tag);

    private static IReadOnlyList<Entry> Done(Outcome<IReadOnlyList<Entry>> written) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(written).Value;

    private static IReadOnlyList<Refusal> Refused(Outcome<IReadOnlyList<Entry>> written) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(written).Reasons;
}
