using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Heat;

/// <summary>Heat demand of a kiln by terms, for a stage, a run of stages, and hour by hour.</summary>
/// <remarks>
/// <para>Per stage: wood od c0 (Tk − T), c0 at the mean temperature; water od 4.18 M (Tk − T); structure C (Tk − T); evaporation
/// mw (2501 − 2.326 Tk); sorption below fibre saturation; vent (1 + leak) mw/(Wk − Wo) · (1.006 + 1.86 Wo)(Tk − To); walls UA (Tk − To) t;
/// all fan power inside becomes heat. Without leak, air and vapour leave with exactly the enthalpy that came in by these terms.</para>
/// <para>Validity: thawed wood, kiln air wetter than outside air, sea-level pressure. Venting by humidity difference is an ideal; a kiln
/// that vents by the clock loses more. Warm-up ends before drying begins.</para>
/// </remarks>
/// <source id="ah-188" locator="ch. 11, method of components"/>
/// <source id="shottafer-shuler-1974" locator="method of components"/>
/// <method page="docs/methods/kiln-heat.md"/>
public static class KilnHeat
{
    private const double PressurePascals = 101_325.0;
    private const double SprayWaterCelsius = 10.0;
    private const double SecondsPerHour = 3600.0;
    private static readonly MoistureContent FiberSaturation = MoistureContent.FromPercent(30.0);

    /// <summary>Warm-up of the first stage where nothing else is said.</summary>
    public static Elapsed UsualWarmUp { get; } = Elapsed.FromHours(8.0);

    /// <summary>Terms of one stage, with the wood at the load's moisture content and temperature at its start.</summary>
    public static Outcome<KilnHeatTerms> Stage(KilnLoad load, KilnStage stage, KilnStructure structure, OutsideAir outside)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(stage);
        ArgumentNullException.ThrowIfNull(structure);
        if (stage.Duration.Seconds <= 0.0)
        {
            return new Refusal("hours", $"{stage.Duration.Hours:0.##} h", "a stage longer than 0 h");
        }

        if (stage.DryBulb.Celsius is < 0.0 or > 120.0)
        {
            return new Refusal("kiln-temperature", $"{stage.DryBulb.Celsius:0.#} C", "a kiln at 0 to 120 C");
        }

        var kiln = HumidityRatio(stage.DryBulb, stage.Humidity);
        var air = HumidityRatio(outside.Temperature, outside.Humidity);
        var ovenDry = load.OvenDry.Kilograms;
        var leaving = Math.Max(0.0, ovenDry * (load.Moisture.Fraction - stage.Until.Fraction));
        if (leaving > 0.0 && kiln <= air)
        {
            return new Outcome<KilnHeatTerms>.NoAnswer(
                $"The kiln's air ({stage.DryBulb.Celsius:0.#} C, {stage.Humidity.Percent:0} %) holds no more vapour than the air outside ({outside.Temperature.Celsius:0.#} C, {outside.Humidity.Percent:0} %): venting would not dry.");
        }

