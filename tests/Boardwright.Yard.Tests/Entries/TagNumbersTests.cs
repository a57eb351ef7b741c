using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Entries;

/// <summary>Numbers set aside for each phone: two without signal never give one twice.</summary>
public class TagNumbersTests
{
    private readonly YardBook book = DemonstrationBook.Open(); // stacks to S-25, logs to L-040

    [Fact]
    public void Two_phones_never_give_one_number()
    {
        var (first, second) = (Named(null, "Bram"), Named(null, "Tam"));

        Assert.Equal(("phone 1", "phone 2"), (first, second));
        Assert.All(TagNumbers.Kinds, kind =>
        {
            var (ours, theirs) = (TagNumbers.Left(book.State, first, kind.Prefix), TagNumbers.Left(book.State, second, kind.Prefix));
            Assert.Equal((10, 10, 0), (ours.Count, theirs.Count, ours.Intersect(theirs).Count()));
            Assert.DoesNotContain(TagNumbers.Next(book.State, kind.Prefix), ours.Concat(theirs));
        });
        Assert.Equal(("S-26", "S-36", "S-46"), (TagNumbers.Next(book.State, "S-", first), TagNumbers.Next(book.State, "S-", second), TagNumbers.Next(book.State, "S-")));
    }

    [Fact]
    public void A_phone_with_few_left_is_set_more_aside_and_one_with_enough_nothing()
    {
        var phone = Named(null, "Bram");
        var count = book.State.Entries.Count;
        Assert.Equal(phone, Named(phone, "Bram"));
        Assert.Equal(count, book.State.Entries.Count);

        for (var number = 26; number <= 31; number++)
            Done(Stack($"S-{number}", "Bram", phone));
        Named(phone, "Bram");

        Assert.Equal(["S-32", "S-33", "S-34", "S-35", "S-36"], TagNumbers.Left(book.State, phone, "S-").Take(5));
        Assert.Equal(14, TagNumbers.Left(book.State, phone, "S-").Count);
    }

    [Fact]
    public void A_number_of_another_phone_is_refused_with_whose_it_is()
    {
        var phone = Named(null, "Bram");

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(Stack("S-27", "Tam", null)).Reasons[0];

        Assert.Equal(("Stack", "S-27"), (refused.What, refused.Given));
        Assert.Contains("phone 1 (Bram), such as S-36", refused.Accepted, StringComparison.Ordinal);
        Done(Stack("S-27", "Bram", phone));
        Done(Stack("S-40", "Tam", null));
        Assert.Equal("S-26", TagNumbers.Next(book.State, "S-", phone));    // a gap is harmless
    }

    [Fact]
    public void The_same_holds_of_logs_packs_and_orders()
    {
        Named(null, "Bram");
        var log = new LogEntry { Tag = "L-041", Species = "sugar maple", SmallEndA = "16", LargeEnd = "18", ScaleLength = "8", ActualLength = "8ft5in", Source = "T-23", Scan = "Clear", By = "Tam" };
        var order = new OrderTyped(book.State.NumbersAside.Find(block => block.Prefix == "O-")!.First is var free ? $"O-{free}" : "", "A shop", "cherry", "100", "Bf", "2026-12-18", "", null, null, null, null, "3", null, null, false, false, false, false, "Oda", false);

        Assert.Contains("phone 1", Refused(LogReceive.Write(book, log)), StringComparison.Ordinal);
        Assert.Contains("phone 1", Refused(OrderTake.Write(book, order, PostedKey.None)), StringComparison.Ordinal);
        Assert.Contains("phone 1", Refused(PackWrite.Board(book, new(TagNumbers.Next(book.State, "P-", "phone 1"), "S-12", "Tam"), new("7", "0", "in", "8", "ft"))), StringComparison.Ordinal);
        Done(LogReceive.Write(book, log, new PostedKey(null, null, Phone: "phone 1")));
    }

    [Fact]
    public void Released_numbers_are_free_again_and_stay_in_the_book()
    {
        var phone = Named(null, "Bram");
        Done(Stack("S-26", "Bram", phone));
        var count = book.State.Entries.Count;

        Done(TagNumbers.Release(book, phone, "Oda", PostedKey.None));

        Assert.Empty(book.State.NumbersAside);
        Assert.Equal(count + TagNumbers.Kinds.Count, book.State.Entries.Count);
        Assert.Equal("S-27", TagNumbers.Next(book.State, "S-"));
        Assert.Equal("phone 2", Named(null, "Tam"));     // a name is not given twice
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(TagNumbers.Release(book, phone, "Oda", PostedKey.None));
    }

    [Fact]
    public void Blocks_do_not_overlap_and_nobody_unknown_is_set_numbers_aside()
    {
        Named(null, "Bram");

        Assert.IsType<Outcome<string>.Refused>(TagNumbers.SetAside(book, null, "Nobody"));
        Assert.Contains("phone 1", Refused(book.Write("Oda", new NumbersSetAside("phone 9", "S-", 30, 10))), StringComparison.Ordinal);
    }

    private string Named(string? phone, string by) => Assert.IsType<Outcome<string>.Done>(TagNumbers.SetAside(book, phone, by)).Value;

    private Outcome<IReadOnlyList<Entry>> Stack(string tag, string by, string? phone) =>
        StackBuild.Write(book, new StackTyped(tag, "black cherry", "4/4", "Boards", "Flat", "shed A", null, [], "300", null, by), new PostedKey(null, null, Phone: phone));

    private static string Refused(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(outcome).Reasons[0].Accepted;

    private static void Done(Outcome<IReadOnlyList<Entry>> outcome) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(outcome);
}
