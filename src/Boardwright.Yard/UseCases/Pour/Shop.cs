using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>The shop's air from a pour on: as written, as it was at the last pour, or as a person expects it.</summary>
/// <param name="Air">In hours after the pour.</param>
/// <param name="Words">Where it comes from.</param>
/// <param name="Points">For the drawing and the form: hour and °C.</param>
/// <param name="IsWritten">Read in the shop after this very pour.</param>
public sealed record PourShop(ShopTemperature Air, string Words, IReadOnlyList<(double Hour, double Celsius)> Points, bool IsWritten)
{
    /// <summary>Hours between the figures a person gives.</summary>
    public const double GivenEveryHours = 6.0;

    private const double HalfDayHours = 10.0;
    private const double RunDays = 2.0;
    private static readonly char[] Between = [' ', ',', ';'];

    /// <summary>The course for a pour.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="pour">The pour.</param>
    /// <param name="given">Temperatures every six hours, such as "20 19 15C 59F"; a bare figure is in °C, as the field's label says. Null or empty for the book's own.</param>
    public static Outcome<PourShop> For(YardState state, Pour pour, string? given)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pour);
        if (!string.IsNullOrWhiteSpace(given))
            return Given(given);
        if (pour.PouredAt is { } at && Run(state, at) is { Count: > 0 } written)
            return Course(written, $"as read in the shop since {at:d MMM HH:mm}", true);
        var from = state.ShopC.Keys.Where(time => DateOnly.FromDateTime(time) <= state.Today).ToList();
        if (from.Count == 0)
            return new PourShop(ShopTemperature.Constant(Temperature.FromCelsius(20.0)), "nothing read in the shop yet: 20 °C taken", [(0.0, 20.0)], false);
        var start = from[^1];
        for (var index = from.Count - 1; index > 0 && (from[index] - from[index - 1]).TotalDays <= RunDays; index--)
            start = from[index - 1];
        return Course(Run(state, start), $"as the shop was from {DayWords.Of(start, state.Today)} to {DayWords.Of(from[^1], state.Today)}", false);
    }

    private static List<(double Hour, double Celsius)> Run(YardState state, DateTime start)
    {
        var points = new List<(double, double)>();
        var last = start;
        foreach (var (at, celsius) in state.ShopC.Where(reading => reading.Key >= start.AddHours(-1.0)))
        {
            if ((at - last).TotalDays > RunDays)
                break;
            points.Add((Math.Max(0.0, (at - start).TotalHours), celsius));
            last = at;
        }

        return points;
    }

    // Figures half a day apart are kept as half-day means; closer ones are joined by straight lines.
    private static Outcome<PourShop> Course(List<(double Hour, double Celsius)> points, string words, bool written)
    {
        var readings = points.Select(point => (point.Hour, Temperature.FromCelsius(point.Celsius))).ToList();
        var means = points.Count > 1 && points.Zip(points.Skip(1), (a, b) => b.Hour - a.Hour).Min() >= HalfDayHours;
        var air = means ? ShopTemperature.Means("shop", readings) : ShopTemperature.Readings("shop", readings);
        var drawn = means ? points.SelectMany((point, index) => new[] { point, (Hour: index + 1 < points.Count ? points[index + 1].Hour - 0.01 : point.Hour + 12.0, point.Celsius) }).ToList() : points;
        return air.Then<PourShop>(course => new PourShop(course, words, drawn, written));
    }

    private static Outcome<PourShop> Given(string text)
    {
        var points = new List<(double, double)>();
        foreach (var word in text.Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            switch (Read.Temperature("Shop, every six hours", char.IsAsciiLetter(word[^1]) ? word : word + "C"))
            {
                case Outcome<Temperature>.Done({ Celsius: >= -20.0 and <= 60.0 } read):
                    points.Add((GivenEveryHours * points.Count, read.Celsius));
                    break;
                case Outcome<Temperature>.Done(var far):
                    return new Refusal("Shop, every six hours", $"{far.Celsius:0.#} °C", "a shop of -20 to 60 °C");
                default:
                    return new Refusal("Shop, every six hours", word, "temperatures in °C parted by blanks, such as 20 19 15 14, or with F");
            }
        }

        return Course(points, "as given here, every six hours from the pour", false);
    }
}
