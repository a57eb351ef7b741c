namespace Boardwright.Planning.Solver;

/// <summary>Raises a bound by changing the prices: those of limits that are exceeded go up, the others down.</summary>
/// <remarks>
/// Subgradient ascent in which each price has its own length of step, by how much its limit was exceeded or kept so far, and a direction that remembers
/// (Adam: Kingma and Ba 2015); all steps grow shorter to the end. Prices of heat, crew and days are of very different size, which one length for all does not suit.
/// </remarks>
internal sealed class PriceAscent(ChargeYard yard)
{
    private const double HeatScale = 0.01; // tenths of a kilowatt are many, so that their prices are small
    private const double Remembers = 0.9; // of the direction, at each step
    private const double RemembersSquare = 0.999; // of the size
    private const double LastOfMany = 0.001; // length of the last step over that of the first
    private const double LastOfFew = 0.05;
    private const int Many = 200;

    private readonly ChargePrices relaxed = new(yard);
    private readonly double meanCents = yard.Asked.Select(asked => (double)asked.Order.CentsPerDay).DefaultIfEmpty(0.0).Average();
    private readonly double[] direction = new double[yard.Prices];
    private readonly double[] square = new double[yard.Prices];

    /// <summary>Prices to begin with: each order pays for its days, in equal parts for wood it cannot do without.</summary>
    public double[] First()
    {
        var prices = new double[yard.Prices];
        for (var a = 0; a < yard.Asked.Length; a++)
        {
            var asked = yard.Asked[a];
            var needed = Enumerable.Range(0, asked.Units.Length).Where(slot => asked.Ways.All(way => way.Slots.Contains(slot))).ToList();
            foreach (var slot in needed.Count > 0 ? needed : [.. Enumerable.Range(0, asked.Units.Length)])
            {
                Array.Fill(prices, (double)asked.Order.CentsPerDay / Math.Max(1, needed.Count), yard.LatePrices[a][slot], asked.UnmetDays);
            }
        }

        return prices;
    }

    /// <summary>The best bound found, in parts of a cent, and its prices.</summary>
    /// <param name="prices">Where to begin.</param>
    /// <param name="branch">The part of all plans.</param>
    /// <param name="use">Learns where the solutions put things.</param>
    /// <param name="enough">A bound that is as good as a higher one.</param>
    /// <param name="move">How far a price moves at first, as a share of a mean order's day late.</param>
    /// <param name="most">Steps.</param>
    /// <param name="more">Asked before each step.</param>
    public (long Bound, double[] Prices) Run(double[] prices, Branch branch, ChargeUse use, long enough, double move, int most, Func<bool> more)
    {
        var (best, bestPrices) = (long.MinValue, prices);
        prices = (double[])prices.Clone();
        Array.Clear(direction);
        Array.Clear(square);
        var (seen, seenSquare, last) = (1.0, 1.0, most < Many ? LastOfFew : LastOfMany);
        for (var step = 0; step < most && more(); step++)
        {
            var bound = relaxed.Bound(prices, branch, use);
            if (bound > best)
            {
                (best, bestPrices) = (bound, (double[])prices.Clone());
                if (best >= enough)
                {
                    break;
                }
            }

            (seen, seenSquare) = (seen * Remembers, seenSquare * RemembersSquare);
            Step(prices, move * meanCents * Math.Pow(last, (double)step / most), 1.0 - seen, 1.0 - seenSquare);
        }

        return (best, bestPrices);
    }

    private void Step(double[] prices, double length, double seen, double seenSquare)
    {
        for (var i = 0; i < prices.Length; i++)
        {
            var excess = relaxed.Excess[i];
            direction[i] += (1.0 - Remembers) * (excess - direction[i]);
            square[i] += (1.0 - RemembersSquare) * (excess * excess - square[i]);
            var way = direction[i] / seen / (Math.Sqrt(square[i] / seenSquare) + 1e-6);
            prices[i] = Math.Clamp(prices[i] + length * (yard.IsHeat(i) ? HeatScale : 1.0) * way, 0.0, yard.PriceMost(i));
        }
    }
}
