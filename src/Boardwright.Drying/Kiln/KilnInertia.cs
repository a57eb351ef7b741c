using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>A kiln with its wood as one body: how slowly it cools without heat, how soon it is warm again with some.</summary>
/// <remarks>
/// <para>Equation: T(t) = Tx + (T0 - Tx) exp(-t/τ), τ = C/UA, Tx = To + P/UA; C heat capacity of wood, its water and the structure, UA loss, P heat given.</para>
/// <para>Validity: doors and vents shut, the inside evenly warm. Without fans the air by the walls is colder than this, the core of the load warmer. The capacity is that at the start.</para>
/// </remarks>
/// <param name="HeatCapacityJoulesPerKelvin">Wood, its water, structure.</param>
/// <param name="LossWattsPerKelvin">Walls, roof, floor and leaks together; above zero.</param>
/// <source id="incropera-dewitt" locator="ch. 5, lumped capacitance"/>
/// <method page="docs/methods/kiln-cooling.md"/>
public sealed record KilnInertia(double HeatCapacityJoulesPerKelvin, double LossWattsPerKelvin)
{
    /// <summary>Time in which the difference to the outside falls to 37 %.</summary>
    public Elapsed TimeConstant => Elapsed.FromSeconds(HeatCapacityJoulesPerKelvin / LossWattsPerKelvin);

    /// <summary>A kiln with a load at a temperature.</summary>
    public static KilnInertia Of(Mass ovenDry, MoistureContent moisture, Temperature at, KilnStructure structure)
    {
        ArgumentNullException.ThrowIfNull(structure);
        var wood = ovenDry.Kilograms * (1.0 + moisture.Fraction) * WoodHeat.SpecificHeat(at, moisture);
        return new(wood + structure.HeatCapacityJoulesPerKelvin, structure.LossWattsPerKelvin);
    }

    /// <summary>Temperature after a time.</summary>
    public Temperature After(Elapsed time, Temperature from, Temperature outside, Power heat = default)
    {
        var end = End(outside, heat);
        return Temperature.FromCelsius(end + (from.Celsius - end) * Math.Exp(-time.Seconds / TimeConstant.Seconds));
    }

    /// <summary>Time until a temperature; null when it is never reached.</summary>
    public Elapsed? Until(Temperature to, Temperature from, Temperature outside, Power heat = default)
    {
        var end = End(outside, heat);
        var share = (from.Celsius - end) / (to.Celsius - end);
        return share >= 1.0 && double.IsFinite(share) ? Elapsed.FromSeconds(TimeConstant.Seconds * Math.Log(share)) : null;
    }

    private double End(Temperature outside, Power heat) => outside.Celsius + heat.Watts / LossWattsPerKelvin;
}
