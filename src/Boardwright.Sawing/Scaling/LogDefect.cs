using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>A fault for which board feet are taken off the gross scale.</summary>
/// <remarks>Shares of the gross of any rule; several are added. Grade faults (stain, worm holes, surface checks) are no scale deductions.</remarks>
/// <source id="grosenbaugh-1952" locator="cull fractions, from memory"/>
/// <source id="usfs-fsh-2409-11" locator="ch. 20, four methods"/>
/// <method page="docs/methods/log-scale.md"/>
public abstract record LogDefect
{
    private LogDefect()
    {
    }

    /// <summary>A length lost whole: rot through, a split end. Share l/L.</summary>
    /// <param name="Lost">Length that holds no lumber.</param>
    public sealed record LostLength(Length Lost) : LogDefect;

    /// <summary>A wedge cut out to the pith: a seam, a scar. Share (l/L)(angle/360).</summary>
    /// <param name="Opening">Angle of the wedge at the pith, up to a full turn.</param>
    /// <param name="Along">Length it runs.</param>
    public sealed record Wedge(Angle Opening, Length Along) : LogDefect;

    /// <summary>Rot or shake inside. Share w h/(d - 1)² x l/L, in inches.</summary>
    /// <param name="Width">Width across, of the larger end showing.</param>
    /// <param name="Height">Height across.</param>
    /// <param name="Along">Length it runs.</param>
    public sealed record InteriorRot(Length Width, Length Height, Length Along) : LogDefect;

    /// <summary>Rot all round the outside: the log is scaled at its diameter less twice the depth.</summary>
    /// <param name="Depth">Depth under the bark.</param>
    public sealed record SapRot(Length Depth) : LogDefect;

    /// <summary>How defects are written.</summary>
    public const string Form = "length:3ft, wedge:60deg,12ft, rot:8inx6in,8ft or sap:1in";

    /// <summary>Reads a defect as a person writes it: its kind, a colon, its sizes.</summary>
    /// <param name="what">The field or option, for the refusal.</param>
    /// <param name="text">Such as "rot:8inx6in,8ft".</param>
    public static Outcome<LogDefect> Read(string what, string text)
    {
        var parts = text.Split([':', ','], StringSplitOptions.TrimEntries);
        return (parts[0].ToLowerInvariant(), parts.Length) switch
        {
            ("length", 2) => Size(what, parts[1]).Then<LogDefect>(lost => new LostLength(lost)),
            ("wedge", 3) => Turn(what, parts[1]).Then(opening => Size(what, parts[2]).Then<LogDefect>(along => new Wedge(opening, along))),
            ("rot", 3) when parts[1].Split('x', StringSplitOptions.TrimEntries) is [var width, var height] =>
                Size(what, width).Then(w => Size(what, height).Then(h => Size(what, parts[2]).Then<LogDefect>(along => new InteriorRot(w, h, along)))),
            ("sap", 2) => Size(what, parts[1]).Then<LogDefect>(depth => new SapRot(depth)),
            _ => new Refusal(what, text, Form),
        };
    }

    private static Outcome<Length> Size(string what, string text) => Quantities.Reading.Read.Length(what, text).Then<Length>(size =>
        size.Metres > 0.0 ? size : new Refusal(what, text, "a size above zero"));

    private static Outcome<Angle> Turn(string what, string text) => Quantities.Reading.Read.Angle(what, text).Then<Angle>(angle =>
        angle.Radians > 0.0 ? angle : new Refusal(what, text, "an angle above 0 and up to 360deg"));
}
