using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>Air temperature of the shop over the hours after the pour.</summary>
/// <remarks>Before the first reading and after the last the nearest one holds.</remarks>
public sealed record ShopTemperature
{
    private readonly double[] hours;
    private readonly double[] celsius;
    private readonly bool stepped;

    private ShopTemperature(double[] hours, double[] celsius, bool stepped) => (this.hours, this.celsius, this.stepped) = (hours, celsius, stepped);

    /// <summary>The same temperature all along.</summary>
    public static ShopTemperature Constant(Temperature temperature) => new([0.0], [temperature.Celsius], true);

    /// <summary>Readings joined by straight lines.</summary>
    /// <param name="what">The field, for the refusal.</param>
    /// <param name="readings">Hours after the pour in rising order, with the temperature then.</param>
    public static Outcome<ShopTemperature> Readings(string what, IReadOnlyList<(double Hours, Temperature Temperature)> readings) => Checked(what, readings, stepped: false);

    /// <summary>Mean temperatures that each hold until the next begins.</summary>
    /// <param name="what">The field, for the refusal.</param>
    /// <param name="means">Hours after the pour at which each begins, in rising order.</param>
    public static Outcome<ShopTemperature> Means(string what, IReadOnlyList<(double Hours, Temperature Temperature)> means) => Checked(what, means, stepped: true);

    /// <summary>Mean over a span, for questions about the whole cure.</summary>
    public Temperature Mean(Elapsed until)
    {
        const int Steps = 1000;
        var sum = Enumerable.Range(0, Steps).Sum(step => CelsiusAt((step + 0.5) / Steps * until.Hours));
        return Temperature.FromCelsius(sum / Steps);
    }

    /// <summary>The whole course moved warmer or colder.</summary>
    public ShopTemperature Shifted(TemperatureDifference difference) => new(hours, [.. celsius.Select(value => value + difference.Kelvins)], stepped);

    /// <summary>The same course up to a time, then another temperature held: what a warm room would do.</summary>
    public ShopTemperature Then(Elapsed from, Temperature held)
    {
        var kept = hours.Zip(celsius).Where(reading => reading.First < from.Hours).ToList();
        var end = CelsiusAt(from.Hours);
        double[] when = stepped ? [.. kept.Select(reading => reading.First), from.Hours] : [.. kept.Select(reading => reading.First), from.Hours, from.Hours + 1e-6];
        double[] what = stepped ? [.. kept.Select(reading => reading.Second), held.Celsius] : [.. kept.Select(reading => reading.Second), end, held.Celsius];
        return new(when, what, stepped);
    }

    /// <summary>Temperature in °C at an hour after the pour.</summary>
    internal double CelsiusAt(double hour)
    {
        var next = Array.FindIndex(hours, start => start > hour);
        if (next == 0)
        {
            return celsius[0];
        }

        var last = next < 0 ? hours.Length - 1 : next - 1;
        return stepped || next < 0
            ? celsius[last]
            : celsius[last] + (hour - hours[last]) / (hours[next] - hours[last]) * (celsius[next] - celsius[last]);
    }

    private static Outcome<ShopTemperature> Checked(string what, IReadOnlyList<(double Hours, Temperature Temperature)> given, bool stepped)
    {
        ArgumentNullException.ThrowIfNull(given);
        if (given.Count == 0 || given.Zip(given.Skip(1)).Any(pair => !(pair.First.Hours < pair.Second.Hours)))
        {
            return new Refusal(what, string.Join(' ', given.Select(reading => $"{reading.Hours:0.##} h")), "one temperature or more, hours in rising order");
        }

        foreach (var (_, temperature) in given)
        {
            if (temperature.Celsius is < -20.0 or > 120.0)
            {
                return new Refusal(what, $"{temperature.Celsius:0.#} C", "a shop or oven between -20 and 120 C");
            }
        }

        return new ShopTemperature([.. given.Select(reading => reading.Hours)], [.. given.Select(reading => reading.Temperature.Celsius)], stepped);
    }
}
