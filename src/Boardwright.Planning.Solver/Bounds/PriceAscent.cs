namespace Boardwright.Planning.Solver;

/// <summary>Raises a bound by changing the prices: those of limits that are exceeded go up, the others down.</summary>
/// <remarks>
/// Subgradient ascent with a direction that remembers (Camerini, Fratta and Maffioli 1975) and a step by the distance to the best plan known (Polyak 1969),
/// halved, nearly, when nothing is gained for a while; then it goes on from the best prices.
/// </remarks>
internal sealed class PriceAscent(ChargeYard yard)
{
    private const double Newest = 0.3; // share of the last excess in the direction
    private const double HeatScale = 0.01; // tenths of a kilowatt are many, so that their prices are small
    private const double Shorter = 0.7;
    private const double StepLeast = 0.002;
    private const double Gain = 1e-5;

    private readonly ChargePrices relaxed = new(yard);
    private readonly double[] direction = new double[yard.Prices];

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
    /// <param name="target">Lateness of the best plan known, in parts of a cent.</param>
    /// <param name="enough">A bound that is as good as a higher one.</param>
    /// <param name="step">Length of the first step: 1 is all the way to the target.</param>
    /// <param name="patience">Steps without a gain before they are made shorter.</param>
    /// <param name="more">Asked before each step.</param>
    public (long Bound, double[] Prices) Run(double[] prices, Branch branch, ChargeUse use, long target, long enough, double step, int patience, Func<bool> more)
    {
        var (best, bestPrices, without) = (long.MinValue, prices, 0);
        prices = (double[])prices.Clone();
        Array.Clear(direction);
        while (step > StepLeast && more())
        {
            var bound = relaxed.Bound(prices, branch, use);
            if (bound > best + (long)(Gain * Math.Abs((double)best)) || best == long.MinValue)
            {
                (best, bestPrices, without) = (bound, (double[])prices.Clone(), 0);
                if (best >= enough)
                {
                    break;
                }
            }
            else if (++without >= patience)
            {
                (step, without) = (step * Shorter, 0);
                prices = (double[])bestPrices.Clone();
            }

            if (!Step(prices, step * Math.Max(ChargePrices.Parts, target - bound) / ChargePrices.Parts))
            {
                break;
            }
        }

        return (best, bestPrices);
    }

    private bool Step(double[] prices, double way)
    {
        var square = 0.0;
        for (var i = 0; i < prices.Length; i++)
        {
            var scale = Scale(i);
            direction[i] += Newest * (relaxed.Excess[i] * scale - direction[i]);
            square += prices[i] > 0.0 || direction[i] > 0.0 ? direction[i] * direction[i] : 0.0;
        }

        if (square < 1e-12)
        {
            return false;
        }

        for (var i = 0; i < prices.Length; i++)
        {
            prices[i] = Math.Clamp(prices[i] + way / square * direction[i] * Scale(i), 0.0, yard.PriceMost(i));
        }

        return true;
    }

    private double Scale(int price) => yard.IsHeat(price) ? HeatScale : 1.0;
}
