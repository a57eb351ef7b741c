using Boardwright.Drying;
using Boardwright.Drying.Heat;
using Boardwright.Drying.Tests;
using Boardwright.Drying.Tests.Heat;
using Boardwright.Drying.Treatment;
using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Validation.Tests;

/// <summary>Vacuum, heat treatment, heat of kilns and fuel.</summary>
internal static class HeatSubjects
{
    private const double SquareMetresPerSquareInch = 0.0254 * 0.0254;
    private const double BtuPerKilowattHour = 3412.142;

    public static IReadOnlyList<Subject> All { get; } =
    [
        new("boiling", "Boiling point of water and its pressure", "vacuum-drying", "vacuum-drying", ["if97_pressure", "if97_temperature", "boiling_point", "boiling_pressure", "water_boiling_point"], true, OfVacuum),
        new("vacuum", "Vacuum and radio-frequency drying", "vacuum-drying", "vacuum-drying",
            ["vacuum_emc_pure_vapour", "free_water_boils", "vapour_flow_capacity", "rf_power_density", "rf_line_energy", "water_removed", "mc_from_condensate", "vacuum_time_ratio", "rf_rate_late_over_early"], false, OfVacuum),
        new("vacuum-times", "Vacuum drying times", "vacuum-drying", "vacuum-drying", ["vacuum_days"], false, OfVacuum),
        new("treatment", "Heat treatment: time to a core temperature", "heat-treatment", "treatment", [], true, OfTreatment),
        new("kiln-heat", "Heat of a kiln and of evaporation", "kiln-heat", "heat-kiln", [], true, OfKilnHeat),
        new("kiln-cooling", "A kiln that stands still", "kiln-cooling", "kiln-cooling", [], false, OfCooling),
        new("boiler", "Boiler, water loop and shop heat", "boiler-and-shop-heat", "heat-boiler", [], true, OfBoiler),
        new("fuel", "Fuel", "fuel", "heat-fuel", [], true, OfFuel),
    ];

    private static Ours OfVacuum(PublishedRow row) => row.Quantity switch
    {
        "if97_pressure" => BoilingPoint.PressureAt(Temperature.FromKelvins(row["T_k"])).Pascals / 1e6,
        "if97_temperature" => BoilingPoint.At(Pressure.FromPascals(row["p_mpa"] * 1e6)).Kelvins,
        "boiling_point" => BoilingPoint.At(Pressure.FromKilopascals(row["kpa"])).Celsius,
        "boiling_pressure" => BoilingPoint.PressureAt(Temperature.FromCelsius(row["T_c"])).Pascals / 1000.0,
        "water_boiling_point" => BoilingPoint.At(Chamber(row)).Celsius,
        "vacuum_emc_pure_vapour" => VacuumEmc.At(Temperature.FromCelsius(row["wood_temp_C"]), Chamber(row))!.Value.Percent,
        "free_water_boils" => VacuumEmc.Boils(Temperature.FromCelsius(row["wood_temp_C"]), Chamber(row)) ? 1.0 : 0.0,
        "vapour_flow_capacity" => VapourFlow.KilogramsPerCubicMetreHour(
            row["permeability_m2"], row["half_length_m"], row["wood_temp_C"] + 273.15, BoilingPoint.PressureAt(Temperature.FromCelsius(row["wood_temp_C"])).Pascals, row["chamber_kPa"] * 1000.0),
        "rf_power_density" => RadioFrequency.WattsPerCubicMetre(row["frequency_Hz"], row["loss_factor"], row["field_V_per_m"]),
        "rf_line_energy" => new RadioFrequency(Share.FromFraction(row["generator_efficiency"]), Share.FromFraction(row["applicator_efficiency"])).MainsKilowattHours(row["latent_kWh"] + row["sensible_kWh"]),
        "water_removed" => Given.Done(VacuumDrying.Forecast(
            new(Given.Species("black walnut"), Length.FromMillimetres(25.4), Length.FromMetres(2.4), Given.Moisture(60.0), Given.Moisture(8.0), Volume.FromCubicMetres(5.0), Pressure.FromPascals(7500.0), Power.FromKilowatts(15.0 / 0.9)),
            RadioFrequency.Usual)).Water.Kilograms,
        "mc_from_condensate" => Given.Done(Condensate.MoistureOf(
            row.Moisture("mc_initial_pct"), Mass.FromKilograms(row["caught_kg"]), Share.FromFraction(row["share"]), Mass.FromKilograms(row["oven_dry_kg"]))).Percent,
        "vacuum_days" => VacuumDays(row),
        "vacuum_time_ratio" => FlowHours(row["thickness_in"], row["length_in"]) / FlowHours(
            row.Has("over_thickness_in") ? row["over_thickness_in"] : row["thickness_in"], row.Has("over_length_in") ? row["over_length_in"] : row["length_in"]),
        "rf_rate_late_over_early" => LateOverEarly(row["voltage_raised"] > 0.0),
        _ => row.Unknown(),
    };

