using System.Diagnostics;
using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Bench.Drying;

/// <summary>The forecast of a whole yard by the hour, and how its cost grows with stacks and boards. Invented weather: a yearly and a daily wave with chance.</summary>
internal static class YardBench
{
    private const int Days = 120;
    private const int CellsPerBoard = 16;
    private static readonly DateOnly Start = new(2026, 5, 1);

    public static void Run(string? picture)
    {
        var weather = Weather();
        Forecast(weather, 10, 128, Days);
        Console.WriteLine("| stacks | boards a stack | s | core seconds | cell-hours, thousand million | core ns a cell-hour |");
        Console.WriteLine("| ---: | ---: | ---: | ---: | ---: | ---: |");
        var grown = new List<(int Stacks, int Boards, double CoreSeconds)>();
        foreach (var (stacks, boards) in new[] { (1, 128), (1, 256), (1, 512), (10, 256), (25, 256), (50, 256), (100, 256), (200, 256), (50, 128), (50, 512) })
        {
            var (seconds, core) = Forecast(weather, stacks, boards, Days);
            var cells = (double)stacks * boards * Days * 24 * CellsPerBoard;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {stacks} | {boards} | {seconds:0.000} | {core:0.000} | {cells / 1e9:0.000} | {1e9 * core / cells:0.00} |"));
            grown.Add((stacks, boards, core));
        }

        if (picture is not null)
            File.WriteAllText(picture, YardPicture.Svg(grown));
    }

    private static (double Seconds, double CoreSeconds) Forecast(WeatherSeries weather, int stacks, int boards, int days)
    {
        string[] woods = ["sugar maple", "white ash", "northern red oak", "black walnut"];
        var inputs = Enumerable.Range(0, stacks).Select(stack => new AirDryingInput
        {
            Species = ((Outcome<Species>.Done)SpeciesTable.Find("species", woods[stack % woods.Length])).Value,
            Thickness = Length.FromInches(1.0 + stack % 3 * 0.5),
            From = MoistureContent.FromPercent(70.0),
            To = MoistureContent.FromPercent(12.0),
            Start = Start.AddDays(stack % 30),
            Weather = weather,
            HorizonDays = days,
            CurveThrough = Start.AddDays(400),
            Members = boards,
        }).ToList();
        using var process = Process.GetCurrentProcess();
        var core = process.TotalProcessorTime;
        var from = Stopwatch.GetTimestamp();
        AirDrying.Forecasts(inputs);
        var seconds = Stopwatch.GetElapsedTime(from).TotalSeconds;
        process.Refresh();
        return (seconds, (process.TotalProcessorTime - core).TotalSeconds);
    }

    private static WeatherSeries Weather()
    {
        var chance = new Boardwright.Numerics.RandomSequence(5);
        var hours = Enumerable.Range(0, 365 * 24).Select(hour =>
        {
            var (season, day) = (-Math.Cos(2.0 * Math.PI * (hour / 24.0 - 15.0) / 365.0), -Math.Cos(2.0 * Math.PI * (hour % 24 - 4) / 24.0));
            return new WeatherHour(
                new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Unspecified).AddHours(hour), 8.0 + 13.0 * season + 5.0 * day + chance.NextNormal(), Math.Clamp(72.0 - 15.0 * day + 5.0 * chance.NextNormal(), 15.0, 99.0), 3.0);
        });
        return ((Outcome<WeatherSeries>.Done)HourlyWeather.Series("weather", hours)).Value;
    }
}
