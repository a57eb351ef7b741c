using Boardwright.Quantities;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Wood;

public sealed class WoodTests
{
    [Fact]
    public void A_species_is_shown_with_its_numbers_and_their_source()
    {
        var ash = Answers.Json("wood species \"white ash\"");

        Assert.Equal("white ash", ash.GetProperty("common").GetString());
        Assert.Equal("Fraxinus americana", ash.GetProperty("scientific").GetString());
        Assert.Equal(0.55, ash.Number("specific_gravity_green"));
        Assert.Equal(4.9, ash.Number("shrinkage_radial_pct"));
        Assert.Equal(7.8, ash.Number("shrinkage_tangential_pct"));
        Assert.Equal(13.3, ash.Number("shrinkage_volumetric_pct"));
        Assert.Equal(46.0, ash.Number("green_mc_heartwood_pct"), 1e-9);
        Assert.Equal(44.0, ash.Number("green_mc_sapwood_pct"), 1e-9);
        Assert.Contains("Wood Handbook", ash.GetProperty("source").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_no_source_prints_are_null() => Assert.True(Answers.Json("wood species \"red mulberry\"").IsNull("shrinkage_radial_pct"));

    [Fact]
    public void Without_a_name_every_species_is_listed()
    {
        var list = Answers.Json("wood species");

        Assert.Equal(60, list.GetProperty("species").GetArrayLength());
        Assert.Equal("black walnut", list.GetProperty("species")[0].GetProperty("common").GetString());
    }

    [Theory]
    [InlineData("wood species oak", "oak", "near names: northern red oak")]
    [InlineData("wood species acer", "acer", "sugar maple, red maple, silver maple")]
    [InlineData("wood species sugar maple", "sugar maple", "quotes")]
    public void A_name_that_is_not_one_species_is_refused(string line, string given, string accepted)
    {
        var reason = Answers.Refusal(line);

        Assert.Equal("NAME", reason.What);
        Assert.Equal(given, reason.Given);
        Assert.Contains(accepted, reason.Accepted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--species \"northern red oak\" --size 254mm --from 80% --to 8%", 237.9811)]
    [InlineData("--species \"northern red oak\" --size 254mm --from 80% --to 8% --grain quarter", 246.5493)]
    [InlineData("--species \"sugar maple\" --size 300mm --from 65% --to 7% --grain flat", 277.23)]
    [InlineData("--species \"prunus serotina\" --size 150mm --from 7% --to 11%", 151.5017)]
    public void A_board_shrinks_or_swells_to_its_published_width(string options, double sizeOutMm)
    {
        var board = Answers.Json("wood shrink " + options);

        Assert.Equal(["size_in_mm", "size_out_mm", "change_mm", "change_pct"], board.Keys());
        Assert.Equal(sizeOutMm, board.Number("size_out_mm"), 0.0005);
        Assert.Equal(board.Number("size_out_mm") - board.Number("size_in_mm"), board.Number("change_mm"), 1e-9);
        Assert.Equal(100.0 * board.Number("change_mm") / board.Number("size_in_mm"), board.Number("change_pct"), 1e-9);
    }

    [Theory]
    [InlineData("45deg")]
    [InlineData("45")]
    [InlineData("45°")]
    public void A_ring_angle_is_given_in_degrees(string angle) => Assert.Equal(
        -7.35, Answers.Json($"wood shrink --species \"sugar maple\" --size 100mm --from 57% --to 0% --grain {angle}").Number("change_pct"), 0.0005);

    [Fact]
    public void A_species_without_shrinkage_has_no_answer_and_says_why() =>
        Assert.Equal("No radial shrinkage is known for red mulberry.", Answers.NoAnswer("wood shrink --species \"red mulberry\" --size 10in --from 75% --to 8%"));

    [Theory]
    [InlineData("sideways")]
    [InlineData("95deg")]
    [InlineData("-5")]
    [InlineData("")]
    public void A_grain_that_is_none_is_refused(string grain)
    {
        var reason = Assert.Single(Assert.IsType<Outcome<Angle>.Refused>(GrainOption.Read("--grain", grain)).Reasons);

        Assert.Equal(grain, reason.Given);
        Assert.Contains("flat, quarter", reason.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_fault_of_a_request_is_told_at_once() => Assert.Equal(
        ["--species", "--size", "--from"],
        Answers.Refusals("wood shrink --species acer --size 8 --from 0.12 --to 7%").Select(reason => reason.What));

    [Fact]
    public void Footage_weighs_as_published()
    {
        var walnut = Answers.Json("wood weight --species \"black walnut\" --mc 79% --volume 1000bf");

        Assert.Equal(["density_kg_per_m3", "weight_kg", "weight_lb"], walnut.Keys());
        Assert.Equal(913.0, walnut.Number("density_kg_per_m3"), 0.5);
        Assert.Equal(4749.0, walnut.Number("weight_lb"), 0.5);
        Assert.Equal(walnut.Number("weight_lb") * 0.45359237, walnut.Number("weight_kg"), 1e-6);
    }

    [Fact]
    public void Dry_wood_is_denser_than_its_basic_gravity_says() =>
        Assert.Equal(607.86, Answers.Json("wood weight --species \"black walnut\" --mc 8% --volume 1m3").Number("density_kg_per_m3"), 0.02);

    [Fact]
    public void More_water_than_the_cells_hold_is_refused()
    {
        var reason = Answers.Refusal("wood weight --species \"white oak\" --mc 300% --volume 1m3");

        Assert.Equal("--mc", reason.What);
        Assert.Equal("300%", reason.Given);
        Assert.Contains("0 to 143 %", reason.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Resin_lifts_wood_by_the_difference_of_weights()
    {
        var piece = Answers.Json("wood float --species \"black walnut\" --mc 8% --liquid-density 1.10kg/L --volume 6.5L");

        Assert.Equal((1100.0 - 607.86) * 0.0065, piece.Number("hold_down_kg"), 0.0002);
        Assert.Equal(piece.Number("hold_down_kg") * 9.80665, piece.Number("buoyancy_n"), 1e-9);
        Assert.Equal(607.86 / 1100.0, piece.Number("submerged_fraction"), 0.00002);
    }

    [Fact]
    public void Green_oak_sinks_in_water()
    {
        var oak = Answers.Json("wood float --species \"northern red oak\" --mc 90% --liquid-density 1000kg/m3 --volume 1m3");

        Assert.Equal(-64.0 * 9.80665, oak.Number("buoyancy_n"), 1e-6);
        Assert.Equal(0.0, oak.Number("hold_down_kg"));
        Assert.Equal(1.0, oak.Number("submerged_fraction"));
    }

    [Fact]
    public void Nothing_to_float_in_is_refused() =>
        Assert.Equal("0kg/L", Answers.Refusal("wood float --species \"black walnut\" --mc 8% --liquid-density 0kg/L --volume 1L").Given);
}
