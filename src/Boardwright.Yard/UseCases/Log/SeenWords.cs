using System.Globalization;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What was seen on a log, in words.</summary>
public static class LogSeenWords
{
    /// <summary>A sentence for each; empty where nothing was seen.</summary>
    public static string Of(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return Of(log.Seen);
    }

    /// <summary>The same of one look.</summary>
    public static string Of(LogSeen seen)
    {
        ArgumentNullException.ThrowIfNull(seen);
        string?[] words =
        [
            seen.MidDibMm is { } mid ? Text($"{Inches(mid)} in half way along") : null,
            seen.SweepMm is { } sweep ? Text($"Sweep {Inches(sweep)} in{Towards(seen.SweepTowardsHour)}") : null,
            seen.HeartRotMm is > 0.0 and { } rot ? Text($"Heart rot or shake {Inches(rot)} in") : null,
            seen.PithOffMm is > 0.0 and { } pith ? Text($"Heart {Inches(pith)} in off the middle{Towards(seen.PithTowardsHour)}") : null,
            seen.SplitSmallEndM is > 0.0 and { } small ? Text($"Split {Inches(small * 1000.0)} in at the small end") : null,
            seen.SplitLargeEndM is > 0.0 and { } large ? Text($"Split {Inches(large * 1000.0)} in at the large end") : null,
            seen.Grade is { } grade ? grade == LogGrade.Below ? "Below log grade F3" : $"Log grade {grade}" : null,
            seen.MetalMarks ? "Marks of metal" : null,
        ];
        return string.Concat(words.OfType<string>().Select(one => $" {one}."));
    }

    /// <summary>Taper and how oval the small end is.</summary>
    public static Traced Taper(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        var (wide, narrow) = (Math.Max(log.SmallEndA.Inches, log.SmallEndB.Inches), Math.Min(log.SmallEndA.Inches, log.SmallEndB.Inches));
        var taper = (log.LargeEnd - log.ScalingDiameter).Inches / log.ActualLength.Feet * 4.0;
        return new("Tapers", Text($"{taper:0.0}"), "in per 4 ft", Text($"International counts on 1/2; {(wide - narrow < 0.05 ? "round" : Text($"oval by {100.0 * (wide - narrow) / narrow:0} %"))}{(taper > FlareInPer4Ft ? ". It flares: measure the butt above the flare, or half way along" : "")}"))
        {
            Method = "log-volume-and-weight",
            Source = "its diameters as they were measured",
            Inputs = [("small end", Text($"{log.SmallEndA.Inches:0.#} × {log.SmallEndB.Inches:0.#} in")), ("large end", Text($"{log.LargeEnd.Inches:0.#} in")), ("whole length", Text($"{log.ActualLength.Feet:0.##} ft"))],
        };
    }

    // Mean taper of butt logs cut at the stump is 1.82 in per 4 ft, from 3 ft up 0.86 (lenhart-sweetgum).
    private const double FlareInPer4Ft = 1.4;

    private static string Towards(double? hour) => hour is { } at ? Text($" towards {(at == 0.0 ? 12.0 : at):0.#} o’clock") : "";

    private static string Inches(double mm) => (mm / 25.4).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
