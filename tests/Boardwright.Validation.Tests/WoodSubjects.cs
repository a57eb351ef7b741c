using System.Globalization;
using Boardwright.Drying.Tests;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Validation.Tests;

/// <summary>Air, moisture, size and weight of wood.</summary>
internal static class WoodSubjects
{
    public static IReadOnlyList<Subject> All { get; } =
    [
        new("emc", "Equilibrium moisture content of air by temperature and humidity", "emc", "emc", [], false, OfEmc),
        new("wet-bulb", "Humidity and equilibrium moisture content by dry and wet bulb", "moist-air", "air", ["rh_pct", "emc_pct"], false, OfAir),
        new("moist-air", "Moist air: humidity ratio and pressures", "moist-air", "air", ["humidity_ratio_kg_per_kg", "vapour_pressure_pa", "saturation_vapour_pressure_pa", "standard_pressure_pa"], true, OfAir),
        new("air-temperatures", "Moist air: dew point, wet bulb and heat", "moist-air", "air", ["dew_point_c", "wet_bulb_c", "enthalpy_kj_per_kg"], false, OfAir),
        new("sections", "Moisture by weighing: sections, sample boards, wet basis", "moisture-content", "moisture", [], true, OfWeights),
        new("shrinkage-coefficients", "Shrinkage coefficients of species", "shrinkage", "shrinkage", ["coefficient_per_pct"], false, OfShrinkage),
        new("shrinkage", "Shrinkage between two moisture contents and at a ring angle", "shrinkage", "shrinkage", ["size_out_mm", "change_mm", "width_shrinkage_pct", "thickness_shrinkage_pct"], true, OfShrinkage),
        new("gravity", "Specific gravity at a moisture content", "density", "density", ["sg_at_mc", "sg_at_12"], false, OfDensity),
        new("weight", "Density, weight of footage, greatest and sinking moisture", "density", "density",
            ["density_kg_per_m3", "density_lb_per_ft3", "green_density_kg_per_m3", "weight_lb_per_mbf", "weight_lb_per_mbf_tallied_green", "mc_max_pct", "mc_sink_pct"], true, OfDensity),
        new("meter", "Electrical meters: temperature and species", "moisture-meter", "meter", [], false, OfMeter),
        new("lot", "Mean, spread and number of boards of a lot", "lot-moisture", "lot", [], true, OfLot),
        new("wood-heat", "Heat capacity, conductivity and heat of sorption of wood", "wood-heat", "wood-heat", [], true, OfHeat),
    ];

    private static Ours OfEmc(PublishedRow row) => row.Quantity switch
    {
        "emc_pct" or "emc_hailwood_horrobin_pct" => Emc.At(row.Temperature("dry_bulb"), RelativeHumidity.FromPercent(row["rh_pct"])).Percent,
        "emc_glass_pct" => GlassEmc.Percent(row["dry_bulb_c"], row["rh_pct"] / 100.0),
        "rh_for_emc_pct" => Emc.HumidityFor(row.Temperature("dry_bulb"), row.Moisture("emc_pct"))!.Value.Percent,
        "rh_from_emc_glass_pct" => GlassEmc.HumidityFor(row.Temperature("dry_bulb"), row.Moisture("emc_pct")).Percent,
        _ => row.Unknown(),
    };

    private static Ours OfAir(PublishedRow row)
    {
        if (row.Quantity == "saturation_vapour_pressure_pa")
            return SaturationPressure.At(row.Temperature("dry_bulb")).Pascals;

        if (row.Quantity == "standard_pressure_pa")
            return MoistAir.StandardPressurePascals(row["altitude_m"]);

        if (row.Quantity == "wet_bulb_c")
            return Given.Done(AirState.FromHumidity(row.Temperature("dry_bulb"), RelativeHumidity.FromPercent(row["rh_pct"]), AirState.StandardPressure)).WetBulb!.Value.Celsius;

        var pressure = row.Has("pressure_pa") ? Pressure.FromPascals(row["pressure_pa"]) : AirState.StandardPressure;
        var air = Given.Done(AirState.FromWetBulb(row.Temperature("dry_bulb"), row.Temperature("wet_bulb"), pressure));
        return row.Quantity switch
        {
            "rh_pct" => air.Humidity.Percent,
            "humidity_ratio_kg_per_kg" => air.HumidityRatio,
            "dew_point_c" => air.DewPoint!.Value.Celsius,
            "vapour_pressure_pa" => air.VapourPressure.Pascals,
            "enthalpy_kj_per_kg" => air.EnthalpyKilojoulesPerKilogram,
            "emc_pct" => air.Emc!.Value.Percent,
            _ => row.Unknown(),
        };
    }

