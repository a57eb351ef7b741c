namespace Boardwright.Yard.Tests.Vacuum;

public sealed class VacuumTests
{
    [Fact]
    public void Long_white_oak_is_limited_by_the_wood()
    {
        var answer = Answers.Json("dry vacuum --species \"white oak\" --thickness 5/4 --length 10ft --from 19.8% --to 7% --pressure 75mbar --rf-power 18kW --volume 610bf");

        Assert.Equal("permeability", answer.GetProperty("limited_by").GetString());
        Assert.Contains("do not pass steam", answer.GetProperty("advice").GetString(), StringComparison.Ordinal);
        Assert.Equal(40.29, answer.Number("boiling_point_c"), 0.005);
    }

    [Fact]
    public void Walnut_of_the_worked_case_gives_its_water_and_energy()
    {
        var answer = Answers.Json("dry vacuum --species \"black walnut\" --thickness 4/4 --length 8ft --from 60% --to 8% --pressure 75mbar --rf-power 18kW --volume 5m3");

        Assert.Equal(1326.0, answer.Number("water_kg"), 0.1);
        Assert.InRange(answer.Number("energy_kwh"), 1900.0, 2060.0);
        Assert.True(answer.Number("hours_p10") < answer.Number("hours_p50") && answer.Number("hours_p50") < answer.Number("hours_p90"));
        Assert.InRange(answer.Number("condensate_l"), 0.9 * 1326.0, 1326.0);
    }

    [Fact]
    public void A_pressure_without_boiling_has_no_answer() => Assert.Contains(
        "nothing would boil",
        Answers.NoAnswer("dry vacuum --species \"sugar maple\" --thickness 4/4 --length 8ft --from 40% --to 8% --pressure 30kPa --rf-power 18kW --volume 500bf"), StringComparison.Ordinal);

    [Fact]
    public void A_target_above_the_start_is_refused() => Assert.Equal(
        "--to", Answers.Refusal("dry vacuum --species \"sugar maple\" --thickness 4/4 --length 8ft --from 8% --to 40% --pressure 75mbar --rf-power 18kW --volume 500bf").What);
}
