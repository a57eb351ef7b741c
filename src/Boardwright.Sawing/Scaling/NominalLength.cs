using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>The length a log is scaled at: whole steps that fit its shortest side after trim.</summary>
/// <remarks>A 10 ft log must hold 10 ft 3 in, or it scales as 8 ft (Maine). Steps of 2 ft are US Forest Service practice; many hardwood yards use 1 ft.</remarks>
/// <source id="maine-7103" locator="trim allowance"/>
/// <method page="docs/methods/log-scale.md"/>
public static class NominalLength
{
    /// <summary>The scaling length.</summary>
    /// <param name="shortestSide">Measured length of the shortest side.</param>
    /// <param name="trim">Length beyond the nominal that must be there.</param>
    /// <param name="step">Step of nominal lengths.</param>
    /// <returns>A multiple of the step; zero when not one step is left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A step of zero.</exception>
    public static Length Of(Length shortestSide, Length trim, Length step)
    {
        if (step.Metres <= 0.0)
            throw new ArgumentOutOfRangeException(nameof(step), step.Metres, "Accepted: a step above zero.");

        return shortestSide < trim ? default : step * TradeRounding.WholeDown((shortestSide - trim) / step);
    }
}
