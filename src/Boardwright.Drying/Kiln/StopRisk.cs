using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>How much a stop endangers wood.</summary>
public enum StopDanger
{
    /// <summary>Hardly anything is lost but time.</summary>
    Low,

    /// <summary>Look at it before going on.</summary>
    Watch,

    /// <summary>Something is lost by waiting, or by going on too fast.</summary>
    High,
}

/// <summary>What a stop of the kiln does to wood, by its kind and how wet it is.</summary>
/// <remarks>
/// Below 25 to 30 % hardly a new check forms (wengert-drying-oak): a stop costs time. Wetter, the danger is in going on: dry air on a chilled surface checks wood with a small safe rate
/// (under 5 % a day at 4/4, C). Pale sapwood stains in warm, wet, still air after half a day (C); warm is over 80 °F.
/// </remarks>
/// <param name="Danger">How much.</param>
/// <param name="Why">In a sentence.</param>
/// <source id="wengert-drying-oak"/>
/// <method page="docs/methods/kiln-restart.md"/>
public sealed record StopRisk(StopDanger Danger, string Why)
{
    private const double CheckFreeBelowPercent = 25.0;
    private const double ChecksAbovePercent = 30.0;
    private const double CheckProneDailyPercent = 5.0;
    private const double StainHours = 12.0;

    /// <summary>Air over this stains pale sapwood when it is wet and still: 80 °F.</summary>
    public static Temperature StainAbove { get; } = Temperature.FromFahrenheit(80.0);

    /// <summary>True for wood that checks easily: a small safe rate at 4/4.</summary>
    public static bool ChecksEasily(Species species) =>
        SafeRate.For(species, Length.FromInches(1.0)) is Outcome<SafeRate>.Done(var safe) && safe.DailyLossPercent < CheckProneDailyPercent;

    /// <summary>True for wood whose pale sapwood stains in warm wet air.</summary>
    public static bool Stains(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return species.StainGroup is "pale sapwood" or "hackberry";
    }

    /// <summary>The danger of a stop.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="moisture">Of the wettest half.</param>
    /// <param name="stood">How long it stood or will stand.</param>
    public static StopRisk Of(Species species, MoistureContent moisture, Elapsed stood)
    {
        ArgumentNullException.ThrowIfNull(species);
        var wet = moisture.Percent;
        return wet <= CheckFreeBelowPercent ? new(StopDanger.Low, $"{species.CommonName} below 25 % hardly checks any more: time is lost, little else.")
            : Stains(species) && stood.Hours >= StainHours ? new(StopDanger.High, $"{species.CommonName} is pale and still wet: half a day of warm, wet, still air greys it. Look for stain, move air over it first.")
            : wet > ChecksAbovePercent && ChecksEasily(species) ? new(StopDanger.High, $"{species.CommonName} above 30 % checks when dry air meets a chilled surface: go on at the mildest step it had, never a further one.")
            : new(StopDanger.Watch, $"{species.CommonName} above 25 % can still check: look at the faces before going on.");
    }
}
