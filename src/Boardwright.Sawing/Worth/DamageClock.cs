using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Days a log or unstacked boards last before each damage; null where none is expected.</summary>
/// <param name="StainDays">Before stain.</param>
/// <param name="BorerDays">Before borers.</param>
/// <param name="EndCheckDays">Before end checks where the ends are not coated.</param>
public sealed record DamageLimits(int? StainDays, int? BorerDays, int? EndCheckDays);

/// <summary>What may spoil a waiting log first.</summary>
public enum LogDamage
{
    /// <summary>Grey or blue colour of the sapwood.</summary>
    Stain,

    /// <summary>Insects under the bark and in the sapwood.</summary>
    Borers,

    /// <summary>Drying cracks from the ends.</summary>
    EndChecks,
}

/// <summary>Days left before the first damage of a log, at the mean outside air since it was felled.</summary>
/// <remarks>
/// Three bands of the mean outside temperature: below 4, 4 to 15, above 15 degrees C; each has its own limits by stain group. Days left = limit - days since felling.
/// Common practice, editable, without a printed source: it orders the queue, it proves nothing.
/// </remarks>
/// <source id="common-practice" locator="days before damage by group and temperature"/>
/// <method page="docs/methods/log-worth.md"/>
/// <param name="Days">Days left; below zero the damage may have begun.</param>
/// <param name="What">Which damage comes first.</param>
public sealed record DamageClock(int Days, LogDamage What)
{
    /// <summary>Upper end of the cold band.</summary>
    public static Temperature ColdBelow { get; } = Temperature.FromCelsius(4.0);

    /// <summary>Upper end of the middle band.</summary>
    public static Temperature WarmAbove { get; } = Temperature.FromCelsius(15.0);

    /// <summary>The limits of the band a mean temperature falls in.</summary>
    /// <param name="mean">Mean outside air since felling.</param>
    /// <param name="cold">Limits below 4 degrees C.</param>
    /// <param name="mild">Limits from 4 to 15.</param>
    /// <param name="warm">Limits above 15.</param>
    public static DamageLimits Band(Temperature mean, DamageLimits cold, DamageLimits mild, DamageLimits warm) => mean < ColdBelow ? cold : mean <= WarmAbove ? mild : warm;

    /// <summary>The first damage and the days left to it; null where none is expected.</summary>
    /// <param name="limits">Limits of the band.</param>
    /// <param name="daysSinceFelled">Days since felling, 0 or more.</param>
    /// <param name="endsCoated">Coated ends do not check.</param>
    public static DamageClock? First(DamageLimits limits, int daysSinceFelled, bool endsCoated)
    {
        ArgumentNullException.ThrowIfNull(limits);
        (int? Days, LogDamage What)[] kinds = [(limits.StainDays, LogDamage.Stain), (limits.BorerDays, LogDamage.Borers), (endsCoated ? null : limits.EndCheckDays, LogDamage.EndChecks)];
        return kinds.Where(kind => kind.Days is not null).OrderBy(kind => kind.Days).Select(kind => new DamageClock(kind.Days!.Value - daysSinceFelled, kind.What)).FirstOrDefault();
    }
}
