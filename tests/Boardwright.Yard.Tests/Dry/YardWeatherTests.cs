using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Dry;

public sealed class YardWeatherTests
{
    [Fact]
    public void Observed_days_come_first_then_the_forecast_then_the_means_of_the_months()
    {
        var series = Assert.IsType<Outcome<Drying.WeatherSeries>.Done>(YardWeather.Series(DemonstrationBook.Yard, new(2025, 2, 1), new(2027, 12, 31))).Value;

        Assert.Equal(7.1, series.On(new(2025, 11, 2))!.Value.MeanCelsius);
        Assert.Equal(-14.0, series.On(new(2026, 11, 20))!.Value.MeanCelsius);
        Assert.Equal(-7.5, series.On(new(2027, 1, 16))!.Value.MeanCelsius, 0.05);
        Assert.Equal(series.On(new(2027, 3, 1))!.Value.HumidityPercent, series.On(new(2025, 3, 1))!.Value.HumidityPercent);
        Assert.Equal(0, series.InterpolatedDays);
    }

    [Fact]
    public void Book_without_weather_says_what_is_missing() =>
        Assert.Contains("not in the book", Assert.IsType<Outcome<Drying.WeatherSeries>.NoAnswer>(YardWeather.Series(YardState.Of([], new(2026, 11, 2)), new(2026, 11, 2), new(2026, 12, 1))).Why, StringComparison.Ordinal);
}
