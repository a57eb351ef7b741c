using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Heat;

/// <summary>The wood in a kiln as heat sees it.</summary>
/// <param name="OvenDry">Mass without water. From the real green thickness: 4/4 sawn at 1-1/8 in holds 12.5 % more than its board feet say.</param>
/// <param name="Moisture">At the start.</param>
/// <param name="Temperature">At the start; thawed.</param>
public sealed record KilnLoad(Mass OvenDry, MoistureContent Moisture, Temperature Temperature)
{
    /// <summary>A load by its volume when green.</summary>
    public static KilnLoad Of(Species species, Volume green, MoistureContent moisture, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(species);
        return new(Mass.FromKilograms(green.CubicMetres * 1000.0 * species.BasicSpecificGravity), moisture, temperature);
    }
}
