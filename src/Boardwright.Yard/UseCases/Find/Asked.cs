using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Yard.UseCases;

/// <summary>The fields of the find page, as typed.</summary>
public static class FindAsked
{
    /// <summary>The query they make; null or empty fields ask nothing.</summary>
    public static Outcome<FindQuery> Read(string? text, string? wood, string? thick, string? place, string? dry)
    {
        int? quarters = null;
        if (thick is not null)
        {
            if (!int.TryParse(thick, NumberStyles.None, CultureInfo.InvariantCulture, out var read) || read is < 1 or > 48)
                return new Refusal("Thickness", thick, "quarters of an inch, 1 to 48");
            quarters = read;
        }

        if (dry is null)
            return new FindQuery(text, wood, quarters, place);
        return Quantities.Reading.Read.MoistureContent("Not wetter than", dry.EndsWith('%') ? dry : dry + "%").Then<FindQuery>(most => new FindQuery(text, wood, quarters, place, most));
    }
}
