using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Find;

/// <summary>A lost tag settled by the end grain (L-033 and L-034 of the demonstration: red oak and white oak, swapped or lost).</summary>
public sealed class TagKeyTests
{
    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void The_key_lays_both_candidates_side_by_side_with_what_the_book_says()
    {
        var key = Key("L-034");

        Assert.Equal([("L-034", "white oak"), ("L-033", "northern red oak")], key.Candidates.Select(one => (one.Tag, one.Species.CommonName)));
        Assert.False(key.IsProven);
        Assert.All(key.Candidates, one =>
        {
            Assert.NotNull(one.EndGrain);
            Assert.Equal(["small end", "large end", "whole length", "from", "ends", "noted", "owner"], one.Record.Select(line => line.Name));
            Assert.StartsWith("Not ", Assert.Single(one.Tells), StringComparison.Ordinal);
        });
        Assert.StartsWith("Look first at the", key.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stack_shows_thickness_place_pieces_and_stickers()
    {
        var names = Key("S-11").Candidates[0].Record.Select(line => line.Name).ToList();

        foreach (var wanted in new[] { "thickness", "pieces", "footage", "place", "stickers to a layer" })
        {
            Assert.Contains(wanted, names);
        }
    }

    [Fact]
    public void It_stays_unproven_until_somebody_signs()
    {
        Key("L-034");
        Assert.False(book.State.Logs["L-034"].Proven);

        Assert.Equal(["What was seen", "Who"], Refused(TagKey.Settle(book, "L-034", "white oak", "L-034", " ", "nobody", PostedKey.None)).Select(reason => reason.What));
        Assert.False(book.State.Logs["L-034"].Proven);

        var entry = Done(TagKey.Settle(book, "L-034", "white oak", "L-034", "plugged pores, flames, broad rays", "Bram", PostedKey.None))[0];
        Assert.True(book.State.Logs["L-034"].Proven);
        Assert.Equal(("Bram", "end grain: plugged pores, flames, broad rays"), (entry.By, ((TagProven)entry.Fact).How));
    }

    [Fact]
    public void Seen_to_be_the_other_it_becomes_that_wood_by_a_correction_that_can_be_taken_out()
    {
        var entry = Done(TagKey.Settle(book, "L-034", "northern red oak", "L-033", "open pores, single latewood pores", "Bram", PostedKey.None))[0];

        Assert.Equal("northern red oak", book.State.Logs["L-034"].Species.CommonName);
        Assert.StartsWith("it is L-033; end grain", ((SpeciesCorrected)entry.Fact).How, StringComparison.Ordinal);

        Done(EntryCorrect.Withdraw(book, entry.Number, "Bram", "looked again"));
        Assert.Equal(("white oak", false), (book.State.Logs["L-034"].Species.CommonName, book.State.Logs["L-034"].Proven));
    }

    [Fact]
    public void Another_wood_can_be_laid_beside()
    {
        var key = Assert.IsType<Outcome<TagKey>.Done>(TagKey.Of(book.State, "L-034", "white ash")).Value;

        Assert.Equal(3, key.Candidates.Count);
        Assert.Equal(2, key.Candidates[0].Tells.Count);
        Done(TagKey.Settle(book, "L-034", "white ash", "", "no broad rays, pale dashes", "Bram", PostedKey.None));
        Assert.Equal("white ash", book.State.Logs["L-034"].Species.CommonName);
    }

    [Fact]
    public void A_proven_piece_is_not_settled_again_and_an_unknown_tag_is_refused()
    {
        Assert.Equal("tag", Refused(TagKey.Settle(book, "L-001", "sugar maple", "", "rays of two widths", "Bram", PostedKey.None))[0].What);
        Assert.IsType<Outcome<TagKey>.Refused>(TagKey.Of(book.State, "L-999"));
        Assert.IsType<Outcome<TagKey>.Refused>(TagKey.Of(book.State, "L-034", "plastic"));
    }

    [Fact]
    public void The_morning_sheet_leads_to_the_key() =>
        Assert.Contains(MorningSheet.For(book.State, null).Tasks, task => task.Path == "/find/tag/L-034");

    private TagKey Key(string tag) => Assert.IsType<Outcome<TagKey>.Done>(TagKey.Of(book.State, tag)).Value;

    private static IReadOnlyList<Entry> Done(Outcome<IReadOnlyList<Entry>> written) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(written).Value;

    private static IReadOnlyList<Refusal> Refused(Outcome<IReadOnlyList<Entry>> written) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(written).Reasons;
}
