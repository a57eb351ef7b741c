using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Sensors that are not to be believed: until they are mended a person makes their round.</summary>
internal static class SensorsToMend
{
    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var kiln in state.Sensors.Values.Where(sensor => sensor.Standing != SensorStanding.Alive).GroupBy(sensor => sensor.Placed.Kiln, StringComparer.Ordinal))
        {
            var charge = state.Kilns[kiln.Key].Charge;
            var names = kiln.Select(sensor => SensorList.Words(sensor.Placed.Quantity)).Distinct().ToList();
            yield return new(
                kiln.Key, $"See to the sensors of {kiln.Key}: {string.Join(", ", names)}.",
                $"{string.Join(" ", kiln.Select(sensor => $"{sensor.Topic}: {sensor.Why}."))} {(charge is null ? "The kiln is empty." : "Read the bulbs by hand until then.")}",
                new("Sensors not believed", $"{kiln.Count()}", "", $"since {kiln.Min(sensor => sensor.Since):d MMM HH:mm}") { Source = $"entry {kiln.First().Entry}" },
                new(charge is null ? 0m : (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * state.Kilns[kiln.Key].Installed.CapacityBf / 1000.0), 1, "a day of the kiln, at the kiln-day margin"), Duties.Kilns,
                charge is null ? "/sensors" : $"/charges/{Uri.EscapeDataString(charge)}/air", charge is null ? "Open the sensors" : "Write what you read");
        }
    }
}
