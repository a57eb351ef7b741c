using Boardwright.Drying;
using Boardwright.Quantities;

namespace Boardwright.Yard.UseCases;

/// <summary>The year of the invented demonstration valley by its monthly normals.</summary>
public static class DemonstrationClimate
{
    private static readonly double[] Celsius = [-7.5, -6.5, -0.5, 7.0, 13.5, 18.5, 21.0, 20.0, 15.5, 9.5, 2.5, -4.0];
    private static readonly double[] HumidityPercent = [79, 76, 73, 67, 66, 69, 71, 74, 75, 76, 80, 81];

    /// <summary>The whole year, dated 2026; it serves the same calendar day of any year.</summary>
    public static WeatherSeries Year { get; } =
        ClimateNormals.From("demonstration", [.. Celsius.Zip(HumidityPercent)]).Then(normals => WeatherSeries.From("demonstration", Enumerable.Range(0, 365).Select(day => normals.On(new DateOnly(2026, 1, 1).AddDays(day)))))
            is Outcome<WeatherSeries>.Done(var year) ? year : throw new InvalidOperationException("The normals make a year.");
}