        var rise = Math.Max(0.0, stage.DryBulb.Celsius - load.Temperature.Celsius);
        var lift = Math.Max(0.0, stage.DryBulb.Celsius - outside.Temperature.Celsius);
        var meanKelvins = (stage.DryBulb.Kelvins + load.Temperature.Kelvins) / 2.0;
        var sorption = leaving > 0.0 ? HeatOfSorption.MeanKilojoulesPerKilogram(stage.DryBulb, load.Moisture, stage.Until, FiberSaturation) : 0.0;
        var vented = leaving > 0.0 ? (1.0 + structure.Leak.Fraction) * leaving / (kiln - air) : 0.0;
        var sprayed = Math.Max(0.0, ovenDry * (stage.Until.Fraction - load.Moisture.Fraction));
        return new KilnHeatTerms(
            ovenDry * OvenDryHeatKilojoules(meanKelvins) * rise / SecondsPerHour,
            ovenDry * 4.18 * load.Moisture.Fraction * rise / SecondsPerHour,
            structure.HeatCapacityJoulesPerKelvin / 1000.0 * rise / SecondsPerHour,
            leaving * MoistAir.LatentHeatKilojoulesPerKilogram(stage.DryBulb.Celsius) / SecondsPerHour,
            leaving * sorption / SecondsPerHour,
            sprayed * (2501.0 + 1.86 * stage.DryBulb.Celsius - 4.186 * SprayWaterCelsius) / SecondsPerHour,
            vented * (1.006 + 1.86 * air) * lift / SecondsPerHour,
            structure.LossWattsPerKelvin / 1000.0 * lift * stage.Duration.Hours,
            structure.Fans.Kilowatts * stage.Duration.Hours,
            leaving,
            stage.Duration.Hours);
    }

    /// <summary>Terms of a run, stage after stage; each starts where the one before ended.</summary>
    public static Outcome<IReadOnlyList<KilnHeatTerms>> Stages(KilnLoad load, IReadOnlyList<KilnStage> stages, KilnStructure structure, OutsideAir outside)
    {
        ArgumentNullException.ThrowIfNull(stages);
        var terms = new List<KilnHeatTerms>();
        var wood = load;
        foreach (var stage in stages)
        {
            switch (Stage(wood, stage, structure, outside))
            {
                case Outcome<KilnHeatTerms>.Done(var done):
                    terms.Add(done);
                    break;
                case var other:
                    return other.Then<IReadOnlyList<KilnHeatTerms>>(_ => throw new InvalidOperationException());
            }

            wood = After(wood, stage);
        }

        return terms;
    }

    /// <summary>Power wanted while the load warms up, kW: the warm-up heat over its hours, and the walls at full temperature.</summary>
    /// <remarks>Several times the mean power of the run: two kilns started on one day meet a boiler that the means would not have filled.</remarks>
    public static double WarmUpKilowatts(KilnHeatTerms terms, KilnStage stage, KilnStructure structure, OutsideAir outside, Elapsed warmUp)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(stage);
        ArgumentNullException.ThrowIfNull(structure);
        var lift = Math.Max(0.0, stage.DryBulb.Celsius - outside.Temperature.Celsius);
        return terms.WarmUp / Math.Min(warmUp.Hours, stage.Duration.Hours) + structure.LossWattsPerKelvin / 1000.0 * lift;
    }

    /// <summary>Coil power in each hour of a run, warm-up included, for the planner and the boiler.</summary>
    /// <remarks>
    /// The first stage warms up over <paramref name="warmUp"/>, later stages at the same kelvins an hour; drying fills the rest of the
    /// stage evenly. With the same air outside all along, the hours add up to the terms of the run.
    /// </remarks>
    /// <param name="load">Wood at the start.</param>
    /// <param name="stages">Stages; hours are cut to whole ones at the end of the run.</param>
    /// <param name="structure">Kiln.</param>
    /// <param name="outside">Air outside at each hour of the run, from 0.</param>
    /// <param name="warmUp">Of the first stage.</param>
    public static Outcome<KilnHeatProfile> Profile(
        KilnLoad load, IReadOnlyList<KilnStage> stages, KilnStructure structure, Func<int, OutsideAir> outside, Elapsed warmUp)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(stages);
        ArgumentNullException.ThrowIfNull(outside);
        if (stages.Count == 0 || warmUp.Seconds <= 0.0)
        {
            return new Refusal("stages", $"{stages.Count} stages, {warmUp.Hours:0.##} h warm-up", "one stage or more and a warm-up longer than 0 h");
        }

        var kelvinsPerHour = Math.Max(stages[0].DryBulb.Celsius - load.Temperature.Celsius, 1.0) / warmUp.Hours;
        var kilowattHours = new double[(int)Math.Ceiling(stages.Sum(stage => stage.Duration.Hours) - 1e-9)];
        var begin = 0.0;
        var wood = load;
        foreach (var stage in stages)
        {
            var rise = Math.Max(0.0, stage.DryBulb.Celsius - wood.Temperature.Celsius);
            var warming = Math.Min(rise / kelvinsPerHour, stage.Duration.Hours);
            for (var hour = (int)begin; hour < kilowattHours.Length && hour < begin + stage.Duration.Hours; hour++)
            {
                if (Stage(wood, stage, structure, outside(hour)) is not Outcome<KilnHeatTerms>.Done(var terms))
                {
                    return Stage(wood, stage, structure, outside(hour)).Then<KilnHeatProfile>(_ => throw new InvalidOperationException());
                }

                kilowattHours[hour] += InHour(terms, stage.Duration.Hours, warming, Math.Max(hour, begin) - begin, Math.Min(hour + 1.0, begin + stage.Duration.Hours) - begin);
            }

            begin += stage.Duration.Hours;
            wood = After(wood, stage);
        }

        return new KilnHeatProfile([.. kilowattHours.Select(kilowatts => Math.Max(0.0, kilowatts))]);
    }

    /// <summary>The load at the end of a stage.</summary>
    public static KilnLoad After(KilnLoad load, KilnStage stage)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(stage);
        return load with { Moisture = stage.Until, Temperature = stage.DryBulb };
    }

    // Heat between two hours of a stage, less fans.
    private static double InHour(KilnHeatTerms terms, double hours, double warming, double from, double to)
    {
        var warm = warming > 0.0 ? (Math.Min(to, warming) - Math.Min(from, warming)) / warming : 0.0;
        var drying = hours > warming ? (Math.Max(to, warming) - Math.Max(from, warming)) / (hours - warming) : warm;
        return terms.WarmUp * warm
            + (terms.Evaporation + terms.Sorption + terms.Spray + terms.Vent) * drying
            + (terms.Walls - terms.Fans) * (to - from) / hours;
    }

    private static double OvenDryHeatKilojoules(double kelvins) => WoodHeat.SpecificHeat(Temperature.FromKelvins(kelvins), MoistureContent.OvenDry) / 1000.0;

    private static double HumidityRatio(Temperature temperature, RelativeHumidity humidity) =>
        MoistAir.HumidityRatio(humidity.Fraction * SaturationPressure.Pascals(temperature.Celsius), PressurePascals);
}
