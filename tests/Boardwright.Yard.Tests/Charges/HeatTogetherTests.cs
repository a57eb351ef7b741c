using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

public sealed class HeatTogetherTests
{
    // Two days, two kilns, two charges, five remedies of invented size: every subset of two or three, and both orders in which shop and heaters may fill the rest.
    [Fact]
    public void The_chosen_ones_are_the_cheapest_that_are_enough()
    {
        var random = new Random(7);
        var (found, none) = (0, 0);
        for (var run = 0; run < 300; run++)
        {
            double Any(double most) => Math.Round(random.NextDouble() * most, 2);
            double[] missing = [Any(20.0), Any(20.0)];
            HeatRemedy Whole() => new(_ => "", [[Any(10.0), Any(3.0)], [Any(3.0), Any(10.0)]], [Any(4.0), Any(2.0)]);
            HeatRemedy ByHour() => new(_ => "", [[0.0, 0.0], [0.0, 0.0]], [0.0, 0.0], Any(6.0), (decimal)Any(1.0));
            HeatRemedy[] all = [Whole(), Whole(), Whole(), ByHour(), ByHour()];
            decimal Priced(IReadOnlyList<double> lost) => (decimal)((40.0 * lost[0]) + (70.0 * lost[1]));

            var best = HeatTogether.Cheapest(missing, all, Priced);
            var plain = Plain(missing, all, Priced);

            Assert.Equal(plain is null, best is null);
            if (plain is { } money)
                Assert.Equal((double)money, (double)best!.Money, 1e-6);
            (found, none) = plain is null ? (found, none + 1) : (found + 1, none);
        }

        Assert.True(found > 50 && none > 50, $"{found} {none}");
    }

    private static decimal? Plain(double[] missing, HeatRemedy[] all, Func<IReadOnlyList<double>, decimal> priced)
    {
        decimal? best = null;
        for (var a = 0; a < all.Length; a++)
        {
            for (var b = 0; b < all.Length; b++)
            {
                for (var c = 0; c < all.Length; c++)
                {
                    if (a == b && b == c)
                        continue;
                    HeatRemedy[] some = [all[a], all[b], all[c]]; // in this order; one named twice counts once
                    some = [.. some.Distinct()];
                    var money = priced([some.Max(one => one.DaysLost[0]), some.Max(one => one.DaysLost[1])]);
                    var enough = true;
                    for (var day = 0; day < 2; day++)
                    {
                        var left = Math.Max(0.0, missing[day] - some.Max(one => one.KilnKw[day][0]) - some.Max(one => one.KilnKw[day][1]));
                        foreach (var one in some)
                        {
                            var gives = Math.Min(left, one.MostKw);
                            money += (decimal)(gives * 24.0) * one.MoneyPerKwh;
                            left -= gives;
                        }

                        enough &= left < 1e-9;
                    }

                    if (enough && (best is null || money < best))
                        best = money;
                }
            }
        }

        return best;
    }
}
