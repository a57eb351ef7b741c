using Boardwright.Testing;
using Boardwright.Web.Drawings;
using CsCheck;

namespace Boardwright.Web.Tests.Drawings;

public sealed class SpreadTests
{
    private static readonly Gen<double[]> Rising = Gen.Double[0, 300].Array[0, 25].Select(values => values.Order().ToArray());

    [Fact]
    public void Labels_end_at_least_the_gap_apart() => Rising.Always(
        wanted => Spread.Apart(wanted, 12).Zip(Spread.Apart(wanted, 12).Skip(1)).All(pair => pair.Second - pair.First >= 12 - 1e-9));

    [Fact]
    public void Labels_that_stand_apart_stay_where_they_are() => Assert.Equal([10, 30, 50], Spread.Apart([10, 30, 50], 12));

    [Fact]
    public void Clashing_labels_move_equally_far_both_ways() => Assert.Equal([14, 26], Spread.Apart([20, 20], 12));

    [Fact]
    public void Moves_cancel_out() => Rising.Always(wanted => Math.Abs(Spread.Apart(wanted, 12).Sum() - wanted.Sum()) < 1e-6);
}
