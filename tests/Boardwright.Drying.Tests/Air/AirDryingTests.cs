using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Air;

public class AirDryingTests
{
    private static readonly DateOnly May = new(2026, 5, 1);

    [Fact]
    public void Maple_stacked_in_spring_is_dry_in_summer()
    {
        var forecast = Forecast("sugar maple", 68.0, 20.0, May);

        Assert.InRange(forecast.DaysP50!.Value, 40.0, 75.0);
        Assert.True(forecast.ReadyP10 < forecast.ReadyP50 && forecast.ReadyP50 < forecast.ReadyP90);
        Assert.Equal(May.AddDays((int)Math.Ceiling(forecast.DaysP50!.Value)), forecast.ReadyP50);
    }

    [Fact]
    public void Maple_stacked_in_autumn_waits_for_the_next_spring()
    {
        var forecast = Forecast("sugar maple", 68.0, 20.0, new DateOnly(2026, 10, 15));

        Assert.Equal(2027, forecast.ReadyP50!.Value.Year);
        Assert.InRange(forecast.ReadyP50!.Value.Month, 3, 6);
    }

    [Fact]
    public void Thicker_wood_takes_longer_by_a_power_between_one_and_two()
    {
        var thin = Forecast("sugar maple", 68.0, 20.0, May).DaysP50!.Value;
        var thick = Forecast("sugar maple", 68.0, 20.0, May, "6/4").DaysP50!.Value;

        // In steady air the power is 1.5; from May on the days grow warmer under the thicker stack.
        Assert.InRange(Math.Log(thick / thin) / Math.Log(1.5), 1.0, 1.6);
    }

    [Fact]
    public void Dry_ash_left_outdoors_into_december_gains()
    {
        // 14.6 % at the end of October against an outdoor equilibrium of 16.5 and 16.9 %.
        var forecast = Forecast("white ash", 14.6, 12.0, new DateOnly(2026, 10, 30));

        var december = forecast.Curve.Single(day => day.Date == new DateOnly(2026, 12, 15));
        Assert.True(december.P50.Percent > 14.6 + 0.2);
        Assert.True(december.Emc.Percent > december.P50.Percent);
    }

    [Fact]
    public void Target_under_the_equilibrium_is_never_reached()
    {
        var forecast = Forecast("sugar maple", 30.0, 7.0, May);

        Assert.Null(forecast.ReadyP10);
        Assert.Null(forecast.ReadyP50);
        Assert.Null(forecast.DaysP50);
    }

    [Fact]
    public void Wood_already_dry_enough_is_ready_on_the_first_day() =>
        Assert.Equal(May, Forecast("sugar maple", 15.0, 25.0, May).ReadyP50);

    [Fact]
    public void Curve_begins_with_the_start_and_keeps_its_band_in_order()
    {
        var forecast = Forecast("northern red oak", 75.0, 25.0, May);

        Assert.Equal(75.0, forecast.Curve[0].P50.Percent, 1.0);
        Assert.Equal(May, forecast.Curve[0].Date);
        for (var i = 0; i < forecast.Curve.Count; i++)
        {
            var day = forecast.Curve[i];
            Assert.Equal(May.AddDays(i), day.Date);
            Assert.True(day.P10 <= day.P50 && day.P50 <= day.P90);
        }
    }

    [Fact]
    public void Reading_draws_the_curve_to_it_and_narrows_the_band()
    {
        var day = May.AddDays(30);
        var free = Forecast("sugar maple", 68.0, 20.0, May).Curve.Single(one => one.Date == day.AddDays(1));
        var wetter = free.P90.Percent + 3.0;
        var read = Forecast("sugar maple", 68.0, 20.0, May, readings: [new StackReading(day, MoistureContent.FromPercent(wetter), 1.0)]);

        var there = read.Curve.Single(one => one.Date == day.AddDays(1));
        Assert.InRange(there.P50.Percent, wetter - 1.5, wetter + 1.5);
        Assert.True(there.P90.Percent - there.P10.Percent < free.P90.Percent - free.P10.Percent);
        Assert.True(read.ReadyP50 > Forecast("sugar maple", 68.0, 20.0, May).ReadyP50);
    }