    // As much power as the wood can use, above fibre saturation, 60 C and 18 mmHg: steam along the grain of a permeable wood sets the pace.
    private static double FlowHours(double thicknessInches, double lengthInches) => Given.Done(VacuumDrying.Forecast(
        new(Given.Species("sugar maple"), Length.FromInches(thicknessInches), Length.FromInches(lengthInches), Given.Moisture(60.0), Given.Moisture(32.0), Volume.FromCubicMetres(0.1),
            Pressure.FromPascals(18.0 * 133.322387415), Power.FromKilowatts(1e5))
        { MostKilowattsPerCubicMetre = 1e6 },
        RadioFrequency.Usual)).HoursP50;

    // Points a hour from 17 to 15 % over those from 35 to 33 %, where power sets the pace.
    private static double LateOverEarly(bool raised)
    {
        var charge = new VacuumCharge(
            Given.Species("northern red oak"), Length.FromInches(4.0), Length.FromMetres(2.4), Given.Moisture(50.0), Given.Moisture(15.0), Volume.FromCubicMetres(1.0), Pressure.FromPascals(7000.0),
            Power.FromKilowatts(2.0))
        { VoltageRaised = raised };
        var course = VacuumDrying.Course(charge, RadioFrequency.Usual);
        double At(double percent) => course.First(point => 100.0 * point.Moisture <= percent).Hours;
        double Rate(double from, double to) => (from - to) / (At(to) - At(from));
        return Rate(17.0, 15.0) / Rate(35.0, 33.0);
    }

    // Power in the wood for a cubic metre, or at the platen for a thousand feet.
    private static double VacuumDays(PublishedRow row)
    {
        var volume = Volume.FromCubicMetres(1000.0 * BoardFeet.CubicMetresNominal);
        var platen = row.Has("kw_per_mbf") ? row["kw_per_mbf"] : row["kw_per_m3"] * volume.CubicMetres / RadioFrequency.Usual.Applicator.Fraction;
        return Given.Done(VacuumDrying.Forecast(
            new(Given.Species(row.Text("species")), Length.FromInches(row["thickness_in"]), Length.FromFeet(row["length_ft"]), row.Moisture("from_pct"), row.Moisture("to_pct"), volume,
                Pressure.FromMillibars(row["pressure_mbar"]), Power.FromKilowatts(platen)),
            RadioFrequency.Usual)).HoursP50 / 24.0;
    }

    private static Pressure Chamber(PublishedRow row) => Pressure.FromPascals(row.Has("abs_pressure_kPa") ? row["abs_pressure_kPa"] * 1000.0 : row["abs_pressure_mmHg"] * 133.322387415);

