using Boardwright.Drying.Schedules;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>One step of the schedule as the likely charge goes through it.</summary>
/// <param name="Step">The air held.</param>
/// <param name="Hours">Hours in it; the steps add up to the likely time.</param>
public readonly record struct KilnStepTime(KilnStep Step, double Hours);

/// <summary>One point of a kiln curve: mean moisture content of the charge, with the band it lies in eight times in ten.</summary>
public readonly record struct KilnPoint(double Hours, MoistureContent P10, MoistureContent P50, MoistureContent P90);

/// <summary>How long a charge takes, as a band.</summary>
/// <method page="docs/methods/kiln-time.md"/>
public sealed record KilnForecast
{
    /// <summary>Early end: one time in ten it is dry by then, hours.</summary>
    public required double HoursP10 { get; init; }

    /// <summary>Likely end, hours.</summary>
    public required double HoursP50 { get; init; }

    /// <summary>Late end: nine times in ten it is dry by then, hours.</summary>
    public required double HoursP90 { get; init; }

    /// <summary>The steps the charge goes through, with their hours.</summary>
    public required IReadOnlyList<KilnStepTime> Steps { get; init; }

    /// <summary>Moisture over time.</summary>
    public required IReadOnlyList<KilnPoint> Curve { get; init; }

    /// <summary>Water taken out, kg per m³ of green wood.</summary>
    public required double WaterKilogramsPerCubicMetre { get; init; }

    /// <summary>The schedule followed.</summary>
    public required KilnSchedule Schedule { get; init; }

    /// <summary>What the coefficient was fitted to.</summary>
    public required string Origin { get; init; }

    /// <summary>How sure the coefficient is: see <see cref="DryingCoefficients.Mark"/>.</summary>
    public required string Mark { get; init; }

    /// <summary>What to know.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Hours until the likely mean comes down to a moisture content, along the curve; null where the curve ends above it.</summary>
    public double? HoursTo(MoistureContent moisture)
    {
        for (var i = 0; i < Curve.Count; i++)
        {
            if (Curve[i].P50 > moisture)
                continue;

            if (i == 0)
                return 0.0;

            var (before, after) = (Curve[i - 1], Curve[i]);
            return before.Hours + (after.Hours - before.Hours) * (before.P50.Percent - moisture.Percent) / (before.P50.Percent - after.P50.Percent);
        }

        return null;
    }

    /// <summary>Likely mean after some hours, along the curve; its end where the curve is over by then.</summary>
    public MoistureContent MoistureAt(double hours)
    {
        for (var i = 1; i < Curve.Count; i++)
        {
            var (before, after) = (Curve[i - 1], Curve[i]);
            if (hours <= after.Hours)
                return MoistureContent.FromFraction(before.P50.Fraction + (after.P50.Fraction - before.P50.Fraction) * (hours - before.Hours) / (after.Hours - before.Hours));
        }

        return Curve[^1].P50;
    }
}
