using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>What a kiln loses and holds besides its wood. Treat the loss as a number to fit from a no-load hold: loss = power / (inside − outside).</summary>
/// <param name="LossWattsPerKelvin">Walls, roof, doors and floor edge together.</param>
/// <param name="HeatCapacityJoulesPerKelvin">Steel, trucks, stickers, the inner skin.</param>
/// <param name="Fans">Power of the fans inside; all of it becomes heat.</param>
/// <param name="Leak">Leaked air as a share of the air that has to be vented.</param>
public sealed record KilnStructure(double LossWattsPerKelvin, double HeatCapacityJoulesPerKelvin, Power Fans, Share Leak)
{
    private const double ExampleVolumeCubicMetres = 13.27352184;
    private const double ExampleBoardFeet = 5000.0;

    /// <summary>A small insulated kiln for 5000 board feet: walls 62 m² × 0.40, roof 27 × 0.35, door 13 × 0.70, floor edge 21 m × 1.2 W/(m K); 1500 kg × 0.60 kJ/(kg K).</summary>
    public static KilnStructure Example { get; } = new(68.55, 900_000.0, Power.FromKilowatts(4.0), Share.FromPercent(10.0));

    /// <summary>The example with its loss scaled to another volume of wood, by surface.</summary>
    /// <param name="solid">Volume of green wood in the kiln.</param>
    public static KilnStructure ForVolume(Volume solid) =>
        Example with { LossWattsPerKelvin = Example.LossWattsPerKelvin * Math.Pow(solid.CubicMetres / ExampleVolumeCubicMetres, 2.0 / 3.0) };

    /// <summary>The example scaled to a kiln's capacity: its loss by surface, its steel, trucks and stickers by volume.</summary>
    /// <param name="capacity">Board feet of 4/4 it takes.</param>
    public static KilnStructure ForCapacity(BoardFeet capacity)
    {
        var share = capacity.Count / ExampleBoardFeet;
        return Example with { LossWattsPerKelvin = Example.LossWattsPerKelvin * Math.Pow(share, 2.0 / 3.0), HeatCapacityJoulesPerKelvin = Example.HeatCapacityJoulesPerKelvin * share };
    }
}
