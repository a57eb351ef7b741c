using Boardwright.Quantities;

namespace Boardwright.Drying.Vacuum;

/// <summary>Moisture content of a load from the water its condenser caught.</summary>
/// <remarks>M = M0 − Wc/(eta od). Calibrate eta on the first loads with oven sections, and never stop on condensate alone.</remarks>
/// <method page="docs/methods/vacuum-drying.md"/>
public static class Condensate
{
    /// <summary>Share of the vapour a condenser catches; the pump carries the rest. Common practice, 0.9 to 1.0.</summary>
    public static Share UsualCaught { get; } = Share.FromFraction(0.95);

    /// <summary>Moisture content now, as a fraction; refused when more was caught than was there.</summary>
    public static Outcome<MoistureContent> MoistureOf(MoistureContent start, Mass caught, Share share, Mass ovenDry)
    {
        if (share.Fraction <= 0.0 || ovenDry.Kilograms <= 0.0)
        {
            return new Refusal("caught share", $"{share.Percent:0.#} % of {ovenDry.Kilograms:0.#} kg", "a share and an oven-dry mass above zero");
        }

        var left = start.Fraction - caught.Kilograms / (share.Fraction * ovenDry.Kilograms);
        return left >= 0.0
            ? MoistureContent.FromFraction(left)
            : new Refusal("condensate", $"{caught.Kilograms:0.#} kg", $"at most {start.Fraction * share.Fraction * ovenDry.Kilograms:0.#} kg, all the water there was");
    }
}
