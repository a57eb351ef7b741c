namespace Boardwright.Drying.Tests;

/// <summary>Two invented climates of monthly normals, like the regions whose drying periods are printed.</summary>
internal static class Climate
{
    /// <summary>Inland Great Lakes, about 44 N: northern hardwoods (Upper Michigan of the sugar maple study).</summary>
    public static WeatherSeries North { get; } = Year(
        [-7.5, -6.5, -0.5, 7.0, 13.5, 18.5, 21.0, 20.0, 15.5, 9.5, 2.5, -4.0],
        [79, 76, 73, 67, 66, 69, 71, 74, 75, 76, 80, 81]);

    /// <summary>Central hardwood region, about 39 N.</summary>
    public static WeatherSeries Central { get; } = Year(
        [-1.0, 0.5, 5.5, 11.5, 17.0, 21.5, 23.5, 22.8, 19.0, 12.8, 6.5, 0.8],
        [72, 69, 66, 63, 68, 70, 72, 74, 74, 71, 73, 75]);

    // Straight lines between the middles of the months.
    private static WeatherSeries Year(double[] celsius, double[] humidity)
    {
        var first = new DateOnly(2025, 1, 1);
        return Given.Done(WeatherSeries.From("climate", Enumerable.Range(0, 365).Select(day =>
        {
            var place = (day - 15) / 365.0 * 12.0;
            var month = (int)Math.Floor(place);
            var share = place - month;
            var (one, next) = ((month + 12) % 12, (month + 13) % 12);
            return new DailyWeather(first.AddDays(day), celsius[one] + share * (celsius[next] - celsius[one]), humidity[one] + share * (humidity[next] - humidity[one]), null);
        })));
    }
}
