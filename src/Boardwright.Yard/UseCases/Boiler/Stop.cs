using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A running charge should the heat stop now.</summary>
/// <param name="Charge">The charge.</param>
/// <param name="Moisture">Wettest half of its samples, or mean as read.</param>
/// <param name="After">Dry bulb after a day without heat.</param>
/// <param name="Stain">Until pale wet wood stains; null where it does not.</param>
/// <param name="Regain">Until dry wood gains; null where it does not.</param>
/// <param name="Frost">Until a coil may freeze; null while it is not freezing outside.</param>
/// <param name="TimeConstant">How slowly it cools.</param>
public sealed record ChargeAtRisk(Charge Charge, MoistureContent Moisture, Temperature After, Elapsed? Stain, Elapsed? Regain, Elapsed? Frost, Elapsed TimeConstant)
{
    /// <summary>Until the first of them; null when none comes.</summary>
    public Elapsed? First => new[] { Stain, Regain, Frost }.OfType<Elapsed>().OrderBy(one => one.Seconds).Cast<Elapsed?>().FirstOrDefault();

    /// <summary>What comes first and what after it, in words.</summary>
    public string Says
    {
        get
        {
            var dangers = new (Elapsed? In, string What)[] { (Stain, "it stains"), (Regain, "it gains moisture"), (Frost, "its coil may freeze") }
                .Where(one => one.In is not null).OrderBy(one => one.In!.Value.Seconds).Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.What} after {one.In!.Value.Hours:0} h")).ToList();
            return dangers.Count == 0 ? "nothing but time is lost" : string.Join(", ", dangers);
        }
    }
}

/// <summary>The card for a day without heat: which charges are in danger in how many hours, and what to shut first.</summary>
/// <param name="Charges">The most pressing first.</param>
/// <param name="Untold">Charges on the boilers of which nothing can be worked out.</param>
/// <param name="Outside">Coldest mean of the next three days.</param>
/// <param name="Shut">What to do, in its order, each with its reason.</param>
public sealed record BoilerStop(IReadOnlyList<ChargeAtRisk> Charges, IReadOnlyList<string> Untold, Temperature Outside, IReadOnlyList<(string Do, string Why)> Shut)
{
    private const double StainHumidityPercent = 85.0;
    private const double StainsAbovePercent = 25.0;
    private static readonly Temperature NearFrost = Temperature.FromCelsius(5.0);

    public static BoilerStop Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var outside = Temperature.FromCelsius(Enumerable.Range(0, 3).Select(day => YardHeat.Outside(state, state.Today.AddDays(day))?.Celsius).OfType<double>().DefaultIfEmpty(0.0).Min());
        var heated = state.Charges.Values.Where(charge => charge.IsRunning && state.Kilns[charge.Kiln].Installed.HeatAtWaterC is not null).ToList();
        var told = heated.Select(charge => AtRisk(state, charge, outside)).OfType<ChargeAtRisk>().OrderBy(one => one.First?.Hours ?? double.MaxValue).ToList();
        return new(told, [.. heated.Where(charge => told.All(one => one.Charge != charge)).Select(charge => charge.Tag)], outside, [.. Steps(state, told)]);
    }

    private static ChargeAtRisk? AtRisk(YardState state, Charge charge, Temperature outside)
    {
        if (KilnBody.Of(state, charge) is not { } body || charge.Settings.LastOrDefault() is not { } set
            || AirState.FromWetBulb(set.DryBulb, set.WetBulb, AirState.StandardPressure) is not Outcome<AirState>.Done(var air))
            return null;

        var wet = SampleTrend.WettestHalf([.. charge.SoundSamples.Select(sample => sample.Moisture)]) ?? body.Moisture;
        var shut = new ClosedAir(set.DryBulb, air.Humidity);
        var pale = wet.Percent > StainsAbovePercent && charge.StacksInside.Any(tag => StopRisk.Stains(state.Stacks[tag].Species));
        var damp = shut.CooledTo(RelativeHumidity.FromPercent(StainHumidityPercent)) ?? set.DryBulb;
        return new(
            charge, wet, body.Inertia.After(Elapsed.FromHours(24.0), set.DryBulb, outside),
            pale && damp > StopRisk.StainAbove ? body.Inertia.Until(damp, set.DryBulb, outside) : null,
            shut.Wets(body.Moisture) is { } gains ? body.Inertia.Until(gains, set.DryBulb, outside) : null,
            outside.Celsius < 0.0 ? body.Inertia.Until(NearFrost, set.DryBulb, outside) : null, body.Inertia.TimeConstant);
    }

    private static IEnumerable<(string, string)> Steps(YardState state, List<ChargeAtRisk> told)
    {
        yield return ("Fire: feed no more wood, let the heat dump work, watch temperature and pressure from a distance.", "A wood fire cannot be switched off. Never cold water into an overheated boiler, never a capped vent or relief.");
        yield return ("Low water, or none in the glass: no water in. Draught shut, the fire burns down, everybody keeps away; then call the certified person.", "Water on dry hot plates turns to steam at once and can burst the boiler. It is filled and fired again only after it was looked at; the local code decides.");
        var shop = YardHeat.Shop(state);
        if (shop.KilowattsPerKelvin > 0.0 && YardHeat.Outside(state, state.Today) is { } today)
            yield return (string.Create(CultureInfo.InvariantCulture, $"Shop and house off the loop: {shop.KilowattsAt(Temperature.FromCelsius(today.Celsius)):0.0} kW today."), "What is still warm in the water belongs to the wood.");
        if (told.Count > 0)
            yield return ($"Vents and spray shut, doors shut: {string.Join(", then ", told.Select(one => one.Charge.Kiln))}.", "Shut, a kiln keeps its heat and its moisture; the order is that of the hours below.");
        var pale = told.Where(one => one.Stain is not null).Select(one => one.Charge.Kiln).ToList();
        yield return (pale.Count > 0 ? $"Fans run on in {string.Join(", ", pale)}, slow or off elsewhere." : "Fans slow or off.", pale.Count > 0 ? "Pale wet wood stains in still air." : "Moving air dries on at falling temperature for nothing; some fan heat is lost with it.");
        yield return ("Pump of the loop on while water is warm; where it freezes, keep it moving, or drain it as its maker says.", "A frozen coil is a burst coil.");
        yield return ("Write the stop for each charge.", "Its clock stands, and the way back is asked step by step.");
    }
}
