using Boardwright.Drying.Heat;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Lineage;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What one stack took of a charge: its share, the days, and the heat worked out from moisture in and out, the kiln's walls and the weather of those days.</summary>
/// <param name="Days">From loading to unloading, or to now.</param>
/// <param name="Share">Its footage over the footage loaded.</param>
/// <param name="HeatKwh">Heat wanted beyond what the fans give; null where moisture or weather is not on record.</param>
/// <param name="WaterKg">Water driven out.</param>
public sealed record KilnRun(Kiln Kiln, Charge Charge, double Days, double Share, double? HeatKwh, double? WaterKg)
{
    private static readonly Share UsualLeak = Quantities.Share.FromPercent(10.0);
    private static readonly Temperature AlmostFrozen = Temperature.FromCelsius(1.0);

    public bool IsRadioFrequency => Kiln.Installed.Type == KilnType.RadioFrequencyVacuum;

    public static KilnRun Of(YardState state, WoodStep before, WoodStep dried, double bfIn)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(dried);
        var charge = state.Charges[dried.Charge!];
        var kiln = state.Kilns[charge.Kiln];
        var until = dried.Form == WoodForm.FromKiln ? dried.At : state.Today.ToDateTime(TimeOnly.MaxValue);
        var days = (until - charge.LoadedAt).TotalDays;
        var share = charge.FootageIn.Count > 0.0 ? Math.Min(bfIn / charge.FootageIn.Count, 1.0) : 0.0;
        var terms = Terms(state, kiln, charge, before, dried, bfIn, days, share);
        return new(kiln, charge, days, share, terms?.Total, terms?.WaterKilograms);
    }

    private static KilnHeatTerms? Terms(YardState state, Kiln kiln, Charge charge, WoodStep before, WoodStep dried, double bfIn, double days, double share)
    {
        var stack = state.Stacks[dried.Tag];
        var weather = state.Weather.Values.Where(day => day.Date >= DateOnly.FromDateTime(charge.LoadedAt) && day.Date <= DateOnly.FromDateTime(charge.LoadedAt.AddDays(days))).ToList();
        if (days <= 0.0 || weather.Count == 0 || (before.Moisture ?? FirstOfSamples(charge, before.Tag)) is not { } from || Air(charge, stack) is not { } air)
            return null;
        var outside = new OutsideAir(Temperature.FromCelsius(weather.Average(day => day.MeanC)), RelativeHumidity.FromPercent(weather.Average(day => day.MeanRhPct)));
        var to = dried.Moisture is { } measured && measured < from ? measured : from;
        var start = outside.Temperature < AlmostFrozen ? AlmostFrozen : outside.Temperature; // heat of thawing is left out
        var load = KilnLoad.Of(stack.Species, BoardFeet.From(bfIn).NominalVolume, from, start);
        var stage = new KilnStage(air.DryBulb, air.Humidity, to, Elapsed.FromDays(days));
        return KilnHeat.Stage(load, stage, Structure(kiln, share), outside) is Outcome<KilnHeatTerms>.Done(var terms)
            ? kiln.Installed.Type == KilnType.RadioFrequencyVacuum ? terms with { Vent = 0.0, Walls = 0.0 } : terms
            : null;
    }

    // The charge's own sections, where nothing was read before loading.
    private static MoistureContent? FirstOfSamples(Charge charge, string stack)
    {
        var samples = charge.Samples.Where(sample => sample.Stack is null || sample.Stack == stack).ToList();
        return samples.Count == 0 ? null : MoistureContent.FromFraction(samples.Average(sample => sample.Weighings[0].Moisture.Fraction));
    }

    // Walls from the holding heat as noted: what each kelvin colder outside cost.
    private static KilnStructure Structure(Kiln kiln, double share)
    {
        var noted = kiln.Installed.HoldingHeat.OrderBy(point => point.OutsideC).ToList();
        var loss = noted.Count < 2 ? 0.0 : 1000.0 * (noted[0].HeatKw - noted[^1].HeatKw) / (noted[^1].OutsideC - noted[0].OutsideC);
        return new(loss * share, KilnStructure.Example.HeatCapacityJoulesPerKelvin * share, Power.FromKilowatts(kiln.Installed.FansKw * share), UsualLeak);
    }

    // The mean of what was set; without settings on record, the mean of the species' own schedule.
    private static (Temperature DryBulb, RelativeHumidity Humidity)? Air(Charge charge, Stack stack)
    {
        if (charge.Settings.Count > 0)
        {
            var dry = Temperature.FromCelsius(charge.Settings.Average(setting => setting.DryBulb.Celsius));
            var wet = Temperature.FromCelsius(charge.Settings.Average(setting => setting.WetBulb.Celsius));
            return AirState.FromWetBulb(dry, wet, AirState.StandardPressure) is Outcome<AirState>.Done(var set) ? (dry, set.Humidity) : null;
        }

        return KilnSchedule.For(stack.Species, stack.Thickness.Length) is Outcome<KilnSchedule>.Done(var schedule)
            ? (Temperature.FromCelsius(schedule.Steps.Average(step => step.DryBulb.Celsius)), RelativeHumidity.FromFraction(schedule.Steps.Average(step => step.Air.Humidity.Fraction)))
            : null;
    }
}