    [Fact]
    public void Several_boards_read_on_a_day_make_one_reading()
    {
        var reading = StackReading.Of(May, [.. new[] { 20.0, 22.0, 24.0, 26.0 }.Select(MoistureContent.FromPercent)]);

        Assert.Equal(23.0, reading.Mean.Percent, 1e-9);
        Assert.Equal(Math.Sqrt(20.0 / 3.0 / 4.0 + 1.15 * 1.15), reading.TotalErrorPercent, 1e-9);
        Assert.Equal(Math.Sqrt(0.7) * 1.15, reading.SharedErrorPercent, 1e-9);
    }

    [Fact]
    public void Doubtful_reading_is_believed_as_much_when_it_is_too_low_as_when_it_is_too_high()
    {
        var day = May.AddDays(10);
        var free = Forecast("sugar maple", 68.0, 20.0, May).Curve.Single(one => one.Date == day.AddDays(1)).P50.Percent;
        double Moved(double by) => Forecast("sugar maple", 68.0, 20.0, May, readings: [ReadingErrorModel.Of(ReadingKind.Estimate).Reading(day, MoistureContent.FromPercent(free + by))])
            .Curve.Single(one => one.Date == day.AddDays(1)).P50.Percent - free;

        // An eye is wrong in proportion to the moisture there is, not to what it says.
        Assert.Equal(Moved(15.0), -Moved(-15.0), 1.0);
    }

    [Fact]
    public void Fan_is_quicker_and_a_shed_not_quicker_than_the_row()
    {
        double Days(StackPlace place) => Given.Done(AirDrying.Forecast(Input("sugar maple", 68.0, 20.0, May) with { Place = place })).DaysP50!.Value;

        Assert.True(Days(StackPlace.Row with { Fan = true }) < Days(StackPlace.Row));
        Assert.True(Days(StackPlace.Shed) >= Days(StackPlace.Row));
        Assert.True(Days(StackPlace.OpenRow) >= Days(StackPlace.Row));
    }

    [Fact]
    public void Same_seed_gives_the_same_forecast() =>
        Assert.Equal(Forecast("sugar maple", 68.0, 20.0, May).Curve, Forecast("sugar maple", 68.0, 20.0, May).Curve);

    [Theory]
    [InlineData(2.0, 20.0)]
    [InlineData(60.0, 1.0)]
    [InlineData(300.0, 20.0)]
    public void Moisture_outside_the_model_is_refused(double from, double to) =>
        Assert.IsType<Outcome<AirDryingForecast>.Refused>(AirDrying.Forecast(Input("sugar maple", from, to, May)));

    [Fact]
    public void Short_weather_serves_only_its_own_days()
    {
        var week = Given.Done(WeatherSeries.From("weather", Enumerable.Range(0, 7).Select(day => new DailyWeather(May.AddDays(day), 15.0, 60.0, null))));

        var inside = Given.Done(AirDrying.Forecast(Input("sugar maple", 68.0, 20.0, May) with { Weather = week }));
        Assert.Equal(8, inside.Curve.Count);
        Assert.Null(inside.ReadyP50);
        Assert.IsType<Outcome<AirDryingForecast>.Refused>(AirDrying.Forecast(Input("sugar maple", 68.0, 20.0, May.AddDays(-1)) with { Weather = week }));
    }

    [Fact]
    public void Missing_days_are_filled_and_flagged_and_long_gaps_refused()
    {
        DailyWeather On(int day) => new(May.AddDays(day), day, 60.0, null);

        var series = Given.Done(WeatherSeries.From("weather", [On(0), On(1), On(4)]));
        Assert.Equal(2, series.InterpolatedDays);
        Assert.Equal(3.0, series.Days[3].MeanCelsius, 1e-12);
        Assert.True(series.Days[3].Interpolated);
        Assert.IsType<Outcome<WeatherSeries>.Refused>(WeatherSeries.From("weather", [On(0), On(40)]));
        Assert.IsType<Outcome<WeatherSeries>.Refused>(WeatherSeries.From("weather", [On(0), On(0)]));
        Assert.IsType<Outcome<WeatherSeries>.Refused>(WeatherSeries.From("weather", [On(0) with { HumidityPercent = 140.0 }]));
    }

    private static AirDryingForecast Forecast(string species, double from, double to, DateOnly start, string thickness = "4/4", IReadOnlyList<StackReading>? readings = null) =>
        Given.Done(AirDrying.Forecast(Input(species, from, to, start, thickness) with { Readings = readings ?? [] }));

