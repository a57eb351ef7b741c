using Boardwright.Quantities;

namespace Boardwright.Yard.UseCases;

/// <summary>A length typed in feet. A bare 8.6 may be tenths of a foot or 8 ft 6 in: it is asked about, never guessed.</summary>
internal static class FeetTyped
{
    /// <summary>Reads it, in feet as they were typed.</summary>
    /// <param name="what">Name of the field.</param>
    /// <param name="text">As typed: 8.5, 8.60, 8ft6in, 2.6m. One figure after the point is taken only where it is 0 or 5.</param>
    public static Outcome<double> Feet(string what, string? text)
    {
        var given = (text ?? "").Trim();
        if (given.Any(char.IsLetter) || given.Contains('\'', StringComparison.Ordinal))
            return Quantities.Reading.Read.Length(what, given).Then<double>(length => length.Feet);
        var point = given.IndexOf('.', StringComparison.Ordinal);
        return point > 0 && point == given.Length - 2 && char.IsAsciiDigit(given[^1]) && given[^1] is not ('0' or '5')
            ? new Refusal(what, $"{given} ft", $"{given[..point]}ft{given[^1]}in or {given}0: it may be feet and inches, or tenths of a foot")
            : Quantities.Reading.Read.Number(what, given);
    }
}
