using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>The fastest loss of moisture in a day that does not check the wood.</summary>
/// <remarks>
/// <para>Equation: between 4/4 and 8/4 the power of thickness that passes through both printed rates (exponent -1.31 to -1.36); thicker wood rate(8/4) (h/2)^-1.33,
/// h in inches; wood under 4/4 is held to the rate of 4/4.</para>
/// <para>The limit guards green wood, the first third of the moisture to be lost (oak: above about 45 %); it holds hour by hour, not only over a day.
/// Below 25 to 30 % a new check is hardly possible. Beyond 8/4 the rate is an extrapolation.</para>
/// </remarks>
/// <source id="conners-for-128" locator="table 9"/>
/// <source id="fpl-gtr-118"/>
/// <method page="docs/methods/safe-rate.md"/>
public sealed record SafeRate
{
    internal const double ThicknessExponent = 1.33;

    private static readonly Dictionary<string, SafeRateRow> Rows = DryingData.Read("safe-rates.csv").ToDictionary(
        row => row.Text("safe_rate_group"),
        row => new SafeRateRow(row.Needed("at_4_4_pct_per_day"), row.Needed("at_8_4_pct_per_day"), row.Text("source"), row.Text("mark")));

    /// <summary>Percent of moisture content a day.</summary>
    public required double DailyLossPercent { get; init; }

    /// <summary>Where the rates of the wood come from.</summary>
    public required string Source { get; init; }

    /// <summary>P printed source seen; C extrapolated beyond the printed thicknesses or taken over from a near species.</summary>
    public required string Mark { get; init; }

    /// <summary>The safe rate of a wood and rough thickness.</summary>
    /// <returns>The rate; no answer for a wood without a printed rate.</returns>
    public static Outcome<SafeRate> For(Species species, Length thickness)
    {
        ArgumentNullException.ThrowIfNull(species);
        var inches = thickness.Inches;
        if (inches is < 0.25 or > 12.0)
            return new Refusal("thickness", inches.ToString("0.##", CultureInfo.InvariantCulture) + "in", "0.25 to 12 in");

        if (species.SafeRateGroup is null || !Rows.TryGetValue(species.SafeRateGroup, out var row))
            return new Outcome<SafeRate>.NoAnswer($"No safe drying rate is printed for {species.CommonName}; printed: {string.Join("; ", Rows.Keys)}.");

        return new SafeRate
        {
            DailyLossPercent = At(row, inches),
            Source = row.Source,
            Mark = inches > 2.0 + 1e-9 || species.GroupMark == "C" ? "C" : row.Mark,
        };
    }

    private static double At(SafeRateRow row, double inches) => inches switch
    {
        <= 1.0 => row.At44,
        < 2.0 => row.At44 * Math.Pow(inches, -Math.Log2(row.At44 / row.At84)),
        _ => row.At84 * Math.Pow(inches / 2.0, -ThicknessExponent),
    };

    private sealed record SafeRateRow(double At44, double At84, string Source, string Mark);
}
