using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;

namespace Boardwright.Yard.Book;

/// <summary>A size typed beside its unit. What may be another unit is asked about, never guessed: each meaning comes with words and with what says it without doubt.</summary>
/// <param name="Length">What it is.</param>
/// <param name="Kept">What was typed, with its unit.</param>
public sealed record SizeTyped(Length Length, string Kept)
{
    // Boards are cut in whole feet from 4 to 16; source nhla-rules. A bare figure under it is hardly feet.
    private const double StandardFeetMin = 4.0;
    private const double UsualLongestM = 6.0;

    private static readonly (string Unit, double Metres)[] Units = [("m", 1.0), ("ft", 0.3048), ("cm", 0.01), ("in", 0.0254), ("mm", 0.001)];

    /// <summary>The longest log the mill takes; 6 m where nobody wrote it down.</summary>
    public static Length Longest(YardState? state) => Length.FromMetres(state?.Yard?.LogLengthMaxM ?? UsualLongestM);

    /// <summary>A width or diameter. A bare figure past the most there can be is offered in the units in which it could be.</summary>
    /// <param name="what">Name of the field.</param>
    /// <param name="text">As typed: 16, 7-1/2, 40cm.</param>
    /// <param name="unit">The unit beside the field.</param>
    /// <param name="most">The largest there can be.</param>
    /// <param name="why">What it is the largest of, such as: the throat of the mill.</param>
    public static Outcome<SizeTyped> Across(string what, string? text, string unit, Length most, string why)
    {
        var given = (text ?? "").Trim();
        return Of(what, given, unit).Then<SizeTyped>(size =>
        {
            if (size.Length <= most)
                return size;
            List<Meaning> meant = Bare(given) is { } number ? [.. Elsewhere(number, unit, default, most).Take(1).Select(other => Say(given, number, other))] : [];
            return new Refusal(what, given, $"up to {Text(most, unit)}, {why}{(meant.Count > 0 ? $"; did you mean {meant[0].Words}?" : "")}") { Meant = meant };
        });
    }

    /// <summary>A length along wood. A bare figure that is hardly of the unit beside the field, or may be feet and inches, is asked about.</summary>
    /// <param name="what">Name of the field.</param>
    /// <param name="text">As typed: 8, 8.5, 8ft6in, 2.6m. One figure after the point is feet only where it is 0 or 5.</param>
    /// <param name="unit">The unit beside the field: ft, in or m.</param>
    /// <param name="longest">The longest log of the mill.</param>
    public static Outcome<SizeTyped> Along(string what, string? text, string unit, Length longest)
    {
        var given = (text ?? "").Trim();
        return Of(what, given, unit).Then<SizeTyped>(size => Bare(given) is { } number && Meanings(given, number, unit, longest) is { Count: > 0 } meant
            ? new Refusal(what, given, Asked(given, unit, meant)) { Meant = meant } : size);
    }

    /// <summary>A length so that it reads back without a question: 12ft, 8ft6in.</summary>
    public static string Plain(Length length)
    {
        var inches = Math.Round(length.Inches, 2);
        var (feet, rest) = (Math.Floor(inches / 12.0), inches - (12.0 * Math.Floor(inches / 12.0)));
        return rest < 0.005 ? Text($"{feet:0}ft") : Text($"{feet:0}ft{rest:0.##}in");
    }

    private static Outcome<SizeTyped> Of(string what, string given, string unit)
    {
        var kept = Bare(given) is null ? given : $"{given} {unit}";
        return Read.Length(what, kept) switch
        {
            Outcome<Length>.Done(var length) when length.Metres > 0.0 => new SizeTyped(length, kept),
            Outcome<Length>.Refused(var reasons) when Bare(given) is not null => new Outcome<SizeTyped>.Refused([.. reasons.Select(reason => reason with { Given = given })]),
            Outcome<Length>.Refused => new Refusal(what, given, $"a number of {unit}, or a length with its unit, such as 7-1/2in, 8ft6in, 40cm or 2.6m"),
            _ => new Refusal(what, given, "a size above zero"),
        };
    }

    private static List<Meaning> Meanings(string given, double number, string unit, Length longest)
    {
        var shortest = Length.FromFeet(StandardFeetMin);
        var found = new List<Meaning>();
        var metres = number * Units.First(one => one.Unit == unit).Metres;
        if (metres > longest.Metres)
            found.AddRange(Elsewhere(number, unit, shortest, longest).Select(other => Say(given, number, other)));
        else if (unit == "ft" && (number < StandardFeetMin || given.Contains('.', StringComparison.Ordinal)) && number >= shortest.Metres && number <= longest.Metres)
            found.Add(Say(given, number, "m"));
        var point = given.IndexOf('.', StringComparison.Ordinal);
        var mayBeInches = unit == "ft" && point > 0 && point == given.Length - 2 && given[^1] is not ('0' or '5');
        if (mayBeInches)
            found.Add(new($"{given[..point]} ft {given[^1]} in", $"{given} = {given[..point]}ft{given[^1]}in"));
        if (found.Count > 0)
            found.Add(new($"{given} {unit}", $"{given} = {given}{unit}"));
        return found;
    }

    // 8ft6in or 8.60: two figures after the point are tenths where no log is so many metres long.
    private static string Asked(string given, string unit, List<Meaning> meant) => meant.Count == 2 && meant[0].Typed.EndsWith("in", StringComparison.Ordinal)
        ? $"{After(meant[0])} or {given}0: it may be feet and inches, or tenths of a foot"
        : $"{string.Join(", ", meant.SkipLast(1).Select(meaning => meaning.Words))} or {given} {unit}: a bare {given} may be either";

    private static string After(Meaning meaning) => meaning.Typed[(meaning.Typed.LastIndexOf('=') + 2)..];

    private static IEnumerable<string> Elsewhere(double number, string unit, Length least, Length most) =>
        Units.Where(one => one.Unit != unit && number * one.Metres >= least.Metres && number * one.Metres <= most.Metres && number * one.Metres > 0.02).Select(one => one.Unit).Take(2);

    private static Meaning Say(string given, double number, string unit)
    {
        var length = Length.FromMetres(number * Units.First(one => one.Unit == unit).Metres);
        var also = unit switch
        {
            "m" => FeetAndInches(length),
            "cm" or "mm" when length.Metres < 1.2 => Text($"{length.Inches:0.##} in"),
            "cm" or "mm" => FeetAndInches(length),
            _ => Text($"{length.Metres:0.##} m"),
        };
        return new($"{given} {unit} ({also})", $"{given} = {given}{unit}");
    }

    private static string FeetAndInches(Length length)
    {
        var inches = (int)Math.Round(length.Inches);
        return inches % 12 == 0 ? Text($"{inches / 12} ft") : Text($"{inches / 12} ft {inches % 12} in");
    }

    // A figure without a unit: 8, 7-1/2, 8.60. Null where something says what it is.
    private static double? Bare(string given) => Read.Number("", given) is Outcome<double>.Done(var number) ? number : null;

    private static string Text(Length length, string unit) => Text($"{length.Metres / Units.First(one => one.Unit == unit).Metres:0.#} {unit}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
