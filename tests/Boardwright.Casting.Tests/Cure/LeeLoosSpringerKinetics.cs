using Boardwright.Casting.Cure;

namespace Boardwright.Casting.Tests.Cure;

/// <summary>A published 177 °C-cure resin with another rate law, to check the integrator on something it was not written for.</summary>
internal sealed record LeeLoosSpringerKinetics : CureKinetics
{
    private const double PublishedGasConstant = 8.314;

    public override double RatePerSecond(double conversion, double kelvins)
    {
        double K(double perMinute, double joulesPerMole) => perMinute / 60.0 * Math.Exp(-joulesPerMole / (PublishedGasConstant * kelvins));
        return conversion <= 0.3
            ? (K(2.101e9, 8.07e4) + K(-2.014e9, 7.78e4) * conversion) * (1.0 - conversion) * (0.47 - conversion)
            : K(1.960e5, 5.66e4) * (1.0 - conversion);
    }
}