    private static Ours OfTreatment(PublishedRow row)
    {
        if (row.Quantity == "hold_min")
            return HeatTreatment.CoreHold.Minutes;

        if (row.Quantity is "hold_against_fungi_min" or "hold_against_lyctus_min")
        {
            var against = row.Quantity == "hold_against_fungi_min" ? HeatAgainst.Fungi : HeatAgainst.PowderpostBeetles;
            return HeatHold.For(against, row.Temperature("core"), Length.FromInches(row.Has("thickness_in") ? row["thickness_in"] : 1.0))?.Time.Minutes ?? Ours.NoAnswer;
        }

        if (row.Quantity is "timber_min" or "timber_upper_min")
        {
            var timber = Given.Done(HeatTreatment.For(
                Given.Species("eastern white pine"), Length.FromInches(row["thickness_in"]), Length.FromInches(row["thickness_in"]), row.Temperature("initial"), Temperature.FromFahrenheit(TimberHeating.CoreFahrenheit),
                Temperature.FromFahrenheit(TimberHeating.MediumFahrenheit), TemperatureDifference.FromFahrenheitDegrees(row["depression_f"])));
            return row.Quantity == "timber_min" ? timber.Heating.Minutes : timber.HeatingUpper.Minutes;
        }

        if (row.Quantity == "wet_bulb_under_core")
        {
            var depression = TemperatureDifference.FromFahrenheitDegrees(12.0);
            var lagging = HeatTreatment.For(
                Given.Species("sugar maple"), Length.FromInches(1.0), null, Temperature.FromFahrenheit(60.0), Temperature.FromFahrenheit(row["core_f"]), Temperature.FromFahrenheit(row["core_f"] + 10.0), depression);
            return lagging is Outcome<HeatTreatment>.NoAnswer ? Ours.NoAnswer : Given.Done(lagging).Heating.Minutes;
        }

        if (row.Quantity == "heating_conduction_min")
        {
            return RectangleHeating.SecondsUntil(
                (row["surface_F"] - row["target_F"]) / (row["surface_F"] - row["initial_F"]), row["alpha_in2_per_s"] * SquareMetresPerSquareInch, row["a_in"] * 0.0254, row["b_in"] * 0.0254) / 60.0;
        }

        var treatment = Given.Done(HeatTreatment.For(
            Given.Species(row.Text("species")), Length.FromInches(row["thickness_in"]), Length.FromInches(row["width_in"]), row.Temperature("initial"), row.Temperature("core"), row.Temperature("medium"),
            TemperatureDifference.FromFahrenheitDegrees(row["depression_f"])));
        return row.Quantity == "heating_upper_min" ? treatment.HeatingUpper.Minutes : treatment.Heating.Minutes;
    }

    private static Ours OfKilnHeat(PublishedRow row)
    {
        if (row.Quantity == "latent_heat")
            return MoistAir.LatentHeatKilojoulesPerKilogram(row["T_c"]);

        if (row.Quantity is "vent_air" or "vent_enthalpy")
            return KilnExample.Vented(row).Air is var air && row.Quantity == "vent_air" ? air.KilogramsOfAir : air.KilojoulesCarried;

        var isGreen = row.Text("case") == "green";
        var load = KilnExample.Load(isGreen ? 80.0 : 20.0);
        var stages = Given.Done(KilnHeat.Stages(load, isGreen ? KilnExample.GreenStages : KilnExample.AirDriedStages, KilnStructure.Example, KilnExample.Autumn));
        var run = stages.Aggregate(KilnHeatTerms.None, (sum, terms) => sum + terms);
        return row.Quantity switch
        {
            "example_solid_volume" => KilnExample.Solid.CubicMetres,
            "example_oven_dry" => load.OvenDry.Kilograms,
            "example_water" => run.WaterKilograms,
            "example_warm" => run.Wood + run.Water,
            "example_structure" => run.Structure,
            "example_evaporation" => run.Evaporation,
            "example_sorption" => run.Sorption,
            "example_total" => run.Total,
            "example_fans" => run.Fans,
            "example_coil" => run.Coil,
            "example_specific" => run.TotalPerKilogramOfWater!.Value,
            "example_specific_btu_lb" => run.TotalPerKilogramOfWater!.Value * 3600.0 / FuelHeat.KilojoulesPerBtuPerPound,
            "example_million_btu_per_mbf" => run.Total * BtuPerKilowattHour / 1e6 / 5.0,
            "example_mean_coil" => run.MeanCoilKilowatts,
            "example_stage_coil" => stages[(int)row["stage"] - 1] is var stage ? (stage.Total - stage.WarmUp - stage.Fans) / stage.Hours : row.Unknown(),
            "example_loss" => KilnStructure.Example.LossWattsPerKelvin,
            "example_warm_up" => stages[0].WarmUp,
            _ => row.Unknown(),
        };
    }

