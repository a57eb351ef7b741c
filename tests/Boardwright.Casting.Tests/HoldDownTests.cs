using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Casting.Tests;

public sealed class HoldDownTests
{
    public static IEnumerable<object[]> Rows(params string[] quantities) => PublishedTable.Theory("casting-hold-down", quantities);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "buoyancy", "ballast", "need", "floats_above" } })]
    public void Archimedes_worked_out_by_hand_is_reproduced(PublishedRow row)
    {
        var side = Length.FromMetres(Math.Sqrt(row["area_m2"]));
        var piece = new WoodPiece("piece", ClassTables.Done(Outline.Rectangle("piece", side, side)), ClassTables.Mm(row["height_mm"]), Density.FromKilogramsPerCubicMetre(row["rho_wood"]));

        var held = HoldDown.Of(piece, Density.FromKilogramsPerCubicMetre(row["rho_resin"]), ClassTables.Mm(row["depth_mm"]));

        Assert.InRange(
            row.Quantity switch
            {
                "buoyancy" => held.BuoyancyNewtons,
                "ballast" => held.Ballast.Kilograms,
                "need" => held.Need.Kilograms,
                _ => held.FloatsAbove!.Value.Millimetres,
            },
            row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "immersed_ballast" } })]
    public void Ballast_in_the_resin_weighs_less(PublishedRow row) => Assert.InRange(
        HoldDown.Immersed(Mass.FromKilograms(row["need_kg"]), Density.FromKilogramsPerCubicMetre(row["rho_ballast"]), Density.FromKilogramsPerCubicMetre(row["rho_resin"])).Kilograms,
        row.Low, row.High);

    [Fact]
    public void The_table_would_notice_a_one_percent_error() =>
        Assert.All(PublishedTable.Rows("casting-hold-down"), row => Assert.True(Math.Abs(row.ExpectedNumber) * 0.01 > row.Tolerance));

    [Fact]
    public void Ballast_lighter_than_the_resin_is_a_mistake() => Assert.Throws<ArgumentOutOfRangeException>(
        () => HoldDown.Immersed(Mass.FromKilograms(1.0), Density.FromKilogramsPerCubicMetre(1000.0), Density.FromKilogramsPerCubicMetre(1100.0)));

    [Fact]
    public void Wood_denser_than_the_resin_sinks()
    {
        var piece = new WoodPiece("ironwood", ClassTables.Done(Outline.Rectangle("piece", ClassTables.Mm(500), ClassTables.Mm(200))), ClassTables.Mm(40), Density.FromKilogramsPerCubicMetre(1200.0));

        var held = HoldDown.Of(piece, ResinTable.Class.DensityMixed, ClassTables.Mm(40));

        Assert.Null(held.FloatsAbove);
        Assert.Equal(0.0, held.Need.Kilograms);
        Assert.True(held.BuoyancyNewtons < 0.0);
    }
}
