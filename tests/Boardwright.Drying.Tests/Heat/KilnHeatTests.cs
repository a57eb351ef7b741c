using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Heat;

public sealed class KilnHeatTests
{
    private const string Table = "heat-kiln";
    private static readonly OutsideAir Autumn = new(Temperature.FromCelsius(5.0), RelativeHumidity.FromPercent(75.0));
    private static readonly Volume Solid = Volume.FromCubicMetres(5000.0 * BoardFeet.CubicMetresNominal * 1.125);

    private static readonly IReadOnlyList<KilnStage> GreenStages = [Stage(43, 85, 40, 336), Stage(49, 45, 25, 144), Stage(71, 25, 7, 192)];
    private static readonly IReadOnlyList<KilnStage> AirDriedStages = [Stage(49, 50, 15, 72), Stage(71, 28, 7, 120)];

    public static IEnumerable<object[]> Rows(params string[] quantities) => PublishedTable.Theory(Table, quantities);

    public static IEnumerable<object[]> ExampleRows() => PublishedTable.Rows(Table).Where(row => row.Quantity.StartsWith("example_", StringComparison.Ordinal)).Select(row => new object[] { row });

    [Theory, MemberData(nameof(ExampleRows))]
    public void The_worked_example_is_reproduced_term_by_term(PublishedRow row)
    {
        var isGreen = row.Text("case") == "green";
        var load = Load(isGreen ? 80.0 : 20.0);
        var stages = Done(KilnHeat.Stages(load, isGreen ? GreenStages : AirDriedStages, KilnStructure.Example, Autumn));
        var run = stages.Aggregate(KilnHeatTerms.None, (sum, terms) => sum + terms);

        var ours = row.Quantity switch
        {
            "example_solid_volume" => Solid.CubicMetres,
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
            "example_million_btu_per_mbf" => run.Total * 3412.142 / 1e6 / 5.0,
            "example_mean_coil" => run.MeanCoilKilowatts,
            "example_stage_coil" => (stages[(int)row["stage"] - 1] is var stage ? stage.Total - stage.WarmUp - stage.Fans : 0.0) / stages[(int)row["stage"] - 1].Hours,
            "example_loss" => KilnStructure.Example.LossWattsPerKelvin,
            "example_warm_up" => stages[0].WarmUp,
            _ => double.NaN,
        };

        Assert.InRange(ours, row.Low, row.High);
    }