    private static Ours OfCooling(PublishedRow row)
    {
        var body = new KilnInertia(row["capacity_kwh_per_k"] * 3.6e6, row["loss_w_per_k"]);
        var (from, outside) = (Temperature.FromCelsius(row["from_c"]), Temperature.FromCelsius(row["outside_c"]));
        return row.Quantity switch
        {
            "time_constant_h" => body.TimeConstant.Hours,
            "temperature_c" => body.After(Elapsed.FromHours(row["hours"]), from, outside).Celsius,
            "hours_to" => body.Until(Temperature.FromCelsius(row["to_c"]), from, outside)!.Value.Hours,
            "hours_to_warm" => body.Until(Temperature.FromCelsius(row["to_c"]), from, outside, Power.FromKilowatts(row["heat_kw"]))!.Value.Hours,
            _ => row.Unknown(),
        };
    }

    private static Ours OfBoiler(PublishedRow row) => row.Quantity switch
    {
        "boiler_horsepower" => WaterLoop.BoilerHorsepowerKilowatts * BtuPerKilowattHour,
        "loop_heat" => WaterLoop.Kilowatts(row["flow_L_s"], row["dT_K"], row["rho_kg_L"], row["cp"]),
        "loop_flow" => WaterLoop.LitresPerSecond(row["Q_kW"], row["dT_K"], row["rho_kg_L"], row["cp"]),
        "stored_heat" => WaterLoop.StoredKilowattHours(row["V_L"], row["T_hot_c"], row["T_cold_c"], row["rho_kg_L"]),
        "buffer_volume" => WaterLoop.BufferLitres(row["burn_kW"], row["load_kW"], row["burn_h"], row["T_hot_c"], row["T_cold_c"], row["rho_kg_L"]),
        "buffer_volume_us_gal" => 0.264172 * WaterLoop.BufferLitres(row["fire_btu_h"] / BtuPerKilowattHour, row["load_btu_h"] / BtuPerKilowattHour, row["t_min"] / 60.0, row["dT_F"] / 1.8, 0.0, 0.999),
        "building_heat" => ShopHeat.OfBuilding(row["UA_W_K"], Volume.FromCubicMetres(row["volume_m3"]), row["ach"], Temperature.FromCelsius(row["T_in_c"])).KilowattsAt(Temperature.FromCelsius(row["T_out_c"])),
        _ => row.Unknown(),
    };

    private static Ours OfFuel(PublishedRow row) => row.Quantity switch
    {
        "net_value" => FuelHeat.NetMegajoulesPerKilogram(row["NCV_dry_MJ_kg"], row["w_wet_basis_pct"] / 100.0),
        "fuel_mass" => row["heat_to_water_kWh"] * 3.6 / row["efficiency_NCV"] / FuelHeat.NetMegajoulesPerKilogram(row["NCV_dry_MJ_kg"], row["w_wet_basis_pct"] / 100.0),
        "gross" => Balance(row).HigherKilojoulesPerKilogram / FuelHeat.KilojoulesPerBtuPerPound,
        "fuel_water" => Balance(row).FuelWaterLoss / FuelHeat.KilojoulesPerBtuPerPound,
        "hydrogen" => Balance(row).HydrogenLoss / FuelHeat.KilojoulesPerBtuPerPound,
        "dry_gas" => Balance(row).DryGasLoss / FuelHeat.KilojoulesPerBtuPerPound,
        "other" => Balance(row).OtherLoss / FuelHeat.KilojoulesPerBtuPerPound,
        "recoverable" => Balance(row).RecoverableKilojoulesPerKilogram / FuelHeat.KilojoulesPerBtuPerPound,
        "efficiency" => Balance(row).Efficiency,
        _ => row.Unknown(),
    };

    private static FuelHeat Balance(PublishedRow row) => FuelHeat.Of(
        MoistureContent.FromFraction(row["w_wet_basis"] / (1.0 - row["w_wet_basis"])),
        new(Temperature.FromFahrenheit(row["T_flue_F"]), Temperature.FromFahrenheit(row["T_air_F"]), row["excess_air"]),
        row["HHV_btu_lb_dry"] * FuelHeat.KilojoulesPerBtuPerPound);
}
