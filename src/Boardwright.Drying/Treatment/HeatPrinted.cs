using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Treatment;

/// <summary>A printed time of heating: what was measured, or reckoned by the printed regression, beside which ours can be read.</summary>
/// <param name="Wood">The wood as printed.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Width">Width.</param>
/// <param name="Depression">Wet-bulb depression of the air.</param>
/// <param name="Initial">Temperature of the wood at the start.</param>
/// <param name="Medium">Temperature of the air between the layers.</param>
/// <param name="Core">Temperature of the centre at the end.</param>
/// <param name="Heating">Time until then.</param>
/// <param name="Upper">Printed 99 % bound of it; null where none is printed.</param>
/// <param name="Source">Where it is printed.</param>
/// <source id="fpl-wood-handbook-2010" locator="tables 20-4 and 20-8"/>
/// <method page="docs/methods/heat-treatment.md"/>
public sealed record HeatPrinted(
    string Wood, Length Thickness, Length Width, TemperatureDifference Depression, Temperature Initial, Temperature Medium, Temperature Core, Elapsed Heating, Elapsed? Upper, string Source)
{
    private static readonly IReadOnlyList<(string Group, HeatPrinted Row)> Rows =
    [
        .. DryingData.Read("heat-printed.csv").Select(row => (row.Text("schedule_group"), new HeatPrinted(
            row.Text("wood"), Length.FromInches(row.Needed("thickness_in")), Length.FromInches(row.Needed("width_in")), TemperatureDifference.FromKelvins(row.Needed("depression_f") / 1.8),
            Temperature.FromFahrenheit(row.Needed("initial_f")), Temperature.FromFahrenheit(row.Needed("medium_f")), Temperature.FromFahrenheit(row.Needed("core_f")),
            Elapsed.FromMinutes(row.Needed("heating_min")), row.Text("upper_min").Length > 0 ? Elapsed.FromMinutes(row.Needed("upper_min")) : null, row.Text("source")))),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<HeatPrinted> All { get; } = [.. Rows.Select(row => row.Row)];

    /// <summary>The printed times of a wood, nearest in thickness first; of the slowest hardwood or of pine where its own is not printed.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="thickness">The size asked about.</param>
    public static IReadOnlyList<HeatPrinted> For(Species species, Length thickness)
    {
        ArgumentNullException.ThrowIfNull(species);
        var group = Rows.Any(row => row.Group == species.ScheduleGroup) ? species.ScheduleGroup : species.StainGroup == "softwood" ? "softwood" : Slowest;
        return [.. Rows.Where(row => row.Group == group).Select(row => row.Row).OrderBy(row => Math.Abs(Math.Log(row.Thickness / thickness))).ThenBy(row => row.Depression.Kelvins)];
    }

    private const string Slowest = "maple, soft (red/silver)"; // of the five hardwoods printed, as HeatTreatment takes it
}
