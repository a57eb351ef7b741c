namespace Boardwright.Yard.UseCases;

/// <summary>One thing done about short heat.</summary>
/// <param name="Way">What is done, by the most it then gives, kW.</param>
/// <param name="KilnKw">What each kiln draws less, by short day and kiln.</param>
/// <param name="DaysLost">Drying days lost, by charge.</param>
/// <param name="MostKw">Most it gives besides; it gives only what is missing.</param>
/// <param name="MoneyPerKwh">What that costs.</param>
public sealed record HeatRemedy(Func<double, string> Way, IReadOnlyList<IReadOnlyList<double>> KilnKw, IReadOnlyList<double> DaysLost, double MostKw = 0.0, decimal MoneyPerKwh = 0m);

/// <summary>Remedies that together are enough.</summary>
/// <param name="Parts">Each with the most it gives by the kilowatt-hour.</param>
/// <param name="DaysLost">Drying days lost, by charge.</param>
/// <param name="Money">What they cost together.</param>
public sealed record HeatTogether(IReadOnlyList<(HeatRemedy Remedy, double PeakKw)> Parts, IReadOnlyList<double> DaysLost, decimal Money)
{
    private const double HoursADay = 24.0;
    private const double NothingKw = 1e-9;

    /// <summary>The cheapest two or three that cover all that is missing; null where none do.</summary>
    /// <param name="shortKw">What is missing, by day.</param>
    /// <param name="remedies">What can be done.</param>
    /// <param name="priced">What lost days of the charges cost.</param>
    public static HeatTogether? Cheapest(IReadOnlyList<double> shortKw, IReadOnlyList<HeatRemedy> remedies, Func<IReadOnlyList<double>, decimal> priced) =>
        Some(remedies).Select(chosen => Of(shortKw, chosen, priced)).OfType<HeatTogether>().OrderBy(one => one.Money).ThenBy(one => one.Parts.Count).FirstOrDefault();

    // Every two and every three.
    private static IEnumerable<IReadOnlyList<HeatRemedy>> Some(IReadOnlyList<HeatRemedy> all)
    {
        for (var a = 0; a < all.Count; a++)
        {
            for (var b = a + 1; b < all.Count; b++)
            {
                yield return [all[a], all[b]];
                for (var c = b + 1; c < all.Count; c++)
                    yield return [all[a], all[b], all[c]];
            }
        }
    }

    // Two remedies at one kiln save no more than the larger, and cost its charge no more days; what gives by the kilowatt-hour fills the rest, the cheapest first.
    private static HeatTogether? Of(IReadOnlyList<double> shortKw, IReadOnlyList<HeatRemedy> chosen, Func<IReadOnlyList<double>, decimal> priced)
    {
        var rest = shortKw.Select((kw, day) => Math.Max(0.0, kw - Enumerable.Range(0, chosen[0].KilnKw[day].Count).Sum(kiln => chosen.Max(one => one.KilnKw[day][kiln])))).ToArray();
        double[] lost = [.. Enumerable.Range(0, chosen[0].DaysLost.Count).Select(use => chosen.Max(one => one.DaysLost[use]))];
        var money = priced(lost);
        var parts = new List<(HeatRemedy, double)>();
        foreach (var remedy in chosen.OrderBy(one => one.MoneyPerKwh))
        {
            double[] given = [.. rest.Select(kw => Math.Min(kw, remedy.MostKw))];
            money += (decimal)(given.Sum() * HoursADay) * remedy.MoneyPerKwh;
            rest = [.. rest.Zip(given, (kw, gives) => kw - gives)];
            parts.Add((remedy, given.Max()));
        }

        return rest.Max() <= NothingKw ? new(parts, lost, money) : null;
    }
}
