using System.Globalization;
using Boardwright.Drying.Treatment;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Heat treatment of a charge that has to prove it: the time its core needs by plan, what the probe showed, and whether that proves it.</summary>
/// <param name="Orders">Open orders that ask for a record; empty where none does.</param>
/// <param name="Planned">The air to hold and the times of its thickest boards; no answer where no air of its kiln does it, and under vacuum.</param>
/// <param name="Figures">Plan, probe and verdict, each with what it rests on.</param>
/// <param name="Do">What to do next.</param>
public sealed record ChargeHeat(IReadOnlyList<string> Orders, Outcome<HeatPlan> Planned, IReadOnlyList<Traced> Figures, string Do)
{
    private const double HottestFahrenheit = 160.0; // air of the printed times
    private const double DepressionFahrenheit = 10.0;
    private const double DepressionMostFahrenheit = 12.0;

    /// <summary>Said wherever a time of heating stands.</summary>
    public static (string First, string Words) Caution => QuickHeat.Caution;

    /// <summary>Orders that ask for a heat-treatment record of these stacks.</summary>
    public static IReadOnlyList<string> AskedBy(YardState state, IReadOnlyList<string> stacks)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(stacks);
        return [.. state.Orders.Values.Where(order => order.IsOpen && order.Lines.Any(line => line.Asked.HeatTreated && !line.IsFilled && line.Asked.Stacks.Any(stacks.Contains))).Select(order => order.Tag)];
    }

    /// <summary>Of a charge; null where no order asks for a record and no core was written.</summary>
    public static ChargeHeat? Of(YardState state, Charge charge, ChargeRun? run)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        var orders = AskedBy(state, charge.Stacks);
        if (orders.Count == 0 && charge.Treatments.Count == 0)
            return null;

        var planned = charge.IsRunning ? Plan(state, charge, run) : new Outcome<HeatPlan>.NoAnswer("It is out of the kiln.");
        var proven = charge.Treatments.Any(HeatTreatmentRule.IsMet);
        var verdict = ChargeFigures.Treatment(charge, state.Today);
        return new(orders, planned, [.. OfPlan(planned), Probe(charge, state.Today), verdict], proven
            ? "Keep the record with the packs; wood that lies beside untreated wood afterwards may be entered again."
            : !charge.IsRunning ? "Nothing may be claimed of it: heat it again with probes in, or sell it as untreated."
            : planned is Outcome<HeatPlan>.Done(var plan) ? plan.Says : "Set probes in the middle of the thickest, coldest boards and go by them alone.");
    }

    // The air of conditioning does both at once where it is hot and moist enough; else the air of the printed times, if the kiln reaches it.
    private static Outcome<HeatPlan> Plan(YardState state, Charge charge, ChargeRun? run)
    {
        var kiln = state.Kilns[charge.Kiln].Installed;
        if (kiln.Type == KilnType.RadioFrequencyVacuum)
            return new Outcome<HeatPlan>.NoAnswer("No times are printed for wood heated under vacuum: the probe alone tells.");

        var stacks = charge.StacksInside.Select(tag => state.Stacks[tag]).ToList();
        var thickest = stacks.MaxBy(stack => (stack.SawnThickness ?? stack.Thickness.Length).Metres)!;
        var most = Temperature.FromCelsius(kiln.DryBulbMaxC);
        var initial = charge.Settings.LastOrDefault()?.WetBulb ?? Temperature.FromCelsius(state.Weather.GetValueOrDefault(state.Today)?.MeanC ?? 0.0);
        var airs = new List<(Temperature Dry, Temperature Wet, string Words)>();
        if (run is { Schedule: var schedule } && ChargeFinish.Of(state, charge) is { } finish && (schedule.Condition?.DryBulb ?? run.Set?.DryBulb) is { } dry && (schedule.Condition?.Air.WetBulb ?? Drying.Schedules.KilnFinish.WetBulbFor(dry, finish.ConditionEmc)) is { } wet)
            airs.Add((dry, wet, "the air of conditioning"));
        var hot = Temperature.FromFahrenheit(Math.Min(HottestFahrenheit, most.Fahrenheit));
        airs.Add((hot, Temperature.FromFahrenheit(hot.Fahrenheit - DepressionFahrenheit), "hotter and moister air than its schedule has"));
        foreach (var air in airs.Where(one => (one.Dry - one.Wet).FahrenheitDegrees <= DepressionMostFahrenheit))
        {
            if (HeatTreatment.For(thickest.Species, thickest.SawnThickness ?? thickest.Thickness.Length, null, initial, HeatTreatment.CoreMin, air.Dry, air.Dry - air.Wet) is Outcome<HeatTreatment>.Done(var treatment))
                return new HeatPlan(thickest.Tag, thickest.SawnThickness ?? thickest.Thickness.Length, air.Dry, air.Wet, air.Words, initial, treatment);
        }

        return new Outcome<HeatPlan>.NoAnswer(string.Create(CultureInfo.InvariantCulture, $"{charge.Kiln} reaches {most.Fahrenheit:0} °F: no air of it is hot and moist enough for which a time is printed. Wood that dries slowly comes near the dry bulb in the end: the probe alone tells."));
    }

    private static IEnumerable<Traced> OfPlan(Outcome<HeatPlan> planned)
    {
        if (planned is not Outcome<HeatPlan>.Done(var plan))
            yield break;
        yield return new("Core at 56 °C by plan", QuickHeat.Minutes(plan.Treatment.HeatingUpper.Minutes), "", string.Create(CultureInfo.InvariantCulture, $"after {ChargeFigures.Bulbs(plan.DryBulb, plan.WetBulb)} °F stands in the load, likely {QuickHeat.Minutes(plan.Treatment.Heating.Minutes)}; then 30 min held, by the coldest core"))
        {
            Method = "heat-treatment",
            Source = $"{plan.Treatment.Source} ({SourceMark.Words(plan.Treatment.Mark)})",
            Inputs =
            [
                ("thickest boards", string.Create(CultureInfo.InvariantCulture, $"{plan.Stack}, {plan.Thickness.Inches:0.00} in as sawn")), ("wood at the start", string.Create(CultureInfo.InvariantCulture, $"{plan.Initial.Fahrenheit:0} °F, the wet bulb that is set, or the yard’s air before")), ("air", plan.AirWords),
                ("times are of", "green wood on stickers; 99 % bound of the measured ones"),
            ],
        };
    }

    private static Traced Probe(Charge charge, DateOnly today)
    {
        var cores = charge.Gauges.Where(gauge => gauge.Core is not null).ToList();
        return cores.Count == 0
            ? new("The probe", "not read", "", "no core was written beside the air") { Method = "heat-treatment" }
            : new("The probe", string.Create(CultureInfo.InvariantCulture, $"{cores[^1].Core!.Value.Celsius:0.0}"), "°C", string.Create(CultureInfo.InvariantCulture, $"{DayWords.Of(cores[^1].At.Day(), today)} {cores[^1].At:HH:mm}; highest {cores.Max(gauge => gauge.Core!.Value.Celsius):0.0} of {cores.Count}. A reading is not yet a hold: write that when it is over"))
            {
                Method = "heat-treatment",
                Source = $"entry {cores[^1].Entry}",
                Inputs = [.. cores.TakeLast(5).Select(gauge => (gauge.At.ToString("d MMM HH:mm", CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"{gauge.Core!.Value.Celsius:0.0} °C")))],
            };
    }
}

/// <summary>Air that heats a charge, and the times of its thickest boards in it.</summary>
/// <param name="Stack">Whose boards are the thickest.</param>
/// <param name="Thickness">As sawn.</param>
/// <param name="DryBulb">Dry bulb to hold.</param>
/// <param name="WetBulb">Wet bulb to hold.</param>
/// <param name="AirWords">Which air that is.</param>
/// <param name="Initial">Of the wood when it begins.</param>
/// <param name="Treatment">The times.</param>
public sealed record HeatPlan(string Stack, Length Thickness, Temperature DryBulb, Temperature WetBulb, string AirWords, Temperature Initial, HeatTreatment Treatment)
{
    /// <summary>What to do.</summary>
    public string Says => string.Create(CultureInfo.InvariantCulture,
        $"Hold {ChargeFigures.Bulbs(DryBulb, WetBulb)} °F, {AirWords}, for {QuickHeat.Minutes(Treatment.HeatingUpper.Minutes + HeatTreatment.CoreHold.Minutes)} or more; write the core every quarter of an hour, and the hold when 30 min at 56 °C are over in the coldest one.");
}
