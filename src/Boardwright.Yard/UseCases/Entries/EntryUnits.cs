using Boardwright.Yard.Wire;

namespace Boardwright.Yard.UseCases;

/// <summary>Units and names in which a person meets the figures of an entry: as they were typed, else as a mill says them. The book keeps SI.</summary>
internal static class EntryUnits
{
    private const double MmPerInch = 25.4;
    private const double MetresPerFoot = 0.3048;
    private const double GramsPerPound = 453.59237;

    private static readonly Dictionary<string, string> Labels = new(StringComparer.Ordinal)
    {
        ["raw_pct"] = "meter showed",
        ["sd_pct"] = "spread between boards",
        ["mean_pct"] = "mean moisture",
        ["mc_pct"] = "moisture",
        ["mc_mean_pct"] = "mean moisture",
        ["mc_sd_pct"] = "spread between boards",
        ["wood_c"] = "wood temperature",
        ["bf"] = "board feet",
        ["kg"] = "weight",
        ["c"] = "temperature",
        ["species_setting"] = "meter set to",
    };

    // What a person of the mill reads off: kilns and wood in Fahrenheit, logs in inches and feet.
    private static readonly HashSet<string> Fahrenheit = ["wood_c", "dry_bulb_c", "wet_bulb_c", "dry_bulb_lowest_c"];
    private static readonly HashSet<string> Inches = ["small_end_a_mm", "small_end_b_mm", "large_end_mm"];
    private static readonly HashSet<string> Feet = ["scale_length_m", "actual_length_m", "piece_length_min_m", "piece_length_max_m"];

    /// <summary>What a figure is called.</summary>
    public static string Label(string key) => Labels.GetValueOrDefault(key) ?? UnitSuffix.Part(key).Label;

    /// <summary>The unit it is shown in.</summary>
    public static string Shown(string key, string? typed)
    {
        var kept = UnitSuffix.Part(key).Unit;
        var written = new string([.. (typed ?? "").Where(char.IsLetter)]).ToUpperInvariant();
        return (kept, written) switch
        {
            ("°C", "F") => "°F",
            ("°C", "C") => "°C",
            ("mm", "IN") or ("m", "IN") => "in",
            ("m", "FT") or ("mm", "FT") => "ft",
            ("g", "LB") or ("kg", "LB") => "lb",
            _ when Fahrenheit.Contains(key) => "°F",
            _ when Inches.Contains(key) => "in",
            _ when Feet.Contains(key) => "ft",
            _ => kept,
        };
    }

    /// <summary>A kept figure in the unit it is shown in.</summary>
    public static double From(string key, string unit, double kept) => (UnitSuffix.Part(key).Unit, unit) switch
    {
        ("°C", "°F") => (kept * 1.8) + 32.0,
        ("mm", "in") => kept / MmPerInch,
        ("m", "in") => kept * 1000.0 / MmPerInch,
        ("m", "ft") => kept / MetresPerFoot,
        ("mm", "ft") => kept / 1000.0 / MetresPerFoot,
        ("g", "lb") => kept / GramsPerPound,
        ("kg", "lb") => kept * 1000.0 / GramsPerPound,
        _ => kept,
    };

    /// <summary>The unit as it is written behind a figure.</summary>
    public static string Written(string unit) => unit.TrimStart('°');
}
