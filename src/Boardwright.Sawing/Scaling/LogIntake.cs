using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>The look at a diameter before it is booked: 51 typed from a centimetre tape must not become a log of 51 in.</summary>
/// <method page="docs/methods/log-scale.md"/>
public static class LogIntake
{
    /// <summary>The diameter, or a refusal that offers the likely reading.</summary>
    /// <param name="what">The field or option, for the refusal.</param>
    /// <param name="diameter">The diameter as it was read.</param>
    /// <param name="throat">Widest log the mill takes.</param>
    public static Outcome<Length> Diameter(string what, Length diameter, Length throat)
    {
        if (diameter <= throat)
            return diameter;

        var likely = diameter.Inches / 2.54;
        var offer = likely <= throat.Inches
            ? string.Create(CultureInfo.InvariantCulture, $"; {diameter.Inches:0.#} cm = {likely:0.#} in?")
            : "";
        return new Refusal(
            what, string.Create(CultureInfo.InvariantCulture, $"{diameter.Inches:0.#} in"), string.Create(CultureInfo.InvariantCulture, $"up to {throat.Inches:0.#} in, the throat of the mill{offer}"));
    }
}
