namespace Boardwright.Drying.Heat;

/// <summary>Heat of a kiln run by where it goes, in kWh.</summary>
/// <param name="Wood">Warms the wood.</param>
/// <param name="Water">Warms the water in it, also what leaves later.</param>
/// <param name="Structure">Warms steel, trucks, stickers.</param>
/// <param name="Evaporation">Turns water to vapour.</param>
/// <param name="Sorption">Frees bound water below fibre saturation.</param>
/// <param name="Spray">Turns spray water to vapour in conditioning.</param>
/// <param name="Vent">Warms the air that replaces vented and leaked air.</param>
/// <param name="Walls">Lost through walls, roof, doors and floor.</param>
/// <param name="Fans">Given by the fans.</param>
/// <param name="WaterKilograms">Water that left the wood.</param>
/// <param name="Hours">Length of the run.</param>
public sealed record KilnHeatTerms(
    double Wood, double Water, double Structure, double Evaporation, double Sorption, double Spray, double Vent, double Walls, double Fans, double WaterKilograms, double Hours)
{
    /// <summary>Nothing yet.</summary>
    public static KilnHeatTerms None { get; } = new(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    /// <summary>All terms, before any credit for the fans.</summary>
    public double Total => Wood + Water + Structure + Evaporation + Sorption + Spray + Vent + Walls;

    /// <summary>What the coils have to give: the total less the fans, never below zero.</summary>
    public double Coil => Math.Max(0.0, Total - Fans);

    /// <summary>Heat taken up once, at the start of a stage.</summary>
    public double WarmUp => Wood + Water + Structure;

    /// <summary>Total over the water removed; null when none left.</summary>
    public double? TotalPerKilogramOfWater => WaterKilograms > 0.0 ? Total / WaterKilograms : null;

    /// <summary>Mean coil power, kW.</summary>
    public double MeanCoilKilowatts => Coil / Hours;

    /// <summary>Sum of two runs, one after the other.</summary>
    public static KilnHeatTerms operator +(KilnHeatTerms left, KilnHeatTerms right) => new(
        left.Wood + right.Wood, left.Water + right.Water, left.Structure + right.Structure, left.Evaporation + right.Evaporation,
        left.Sorption + right.Sorption, left.Spray + right.Spray, left.Vent + right.Vent, left.Walls + right.Walls, left.Fans + right.Fans,
        left.WaterKilograms + right.WaterKilograms, left.Hours + right.Hours);
}
