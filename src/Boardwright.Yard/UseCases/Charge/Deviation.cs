using System.Globalization;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How far the air found beside a load is from what was set.</summary>
public static class ChargeDeviation
{
    // A hand bulb and a controller agree within this.
    private const double WithinFahrenheit = 2.0;

    /// <summary>The last air found, held against the setting of its time; null where none was read since there is one.</summary>
    /// <param name="charge">The charge.</param>
    public static Traced? Of(Charge charge)
    {
        ArgumentNullException.ThrowIfNull(charge);
        if (charge.Gauges.LastOrDefault(gauge => gauge is { DryBulb: not null, WetBulb: not null, WickInDoubt: false }) is not { DryBulb: { } dry, WetBulb: { } wet } found || SetAt(charge, found) is not { } set)
            return null;
        return new("Air found", ChargeFigures.Bulbs(dry, wet), "°F", $"{found.At.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}; {Words(charge, found)}")
        {
            Method = "kiln-stall",
            Source = $"entry {found.Entry}, both bulbs as read beside the load",
            Inputs = [("set then", $"{ChargeFigures.Bulbs(set.DryBulb, set.WetBulb)} °F"), ("set holds wood at", Percent(ChargeRun.EmcOf(set.DryBulb, set.WetBulb)?.Percent)), ("found holds wood at", Percent(ChargeRun.EmcOf(dry, wet)?.Percent)), ("all", "settings and readings, under what was written so far")],
        };
    }

    /// <summary>"as set", or "wet bulb 8 °F over what was set: holds 11.2 % instead of 8.1 %"; empty without a setting or both bulbs.</summary>
    /// <param name="charge">The charge.</param>
    /// <param name="found">What was read.</param>
    public static string Words(Charge charge, Gauge found)
    {
        ArgumentNullException.ThrowIfNull(charge);
        ArgumentNullException.ThrowIfNull(found);
        if (found is not { DryBulb: { } dry, WetBulb: { } wet, WickInDoubt: false } || SetAt(charge, found) is not { } set)
            return "";
        var parts = new[] { Off("dry bulb", (dry - set.DryBulb).FahrenheitDegrees), Off("wet bulb", (wet - set.WetBulb).FahrenheitDegrees) }.OfType<string>().ToList();
        return parts.Count == 0 ? "as set"
            : $"{string.Join(", ", parts)} what was set{(ChargeRun.EmcOf(dry, wet) is { } holds && ChargeRun.EmcOf(set.DryBulb, set.WetBulb) is { } asked ? string.Create(CultureInfo.InvariantCulture, $": holds {holds.Percent:0.0} % instead of {asked.Percent:0.0} %") : "")}";
    }

    private static string? Off(string bulb, double fahrenheit) => Math.Abs(fahrenheit) <= WithinFahrenheit ? null
        : string.Create(CultureInfo.InvariantCulture, $"{bulb} {Math.Abs(fahrenheit):0} °F {(fahrenheit > 0.0 ? "over" : "under")}");

    private static Setting? SetAt(Charge charge, Gauge found) => charge.Settings.LastOrDefault(set => set.At <= found.At);

    private static string Percent(double? percent) => percent is { } known ? known.ToString("0.0", CultureInfo.InvariantCulture) + " %" : "unknown";
}
