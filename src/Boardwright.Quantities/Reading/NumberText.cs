using System.Globalization;

namespace Boardwright.Quantities.Reading;

/// <summary>Numbers as people at a mill write them: 1.125, -12, 1-1/8, 1 1/8, 5/8, 1⅛.</summary>
internal static class NumberText
{
    private const string VulgarFractions = "¼½¾⅛⅜⅝⅞";
    private static readonly double[] VulgarValues = [0.25, 0.5, 0.75, 0.125, 0.375, 0.625, 0.875];

    /// <summary>Takes one number from the front of the text and moves the text past it. False when there is none.</summary>
    public static bool TryTake(ref ReadOnlySpan<char> text, out double value)
    {
        value = 0.0;
        var rest = text;
        var sign = 1.0;
        if (!rest.IsEmpty && rest[0] is '-' or '+' or '−')
        {
            sign = rest[0] == '+' ? 1.0 : -1.0;
            rest = rest[1..];
        }

        var whole = TryTakeDecimal(ref rest, out var number);
        if (whole && TryTakeSlash(ref rest, out var under))
        {
            number /= under;                                        // 5/8
        }
        else if (whole)
        {
            var ahead = rest;                                       // 1-1/8 or 1 1/8
            if (!ahead.IsEmpty && ahead[0] is '-' or ' ')
            {
                ahead = ahead[1..];
                if (TryTakeDecimal(ref ahead, out var over) && TryTakeSlash(ref ahead, out under))
                {
                    number += over / under;
                    rest = ahead;
                }
            }
        }

        if (!rest.IsEmpty && VulgarFractions.IndexOf(rest[0], StringComparison.Ordinal) is >= 0 and var which)
        {
            number += VulgarValues[which];
            rest = rest[1..];
            whole = true;
        }

        if (!whole || !double.IsFinite(number))
        {
            return false;
        }

        value = sign * number;
        text = rest;
        return true;
    }

    private static bool TryTakeSlash(ref ReadOnlySpan<char> text, out double under)
    {
        under = 0.0;
        if (text.IsEmpty || text[0] != '/')
        {
            return false;
        }

        var rest = text[1..];
        if (!TryTakeDecimal(ref rest, out under) || under == 0.0)
        {
            return false;
        }

        text = rest;
        return true;
    }

    private static bool TryTakeDecimal(ref ReadOnlySpan<char> text, out double value)
    {
        var length = 0;
        while (length < text.Length && (char.IsAsciiDigit(text[length]) || text[length] == '.'))
        {
            length++;
        }

        // An exponent only where a digit follows it: "1e-11m2/s" has one, "12 e" has not.
        if (length > 0 && length + 1 < text.Length && text[length] is 'e' or 'E')
        {
            var next = length + 1;
            if (text[next] is '-' or '+')
            {
                next++;
            }

            if (next < text.Length && char.IsAsciiDigit(text[next]))
            {
                while (next < text.Length && char.IsAsciiDigit(text[next]))
                {
                    next++;
                }

                length = next;
            }
        }

        if (!double.TryParse(text[..length], NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value))
        {
            return false;
        }

        text = text[length..];
        return true;
    }
}
