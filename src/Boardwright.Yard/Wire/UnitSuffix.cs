namespace Boardwright.Yard.Wire;

/// <summary>Parts a JSON key into words and the unit its end names: dry_bulb_c is "dry bulb" in °C.</summary>
public static class UnitSuffix
{
    // Longest first, so that kg_per_m3 is found before m3.
    private static readonly (string Suffix, string Unit)[] Known =
    [
        ("_kwh_per_kg_water", "kWh/kg water"), ("_money_per_bf", "money/bf"), ("_kwh_per_m3_solid", "kWh/m³ solid"), ("_kg_per_kg", "kg/kg"), ("_kg_per_m3", "kg/m³"), ("_kj_per_kg", "kJ/kg"),
        ("_kwh", "kWh"), ("_kw", "kW"), ("_pct", "%"), ("_mm", "mm"), ("_in", "in"), ("_ft", "ft"), ("_m2", "m²"), ("_m3", "m³"), ("_m", "m"),
        ("_bf", "bf"), ("_kg", "kg"), ("_lb", "lb"), ("_kpa", "kPa"), ("_pa", "Pa"), ("_kj", "kJ"), ("_min", "min"), ("_days", "days"), ("_hours", "h"), ("_h", "h"),
        ("_deg", "°"), ("_c", "°C"), ("_f", "°F"), ("_l", "L"), ("_g", "g"), ("_n", "N"), ("_money", "money"), ("_sd", ""),
    ];

    public static (string Label, string Unit) Part(string key)
    {
        foreach (var (suffix, unit) in Known)
        {
            if (key.EndsWith(suffix, StringComparison.Ordinal) && key.Length > suffix.Length)
            {
                return (Words(key[..^suffix.Length]), unit);
            }
        }

        return (Words(key), "");
    }

    private static string Words(string key) => key.Replace('_', ' ');
}
