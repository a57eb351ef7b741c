using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.LogCommands;

/// <summary>A tree that is only on the telephone, and which log first (yard invented).</summary>
public sealed class OfferTests
{
    private readonly YardBook book = DemonstrationBook.Open();

    // What it may cost and still leave 15 % of the 696 its lumber brings is below nothing at the smallest size: so it is collected free.
    // X-26: 44, 99, 158 at 24, 26, 28 in by the house’s record of 1.06 tally over scale; 29 red oaks sawn here gave 1.063 and so 1 money more, inside its tolerance of 1. Haul 222, metal 27.
    [Fact]
    public void The_call_of_the_morning_is_worth_what_the_house_works_out()
    {
        var call = book.State.Calls.Last(one => one.Fact.Tree is not null);

        var offer = Work(LogOffer.Of(book.State, call.Entry)!);

        Assert.Equal([45.0, 100.0, 159.0], offer.Worth.Select(worth => Math.Round(worth.Money)));
        Assert.Equal(["100", "222", "27", "26.0"], offer.Figures.Take(4).Select(figure => figure.Value));
        Assert.Contains("45 to 159", offer.Figures[0].Basis, StringComparison.Ordinal);
        Assert.Equal("Offer to collect it free; measure before you drive.", offer.NextDo);
        Assert.DoesNotContain("pay", offer.Say.Split("who pays")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_girth_alone_gives_a_figure_with_its_spread()
    {
        var offer = Work(new("northern red oak", "94", null, "8", "22", null, "yard"));

        Assert.Equal(26.8, offer.Likely.Inches, 0.05);
        Assert.True(offer.Worth[0].Money < offer.Worth[1].Money && offer.Worth[1].Money < offer.Worth[2].Money);
        Assert.Equal(222.0, offer.Worth[1].HaulMoney, 1e-9);
    }

    [Fact]
    public void Metal_is_less_likely_in_the_woods_and_haul_is_nothing_next_door()
    {
        var woods = Work(new("northern red oak", "94", null, "8", null, null, "woods"));

        Assert.Equal(0.35 * 45.0, woods.Worth[1].MetalMoney, 1e-9);
        Assert.Equal(0.0, woods.Worth[1].HaulMoney);
    }

    [Fact]
    public void A_log_that_does_not_pay_for_the_way_is_declined_in_words()
    {
        var offer = Work(new("silver maple", "45", null, "8", "30", null, "yard"));

        Assert.True(offer.Worth[2].Money < 0.0);
        Assert.Equal("Decline, or name a fee.", offer.NextDo);
        Assert.Contains("for a fee of about", offer.Say, StringComparison.Ordinal);
    }

    // One figure for the small end leaves no range, and a length nobody said is named and can be changed.
    [Fact]
    public void What_was_taken_is_said_and_equal_ends_are_no_range()
    {
        var offer = Work(new("red oak", null, "26", null, null, null, "yard"));

        Assert.Equal(("8", "taken, nobody said: ask how far up the first limb is"), offer.Figures.Where(figure => figure.Label == "Length of the log").Select(figure => (figure.Value, figure.Basis)).Single());
        Assert.All(offer.Figures.Select(figure => figure.Basis).Append(offer.NextWhy), words => Assert.DoesNotMatch(@"(?<one>[\d.,]+) to \k<one>\b", words));
        Assert.DoesNotContain("as small as it may be", offer.NextWhy, StringComparison.Ordinal);
        Assert.Equal("as they say, up to the first limb", Work(new("red oak", null, "26", "10", null, null, "yard")).Figures.Single(figure => figure.Label == "Length of the log").Basis);
    }

    [Theory]
    [InlineData("plastic", "94", null, "8", "22", "yard", "Species")]
    [InlineData("white oak", "", null, "8", "22", "yard", "Girth")]
    [InlineData("white oak", "10", null, "8", "22", "yard", "girth")]
    [InlineData("white oak", null, "28 to 24", "8", "22", "yard", "Small end")]
    [InlineData("white oak", "94", null, "8.6", "22", "yard", "Log length")]
    [InlineData("white oak", "94", null, "40", "22", "yard", "Log length")]
    [InlineData("white oak", "94", null, "8", "far", "yard", "Road miles")]
    [InlineData("white oak", "94", null, "8", "22", "moon", "Metal")]
    public void A_wrong_field_is_refused_under_its_name(string species, string? girth, string? end, string length, string miles, string metal, string what) =>
        Assert.Equal(what, Assert.IsType<Outcome<LogOffer>.Refused>(LogOffer.Work(book.State, new(species, girth, end, length, miles, null, metal))).Reasons[0].What);

    [Fact]
    public void The_call_is_written_with_its_tree_and_answers_the_same_again()
    {
        var typed = new TreeTyped("northern red oak", "94", null, "8", "22", null, "yard");

        var entry = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(LogOffer.Write(book, typed, "somebody on the hill", "an oak by the fence", "", "Oda", PostedKey.None)).Value[0];

        var again = Work(LogOffer.Of(book.State, entry.Number)!);
        Assert.Equal(Work(typed).Likely.Inches, again.Likely.Inches, 0.1);
        Assert.True(((PhoneCallTaken)entry.Fact).Tree!.MetalNearby);
    }

    [Fact]
    public void An_order_whose_stacks_do_not_reach_moves_a_log_up_the_list()
    {
        var before = LogTurns.Of(book.State).ToList();
        Done(new OrderTaken("O-330", "Harbour of Paper Boats", [new(1, "black cherry 4/4", 150.0, OrderUnit.Bf, new(2026, 12, 1), "6 to 8 %", [], "black cherry", 4, McLowPct: 6.0, McHighPct: 8.0)], 4, 40m));

        var after = LogTurns.Of(book.State).ToList();

        var wanted = after.Where(one => one.Wanted?.Order == "O-330").ToList();
        Assert.NotEmpty(wanted);
        Assert.All(wanted, one =>
        {
            Assert.Equal("black cherry", one.Log.Species.CommonName);
            Assert.Equal(one.Wanted!.OpenBy.DayNumber - book.State.Today.DayNumber, one.Days);
            Assert.True(after.FindIndex(two => two.Log.Tag == one.Log.Tag) < before.FindIndex(two => two.Log.Tag == one.Log.Tag));
        });
        Assert.Contains("misses 150 bf", wanted[0].Wanted!.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_with_enough_wood_or_too_soon_to_dry_for_moves_nothing()
    {
        Done(new OrderTaken("O-331", "Harbour of Paper Boats", [new(1, "black cherry 4/4", 150.0, OrderUnit.Bf, new(2026, 11, 5), "6 to 8 %", [], "black cherry", 4)], 4, 40m));
        Done(new OrderTaken("O-332", "Harbour of Paper Boats", [new(1, "black cherry 4/4", 10.0, OrderUnit.Bf, new(2026, 12, 20), "6 to 8 %", ["S-07"], "black cherry", 4)], 4, 40m));

        Assert.DoesNotContain(LogTurns.Of(book.State), one => one.Wanted?.Order is "O-331" or "O-332");
    }

    [Fact]
    public void Logs_of_one_wood_and_setting_stand_together() =>
        Assert.Contains("L-038", Assert.Single(LogTurns.Of(book.State), one => one.Log.Tag == "L-037").Alike);

    [Fact]
    public void Girth_and_length_are_read_in_the_units_of_their_switches()
    {
        var feet = Work(new TreeTyped("northern red oak", "94", null, "8ft6in", "22", null, "yard"));
        var metres = Work(new TreeTyped("northern red oak", "238.76", null, "2.5908", "22", null, "yard", "cm", "m"));

        Assert.Equal(feet.Likely.Inches, metres.Likely.Inches, 1e-9);
        Assert.Equal(feet.LogLength.Feet, metres.LogLength.Feet, 1e-9);
    }

    private LogOffer Work(TreeTyped typed) => Assert.IsType<Outcome<LogOffer>.Done>(LogOffer.Work(book.State, typed)).Value;

    private void Done(Fact fact) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Oda", fact));
    [Fact]
    public void Haul_that_was_not_counted_is_said_and_a_girth_below_nothing_is_asked_again()
    {
        var typed = new TreeTyped("walnut", "75", null, "8", null, null, "yard");
        var offer = Assert.IsType<Outcome<LogOffer>.Done>(LogOffer.Work(DemonstrationBook.Yard, typed)).Value;

        Assert.Equal("black walnut", offer.Species.CommonName);
        Assert.Equal(("left out", "ask how many miles it is: they are not given"), offer.Figures.Where(figure => figure.Label == "Haul").Select(figure => (figure.Value, figure.Basis)).Single());
        Assert.Equal("Ask how many miles it is before you name a price.", offer.NextDo);
        Assert.DoesNotContain("or pay", offer.Say, StringComparison.Ordinal);
        Assert.Contains("no haul counted", offer.Figures[0].Basis, StringComparison.Ordinal);
        var refused = Assert.IsType<Outcome<LogOffer>.Refused>(LogOffer.Work(DemonstrationBook.Yard, typed with { Girth = "-75" })).Reasons[0];
        Assert.Equal(("Girth", "-75"), (refused.What, refused.Given));
        Assert.Contains("20 to 300 in around the trunk", refused.Accepted, StringComparison.Ordinal);
    }

}
