using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>What a charge asks of the coil beyond holding the empty kiln warm.</summary>
/// <param name="WarmUp">Heat that brings wood and water to the first step's temperature.</param>
/// <param name="Drying">Heat of evaporation, sorption and vented air, and of the later rises in temperature.</param>
/// <param name="Running">Drying heat as a mean power.</param>
/// <method page="docs/methods/kiln-heat.md"/>
public sealed record KilnRunHeat(Energy WarmUp, Energy Drying, Power Running)
{
    // Walls, steel and fans are the kiln's own: known from the holding heat seen, leak included with the vented air.
    private static readonly KilnStructure WoodAlone = new(0.0, 0.0, default, KilnStructure.Example.Leak);

    /// <summary>From a kiln forecast, step by step.</summary>
    /// <param name="forecast">Steps, hours and the curve of the likely charge.</param>
    /// <param name="load">The wood as it goes in.</param>
    /// <param name="outside">Air outside.</param>
    public static Outcome<KilnRunHeat> Of(KilnForecast forecast, KilnLoad load, OutsideAir outside)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(load);
        var stages = new List<KilnStage>();
        var hours = 0.0;
        foreach (var (step, inStep) in forecast.Steps)
        {
            hours += inStep;
            var air = step.AirFloored90;
            stages.Add(new(step.DryBulb, air.Humidity, MoistureAt(forecast, hours), Elapsed.FromHours(inStep)));
        }

        return KilnHeat.Stages(load, stages, WoodAlone, outside).Then<KilnRunHeat>(terms =>
        {
            var warmUp = terms[0].WarmUp;
            var drying = terms.Sum(term => term.Total) - warmUp;
            return new KilnRunHeat(Energy.FromKilowattHours(warmUp), Energy.FromKilowattHours(drying), Power.FromKilowatts(drying / hours));
        });
    }

    // The curve is thinned: straight between its points.
    private static MoistureContent MoistureAt(KilnForecast forecast, double hours)
    {
        var curve = forecast.Curve;
        for (var index = 1; index < curve.Count; index++)
        {
            if (hours <= curve[index].Hours)
            {
                var (before, after) = (curve[index - 1], curve[index]);
                var share = (hours - before.Hours) / (after.Hours - before.Hours);
                return MoistureContent.FromFraction(before.P50.Fraction + share * (after.P50.Fraction - before.P50.Fraction));
            }
        }

        return curve[^1].P50;
    }
}
