using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How often the samples of a charge are weighed: as they have been so far, so that every page names the same next day.</summary>
public static class WeighingRhythm
{
    /// <summary>Day of the last weighing; null for a charge without samples.</summary>
    public static DateOnly? Last(Charge charge)
    {
        ArgumentNullException.ThrowIfNull(charge);
        return charge.SoundSamples.Any() ? charge.SoundSamples.Max(sample => sample.Weighings[^1].At).Day() : null;
    }

    /// <summary>Day of the next weighing, which may be past; null for a charge without samples.</summary>
    public static DateOnly? Next(Charge charge) => Last(charge)?.AddDays(UsualDays(charge));

    /// <summary>Days from one weighing to the next: the middle gap so far; every day at first.</summary>
    public static int UsualDays(Charge charge)
    {
        ArgumentNullException.ThrowIfNull(charge);
        var days = charge.SoundSamples.SelectMany(sample => sample.Weighings).Select(weighing => weighing.At.Day().DayNumber).Distinct().Order().ToList();
        var gaps = days.Zip(days.Skip(1), (a, b) => b - a).Order().ToList();
        return gaps.Count == 0 ? 1 : Math.Max(1, gaps[gaps.Count / 2]);
    }

    /// <summary>True when the samples are to be weighed on a day ahead; null for a charge without samples.</summary>
    public static bool? IsDueOn(Charge charge, DateOnly day) => Last(charge) is { } last ? day.DayNumber - last.DayNumber is var since && since > 0 && since % UsualDays(charge) == 0 : null;
}
