using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The check that a moisture content fits into the wood it is said of.</summary>
public static class WetterThanWood
{
    /// <summary>Refuses a moisture content no piece of the species can hold; nothing when the species was refused already.</summary>
    public static void RefuseWetterThanWood(this Ask ask, string option, Species? species, MoistureContent moisture)
    {
        ArgumentNullException.ThrowIfNull(ask);
        if (species is not null && moisture > MoistureLimits.Wettest(species))
        {
            ask.Refuse(option, ask.Text(option), string.Create(
                CultureInfo.InvariantCulture, $"0 to {MoistureLimits.Wettest(species).Percent:0} %, with every cell of {species.CommonName} full of water"));
        }
    }
}
