using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>A hot-water coil: its output falls as the kiln nears the water.</summary>
/// <remarks>
/// Q = Qrated ((Tw − Tk)/(Tw − Tk)rated)^n; n about 1.0 with fans, 1.3 in still air, from memory. Late and hot stages are limited
/// by the loop's temperature and not by the boiler's kW.
/// </remarks>
/// <method page="docs/methods/boiler-and-shop-heat.md"/>
/// <param name="Rated">Output at the rating.</param>
/// <param name="RatedWater">Water at the rating.</param>
/// <param name="RatedAir">Air at the rating; below the water.</param>
/// <param name="Exponent">n.</param>
public sealed record Coil(Power Rated, Temperature RatedWater, Temperature RatedAir, double Exponent = 1.0)
{
    /// <summary>Output in kW with other water and kiln air; zero when the water is no hotter.</summary>
    public double Kilowatts(Temperature water, Temperature kilnAir) => water <= kilnAir
        ? 0.0
        : Rated.Kilowatts * Math.Pow((water.Kelvins - kilnAir.Kelvins) / (RatedWater.Kelvins - RatedAir.Kelvins), Exponent);

    /// <summary>Hottest kiln the coil can hold against a demand, °C; null when not even with air at freezing.</summary>
    public double? HottestKilnCelsius(Temperature water, double demandKilowatts)
    {
        var lift = (RatedWater.Kelvins - RatedAir.Kelvins) * Math.Pow(demandKilowatts / Rated.Kilowatts, 1.0 / Exponent);
        return water.Celsius - lift is >= 0.0 and var celsius ? celsius : null;
    }
}
