namespace Boardwright.Casting.Cure;

/// <summary>Cure of a well-stirred body: a thin film at room temperature, an insulated pot, or a cup between the two.</summary>
/// <remarks>
/// dT/dt = (H/cp) da/dt − (T − Tair)/t, t = the body's cooling time. Fourth-order Runge–Kutta, steps of at most 5e-5 of
/// conversion, and a tenth of the conversion so far at the start; the last step is cut where the target is reached.
/// </remarks>
/// <method page="docs/methods/resin-cure.md"/>
public sealed class BatchCure
{
    private const double ConversionPerStep = 5e-5;

    private readonly CureKinetics kinetics;
    private readonly double riseKelvins;
    private readonly double airKelvins;
    private readonly double coolingPerSecond;

    private BatchCure(CureKinetics kinetics, double startKelvins, double startConversion, double riseKelvins, double airKelvins, double coolingPerSecond)
    {
        this.kinetics = kinetics;
        this.riseKelvins = riseKelvins;
        this.airKelvins = airKelvins;
        this.coolingPerSecond = coolingPerSecond;
        Kelvins = startKelvins;
        Conversion = startConversion;
    }

    /// <summary>Seconds since the start.</summary>
    public double Seconds { get; private set; }

    /// <summary>Conversion now.</summary>
    public double Conversion { get; private set; }

    /// <summary>Temperature now, K.</summary>
    public double Kelvins { get; private set; }

    /// <summary>Held at one temperature.</summary>
    public static BatchCure Isothermal(CureKinetics kinetics, double celsius, double startConversion = 0.0) =>
        new(kinetics, celsius + 273.15, startConversion, 0.0, celsius + 273.15, 0.0);

    /// <summary>No heat leaves.</summary>
    public static BatchCure Adiabatic(CuringResin resin, double celsius)
    {
        ArgumentNullException.ThrowIfNull(resin);
        return new(resin.Kinetics, celsius + 273.15, 0.0, resin.AdiabaticRiseKelvins, celsius + 273.15, 0.0);
    }

    /// <summary>A cup that stands in still air: a cylinder as high as wide, cooled all round.</summary>
    /// <param name="resin">What is in it.</param>
    /// <param name="kilograms">How much.</param>
    /// <param name="celsius">Of resin and air at the start.</param>
    /// <param name="surfaceWattsPerSquareMetreKelvin">Still indoor air, convection and radiation: 8.</param>
    public static BatchCure Cup(CuringResin resin, double kilograms, double celsius, double surfaceWattsPerSquareMetreKelvin = 8.0)
    {
        ArgumentNullException.ThrowIfNull(resin);
        var diameter = Math.Cbrt(4.0 * kilograms / resin.DensityKilogramsPerCubicMetre / Math.PI);
        var areaSquareMetres = 1.5 * Math.PI * diameter * diameter;
        var cooling = surfaceWattsPerSquareMetreKelvin * areaSquareMetres / (kilograms * resin.SpecificHeatJoulesPerKilogramKelvin);
        return new(resin.Kinetics, celsius + 273.15, 0.0, resin.AdiabaticRiseKelvins, celsius + 273.15, cooling);
    }

    /// <summary>Runs to a conversion; false when that is not reached in time.</summary>
    public bool RunToConversion(double target, double secondsMax = 1e8)
    {
        while (Seconds < secondsMax)
        {
            var step = Math.Min(Step(), secondsMax - Seconds);
            var (conversion, kelvins) = Stepped(step);
            if (conversion >= target)
            {
                var low = 0.0;
                var high = step;
                for (var halving = 0; halving < 50; halving++)
                {
                    var middle = (low + high) / 2.0;
                    (low, high) = Stepped(middle).Conversion < target ? (middle, high) : (low, middle);
                }

                Take(high);
                return true;
            }

            Seconds += step;
            (Conversion, Kelvins) = (conversion, kelvins);
        }

        return false;
    }

    /// <summary>Runs to a time.</summary>
    public void RunToSeconds(double seconds)
    {
        while (Seconds < seconds)
        {
            Take(Math.Min(Step(), seconds - Seconds));
        }
    }

    private double Step()
    {
        var rate = kinetics.RatePerSecond(Conversion, Kelvins);
        return Math.Clamp(Math.Min(ConversionPerStep, Math.Max(1e-6, Conversion / 10.0)) / Math.Max(rate, 1e-12), 0.01, 600.0);
    }

    private void Take(double step)
    {
        (Conversion, Kelvins) = Stepped(step);
        Seconds += step;
    }

    private (double Conversion, double Kelvins) Stepped(double step)
    {
        var (c1, t1) = Slope(Conversion, Kelvins);
        var (c2, t2) = Slope(Conversion + step / 2.0 * c1, Kelvins + step / 2.0 * t1);
        var (c3, t3) = Slope(Conversion + step / 2.0 * c2, Kelvins + step / 2.0 * t2);
        var (c4, t4) = Slope(Conversion + step * c3, Kelvins + step * t3);
        return (Math.Min(1.0, Conversion + step / 6.0 * (c1 + 2.0 * c2 + 2.0 * c3 + c4)), Kelvins + step / 6.0 * (t1 + 2.0 * t2 + 2.0 * t3 + t4));
    }

    private (double Conversion, double Kelvins) Slope(double conversion, double kelvins)
    {
        var rate = kinetics.RatePerSecond(conversion, kelvins);
        return (rate, riseKelvins * rate - coolingPerSecond * (kelvins - airKelvins));
    }
}
