using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Testing;
using static Boardwright.Drying.Tests.Given;
using static Boardwright.Drying.Tests.Heat.KilnExample;

namespace Boardwright.Drying.Tests.Heat;

public sealed class KilnHeatTests
{
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

    [Fact]
    public void Without_leak_air_leaves_with_the_enthalpy_that_the_terms_gave()
    {
        var row = PublishedTable.Rows("heat-kiln").Single(row => row.Quantity == "vent_enthalpy");
        var (terms, air) = KilnExample.Vented(row);

        Assert.Equal(air.KilojoulesCarried, (terms.Vent * 3600.0 / terms.WaterKilograms) + 2501.0 + 1.86 * row["kiln_c"], 1e-8);
    }

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
}
