using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>The shape of a log as far as the book tells it: radii where they were measured, else an ellipse at either end.</summary>
public static class LogShapes
{
    private static readonly Length Slack = Length.FromInches(2.0);

    /// <summary>By its radii, else by its ends; sweep and heart rot on top.</summary>
    public static Outcome<LogShape> Of(Log log, Length sweep = default, Length rot = default)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.Radii.Count > 0 ? Measured(log.Radii, sweep, rot) : ByEnds(log, sweep, rot);
    }

    /// <summary>Two ellipses; the large end swells as much upright as level.</summary>
    public static Outcome<LogShape> ByEnds(Log log, Length sweep = default, Length rot = default)
    {
        ArgumentNullException.ThrowIfNull(log);
        var swell = Math.Max(1.0, log.LargeEnd / log.ScalingDiameter);
        return LogShape.Measured([new(default, log.SmallEndA, log.SmallEndB), new(log.ActualLength, log.SmallEndA * swell, log.SmallEndB * swell)], sweep, rot);
    }

    /// <summary>Of measured places.</summary>
    public static Outcome<LogShape> Measured(IEnumerable<RadiiPlace> places, Length sweep = default, Length rot = default) =>
        LogShape.Measured([.. places.Select(place => LogSection.Measured(Length.FromMetres(place.AtM), place.RadiiMm))], sweep, rot);

    /// <summary>Measured places have to reach the large end, within 2 in; null where they do.</summary>
    public static Refusal? WrongEnd(Log log, IReadOnlyList<RadiiPlace> places)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(places);
        return Math.Abs(places[^1].AtM - log.ActualLength.Metres) <= Slack.Metres ? null
            : new("distance", Feet(places[^1].AtM), $"the large end, {Feet(log.ActualLength.Metres)} from the small, for the last place");
    }

    private static string Feet(double metres) => (metres / 0.3048).ToString("0.##", CultureInfo.InvariantCulture) + " ft";
}
