using System.Globalization;
using System.Text.RegularExpressions;

namespace Boardwright.Validation.Tests;

/// <summary>A published value as it stands in the table: a number, a range "40-205", a least value ">=15", or a word.</summary>
internal sealed partial record Printed(double Low, double High, string Word)
{
    public bool IsNumber => Word.Length == 0;

    public static Printed Read(string text)
    {
        if (text.StartsWith(">=", StringComparison.Ordinal))
            return new(Number(text[2..]), double.PositiveInfinity, "");

        if (Range().Match(text) is { Success: true } range)
            return new(Number(range.Groups[1].Value), Number(range.Groups[2].Value), "");

        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? new(number, number, "") : new(double.NaN, double.NaN, text);
    }

    /// <summary>Half a unit of the last digit printed.</summary>
    public static double Rounding(string text)
    {
        var digits = text.Split('-', StringSplitOptions.RemoveEmptyEntries)[^1].TrimStart('>', '=');
        return 0.5 * Math.Pow(10.0, -Decimals(digits));
    }

    public static int Decimals(string text)
    {
        var (mantissa, exponent) = text.Split('e', 'E') is [var m, var e] ? (m, int.Parse(e, CultureInfo.InvariantCulture)) : (text, 0);
        var point = mantissa.IndexOf('.', StringComparison.Ordinal);
        return (point < 0 ? 0 : mantissa.Length - point - 1) - exponent;
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)$")]
    private static partial Regex Range();
}
