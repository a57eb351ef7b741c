using Boardwright.Quantities;
using Boardwright.Sawing;

namespace Boardwright.Bench.Sawing;

/// <summary>Logs of a fixed seed as a small hardwood mill buys them, and invented prices.</summary>
internal static class RandomLogs
{
    /// <summary>8 to 26 in at the small end, 8 to 16 ft in whole 2 ft and 5 in of trim, taper 1/2 to 3 in, out of round up to 12 %, two in five swept by up to 3 in.</summary>
    public static IReadOnlyList<LogShape> Of(int count, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(_ => One(random))];
    }

    public static LogShape Swept(double smallIn, double largeIn, double lengthFt, double sweepIn, double ovality = 1.0) => Done(LogShape.Measured(
        [Section(0.0, smallIn, ovality), Section(lengthFt, largeIn, ovality)], Length.FromInches(sweepIn)));

    /// <summary>Price by thickness and by full size or smaller.</summary>
    public static IReadOnlyList<BoardPrice> Prices { get; } = [.. Rows(4, 3.00, 1.90), .. Rows(5, 3.20, 2.00), .. Rows(6, 3.40, 2.10), .. Rows(8, 3.75, 2.35)];

    public static IReadOnlyList<BoardPrice> Of(int quarters) => [.. Prices.Where(price => price.Thickness.Quarters == quarters)];

    public static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(outcome.ToString());

    private static IEnumerable<BoardPrice> Rows(int quarters, double best, double lesser) =>
    [
        new(NominalThickness.FromQuarters(quarters), "best", Length.FromInches(6), Length.FromFeet(8), best), new(NominalThickness.FromQuarters(quarters), "lesser", Length.FromInches(3), Length.FromFeet(4), lesser),
    ];

    private static LogShape One(Random random)
    {
        var small = 8.0 + (18.0 * random.NextDouble() * random.NextDouble()) + (4.0 * random.NextDouble());
        var length = 8.0 + (2.0 * random.Next(5)) + (5.0 / 12.0);
        var sweep = random.NextDouble() < 0.4 ? Math.Min(3.0, small / 5.0) * random.NextDouble() : 0.0;
        return Swept(small, small + 0.5 + (2.5 * random.NextDouble()), length, sweep, 1.0 + (0.12 * random.NextDouble()));
    }

    private static LogSection Section(double atFt, double inches, double ovality) => new(Length.FromFeet(atFt), Length.FromInches(inches * Math.Sqrt(ovality)), Length.FromInches(inches / Math.Sqrt(ovality)));
}
