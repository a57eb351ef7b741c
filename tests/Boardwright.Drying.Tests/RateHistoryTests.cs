namespace Boardwright.Drying.Tests;

public class RateHistoryTests
{
    private const double Usual = 0.25;
    private static readonly DryingRate Fast = new(1.3, 0.1);

    [Fact]
    public void Without_history_the_rate_is_the_usual_one()
    {
        var rate = For("sugar maple", "row A");

        Assert.Equal(1.0, rate.Factor, 1e-12);
        Assert.Equal(Usual, rate.Spread, 1e-12);
    }

    [Fact]
    public void Same_wood_in_the_same_row_learns_most_and_another_wood_elsewhere_least()
    {
        var same = For("sugar maple", "row A", Found("sugar maple", "row A", Fast));
        var wood = For("sugar maple", "row B", Found("sugar maple", "row A", Fast));
        var row = For("white ash", "row A", Found("sugar maple", "row A", Fast));
        var neither = For("white ash", "row B", Found("sugar maple", "row A", Fast));

        Assert.True(same.Factor > wood.Factor && wood.Factor > row.Factor && row.Factor > neither.Factor && neither.Factor > 1.0);
        Assert.True(same.Spread < wood.Spread && wood.Spread < row.Spread && row.Spread < neither.Spread && neither.Spread < Usual);
    }

    [Fact]
    public void Many_stacks_teach_all_but_what_a_stack_has_of_its_own()
    {
        var stacks = Enumerable.Range(0, 60).Select(_ => Found("sugar maple", "row A", new DryingRate(1.3, 0.05))).ToArray();
        var rate = For("sugar maple", "row A", stacks);

        // The own part is 0.3 of the variance.
        Assert.Equal(Usual * Math.Sqrt(0.3), rate.Spread, 0.01);
        Assert.InRange(rate.Factor, 1.27, 1.33);
    }

    [Fact]
    public void Stack_that_told_nothing_moves_nothing() =>
        Assert.Equal(For("sugar maple", "row A"), For("sugar maple", "row A", Found("sugar maple", "row A", new DryingRate(1.4, Usual))));

    [Fact]
    public void Order_of_the_stacks_does_not_matter()
    {
        var (one, two) = (Found("sugar maple", "row A", Fast), Found("white ash", "row A", new DryingRate(0.8, 0.15)));

        Assert.Equal(For("sugar maple", "row A", one, two).Factor, For("sugar maple", "row A", two, one).Factor, 1e-12);
    }

    [Fact]
    public void One_stack_agrees_with_the_formula_of_two_normal_numbers()
    {
        // Same wood and row: covariance 0.7 of the variance; readings alone have variance 1/(1/0.01 - 1/0.0625).
        var error = 1.0 / (1.0 / 0.01 - 1.0 / 0.0625);
        var read = Math.Log(1.3) * error / 0.01;
        var gain = 0.7 * 0.0625 / (0.0625 + error);

        Assert.Equal(gain * read, Math.Log(For("sugar maple", "row A", Found("sugar maple", "row A", Fast)).Factor), 1e-12);
    }

    private static DryingRate For(string species, string row, params RateFound[] found) => RateHistory.InYard(Given.Species(species), row, found);

    private static RateFound Found(string species, string row, DryingRate rate) => new("S-1", Given.Species(species).CommonName, row, rate);

    [Fact]
    public void Charges_teach_the_next_one_of_the_kiln_by_the_spread_of_kilns()
    {
        var oak = Given.Species("northern red oak");
        var usual = DryingCoefficients.For(oak).KilnSpread;
        RateFound[] slow = [new("C-1", oak.CommonName, "C", new DryingRate(0.8, 0.3 * usual))];

        var (here, elsewhere) = (RateHistory.InKiln(oak, "C", slow), RateHistory.InKiln(oak, "D", slow));

        Assert.True(here.Factor < elsewhere.Factor && elsewhere.Factor < 1.0);
        Assert.True(here.Spread < elsewhere.Spread && elsewhere.Spread < usual);
    }
}
