using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

/// <summary>A stack whose tag is lost promises nothing that rests on its species; one in a kiln says what its samples say.</summary>
public sealed class StackUnprovenTests
{
    [Fact]
    public void Stack_with_its_tag_lost_is_settled_first_and_has_no_figure_that_rests_on_its_species()
    {
        var book = DemonstrationBook.Open();
        Assert.Contains(Sheet(book.State, "S-12").Figures, figure => figure.Label.StartsWith("Net once dry", StringComparison.Ordinal));
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new TagLost("S-12", ["S-07"])));

        var sheet = Sheet(book.State, "S-12");
        Assert.Equal(("Look at an end of S-12 and settle its species.", "/find/tag/S-12"), (sheet.Next.Do, sheet.Next.Path));
        Assert.DoesNotContain(sheet.Figures, figure => figure.Unit is "bf" or "kg" or "trip" or "trips");
        Assert.Null(sheet.Parts);
        Assert.All(sheet.Figures.Where(figure => figure.Label is "Moisture, last read" or "Likely this evening" or "Dry enough by air alone"), figure => Assert.StartsWith("If it is American basswood, which is unproven", figure.Basis, StringComparison.Ordinal));
    }

    [Fact]
    public void Stack_in_a_kiln_that_nobody_read_says_what_its_samples_read()
    {
        var state = DemonstrationBook.Yard;
        var samples = state.Charges["C-61"].SoundSamples.ToList();

        var words = Sheet(state, "S-10").Unread;
        Assert.StartsWith("Nobody read the stack itself. Its samples in C-61", words, StringComparison.Ordinal);
        Assert.All(samples, sample => Assert.Contains(FormattableString.Invariant($"{sample.Name} at {sample.Moisture.Percent:0.0} %"), words, StringComparison.Ordinal));
        Assert.DoesNotContain("Nothing was measured yet", words, StringComparison.Ordinal);
    }

    private static StackSheet Sheet(YardState state, string tag) => Assert.IsType<Outcome<StackSheet>.Done>(StackSheet.Of(state, tag)).Value;
}
