namespace Boardwright.Quantities;

/// <summary>A rise or fall of temperature, such as a wet-bulb depression; never a point on the scale.</summary>
/// <remarks>Held in kelvins. Accepted: -2000 to 2000 K. The default value is no difference. Equality is exact.</remarks>
public readonly record struct TemperatureDifference
{
    private TemperatureDifference(double kelvins) => Kelvins = kelvins;

    /// <summary>Kelvins, the same size as Celsius degrees.</summary>
    public double Kelvins { get; }

    /// <summary>Fahrenheit degrees.</summary>
    public double FahrenheitDegrees => Kelvins * 1.8;

    /// <summary>From kelvins (Celsius degrees).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside -2000 to 2000 K.</exception>
    public static TemperatureDifference FromKelvins(double kelvins) => kelvins is >= -2000.0 and <= 2000.0
        ? new(kelvins)
        : throw new ArgumentOutOfRangeException(nameof(kelvins), kelvins, "Accepted: -2000 to 2000 K.");

    /// <summary>From Fahrenheit degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside -2000 to 2000 K.</exception>
    public static TemperatureDifference FromFahrenheitDegrees(double degrees) => FromKelvins(degrees / 1.8);
}
