namespace Boardwright.Yard.Tests.Dry;

public sealed class DryTests
{
    private const string Maple = "dry air --species \"sugar maple\" --thickness 4/4 --from 68% --to 20% --start 2026-05-01 ";

    [Fact]
    public void Rate_is_the_printed_one_with_its_source()
    {
        var rate = Answers.Json("dry rate --species \"northern red oak\" --thickness 4/4");

        Assert.Equal(3.8, rate.Number("safe_daily_loss_pct"), 1e-9);
        Assert.Contains("conners-for-128", rate.GetProperty("source").GetString(), StringComparison.Ordinal);
        Assert.Contains("printed", Answers.NoAnswer("dry rate --species hackberry --thickness 4/4"), StringComparison.Ordinal);
    }

    [Fact]
    public void Kiln_time_has_the_keys_of_the_contract_and_adds_up()
    {
        var time = Answers.Json("dry kiln --species \"sugar maple\" --thickness 4/4 --from 22.4% --to 8%");

        Assert.True(time.Number("hours_p10") < time.Number("hours_p50") && time.Number("hours_p50") < time.Number("hours_p90"));
        var steps = time.GetProperty("steps").EnumerateArray().ToList();
        Assert.Equal(["mc_above_pct", "dry_bulb_c", "wet_bulb_c", "emc_pct", "hours"], steps[0].Keys());
        Assert.Equal(time.Number("hours_p50"), steps.Sum(step => step.Number("hours")), 1e-6);
        Assert.Equal(560.0 * (0.224 - 0.08), time.Number("water_kg_per_m3"), 1e-6);
    }

    [Fact]
    public void Kiln_of_the_yard_keeps_to_its_limit()
    {
        var time = Answers.Json("dry kiln --species \"northern red oak\" --thickness 4/4 --from 30% --to 7% --kiln K2");

        Assert.All(time.GetProperty("steps").EnumerateArray(), step => Assert.True(step.Number("dry_bulb_c") <= (150.0 - 32.0) / 1.8 + 1e-9));
        Assert.Contains("dry vacuum", Answers.Refusal("dry kiln --species \"sugar maple\" --thickness 4/4 --from 30% --to 8% --kiln K3").Accepted, StringComparison.Ordinal);
        Assert.Equal("--kiln", Answers.Refusal("dry kiln --species \"sugar maple\" --thickness 4/4 --from 30% --to 8% --kiln K9").What);
        Assert.Equal("--to", Answers.Refusal("dry kiln --species \"sugar maple\" --thickness 4/4 --from 8% --to 30%").What);
    }

    [Fact]
    public void Wood_drier_at_the_start_than_it_is_wanted_is_told_so_and_not_called_ready_today()
    {
        var refusal = Answers.Refusal("dry air --species \"sugar maple\" --thickness 4/4 --from 15% --to 25% --start 2026-05-01 --place demonstration");

        Assert.Equal("--to", refusal.What);
        Assert.Contains("15%", refusal.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Air_drying_answers_with_a_band_and_a_curve()
    {
        var forecast = Answers.Json(Maple + "--place demonstration");

        Assert.Equal(["date", "mc_p10_pct", "mc_p50_pct", "mc_p90_pct", "emc_pct"], forecast.GetProperty("curve")[0].Keys());
        Assert.Equal("2026-05-01", forecast.GetProperty("curve")[0].GetProperty("date").GetString());
        var (early, likely, late) = (forecast.GetProperty("ready_p10").GetString(), forecast.GetProperty("ready_p50").GetString(), forecast.GetProperty("ready_p90").GetString());
        Assert.True(string.CompareOrdinal(early, likely) < 0 && string.CompareOrdinal(likely, late) < 0);
        Assert.InRange(forecast.Number("days_p50"), 40.0, 75.0);
    }

    [Fact]
    public void Weather_and_readings_come_from_tables()
    {
        var weather = string.Join('\n', Enumerable.Range(0, 200).Select(day => $"{new DateOnly(2026, 5, 1).AddDays(day):yyyy-MM-dd},18,65,2.5").Prepend("date,t_mean_c,rh_mean_pct,wind_mean_m_s"));

        var free = Answers.Json(Maple + "--weather w.csv", ("w.csv", weather));
        var read = Answers.Json(Maple + "--weather w.csv --readings r.csv", ("w.csv", weather), ("r.csv", "date,mc_pct\n2026-05-25,52\n2026-05-25,54\n"));

        Assert.True(string.CompareOrdinal(read.GetProperty("ready_p50").GetString(), free.GetProperty("ready_p50").GetString()) > 0);
    }

    [Theory]
    [InlineData("date,t_mean_c,rh_mean_pct\n2026-05-01,18,640\n", "640")]
    [InlineData("date,t_mean_c,rh_mean_pct\n2026-05-01,warm,60\n", "warm")]
    [InlineData("date,t_mean_c,rh_mean_pct\n1 May,18,60\n", "1 May")]
    public void Weather_that_cannot_be_is_refused_with_its_place(string text, string given) =>
        Assert.Equal(given, Answers.Refusals(Maple + "--weather w.csv", ("w.csv", text))[0].Given);

    [Fact]
    public void Weather_is_asked_for_once()
    {
        Assert.Equal("--weather", Answers.Refusal(Maple).What);
        Assert.Equal("--place", Answers.Refusal(Maple + "--place Atlantis").What);
    }

    [Fact]
    public void Weather_that_was_observed_is_not_scattered()
    {
        // The same observed days as a file, which may be of any year, and as the place's own record.
        var file = Answers.Json(Maple + "--weather demo/weather.csv");
        var place = Answers.Json(Maple + "--place demonstration");

        Assert.True(Band(place) < Band(file), $"{Band(place)} and {Band(file)} point days");
        Assert.Equal(file.Number("days_p50"), place.Number("days_p50"), 3.0);

        // Whole ready days are too coarse to tell: the width of the band, day by day.
        static double Band(System.Text.Json.JsonElement forecast) =>
            forecast.GetProperty("curve").EnumerateArray().Take(60).Sum(day => day.Number("mc_p90_pct") - day.Number("mc_p10_pct"));
    }

    [Fact]
    public void Stack_that_never_dries_has_null_days()
    {
        var forecast = Answers.Json("dry air --species \"white ash\" --thickness 4/4 --from 14.6% --to 8% --start 2026-10-30 --place demonstration");

        Assert.True(forecast.IsNull("ready_p50"));
        Assert.True(forecast.IsNull("days_p50"));
    }
}
