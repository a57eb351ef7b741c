using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Vacuum;

public sealed class VacuumDryingTests(ITestOutputHelper output)
{
    [Fact]
    public void Pressure_and_boiling_point_are_each_others_inverse() => Assert.All(
        Enumerable.Range(1, 100),
        celsius => Assert.Equal(celsius, BoilingPoint.At(BoilingPoint.PressureAt(Temperature.FromCelsius(celsius))).Celsius, 1e-6));

    [Fact]
    public void A_charge_takes_at_least_the_time_its_power_needs_for_its_water()
    {
        var walnut = Walnut();

        // 1326 kg at 0.66 kWh/kg and the warm-up, 977 kWh in the wood at 15 kW: 65 h and no less.
        Assert.InRange(walnut.InWoodKilowattHours, 950.0, 1010.0);
        Assert.True(walnut.HoursP50 >= walnut.InWoodKilowattHours / 15.0 - 1e-9);
        Assert.True(walnut.HoursP10 < walnut.HoursP50 && walnut.HoursP50 < walnut.HoursP90);
    }

    [Fact]
    public void Long_white_oak_does_not_pass_and_says_so()
    {
        var white = Done(VacuumDrying.Forecast(Charge("white oak", 31.75, 3.0, 19.8, 7.0, 1.5), RadioFrequency.Usual));
        var red = Done(VacuumDrying.Forecast(Charge("northern red oak", 31.75, 3.0, 19.8, 7.0, 1.5), RadioFrequency.Usual));

        Assert.Equal(VacuumLimit.Permeability, white.Limit);
        Assert.Equal(VacuumLimit.Power, red.Limit);
        // At constant voltage red oak waits for power, which more voltage gives; white oak waits for its own grain.
        Assert.True(white.HoursP50 > 3.0 * red.HoursP50);
        var raised = Charge("northern red oak", 31.75, 3.0, 19.8, 7.0, 1.5) with { VoltageRaised = true };
        Assert.True(white.HoursP50 > 5.0 * Done(VacuumDrying.Forecast(raised, RadioFrequency.Usual)).HoursP50);
    }

    [Theory]
    [InlineData("black walnut", 25.4, 2.0, 4.5)]
    [InlineData("black cherry", 25.4, 2.0, 4.5)]
    [InlineData("black walnut", 50.8, 4.0, 10.0)]
    [InlineData("sugar maple", 50.8, 4.0, 10.0)]
    public void Strong_generators_dry_green_boards_in_the_days_practice_knows(string species, double thicknessMm, double least, double most)
    {
        // Common practice: 4/4 two to four days, 8/4 four to ten, green to 8 %, where the generator is strong for the load (here 5 kW/m3).
        var forecast = Done(VacuumDrying.Forecast(Charge(species, thicknessMm, 2.4, 60.0, 8.0, 2.1) with { Platen = Power.FromKilowatts(11.7) }, RadioFrequency.Usual));

        output.WriteLine($"{species} {thicknessMm} {forecast.HoursP10 / 24.0} {forecast.HoursP50 / 24.0} {forecast.HoursP90 / 24.0} {forecast.Limit}");
        Assert.InRange(forecast.HoursP50 / 24.0, least, most);
    }

    [Fact]
    public void Shorter_boards_of_close_wood_dry_sooner()
    {
        var full = Done(VacuumDrying.Forecast(Charge("black cherry", 50.8, 2.4, 25.0, 8.0, 1.5), RadioFrequency.Usual));
        var half = Done(VacuumDrying.Forecast(Charge("black cherry", 50.8, 1.2, 25.0, 8.0, 1.5), RadioFrequency.Usual));

        Assert.True(half.HoursP50 < full.HoursP50);
    }

    [Fact]
    public void A_pressure_at_which_nothing_boils_has_no_answer() => Assert.IsType<Outcome<VacuumForecast>.NoAnswer>(
        VacuumDrying.Forecast(Charge("sugar maple", 25.4, 2.4, 40.0, 8.0, 1.5) with { Chamber = Pressure.FromKilopascals(25.0) }, RadioFrequency.Usual));

    [Fact]
    public void A_target_below_the_equilibrium_of_the_chamber_has_no_answer() => Assert.IsType<Outcome<VacuumForecast>.NoAnswer>(
        VacuumDrying.Forecast(Charge("sugar maple", 25.4, 2.4, 40.0, 4.0, 1.5), RadioFrequency.Usual));

    [Fact]
    public void More_condensate_than_water_is_refused() => Assert.IsType<Outcome<MoistureContent>.Refused>(
        Condensate.MoistureOf(MoistureContent.FromPercent(20.0), Mass.FromKilograms(900.0), Condensate.UsualCaught, Mass.FromKilograms(1000.0)));

    private static VacuumForecast Walnut() => Done(VacuumDrying.Forecast(
        Charge("black walnut", 25.4, 2.4, 60.0, 8.0, 5.0) with { Platen = Power.FromKilowatts(15.0 / 0.9) }, RadioFrequency.Usual));

    private static VacuumCharge Charge(string species, double thicknessMm, double lengthM, double from, double to, double cubicMetres) => new(
        Done(SpeciesTable.Find("species", species)), Length.FromMillimetres(thicknessMm), Length.FromMetres(lengthM), MoistureContent.FromPercent(from), MoistureContent.FromPercent(to),
        Volume.FromCubicMetres(cubicMetres), Pressure.FromPascals(7500.0), Power.FromKilowatts(18.0));

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;
}