    [Fact]
    public void Shares_of_the_example_lie_in_the_published_bands()
    {
        // Wengert 1978: evaporation 45 to 50 %, venting 15 to 20 %, walls and roof 30 to 40 %; Wengert 1998: about 20 % through walls, 5 million Btu per 1000 bf green.
        var run = Done(KilnHeat.Stages(Load(80.0), GreenStages, KilnStructure.Example with { Leak = default }, Autumn)).Aggregate(KilnHeatTerms.None, (sum, terms) => sum + terms);

        Assert.InRange(run.Evaporation / run.Total, 0.43, 0.50);
        Assert.InRange(run.Vent / run.Total, 0.15, 0.22);
        Assert.InRange(run.Walls / run.Total, 0.20, 0.40);
        Assert.InRange(run.Total * 3412.142 / 1e6 / 5.0, 5.0, 5.6);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "vent_air", "vent_enthalpy" } })]
    public void Without_leak_air_leaves_with_the_enthalpy_that_the_terms_gave(PublishedRow row)
    {
        var outside = new OutsideAir(Temperature.FromCelsius(row["out_c"]), RelativeHumidity.FromFraction(row["RH_out"]));
        var kiln = Done(AirState.FromHumidity(Temperature.FromCelsius(row["kiln_c"]), RelativeHumidity.FromFraction(row["RH_kiln"]), AirState.StandardPressure));
        var air = Done(AirState.FromHumidity(outside.Temperature, outside.Humidity, AirState.StandardPressure));
        var stage = new KilnStage(kiln.DryBulb, kiln.Humidity, MoistureContent.FromPercent(30.0), Elapsed.FromHours(10.0));
        var terms = Done(KilnHeat.Stage(Load(40.0) with { Temperature = kiln.DryBulb }, stage, new(0.0, 0.0, default, default), outside));

        var dryAir = 1.0 / (kiln.HumidityRatio - air.HumidityRatio);
        var carried = dryAir * (kiln.EnthalpyKilojoulesPerKilogram - air.EnthalpyKilojoulesPerKilogram);
        var given = (terms.Vent * 3600.0 / terms.WaterKilograms) + 2501.0 + 1.86 * kiln.DryBulb.Celsius;

        Assert.Equal(carried, given, 1e-8);
        Assert.InRange(row.Quantity == "vent_air" ? dryAir : carried, row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "latent_heat" } })]
    public void Latent_heat_is_within_04_percent_of_the_steam_table(PublishedRow row) =>
        Assert.InRange(MoistAir.LatentHeatKilojoulesPerKilogram(row["T_c"]), row.Low, row.High);

    [Fact]
    public void The_table_would_notice_a_one_percent_error() =>
        Assert.All(PublishedTable.Rows(Table).Where(row => row.Quantity != "example_sorption"), row => Assert.True(Math.Abs(row.ExpectedNumber) * 0.01 > row.Tolerance));

    [Fact]
    public void Warm_up_wants_five_times_the_mean_of_the_run()
    {
        var stages = Done(KilnHeat.Stages(Load(80.0), GreenStages, KilnStructure.Example, Autumn));
        var run = stages.Aggregate(KilnHeatTerms.None, (sum, terms) => sum + terms);

        var peak = KilnHeat.WarmUpKilowatts(stages[0], GreenStages[0], KilnStructure.Example, Autumn, KilnHeat.UsualWarmUp);

        Assert.Equal(42.9, peak, 0.05);
        Assert.InRange(peak / run.MeanCoilKilowatts, 5.0, 5.5);
    }

    [Fact]
    public void Hours_of_a_run_add_up_to_its_terms()
    {
        var run = Done(KilnHeat.Stages(Load(80.0), GreenStages, KilnStructure.Example, Autumn)).Aggregate(KilnHeatTerms.None, (sum, terms) => sum + terms);

        var profile = Done(KilnHeat.Profile(Load(80.0), GreenStages, KilnStructure.Example, _ => Autumn, KilnHeat.UsualWarmUp));

        Assert.Equal(672, profile.CoilKilowatts.Count);
        Assert.Equal(run.Coil, profile.KilowattHours, 1e-6 * run.Coil);
        Assert.Equal(42.9 - 4.0, profile.PeakKilowatts, 0.05);
        Assert.Equal(profile.KilowattHours, profile.DailyMeans(7).Sum() * 24.0, 1e-6);
        Assert.Equal(profile.PeakKilowatts, profile.DailyPeaks(7).Max());
    }

    [Fact]
    public void A_colder_week_wants_more_heat()
    {
        var frost = new OutsideAir(Temperature.FromCelsius(-14.0), RelativeHumidity.FromPercent(75.0));

        var mild = Done(KilnHeat.Profile(Load(20.0), AirDriedStages, KilnStructure.Example, _ => Autumn, KilnHeat.UsualWarmUp));
        var cold = Done(KilnHeat.Profile(Load(20.0), AirDriedStages, KilnStructure.Example, hour => hour is >= 48 and < 96 ? frost : Autumn, KilnHeat.UsualWarmUp));

        Assert.All(Enumerable.Range(0, 192), hour => Assert.True(hour is >= 48 and < 96 ? cold.CoilKilowatts[hour] > mild.CoilKilowatts[hour] : cold.CoilKilowatts[hour] == mild.CoilKilowatts[hour]));
    }

    [Fact]
    public void A_kiln_no_wetter_than_the_air_outside_has_no_answer()
    {
        var summer = new OutsideAir(Temperature.FromCelsius(30.0), RelativeHumidity.FromPercent(80.0));

        Assert.IsType<Outcome<KilnHeatTerms>.NoAnswer>(KilnHeat.Stage(Load(40.0), Stage(35, 30, 20, 100), KilnStructure.Example, summer));
    }

    [Fact]
    public void Conditioning_takes_spray_heat()
    {
        var terms = Done(KilnHeat.Stage(Load(7.0) with { Temperature = Temperature.FromCelsius(71.0) }, Stage(71, 70, 9, 12), KilnStructure.Example, Autumn));

        Assert.Equal(0.0, terms.WaterKilograms);
        Assert.Equal(7433.172 * 0.02 * (2501.0 + 1.86 * 71.0 - 41.86) / 3600.0, terms.Spray, 0.01);
    }

    private static KilnLoad Load(double percent) =>
        KilnLoad.Of(Done(SpeciesTable.Find("species", "northern red oak")), Solid, MoistureContent.FromPercent(percent), Temperature.FromCelsius(10.0));

    private static KilnStage Stage(double celsius, double humidity, double until, double hours) =>
        new(Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(humidity), MoistureContent.FromPercent(until), Elapsed.FromHours(hours));

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;
}
