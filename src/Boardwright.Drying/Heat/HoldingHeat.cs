using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>Power that holds a hot kiln, known from one observed week and scaled with inside minus outside.</summary>
/// <param name="Observed">Power then.</param>
/// <param name="Inside">Kiln temperature then.</param>
/// <param name="Outside">Mean outside temperature then; below the inside.</param>
public sealed record HoldingHeat(Power Observed, Temperature Inside, Temperature Outside)
{
    /// <summary>Power in kW at another outside temperature, the kiln as hot as then.</summary>
    public double KilowattsAt(Temperature outside) =>
        Math.Max(0.0, Observed.Kilowatts * (Inside.Celsius - outside.Celsius) / (Inside.Celsius - Outside.Celsius));

    /// <summary>From what was noted on days of different cold: the least-squares line of power over outside temperature; it meets zero at the kiln's temperature.</summary>
    /// <param name="what">The field, for refusals.</param>
    /// <param name="noted">Outside mean temperature and power of each day noted.</param>
    /// <returns>Refused with fewer than two temperatures, or when power does not rise with the cold.</returns>
    public static Outcome<HoldingHeat> Fit(string what, IReadOnlyList<(Temperature Outside, Power Power)> noted)
    {
        ArgumentNullException.ThrowIfNull(noted);
        var meanCelsius = noted.Count == 0 ? 0.0 : noted.Average(day => day.Outside.Celsius);
        var meanKilowatts = noted.Count == 0 ? 0.0 : noted.Average(day => day.Power.Kilowatts);
        var spread = noted.Sum(day => Math.Pow(day.Outside.Celsius - meanCelsius, 2.0));
        var perKelvin = spread > 0.0 ? noted.Sum(day => (day.Outside.Celsius - meanCelsius) * (day.Power.Kilowatts - meanKilowatts)) / spread : 0.0;
        if (perKelvin >= 0.0)
        {
            return new Refusal(what, $"{noted.Count} days noted", "holding heat noted at two outside temperatures or more, rising with the cold");
        }

        var coldest = noted.Min(day => day.Outside);
        return new HoldingHeat(
            Power.FromKilowatts(Math.Max(0.0, meanKilowatts + perKelvin * (coldest.Celsius - meanCelsius))), Temperature.FromCelsius(meanCelsius - meanKilowatts / perKelvin), coldest);
    }
}
