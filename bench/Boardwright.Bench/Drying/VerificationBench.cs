using System.Globalization;
using Boardwright.Drying;
using Boardwright.Drying.Tests.Air;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Bench.Drying;

/// <summary>Verification of the forecasts on many hidden stacks: woods, seasons and ways of reading; quality, not time.</summary>
internal static class VerificationBench
{
    public static void Run(int stacks)
    {
        Console.WriteLine("| wood, stacked | read by | readings | moisture in band, % | ready in band, % | score of moisture, % MC | score of ready day, d | straight line, d | a year an inch, d |");
        Console.WriteLine("| --- | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        Show("sugar maple", new DateOnly(2026, 5, 1), ReadingKind.PinMeter, stacks, [12, 24, 36], 50);
        Show("sugar maple", new DateOnly(2026, 5, 1), ReadingKind.SampleBoard, stacks, [12, 24, 36], 50);
        Show("sugar maple", new DateOnly(2026, 5, 1), ReadingKind.OvenSection, stacks, [12, 24, 36], 50);
        Show("sugar maple", new DateOnly(2026, 5, 1), ReadingKind.PackWeight, stacks, [12, 24, 36], 50);
        Show("sugar maple", new DateOnly(2026, 5, 1), ReadingKind.Estimate, stacks, [12, 24, 36], 50);
        Show("sugar maple", new DateOnly(2026, 9, 15), ReadingKind.PinMeter, stacks, [30, 60, 90], 150);
        Show("northern red oak", new DateOnly(2026, 5, 1), ReadingKind.PinMeter, stacks, [25, 50, 75], 110);
    }

    private static void Show(string wood, DateOnly start, ReadingKind kind, int stacks, int[] readingDays, int verifiedOn)
    {
        var species = ((Outcome<Species>.Done)SpeciesTable.Find("species", wood)).Value;
        var stack = new AirDryingInput
        {
            Species = species,
            Thickness = Length.FromInches(1.0),
            From = GreenWood.Moisture(species),
            To = MoistureContent.FromPercent(20.0),
            Start = start,
            Weather = Climate(),
        };
        foreach (var score in new SyntheticYard(stack, kind, stacks, readingDays, verifiedOn, 77).Scores())
        {
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {wood}, {start:d MMM} | {kind} | {score.Readings} | {100.0 * score.MoistureInBand:0} | {100.0 * score.ReadyInBand:0} | {score.MoistureCrps:0.00} | {score.ReadyCrps:0.0} | {score.StraightLineDays:0} | {score.RuleDays:0} |"));
        }
    }

    // Invented: inland Great Lakes, about 44 N, as in the tests.
    private static WeatherSeries Climate()
    {
        double[] celsius = [-7.5, -6.5, -0.5, 7.0, 13.5, 18.5, 21.0, 20.0, 15.5, 9.5, 2.5, -4.0];
        double[] humidity = [79, 76, 73, 67, 66, 69, 71, 74, 75, 76, 80, 81];
        var normals = ((Outcome<ClimateNormals>.Done)ClimateNormals.From("climate", [.. celsius.Zip(humidity)])).Value;
        return ((Outcome<WeatherSeries>.Done)WeatherSeries.From("climate", Enumerable.Range(0, 365).Select(day => normals.On(new DateOnly(2026, 1, 1).AddDays(day))))).Value;
    }
}
