namespace Boardwright.Yard.Tests.Heat;

public sealed class HeatTests
{
    private const string Stage = "heat kiln --species \"northern red oak\" --volume 13.27352184m3 --from 80% --to 40% --outside 5C --kiln-temperature 43C --kiln-rh 85% --hours 336h --start 10C";

    [Fact]
    public void First_stage_of_the_worked_example_is_reproduced()
    {
        var answer = Answers.Json(Stage);

        Assert.Equal(2973.27, answer.Number("water_kg"), 0.01);
        Assert.Equal(42.87, answer.Number("peak_kw"), 0.01);
        Assert.Equal(6.8408 * 336.0, answer.Number("total_kwh") - answer.Number("wood_kwh") - answer.Number("water_kwh") - answer.Number("structure_kwh") - answer.Number("fan_kwh"), 0.5);
        Assert.Equal(answer.Number("total_kwh") / 336.0, answer.Number("mean_kw"), 1e-9);
        Assert.Equal(answer.Number("total_kwh") / answer.Number("water_kg"), answer.Number("kwh_per_kg_water"), 1e-9);
    }

    [Fact]
    public void The_schedule_gives_the_humidity_when_none_is_named() => Assert.InRange(
        Answers.Json("heat kiln --species \"black cherry\" --volume 900bf --from 15% --to 7% --outside 35F --kiln-temperature 130F --hours 120h --structure demo/examples/kiln-structure.json").Number("kiln_rh_pct"), 20.0, 90.0);

    [Theory]
    [InlineData("heat kiln --species \"black cherry\" --volume 900bf --from 7% --to 15% --outside 35F --kiln-temperature 130F --hours 120h", "--to")]
    [InlineData("heat kiln --species \"black cherry\" --volume 900bf --from 15% --to 7% --outside 35F --kiln-temperature 130F --hours 120h --start 150F", "--kiln-temperature")]
    [InlineData("heat fuel --species ash --mc 28", "--species")]
    public void Bad_input_is_refused_by_name(string line, string what) => Assert.Equal(what, Answers.Refusals(line)[0].What);

    [Fact]
    public void A_kiln_that_cannot_dry_by_venting_has_no_answer() => Assert.Contains(
        "venting would not dry",
        Answers.NoAnswer("heat kiln --species \"black cherry\" --volume 900bf --from 40% --to 30% --outside 30C --outside-rh 90% --kiln-temperature 32C --kiln-rh 30% --hours 100h"), StringComparison.Ordinal);

    [Fact]
    public void Fuel_gives_the_heat_balance_or_the_efficiency_named()
    {
        var balance = Answers.Json("heat fuel --species \"white ash\" --mc 25%");
        var named = Answers.Json("heat fuel --species \"white ash\" --mc 25% --efficiency 60%");

        Assert.Equal(16_000.0, balance.Number("higher_kj_per_kg"), 1e-6);
        Assert.InRange(balance.Number("efficiency_pct"), 74.5, 75.5);
        Assert.Equal(9_600.0, named.Number("recoverable_kj_per_kg"), 1e-6);
        Assert.Equal(9_600.0 * 550.0 * 1.25 / 3600.0, named.Number("kwh_per_m3_solid"), 1e-6);
    }
}