    private static AirDryingInput Input(string species, double from, double to, DateOnly start, string thickness = "4/4") => new()
    {
        Species = Given.Species(species),
        Thickness = Given.Thickness(thickness),
        From = MoistureContent.FromPercent(from),
        To = MoistureContent.FromPercent(to),
        Start = start,
        Weather = Climate.North,
    };

    [Fact]
    public void Hindsight_tells_a_wet_reading_back_to_the_days_before_it()
    {
        var maple = Maple() with { WeatherKnownThrough = May.AddDays(60) };
        var without = Done(maple);
        var read = Done(maple with { Readings = [new StackReading(May.AddDays(40), MoistureContent.FromPercent(35.0), 1.0)] });

        Assert.Empty(without.Hindsight);
        Assert.Equal(read.Curve.Take(read.Hindsight.Count).Select(day => day.Date), read.Hindsight.Select(day => day.Date));
        Assert.Equal(May.AddDays(41), read.Hindsight[^1].Date);
        Assert.Equal(read.Curve[41], read.Hindsight[41]);
        Assert.InRange(read.Hindsight[41].P50.Percent, 33.5, 35.5);
        // Ten days before, the forecast curve stays; hindsight is wetter and surer.
        Assert.Equal(without.Curve[31].P50, read.Curve[31].P50);
        Assert.True(read.Hindsight[31].P50.Percent > read.Curve[31].P50.Percent + 3.0);
        Assert.True(Width(read.Hindsight[31]) < Width(read.Curve[31]));
        // The start was not in doubt, so little moves there.
        Assert.Equal(read.Curve[0].P50.Percent, read.Hindsight[0].P50.Percent, 4.0);
    }

    [Fact]
    public void Hindsight_of_a_reading_that_says_what_was_expected_moves_nothing_but_the_band()
    {
        var expected = Done(Maple());
        var mean = expected.Curve[30].P50;
        var read = Done(Maple() with { Readings = [new StackReading(May.AddDays(29), mean, 1.0)] });

        Assert.Equal(read.Curve[20].P50.Percent, read.Hindsight[20].P50.Percent, 1.5);
        Assert.True(Width(read.Hindsight[20]) < 0.8 * Width(read.Curve[20]));
    }

    [Fact]
    public void Weather_already_observed_is_not_scattered()
    {
        var early = Done(Maple() with { Members = 1024 });
        var known = Done(Maple() with { Members = 1024, WeatherKnownThrough = May.AddDays(60) });

        // What remains is the scatter of the boards themselves.
        Assert.True(known.ReadyP90!.Value.DayNumber - known.ReadyP10!.Value.DayNumber <= early.ReadyP90!.Value.DayNumber - early.ReadyP10!.Value.DayNumber);
        Assert.NotEqual(early.Curve[40].P90, known.Curve[40].P90);
    }

    [Fact]
    public void Stack_moved_under_a_roof_dries_by_the_shed_from_that_day_on()
    {
        var row = Done(Maple());
        var moved = Done(Maple() with { Moves = [new StackMove(May.AddDays(10), StackPlace.Shed)] });
        var shed = Done(Maple() with { Place = StackPlace.Shed });

        Assert.Equal(row.Curve[10], moved.Curve[10]);
        Assert.True(moved.Curve[30].P50 > row.Curve[30].P50);
        Assert.True(moved.Curve[30].P50 < shed.Curve[30].P50);
        Assert.Equal(shed.Curve[30], Done(Maple() with { Moves = [new StackMove(May.AddDays(-3), StackPlace.Shed)] }).Curve[30]);
    }

    [Fact]
    public void Curve_reaches_the_day_asked_for()
    {
        var through = May.AddDays(250);

        Assert.True(Done(Maple()).Curve[^1].Date < through);
        Assert.Equal(through, Done(Maple() with { CurveThrough = through }).Curve[^1].Date);
    }

    private static AirDryingInput Maple() => new()
    {
        Species = Given.Species("sugar maple"),
        Thickness = Length.FromInches(1.0),
        From = MoistureContent.FromPercent(68.0),
        To = MoistureContent.FromPercent(20.0),
        Start = May,
        Weather = Climate.North,
    };

    private static AirDryingForecast Done(AirDryingInput input) => Given.Done(AirDrying.Forecast(input));

    private static double Width(DryingDay day) => day.P90.Percent - day.P10.Percent;
}