    private static Ours OfWeights(PublishedRow row) => row switch
    {
        { Quantity: "mc_wet_basis_pct" } => OvenMoisture.WetBasis(row.Moisture("mc_pct")).Percent,
        _ when row.Has("mc_wet_basis_pct") => OvenMoisture.FromWetBasis(Share.FromPercent(row["mc_wet_basis_pct"])).Percent,
        { Quantity: "current_mc_pct" } => Given.Done(SampleBoard.Current(row.Mass("calculated_dry_weight"), row.Mass("current_weight"))).Percent,
        { Quantity: "calculated_dry_weight_lb" } => OvenMoisture.DryMass(row.Mass("sample_weight"), row.Moisture("average_mc_pct")).Pounds,
        // The two sections of the worked example are rows of their own.
        { Quantity: "calculated_dry_weight_g" } => Given.Done(SampleBoard.Cut([Mass.FromGrams(124.6), Mass.FromGrams(131.2)], [Mass.FromGrams(71.9), Mass.FromGrams(77.4)], row.Mass("sample"))).CalculatedDry.Grams,
        _ => Given.Done(OvenMoisture.Of("wet", row.Mass("wet_mass"), "dry", row.Mass("dry_mass"))).Percent,
    };

    private static Ours OfShrinkage(PublishedRow row)
    {
        var direction = row.Has("direction") ? Enum.Parse<ShrinkageDirection>(row.Text("direction"), ignoreCase: true) : default;
        var species = row.Has("species") ? Given.Species(row.Text("species")) : Given.Species("sugar maple");
        return row.Quantity switch
        {
            "coefficient_per_pct" when !row.Has("species") => Shrinkage.CoefficientPerPercent(row["shrinkage_pct"], row.Moisture("shrinkage_start_pct")),
            "coefficient_per_pct" => Shrinkage.CoefficientPerPercent(Given.Done(Shrinkage.Total(species, direction)), species.ShrinkageStart),
            "size_out_mm" => Shrinkage.Size(
                Length.FromMillimetres(row["size_mm"]), Given.Done(Shrinkage.Total(species, direction)), species.ShrinkageStart, row.Moisture("from_mc_pct"), row.Moisture("to_mc_pct")).Millimetres,
            "change_mm" => row["size_mm"] * (Shrinkage.Ratio(row["shrinkage_tangential_pct"], MoistureContent.FromPercent(30.0), row.Moisture("from_mc_pct"), row.Moisture("to_mc_pct")) - 1.0),
            "width_shrinkage_pct" => Given.Done(Shrinkage.TotalOfWidth(Turned(row, species), Angle.FromDegrees(row["ring_angle_to_face_deg"]))),
            "thickness_shrinkage_pct" => Given.Done(Shrinkage.TotalOfThickness(Turned(row, species), Angle.FromDegrees(row["ring_angle_to_face_deg"]))),
            _ => row.Unknown(),
        };
    }

    private static Species Turned(PublishedRow row, Species species) => species with { ShrinkageRadialPercent = row["radial_pct"], ShrinkageTangentialPercent = row["tangential_pct"] };

