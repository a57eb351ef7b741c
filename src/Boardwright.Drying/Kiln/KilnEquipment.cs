using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>A kiln as far as it bears on the time of a charge.</summary>
/// <param name="Name">For a person.</param>
/// <param name="DryBulbMax">Hottest dry bulb it can hold.</param>
public sealed record KilnEquipment(string Name, Temperature DryBulbMax)
{
    /// <summary>Heated and vented kiln that can hold the printed schedules.</summary>
    public static KilnEquipment Conventional { get; } = new("conventional", Temperature.FromFahrenheit(200.0));

    /// <summary>Kiln dried by a heat pump: keeps the equilibrium of each step under a lower limit (ah-188 names 120 to 160 F; 140 taken).</summary>
    public static KilnEquipment Dehumidification { get; } = new("dehumidification", Temperature.FromFahrenheit(140.0));
}
