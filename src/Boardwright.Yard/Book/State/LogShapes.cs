using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>The shape of a log as far as the book tells it: radii where they were measured, else an ellipse at either end.</summary>
public static class LogShapes
{
    private static readonly Length Slack = Length.FromInches(2.0);

    private const double HourRadians = Math.PI / 6.0;

    /// <summary>By its radii, else by its ends; bowed by its sweep, rotten at its heart, cut off where its ends are split.</summary>
    public static Outcome<LogShape> Of(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.Radii.Count > 0 ? Of(log, [.. log.Radii.Select(Section)]) : ByEnds(log);
    }

    /// <summary>Ellipses at both ends and, where it was measured, in the middle, seen from the pith; the log swells as much upright as level.</summary>
    public static Outcome<LogShape> ByEnds(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        LogSection Swollen(double share, Length diameter) => Math.Max(1.0, diameter / log.ScalingDiameter) is var swell ? new(log.ActualLength * share, log.SmallEndA * swell, log.SmallEndB * swell) : default;
        List<LogSection> sections = [Swollen(0.0, log.ScalingDiameter), .. log.Seen.MidDibMm is { } mid ? [Swollen(0.5, Length.FromMillimetres(mid))] : Array.Empty<LogSection>(), Swollen(1.0, log.LargeEnd)];
        if (log.Seen.PithOffMm is not ({ } off and > 0.0))
            return Of(log, sections);

        var (sin, cos) = Math.SinCos((log.Seen.PithTowardsHour ?? 0.0) * HourRadians);
        return Of(log, [.. sections.Select(section => section.FromPith(off * sin, off * cos))]);
    }

    /// <summary>By sections that were measured along it.</summary>
    public static Outcome<LogShape> Of(Log log, IReadOnlyList<LogSection> sections)
    {
        ArgumentNullException.ThrowIfNull(log);
        return LogShape.Measured(sections, LogNoted.Sweep(log), LogNoted.HeartRot(log), Angle.FromRadians((log.Seen.SweepTowardsHour ?? 0.0) * HourRadians))
            .Then(shape => shape.Trimmed(Length.FromMetres(log.Seen.SplitSmallEndM ?? 0.0), Length.FromMetres(log.Seen.SplitLargeEndM ?? 0.0)));
    }

    /// <summary>Of measured places alone: the solid wood, and whether they can be.</summary>
    public static Outcome<LogShape> Measured(IEnumerable<RadiiPlace> places) => LogShape.Measured([.. places.Select(Section)]);

    /// <summary>Measured places have to reach the large end, within 2 in; null where they do.</summary>
    public static Refusal? WrongEnd(Log log, IReadOnlyList<RadiiPlace> places)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(places);
        return Math.Abs(places[^1].AtM - log.ActualLength.Metres) <= Slack.Metres ? null
            : new("distance", Feet(places[^1].AtM), $"the large end, {Feet(log.ActualLength.Metres)} from the small, for the last place");
    }

    private static LogSection Section(RadiiPlace place) => LogSection.Measured(Length.FromMetres(place.AtM), place.RadiiMm);

    private static string Feet(double metres) => (metres / 0.3048).ToString("0.##", CultureInfo.InvariantCulture) + " ft";
}
