using System.Collections.Concurrent;
using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;

namespace Boardwright.Yard.UseCases;

/// <summary>Keeps air-drying forecasts by everything that goes into them: a reading of one stack asks for that stack again and for no other.</summary>
internal static class ForecastCache
{
    private const int Most = 400;
    private static readonly ConcurrentDictionary<string, Lazy<Outcome<AirDryingForecast>>> Known = new(StringComparer.Ordinal);

    public static Outcome<AirDryingForecast> Of(AirDryingInput input)
    {
        if (Known.Count > Most)
            Known.Clear();
        return Known.GetOrAdd(Key(input), _ => new(() => AirDrying.Forecast(input))).Value;
    }

    // Two sums of the weather, weighed by the place in the series, tell one series from another.
    private static string Key(AirDryingInput input)
    {
        double celsius = 0.0, humidity = 0.0, wind = 0.0;
        for (var i = 0; i < input.Weather.Days.Count; i++)
        {
            var day = input.Weather.Days[i];
            celsius += (i + 1) * day.MeanCelsius;
            humidity += (i + 1) * day.HumidityPercent;
            wind += (i + 1) * (day.WindMetresPerSecond ?? -1.0);
        }

        return string.Join('|', ((IEnumerable<object>)
        [
            input.Species.CommonName, input.Thickness.Metres, input.From.Fraction, input.To.Fraction, input.Start, input.Place.Name, input.HorizonDays, input.Seed, input.Members,
            $"{input.Rate}", $"{input.WeatherKnownThrough:O}", $"{input.CurveThrough:O}", $"{input.AskedOn:O}", input.Weather.First, input.Weather.Days.Count, celsius, humidity, wind,
            .. input.Moves.Select(move => (object)$"{move.Date:O} {move.Place.Name}"),
            .. input.Readings.Select(reading => (object)string.Create(CultureInfo.InvariantCulture, $"{reading.Date:O} {reading.Mean.Fraction:R} {reading.ErrorPercent:R} {reading.SharedErrorPercent:R} {reading.Kind}")),
        ]).Select(part => Convert.ToString(part, CultureInfo.InvariantCulture)));
    }
}
