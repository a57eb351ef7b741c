using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Vacuum;

/// <summary>Time, energy and water of a radio-frequency vacuum charge.</summary>
/// <remarks>
/// <para>At each moisture content the rate is the smaller of two: what the generator can evaporate (latent heat and heat of sorption), at constant voltage less and less as the loss factor
/// of the drying wood falls, and
/// what the wood lets out: steam along the grain to both ends, driven by vapour pressure at the wood's hottest, which falls with
/// the sorption equation below fibre saturation, plus slow diffusion across the board. So wood is never dried below the
/// equilibrium of its own temperature.</para>
/// <para>Diffusion: od (M − Me) pi² D/L², D = 1.2e-10 m²/s at 25 °C with 35 kJ/mol, rough values from memory.</para>
/// <para>Band: permeability by its class's spread, power by ten percent, the fall of the loss factor by a fifth, diffusion by a factor 1.4, one at a time, added in quadrature.</para>
/// <para>Validity: one species, level full platen, chamber free of air. A first estimate: the kiln's own charges calibrate it.</para>
/// </remarks>
/// <source id="chen-1997" locator="pressure drives, not moisture gradient"/>
/// <source id="siau-1984" locator="longitudinal permeability"/>
/// <source id="avramidis-liu-1994" locator="constant voltage"/>
/// <method page="docs/methods/vacuum-drying.md"/>
public static class VacuumDrying
{
    private const int Steps = 200;
    private const double TenPercentQuantile = 1.2815515655446004;
    private const double DiffusionAt25Celsius = 1.2e-10;
    private const double DiffusionJoulesPerMole = 35_000.0;
    private const double PastTargetPercent = 4.0;
    private const double PumpKilowattHoursPerKilogram = 0.12;
    private static readonly MoistureContent FiberSaturation = MoistureContent.FromPercent(30.0);

    /// <summary>Forecast of a charge.</summary>
    public static Outcome<VacuumForecast> Forecast(VacuumCharge charge, RadioFrequency generator)
    {
        ArgumentNullException.ThrowIfNull(charge);
        ArgumentNullException.ThrowIfNull(generator);
        if (Fault(charge) is { } fault)
        {
            return fault;
        }

        var boiling = BoilingPoint.At(charge.Chamber);
        var hottest = charge.From > FiberSaturation && charge.IsOakOrClose ? charge.HottestGreenOak : charge.HottestWood;
        if (boiling >= hottest)
        {
            return new Outcome<VacuumForecast>.NoAnswer(
                $"At {charge.Chamber.Pascals / 1000.0:0.##} kPa water boils at {boiling.Celsius:0.#} C, and this wood may not get hotter than {hottest.Celsius:0.#} C: nothing would boil. Lower the pressure.");
        }

        if (VacuumEmc.At(charge.HottestWood, charge.Chamber) is not { } lowest || lowest >= charge.To)
        {
            return new Outcome<VacuumForecast>.NoAnswer(
                $"At {charge.Chamber.Pascals / 1000.0:0.##} kPa and {charge.HottestWood.Celsius:0} C wood comes to {VacuumEmc.At(charge.HottestWood, charge.Chamber)?.Percent ?? 30.0:0.#} % and no lower; {charge.To.Percent:0.#} % needs a lower pressure.");
        }

        var ovenDry = charge.Volume.CubicMetres * 1000.0 * charge.Species.BasicSpecificGravity;
        var water = ovenDry * (charge.From.Fraction - charge.To.Fraction);
        var wood = VacuumClass.Of(charge.Species);
        var power = Kilowatts(charge, generator);
        var usual = new Pace(wood.PermeabilitySquareMetres, power, 1.0, charge.VoltageRaised ? 0.0 : RadioFrequency.LossPerPercent);
        var likely = Run(charge, usual);
        var spread = Math.Pow(10.0, TenPercentQuantile * wood.DecadesOfSpread);
        double Hours(Pace pace) => Run(charge, pace).Hours;
        var quick = Off(
            likely.Hours, Hours(usual with { Permeability = usual.Permeability * spread }), Hours(usual with { Kilowatts = 1.1 * power }), Hours(usual with { LossPerPercent = 0.8 * usual.LossPerPercent }),
            Hours(usual with { Diffusion = 1.4 }));
        var slow = Off(
            likely.Hours, Hours(usual with { Permeability = usual.Permeability / spread }), Hours(usual with { Kilowatts = 0.9 * power }), Hours(usual with { LossPerPercent = 1.2 * usual.LossPerPercent }),
            Hours(usual with { Diffusion = 1.0 / 1.4 }));
        return new VacuumForecast(
            boiling, Mass.FromKilograms(water), likely.Hours * Math.Exp(-quick), likely.Hours, likely.Hours * Math.Exp(slow), likely.Limit,
            likely.InWoodKilowattHours, generator.MainsKilowattHours(likely.InWoodKilowattHours), PumpKilowattHoursPerKilogram * water,
            Mass.FromKilograms(water * Condensate.UsualCaught.Fraction), lowest);
    }

    /// <summary>The likely course, on past the target as far as the chamber dries: hours from the start and moisture content as a fraction.</summary>
    /// <param name="charge">A charge that has a forecast.</param>
    /// <param name="generator">Its generator.</param>
    internal static IReadOnlyList<(double Hours, double Moisture)> Course(VacuumCharge charge, RadioFrequency generator)
    {
        var lowest = VacuumEmc.At(charge.HottestWood, charge.Chamber)!.Value.Percent;
        var end = MoistureContent.FromPercent(Math.Max(lowest + 0.15 * (charge.To.Percent - lowest), charge.To.Percent - PastTargetPercent));
        var pace = new Pace(VacuumClass.Of(charge.Species).PermeabilitySquareMetres, Kilowatts(charge, generator), 1.0, charge.VoltageRaised ? 0.0 : RadioFrequency.LossPerPercent);
        return Run(charge with { To = end }, pace).Course;
    }

