using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

/// <summary>A stack has one moisture now, on the list, on its page and where a table is to be poured of it.</summary>
public sealed class StackNowTests
{
    [Theory]
    [InlineData("S-06", "likely this evening")]
    [InlineData("S-10", "mean of samples")]
    [InlineData("S-08", "by condensate")]
    public void List_and_page_go_by_the_same_moisture(string tag, string how)
    {
        var state = DemonstrationBook.Yard;
        var now = StackNow.Of(state, state.Stacks[tag])!;
        var row = Assert.IsType<Outcome<StackList>.Done>(StackList.Of(state, null, null, null)).Value.Rows.Single(one => one.Stack.Tag == tag);
        var figures = Assert.IsType<Outcome<StackSheet>.Done>(StackSheet.Of(state, tag)).Value.Figures;

        Assert.Equal(how, now.How);
        Assert.Equal(now.Mean.Percent, row.MoisturePct!.Value, 1e-9);
        Assert.Contains(figures, figure => figure.Value == $"{now.Mean.Percent:0.0}");
        Assert.Contains($"{now.Mean.Percent:0.0} %, nominal", figures.Single(figure => figure.Label == "Weighs about").Basis, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, true)]
    [InlineData(22, false)]
    public void Piece_planned_dry_says_that_its_stack_is_not_yet(int day, bool wet)
    {
        // T-1 of S-16 is planned at 8.1 %; S-16 is at 17 % until it is out of D-42 on 21 November.
        var state = DemonstrationBook.On(new(2026, 11, day));
        var pieces = Assert.IsType<Outcome<PourSheet>.Done>(PourSheet.Of(state, "T-1", null)).Value.Pieces;

        Assert.All(pieces, piece => Assert.Equal(wet, piece.Moisture.StartsWith($"Planned at 8.1 %: S-16 is at {StackNow.Of(state, state.Stacks["S-16"])!.Mean.Percent:0.0} % now", StringComparison.Ordinal)));
    }
}
