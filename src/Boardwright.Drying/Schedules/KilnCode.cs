using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying.Schedules;

/// <summary>Name of a moisture-content schedule, such as T4-D2: row of the temperature table, moisture class, and number of the wet-bulb depression.</summary>
/// <param name="TemperatureRow">1 to 14; higher is hotter.</param>
/// <param name="MoistureClass">A to F; the letter says at which moisture contents the depression changes.</param>
/// <param name="DepressionNumber">1 to 8; higher is drier air.</param>
/// <source id="ah-188" locator="ch. 7"/>
/// <method page="docs/methods/kiln-schedule.md"/>
public readonly record struct KilnCode(int TemperatureRow, char MoistureClass, int DepressionNumber)
{
    /// <summary>Reads a code as the tables write it.</summary>
    /// <param name="what">The field, for the refusal.</param>
    /// <param name="text">The code.</param>
    public static Outcome<KilnCode> Parse(string what, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var parts = text.Trim().ToUpperInvariant().Split('-');
        return parts.Length == 2 && parts[0].Length >= 2 && parts[0][0] == 'T' && parts[1].Length == 2
            && int.TryParse(parts[0].AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var row) && row is >= 1 and <= 14
            && parts[1][0] is >= 'A' and <= 'F' && parts[1][1] is >= '1' and <= '8'
            ? new KilnCode(row, parts[1][0], parts[1][1] - '0')
            : new Refusal(what, text, "a hardwood schedule code, T1 to T14, class A to F, depression 1 to 8, such as T4-D2");
    }

    /// <summary>The gentler of two codes in each part: what a charge of both woods is dried by.</summary>
    /// <remarks>Lower temperature row and lower depression number; the class whose depression opens at the lower moisture content.</remarks>
    public static KilnCode Mildest(KilnCode one, KilnCode other) => new(
        Math.Min(one.TemperatureRow, other.TemperatureRow),
        (char)Math.Min(one.MoistureClass, other.MoistureClass),
        Math.Min(one.DepressionNumber, other.DepressionNumber));

    /// <summary>As the tables write it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"T{TemperatureRow}-{MoistureClass}{DepressionNumber}");
}