    private static double Kilowatts(VacuumCharge charge, RadioFrequency generator) =>
        Math.Min(generator.InWoodKilowatts(charge.Platen), charge.MostKilowattsPerCubicMetre * charge.Volume.CubicMetres);

    private static Refusal? Fault(VacuumCharge charge)
    {
        if (charge.To >= charge.From)
        {
            return new("--to", $"{charge.To.Percent:0.#} %", $"below the start, {charge.From.Percent:0.#} %");
        }

        if (charge.Chamber < BoilingPoint.Min || charge.Chamber.Pascals > 101_325.0)
        {
            return new("--pressure", $"{charge.Chamber.Pascals / 1000.0:0.###} kPa", "an absolute pressure from 0.62 to 101.3 kPa");
        }

        if (charge.Length.Metres is < 0.05 or > 12.0 || charge.Thickness.Millimetres is < 5.0 or > 300.0)
        {
            return new("--length", $"{charge.Length.Metres:0.##} m long, {charge.Thickness.Millimetres:0.#} mm thick", "boards 0.05 to 12 m long and 5 to 300 mm thick");
        }

        return charge.Volume.CubicMetres <= 0.0 || charge.Platen.Watts <= 0.0
            ? new("--volume", $"{charge.Volume.CubicMetres:0.###} m3, {charge.Platen.Kilowatts:0.##} kW", "a volume and a power above zero")
            : null;
    }

    private static double Off(double likely, params ReadOnlySpan<double> others)
    {
        var sum = 0.0;
        foreach (var other in others)
        {
            sum += Math.Pow(Math.Log(other / likely), 2.0);
        }

        return Math.Sqrt(sum);
    }

    private static Ran Run(VacuumCharge charge, Pace pace)
    {
        var density = 1000.0 * charge.Species.BasicSpecificGravity;
        var boiling = BoilingPoint.At(charge.Chamber);
        var rise = Math.Max(0.0, boiling.Celsius - charge.Start.Celsius);
        var perKilogram = WoodHeat.SpecificHeat(Temperature.FromCelsius((boiling.Celsius + charge.Start.Celsius) / 2.0), MoistureContent.OvenDry) / 1000.0 + 4.18 * charge.From.Fraction;
        var energy = density * charge.Volume.CubicMetres * perKilogram * rise / 3600.0;
        var hours = energy / pace.Kilowatts;
        var held = 0.0;
        var step = (charge.From.Fraction - charge.To.Fraction) / Steps;
        var course = new List<(double, double)> { (hours, charge.From.Fraction) };
        for (var index = 0; index < Steps; index++)
        {
            var moisture = MoistureContent.FromFraction(charge.From.Fraction - (index + 0.5) * step);
            var hottest = moisture > FiberSaturation && charge.IsOakOrClose ? charge.HottestGreenOak : charge.HottestWood;
            var heat = MoistAir.LatentHeatKilojoulesPerKilogram(boiling.Celsius) + HeatOfSorption.KilojoulesPerKilogram(boiling, moisture, FiberSaturation);
            var kilowatts = pace.Kilowatts * RadioFrequency.ShareAtVoltage(charge.From, moisture, pace.LossPerPercent);
            var byPower = kilowatts / charge.Volume.CubicMetres * 3600.0 / heat;
            var byWood = Leaving(charge, moisture, hottest, pace.Permeability, pace.Diffusion);
            var water = density * step;
            hours += water / Math.Min(byPower, byWood);
            held += (byWood < byPower ? 1.0 : -1.0) * water / Math.Min(byPower, byWood);
            energy += water * charge.Volume.CubicMetres * heat / 3600.0;
            course.Add((hours, charge.From.Fraction - (index + 1) * step));
        }

        return new(hours, energy, held > 0.0 ? VacuumLimit.Permeability : VacuumLimit.Power, course);
    }

    // What the wood lets out at its hottest, kg/(m3 h).
    private static double Leaving(VacuumCharge charge, MoistureContent moisture, Temperature wood, double permeability, double diffusionFactor)
    {
        var humidity = moisture >= FiberSaturation ? 1.0 : Emc.HumidityFor(wood, moisture)?.Fraction ?? 1.0;
        var flow = VapourFlow.KilogramsPerCubicMetreHour(
            permeability, charge.Length.Metres / 2.0, wood.Kelvins, humidity * BoilingPoint.Pascals(wood.Kelvins), charge.Chamber.Pascals);
        var lowest = VacuumEmc.At(wood, charge.Chamber)?.Fraction ?? 0.3;
        var diffusivity = diffusionFactor * DiffusionAt25Celsius * Math.Exp(DiffusionJoulesPerMole / 8.314462618 * (1.0 / 298.15 - 1.0 / wood.Kelvins));
        var perHour = Math.PI * Math.PI * diffusivity / (charge.Thickness.Metres * charge.Thickness.Metres) * 3600.0;
        return flow + 1000.0 * charge.Species.BasicSpecificGravity * Math.Max(0.0, moisture.Fraction - lowest) * perHour;
    }

    private sealed record Pace(double Permeability, double Kilowatts, double Diffusion, double LossPerPercent);

    private sealed record Ran(double Hours, double InWoodKilowattHours, VacuumLimit Limit, IReadOnlyList<(double Hours, double Moisture)> Course);
}
