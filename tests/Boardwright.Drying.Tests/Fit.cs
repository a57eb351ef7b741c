using System.Globalization;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests;

/// <summary>How the coefficients of drying-coefficients.csv are found: the middle board of the model against the printed periods.</summary>
internal static class Fit
{
    /// <summary>Coefficient at which the geometric mean of the quickest and slowest stacking dates of the year is that of the printed period.</summary>
    public static double Air(PublishedRow row)
    {
        var (low, high) = Period(row);
        var weather = row.Text("climate") == "north" ? Climate.North : Climate.Central;
        var species = Given.Species(row.Text("species"));
        return Solve(coefficient =>
        {
            var days = Enumerable.Range(0, 24).Select(half => AirDays(species, weather, weather.First.AddDays(15 * half), coefficient)).ToList();
            return Math.Log(days.Min() * days.Max() / (low * high));
        });
    }

    /// <summary>Coefficient at which the logarithms of the periods to 6 % miss the middles of the printed ones by nothing on the average.</summary>
    public static double Kiln(IReadOnlyList<PublishedRow> rows)
    {
        var species = Given.Species(rows[0].Text("species"));
        return Solve(coefficient => rows.Average(row =>
        {
            var (low, high) = Period(row);
            return Math.Log(KilnDays(species, row, coefficient) / Math.Sqrt(low * high));
        }));
    }

    public static double AirDays(Species species, WeatherSeries weather, DateOnly start, double coefficient) => AirDrying.CentralDays(
        new AirDryingInput
        {
            Species = species,
            Thickness = Length.FromInches(1.0),
            From = GreenWood.Moisture(species),
            To = MoistureContent.FromPercent(20.0),
            Start = start,
            Weather = weather,
            HorizonDays = 900,
        },
        coefficient) ?? 900.0;

    public static double KilnDays(Species species, PublishedRow row, double coefficient)
    {
        var input = new KilnDryingInput
        {
            Species = species,
            Thickness = Length.FromInches(1.0),
            From = row.Text("from") == "green" ? GreenWood.Moisture(species) : MoistureContent.FromPercent(20.0),
            To = MoistureContent.FromPercent(6.0),
        };
        return KilnDrying.CentralDays(input, Given.Done(KilnSchedule.For(species, input.Thickness)), coefficient);
    }

    public static (double Low, double High) Period(PublishedRow row)
    {
        var ends = row.Expected.Split('-');
        return (double.Parse(ends[0], CultureInfo.InvariantCulture), double.Parse(ends[1], CultureInfo.InvariantCulture));
    }

    // Time falls as the coefficient grows; bisection on the logarithm.
    private static double Solve(Func<double, double> tooSlow)
    {
        var (low, high) = (Math.Log(1e-12), Math.Log(2e-9));
        for (var i = 0; i < 14; i++)
        {
            var middle = 0.5 * (low + high);
            if (tooSlow(Math.Exp(middle)) > 0.0)
                low = middle;
            else
                high = middle;
        }

        return Math.Exp(0.5 * (low + high));
    }
}
