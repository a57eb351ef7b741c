using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How people say where the growth rings lie in a board: flat, quarter, or the angle between rings and wide face.</summary>
public static class GrainOption
{
    public const string Help = "flat (default), quarter, or the angle between growth rings and wide face, such as 30deg";

    private static readonly Angle Quartersawn = Angle.FromDegrees(90.0);

    public static Option Option { get; } = Option.Optional("grain", "GRAIN", Help);

    /// <summary>The ring angle of an option; flat when it is not given.</summary>
    public static Angle Of(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        return ask.TextOrNull("grain") is { } text ? ask.Take("--grain", Read("--grain", text)) : default;
    }

    /// <summary>Reads the word or the angle, 0 (flat) to 90 degrees (quarter); a bare number is degrees.</summary>
    public static Outcome<Angle> Read(string what, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        switch (text.Trim().ToLowerInvariant())
        {
            case "flat" or "flatsawn":
                return default(Angle);
            case "quarter" or "quartersawn":
                return Quartersawn;
            default:
                var written = Quantities.Reading.Read.Number(what, text) is Outcome<double>.Done ? text + "deg" : text;
                return Quantities.Reading.Read.Angle(what, written) is Outcome<Angle>.Done({ Degrees: >= 0.0 and <= 90.0 } angle)
                    ? angle
                    : new Refusal(what, text, "flat, quarter, or an angle from 0deg (flat) to 90deg (quarter)");
        }
    }
}
