using Boardwright.Quantities;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.BoardCommands;

public sealed class BoardEntryTests
{
    [Fact]
    public void Bare_figures_are_inches_and_feet_and_blank_lines_are_left_out()
    {
        var entry = new BoardEntry("northern red oak", "4/4", "8-1/4", "12ft2in", false, [new("a", "knot", "34", "2.5", "2", "1.5"), new("b", "knot", "", null, " ", null)]);

        var graded = Assert.IsType<Outcome<Judged>.Done>(entry.Judge()).Value.Graded;

        Assert.Equal((8.25, 146.0), (Math.Round(graded.Board.Width.Inches, 9), Math.Round(graded.Board.Length.Inches, 9)));
        Assert.Equal((1, 0), (graded.Board.First.Defects.Count, graded.Board.Second.Defects.Count));
        Assert.Equal(2.0, graded.Board.First.Defects[0].Length.Inches, 1e-9);
        Assert.Contains("rules of its own", entry.SpeciesRule(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_wrong_field_is_named_at_once()
    {
        var entry = new BoardEntry(null, "4/4", "wide", "", false, [new("a", "dent", "1", "1", "1", "x")]);

        var reasons = Assert.IsType<Outcome<Judged>.Refused>(entry.Judge()).Reasons;

        Assert.Equal(["Width", "Length", "Defect 1, kind", "Defect 1, across"], reasons.Select(reason => reason.What));
    }

    // Clear 8 in x 12 ft of red oak: surface measure 8, FAS at the house's dry price. A wane along one edge over 7 ft: ripped off, what is left is graded and priced again.
    [Fact]
    public void The_house_values_a_board_of_a_wood_it_has_prices_of_and_names_the_cut_that_brings_more()
    {
        var state = Boardwright.Testing.DemonstrationBook.Yard;
        var fas = (double)state.Prices["northern red oak"].DryFasMoney;

        var clear = Assert.IsType<Outcome<Judged>.Done>(new BoardEntry("northern red oak", "4/4", "8", "12", false, []).Judge(state)).Value;
        Assert.Equal(8.0 * fas, clear.ValueMoney!.Value, 1e-9);
        Assert.Empty(clear.Better);

        var poor = Assert.IsType<Outcome<Judged>.Done>(new BoardEntry("northern red oak", "4/4", "8", "12", false, [new("a", "unsound knot", "4", "3", "4", "4"), new("b", "unsound knot", "4", "3", "4", "4")]).Judge(state)).Value;
        var best = poor.Better[0];
        Assert.True(Boardwright.Sawing.BoardRemaking.Worth(best.Boards, poor.Price!) > poor.ValueMoney);

        Assert.Null(Assert.IsType<Outcome<Judged>.Done>(new BoardEntry("hornbeam", "4/4", "8", "12", false, []).Judge(state)).Value.ValueMoney);
    }
}