    private static Ours OfDensity(PublishedRow row) => row.Quantity switch
    {
        "sg_at_mc" => WoodDensity.SpecificGravityAt(row["sg_green"], row.Has("shrinkage_volumetric_pct") ? row["shrinkage_volumetric_pct"] : WoodDensity.EstimatedVolumetricPercent(row["sg_green"]), 30.0, row["mc_pct"]),
        // Two independently printed columns: gravity at 12 % measured, and gravity green with shrinkage of volume.
        "sg_at_12" => WoodDensity.SpecificGravity(Given.Species(row.Text("species")), MoistureContent.FromPercent(12.0)),
        "density_kg_per_m3" when row.Has("ovendry_density") => FromOvenDry(row),
        "density_kg_per_m3" => WoodDensity.At(row.Has("species") ? Given.Species(row.Text("species")) : Given.Species("white ash"), row.Moisture("mc_pct")).KilogramsPerCubicMetre,
        "density_lb_per_ft3" => Density.FromKilogramsPerCubicMetre(1000.0 * row["sg_at_mc"] * (1.0 + row["mc_pct"] / 100.0)).PoundsPerCubicFoot,
        "green_density_kg_per_m3" => WoodDensity.At(Given.Species(row.Text("species")), Given.Species(row.Text("species")).GreenMoistureAverage!.Value).KilogramsPerCubicMetre,
        "weight_lb_per_mbf" when !row.Has("basis") => WoodWeight.OfFootage(Given.Species(row.Text("species")), row.Moisture("mc_pct"), BoardFeet.From(1000.0)).Pounds,
        "weight_lb_per_mbf" or "weight_lb_per_mbf_tallied_green" => WoodWeight.OfFootageTalliedGreen(Given.Species(row.Text("species")), row.Moisture("mc_pct"), BoardFeet.From(1000.0)).Pounds,
        "mc_max_pct" => MoistureLimits.MaximumPercent(row["sg_green"]),
        "mc_sink_pct" => MoistureLimits.SinkingPercent(row["sg_green"]),
        _ => row.Unknown(),
    };

    private static double FromOvenDry(PublishedRow row)
    {
        var volumetric = row["shrinkage_volumetric_pct"];
        var basic = row["ovendry_density"] / 1000.0 * (1.0 - volumetric / 100.0);
        return 1000.0 * WoodDensity.SpecificGravityAt(basic, volumetric, 30.0, row["mc_pct"]) * (1.0 + row["mc_pct"] / 100.0);
    }

    private static Ours OfMeter(PublishedRow row) => row.Quantity switch
    {
        "temperature_corrected_pct" => MeterTemperature.Correct(
            row.Moisture("reading_pct"), row.Temperature("wood_temperature"), row.Has("equation") ? MeterTemperatureRule.PfaffGarrahan : MeterTemperatureRule.OnePerTwentyFahrenheit).Percent,
        "species_corrected_pct" => Given.Done(MeterReading.Correct(
            row.Moisture("reading_pct"), Temperature.FromFahrenheit(70.0), SpeciesTable.All.First(one => one.MeterGroup == row.Text("group")), MeterSetting.DouglasFir,
            MeterTemperatureRule.OnePerTwentyFahrenheit)).Corrected!.Value.Percent,
        _ => row.Unknown(),
    };

    private static Ours OfLot(PublishedRow row)
    {
        if (row.Quantity == "boards_to_measure")
        {
            return row.Has("lot_size")
                ? LotStatistics.BoardsFor(row["standard_deviation_pct"], row["half_width_pct"], (int)row["lot_size"])
                : LotStatistics.BoardsFor(row["standard_deviation_pct"], row["half_width_pct"]);
        }

        var lot = Given.Done(LotStatistics.Of([.. row.Text("readings").Split(',').Select(text => MoistureContent.FromPercent(double.Parse(text, CultureInfo.InvariantCulture)))]));
        return row.Quantity switch
        {
            "mean_pct" => lot.MeanPercent,
            "standard_deviation_pct" => lot.StandardDeviationPercent!.Value,
            "mean_low_pct" => lot.MeanLowPercent!.Value,
            "mean_high_pct" => lot.MeanHighPercent!.Value,
            _ => row.Unknown(),
        };
    }

    private static Ours OfHeat(PublishedRow row) => row.Quantity switch
    {
        "heat_capacity_kj_per_kg_k" => WoodHeat.SpecificHeat(Temperature.FromKelvins(row["temperature_k"]), row.Moisture("mc_pct")) / 1000.0,
        "conductivity_w_per_m_k" => WoodHeat.ConductivityAt(row["sg_at_mc"], row["mc_pct"]),
        "differential_heat_of_sorption_kj_per_kg" => HeatOfSorption.KilojoulesPerKilogram(row.Temperature("temperature"), row.Moisture("mc_pct"), row.Moisture("fsp_pct")),
        _ => row.Unknown(),
    };
}
