namespace Boardwright.Yard.Tests.Cast;

public sealed class CastTests
{
    [Fact]
    public void Volume_of_a_class_table_is_its_expected_litres()
    {
        var answer = Answers.Json("cast volume demo/examples/mould-table.json");

        Assert.Equal(6.35, answer.Number("volume_l"), 0.006);
        Assert.Equal(0.36, answer.Number("mould_area_m2"), 1e-9);
        Assert.True(answer.Number("volume_low_l") < answer.Number("volume_l") && answer.Number("volume_l") < answer.Number("volume_high_l"));
    }

    [Fact]
    public void Volume_of_a_river_follows_its_stations()
    {
        var answer = Answers.Json("cast volume m.json", ("m.json", """{"length_mm":2000,"depth_mm":50,"stations":[{"at_mm":0,"gap_mm":250},{"at_mm":2000,"gap_mm":250}]}"""));

        Assert.Equal(0.5, answer.Number("area_m2"), 1e-12);
        Assert.Equal(25.0, answer.Number("volume_l"), 1e-9);
    }

    [Fact]
    public void Mix_gives_the_class_its_masses()
    {
        var answer = Answers.Json("cast mix --resin class --volume 50.27L --waste 8%");

        Assert.Equal(43.05, answer.Number("part_a_kg"), 0.01);
        Assert.Equal(16.36, answer.Number("part_b_kg"), 0.01);
        Assert.Equal(50.27 * 1.08, answer.Number("part_a_l") + answer.Number("part_b_l"), 1e-9);
        Assert.Contains("sawdust", answer.GetProperty("cautions").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Weigh_down_names_each_piece()
    {
        var piece = Answers.Json("cast weigh-down demo/examples/mould-table.json").GetProperty("pieces")[0];

        Assert.Equal(4.42, piece.Number("hold_down_kg"), 0.1);
        Assert.Equal(piece.Number("hold_down_kg") * 9.80665, piece.Number("buoyancy_n"), 1e-9);
        Assert.Equal(piece.Number("hold_down_kg"), piece.Number("water_l"), 0.02);
    }

    [Fact]
    public void Cure_answers_for_centre_and_edge()
    {
        var answer = Answers.Json("cast cure demo/examples/mould-river.json");

        Assert.True(answer.GetProperty("safe").GetBoolean());
        Assert.InRange(answer.Number("peak_c"), 32.0, 35.0);
        Assert.True(answer.GetProperty("gel_h").Number("edge") > answer.GetProperty("gel_h").Number("centre"));
        Assert.True(answer.GetProperty("demould_h").Number("edge") > 100.0);
        Assert.Contains("thin edge", answer.GetProperty("advice").GetString(), StringComparison.Ordinal);
        Assert.NotEqual(0, answer.GetProperty("curve").GetArrayLength());
    }

    [Fact]
    public void A_deep_warm_pour_is_not_safe()
    {
        var answer = Answers.Json("cast cure demo/examples/mould-table.json --shop 26C");

        Assert.False(answer.GetProperty("safe").GetBoolean());
        Assert.True(answer.Number("margin_c") < 0.0);
        Assert.Contains("Split the pour", answer.GetProperty("advice").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_resin_from_its_data_sheet_cures_and_says_what_it_was_fitted_to()
    {
        var resin = File.ReadAllText(Testing.Repository.PathOf("demo", "examples", "resin.json"));
        var answer = Answers.Json("cast cure m.json", ("m.json", $$"""{"length_mm":500,"width_mm":300,"depth_mm":20,"wall_mm":12,"shop_c":20,"resin":{{resin}}}"""));

        Assert.Contains("300 g gel in 600 min", answer.GetProperty("advice").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"length_mm":500,"width_mm":300}""", "depth_mm")]
    [InlineData("""{"length_mm":500,"width_mm":300,"depth_mm":40,"pieces":[{"species":"unobtainium","mc_pct":8,"thickness_mm":38,"length_mm":100,"widths_mm":[10,10]}]}""", "pieces[0].species")]
    [InlineData("""{"length_mm":500,"width_mm":300,"depth_mm":40,"pieces":[{"species":"white ash","thickness_mm":38,"length_mm":100,"widths_mm":[10,10]}]}""", "pieces[0].mc_pct")]
    [InlineData("""{"length_mm":500,"width_mm":"wide","depth_mm":40}""", "FILE")]
    [InlineData("not json", "FILE")]
    public void A_bad_mould_is_refused_where_it_is_wrong(string text, string what) =>
        Assert.Equal(what, Answers.Refusal("cast volume m.json", ("m.json", text)).What);

    [Fact]
    public void An_unknown_resin_is_refused_with_the_known_ones() =>
        Assert.Contains("class", Answers.Refusal("cast mix --resin glue --volume 1L").Accepted, StringComparison.Ordinal);
}
