using Boardwright.Quantities;
using Boardwright.Sawing;

namespace Boardwright.Yard.UseCases;

/// <summary>A thickness and a pattern to try on a log instead of the planned ones, as written in an address; nothing means as planned.</summary>
public sealed record LogChoice(NominalThickness? Thickness, SawPattern? Pattern)
{
    public static Outcome<LogChoice> Read(string? thickness, string? pattern)
    {
        SawPattern? chosen = null;
        if (!string.IsNullOrEmpty(pattern))
        {
            if (!Enum.TryParse<SawPattern>(pattern, ignoreCase: true, out var known) || !Enum.IsDefined(known))
                return new Refusal("pattern", pattern, "live, cant, quarter or boule");
            chosen = known;
        }

        return string.IsNullOrEmpty(thickness)
            ? new LogChoice(null, chosen)
            : Quantities.Reading.Read.NominalThickness("thickness", thickness).Then<LogChoice>(nominal => new LogChoice(nominal, chosen));
    }
}
