namespace Boardwright.Casting.Cure;

/// <summary>How fast a resin turns from liquid to solid: the rate of conversion at a conversion and a temperature.</summary>
public abstract record CureKinetics
{
    /// <summary>Molar gas constant, J/(mol K), exact in the SI.</summary>
    public const double GasConstant = 8.314462618;

    /// <summary>Rate of conversion.</summary>
    /// <param name="conversion">Share of the reactive groups used up, 0 to 1.</param>
    /// <param name="kelvins">Temperature.</param>
    /// <returns>1/s, never negative.</returns>
    public abstract double RatePerSecond(double conversion, double kelvins);
}
