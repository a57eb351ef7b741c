using System.Collections.Frozen;

namespace Boardwright.Quantities.Reading;

/// <summary>The units one kind of quantity may be written in: canonical = (number x factor) + offset.</summary>
/// <param name="Kind">What is read, for the refusal.</param>
/// <param name="Example">Texts that are accepted, for the refusal.</param>
/// <param name="Units">Lower-case unit text to factor and offset.</param>
internal sealed record UnitTable(string Kind, string Example, FrozenDictionary<string, (double Factor, double Offset)> Units)
{
    public static UnitTable Of(string kind, string example, params (string Names, double Factor, double Offset)[] units)
    {
        var table = new Dictionary<string, (double, double)>(StringComparer.Ordinal);
        foreach (var (names, factor, offset) in units)
        {
            foreach (var name in names.Split(' '))
            {
                table.Add(name, (factor, offset));
            }
        }

        return new(kind, example, table.ToFrozenDictionary(StringComparer.Ordinal));
    }

    /// <summary>Reads number and unit, or several pairs that add up ("8ft6in"). Null when the text is not of this form.</summary>
    public double? Read(ReadOnlySpan<char> text)
    {
        var total = 0.0;
        var pairs = 0;
        var rest = text.Trim();
        while (!rest.IsEmpty)
        {
            if (!NumberText.TryTake(ref rest, out var value))
            {
                return null;
            }

            rest = rest.TrimStart();
            var length = UnitLength(rest);
            var written = rest[..length].ToString();
            var unit = written is "°" ? written : written.Replace("°", "", StringComparison.Ordinal).ToLowerInvariant();    // °F is F, ° alone an angle
            if (!Units.TryGetValue(unit, out var scale) || (pairs > 0 && (scale.Offset != 0.0 || value < 0.0)))
            {
                return null;
            }

            total += value * scale.Factor + scale.Offset;
            pairs++;
            rest = rest[length..].TrimStart();
        }

        return pairs > 0 && double.IsFinite(total) ? total : null;
    }

    /// <summary>A bound in the unit a text ends with, for its refusal: whoever writes inches is told inches.</summary>
    public string InUnitOf(string text, double canonical)
    {
        var (unit, scale) = Units.Where(one => text.TrimEnd().EndsWith(one.Key, StringComparison.OrdinalIgnoreCase)).MaxBy(one => one.Key.Length);
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{(canonical - scale.Offset) / scale.Factor:#,0.#} {unit}");
    }

    public Refusal Refuse(string what, string given) => new(what, given, $"{Kind} with its unit, such as {Example}");

    // A unit runs to the next digit, except that a 2 or 3 may close one that is known (m3, ft3, kg/m3): in 12ft2in it begins the inches.
    private int UnitLength(ReadOnlySpan<char> text)
    {
        var index = 0;
        while (index < text.Length && !char.IsAsciiDigit(text[index]) && text[index] is not (' ' or '-' or '+'))
        {
            index++;
        }

        if (index < text.Length && text[index] is '3' or '2' && index > 0 && text[index - 1] is 'm' or 't' or 'n')
        {
            var next = index + 1;
            if ((next == text.Length || !char.IsAsciiDigit(text[next]) && text[next] is not '.') && Units.ContainsKey(text[..next].ToString().ToLowerInvariant()))
            {
                return next;
            }
        }

        return index;
    }
}
