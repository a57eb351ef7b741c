using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Which published equation gives the equilibrium moisture content of air.</summary>
public enum EmcEquation
{
    /// <summary><see cref="Emc"/>: what kiln schedules and printed tables are built on.</summary>
    HailwoodHorrobin,

    /// <summary><see cref="GlassEmc"/>: fitted to newer data, wetter in the cold.</summary>
    Glass,
}

/// <summary>Equilibrium moisture content by either equation.</summary>
public static class EmcEquations
{
    /// <summary>Equilibrium moisture content in air of this temperature and humidity.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -40 to 132.3 C.</exception>
    public static MoistureContent At(this EmcEquation equation, Temperature dryBulb, RelativeHumidity humidity) =>
        equation == EmcEquation.Glass ? GlassEmc.At(dryBulb, humidity) : Emc.At(dryBulb, humidity);

    /// <summary>Where it is printed, in words.</summary>
    public static string Printed(this EmcEquation equation) => equation == EmcEquation.Glass
        ? "Glass and others, Wood Handbook, FPL-GTR-282, eqs. 4-6 and 4-7"
        : "Hailwood-Horrobin form of the Wood Handbook, FPL-GTR-282, eq. 4-5";
}
