using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;

namespace Boardwright.Yard.Book;

/// <summary>A rough thickness typed where quarters of an inch are the name. A size in millimetres or inches is no name: the names that lie near are offered, with what each is and what the mill saws it at.</summary>
public static class QuartersTyped
{
    // Sizes in which rough hardwood is sold; source nhla-rules.
    private static readonly int[] Sold = [2, 3, 4, 5, 6, 8, 10, 12, 16];

    // A size named in whole millimetres is short of the inch it stands for by up to 0.8 mm: 25 for 25.4, 50 for 50.8 (from memory: sawn sizes of hardwood in EN 1313-2).
    private const double ShortMm = 1.0;
    private const double BareMillimetresMin = 17.0;

    /// <summary>Reads it.</summary>
    /// <param name="state">The yard, for what its mill saws; null where no book is at hand.</param>
    /// <param name="what">Name of the field.</param>
    /// <param name="text">As typed: 4/4, or 27 mm = 4/4.</param>
    public static Outcome<NominalThickness> Of(YardState? state, string what, string? text)
    {
        var given = (text ?? "").Trim();
        if (Read.NominalThickness(what, given) is Outcome<NominalThickness>.Done done)
            return done;
        if (Read.Number(what, given) is Outcome<double>.Done(var number) && number is >= 3.0 and < BareMillimetresMin && number == Math.Floor(number))
            return new Refusal(what, given, $"in quarters of an inch: {number:0}/4 for {number:0} quarters, or a size with its unit") { Meant = [new($"{number:0}/4", $"{given} = {number:0}/4")] };
        if (Size(what, given) is not { } size)
            return new Refusal(what, given, "in quarters of an inch, such as 4/4 or 8/4");
        var near = Near(state, size);
        return new Refusal(what, given, $"in quarters of an inch; {Text($"{size.Millimetres:0.#}")} mm lies near {string.Join(" and ", near.Select(one => $"{one} ({Words(state, one)})"))}")
        {
            Meant = [.. near.Select(one => new Meaning($"{one} ({Words(state, one)})", $"{given} = {one}"))],
        };
    }

    /// <summary>The size that was typed before the name it was taken for; null where only a name was typed.</summary>
    public static Length? SizeBefore(string? text) => text?.LastIndexOf('=') is > 0 and var at && Size("", text[..at].Trim()) is { } size ? size : null;

    /// <summary>What the mill saws a thickness at, green; null where the house has no figure.</summary>
    public static Length? Green(YardState? state, NominalThickness nominal) => state?.Setting($"house_green_{nominal.Quarters}_4") is { } inches ? Length.FromInches(inches) : null;

    // The size at or under what was typed, and the next one over it; first the one whose name or sawn size is nearer.
    private static List<NominalThickness> Near(YardState? state, Length size)
    {
        var under = Sold.LastOrDefault(quarters => quarters * 6.35 <= size.Millimetres + ShortMm);
        var over = Sold.FirstOrDefault(quarters => quarters * 6.35 > size.Millimetres + ShortMm);
        return [.. new[] { under, over }.Where(quarters => quarters > 0).Select(NominalThickness.FromQuarters).OrderBy(Off)];

        double Off(NominalThickness nominal) => Math.Min(Math.Abs((nominal.Length - size).Metres), Math.Abs(((Green(state, nominal) ?? nominal.Length) - size).Metres));
    }

    private static string Words(YardState? state, NominalThickness nominal) => Green(state, nominal) is { } green
        ? Text($"{nominal.Length.Millimetres:0.0} mm, sawn {green.Millimetres:0.0} green") : Text($"{nominal.Length.Millimetres:0.0} mm");

    // A bare figure is millimetres from 17 up, inches under 3; between them it is quarters.
    private static Length? Size(string what, string given)
    {
        var text = Read.Number(what, given) is Outcome<double>.Done(var number) ? given + (number >= BareMillimetresMin ? "mm" : "in") : given;
        return Read.Length(what, text) is Outcome<Length>.Done(var size) && size.Millimetres is > 5.0 and < 310.0 ? size : null;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
