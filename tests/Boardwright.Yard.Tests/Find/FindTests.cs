using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Find;

/// <summary>Looking things up in the demonstration yard (all invented).</summary>
public sealed class FindTests
{
    [Fact]
    public void A_tag_written_in_full_comes_first()
    {
        Assert.Equal("S-10", Ask(new("s-10"))[0].Tag);
        Assert.Equal("L-012", Ask(new("L-012"))[0].Tag);
    }

    [Fact]
    public void A_customers_name_finds_the_order_with_where_its_wood_is_and_when_it_comes_out()
    {
        var order = Assert.Single(Ask(new("Y-71 owner")), found => found.Kind == "order");

        Assert.Equal("O-312", order.Tag);
        Assert.Contains("S-24 at row 4, 16.4 %, planned for K2 from 11 Nov to 21 Nov", order.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_thickness_place_and_moisture_all_have_to_hold()
    {
        var found = Ask(new(Species: "white ash", Quarters: 4, Place: "shed A", DrierThan: MoistureContent.FromPercent(15.0)));

        Assert.Equal(["S-02"], found.Select(one => one.Tag));
    }

    [Fact]
    public void Every_word_has_to_be_there()
    {
        Assert.NotEmpty(Ask(new("cherry shed")));
        Assert.Empty(Ask(new("cherry bathtub")));
        Assert.Empty(Ask(new("  ")));
    }

    [Theory]
    [InlineData("0", null)]
    [InlineData("five", null)]
    [InlineData(null, "dry")]
    public void Odd_fields_are_refused(string? thick, string? dry) =>
        Assert.IsType<Outcome<FindQuery>.Refused>(FindAsked.Read(null, null, thick, null, dry));

    [Fact]
    public void Write_page_begins_with_what_is_due_for_the_person()
    {
        var pell = WriteList.For(DemonstrationBook.Yard, "Pell");
        var wren = WriteList.For(DemonstrationBook.Yard, "Wren");

        Assert.Equal(["/charges/C-61/air", "/charges/V-19/air"], pell.Likely.Take(2).Select(likely => likely.Link.Path));
        Assert.Contains(pell.Likely, likely => likely.Link.Path == "/stacks/S-04/read");
        Assert.StartsWith("/pours/", wren.Likely[0].Link.Path, StringComparison.Ordinal);
        Assert.All(pell.Likely.Concat(wren.Likely), likely => Assert.True(likely.Do.Length > 0));
        Assert.Contains(pell.All, form => form.Do == "Tally a pack");
        Assert.Contains("Take a table out of its mould", pell.Empty);
    }

    private static IReadOnlyList<Found> Ask(FindQuery query) => FindSearch.For(DemonstrationBook.Yard, query);
}
