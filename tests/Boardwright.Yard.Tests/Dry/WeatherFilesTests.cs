using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Dry;

public sealed class WeatherFilesTests
{
    [Fact]
    public void Hours_of_a_service_are_read_by_a_mapping_of_its_columns()
    {
        var rows = Enumerable.Range(0, 24).Select(hour => string.Create(CultureInfo.InvariantCulture, $"KXX,2026-05-01 {hour:00}:51,{(hour == 3 ? "M" : "50.0")},60.00,{(hour < 12 ? "0.00" : "10.00")}"));
        var series = Done(WeatherFiles.Read("w", "station,valid,tmpf,relh,sknt\n" + string.Join('\n', rows), "time=valid,t_f=tmpf,rh_pct=relh,wind_kn=sknt", "M"));

        var day = Assert.Single(series.Days);
        Assert.Equal(10.0, day.MeanCelsius, 1e-9);
        Assert.Equal(60.0, day.HumidityPercent, 1e-9);
        Assert.Equal(5.0 * 1852.0 / 3600.0, day.WindMetresPerSecond!.Value, 1e-9);
        Assert.Equal(1, day.FilledHours);
        Assert.Equal(24, day.Hours!.Count);
    }

    [Fact]
    public void Dew_point_serves_where_no_humidity_is_reported()
    {
        var rows = Enumerable.Range(0, 24).Select(hour => $"2026-05-01T{hour:00}:00,20,9.3");
        var day = Assert.Single(Done(WeatherFiles.Read("w", "time,t_c,dew_c\n" + string.Join('\n', rows))).Days);

        // 20 C with a dew point of 9.307 C is 50.118 % (ashrae-fundamentals-2017, reference state); 9.3 is that to its rounding, Magnus within 0.1.
        Assert.Equal(50.1, day.HumidityPercent, 0.15);
    }

    [Fact]
    public void Short_gaps_are_filled_and_counted_and_a_day_with_a_long_gap_is_filled_as_a_day()
    {
        string Day(int day, int from, int through) => string.Join('\n', Enumerable.Range(from, through - from + 1).Select(hour => $"2026-05-0{day} {hour:00}:00,{10 * day},70"));
        var series = Done(WeatherFiles.Read("w", $"time,t_c,rh_pct\n{Day(1, 0, 9)}\n{Day(1, 16, 23)}\n{Day(2, 0, 8)}\n{Day(2, 16, 23)}\n{Day(3, 0, 23)}"));

        Assert.Equal(3, series.Days.Count);
        Assert.Equal(6, series.FilledHours);
        Assert.Equal(1, series.InterpolatedDays);
        Assert.Equal(20.0, series.Days[1].MeanCelsius, 1e-9);
        Assert.Null(series.Days[1].Hours);
    }

    [Fact]
    public void Open_format_of_building_weather_is_read_and_its_months_put_in_one_year()
    {
        var heading = "LOCATION,Nowhere,-,-,invented,000000,45,-80,-5,200\n" + string.Concat(Enumerable.Repeat("COMMENTS,\n", 7));
        string Line(int year, int month, int day, int hour) =>
            $"{year},{month},{day},{hour},60,?9,{(hour == 5 ? "99.9" : "4.0")},1.0,80,98000,0,0,300,0,0,0,0,0,0,0,180,{(hour == 7 ? "999" : "3.0")},5,5,20,9999,9,999999999,89,0.1,0,88,0,0,0";
        var text = heading + string.Join('\n', Enumerable.Range(1, 24).Select(hour => Line(1998, 1, 31, hour)).Concat(Enumerable.Range(1, 24).Select(hour => Line(1987, 2, 1, hour))));
        var series = Done(WeatherFiles.Read("w", text));

        Assert.Equal([new DateOnly(2001, 1, 31), new DateOnly(2001, 2, 1)], series.Days.Select(day => day.Date));
        Assert.Equal(4.0, series.Days[0].MeanCelsius, 1e-9);
        Assert.Equal(80.0, series.Days[1].HumidityPercent, 1e-9);
        Assert.Equal(3.0, series.Days[0].WindMetresPerSecond!.Value, 1e-9);
        Assert.Equal(2, series.FilledHours);
        Assert.Null(series.Days[0].RainMillimetres);
    }

    [Theory]
    [InlineData("time,t_c,rh_pct\nyesterday,10,50", "time")]
    [InlineData("time,rh_pct\n2026-05-01 00:00,50", "columns")]
    [InlineData("time,t_c,rh_pct\n2026-05-01 00:00,warm,50", "t_c")]
    public void Bad_rows_and_columns_are_named(string text, string named) =>
        Assert.Contains(named, string.Join("; ", Assert.IsType<Outcome<WeatherSeries>.Refused>(WeatherFiles.Read("w", text)).Reasons), StringComparison.Ordinal);

    [Fact]
    public void Mean_equilibrium_of_the_hours_is_over_that_of_the_mean_air()
    {
        // Nights at 95 %, afternoons at 35 %: the equation is convex in the humidity.
        var rows = Enumerable.Range(0, 24).Select(hour => string.Create(CultureInfo.InvariantCulture, $"2026-05-01 {hour:00}:00,15,{65.0 + 30.0 * Math.Cos(2.0 * Math.PI * hour / 24.0)}"));
        var day = Assert.Single(Done(WeatherFiles.Read("w", "time,t_c,rh_pct\n" + string.Join('\n', rows))).Days);

        Assert.True(day.EquilibriumFraction > (day with { Hours = null }).EquilibriumFraction + 0.01);
    }

    [Fact]
    public void Fewer_than_five_past_years_are_refused_and_five_serve_in_turn()
    {
        WeatherSeries Years(int years) => Done(WeatherSeries.From("w", Enumerable.Range(0, 365 * years + years / 4).Select(day => new DailyWeather(new DateOnly(2019, 1, 1).AddDays(day), 10.0, 60.0, null))));

        Assert.IsType<Outcome<PastSeasons>.Refused>(PastSeasons.From("w", Years(4)));
        Assert.Equal(5, Done(PastSeasons.From("w", Years(5))).Years);
    }

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;
}
