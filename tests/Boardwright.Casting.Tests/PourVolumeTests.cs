using Boardwright.Testing;
using Boardwright.Quantities;
using CsCheck;
using static Boardwright.Casting.Tests.ClassTables;

namespace Boardwright.Casting.Tests;

public sealed class PourVolumeTests
{
    private static readonly Density Light = Density.FromKilogramsPerCubicMetre(600.0);

    [Fact]
    public void A_hexagon_and_a_circle_have_their_textbook_areas()
    {
        Assert.Equal(0.23383, Done(Outline.RegularHexagon("mould", Mm(300))).Area.SquareMetres, 5e-6);
        Assert.Equal(0.24630, Done(Outline.Circle("mould", Mm(560))).Area.SquareMetres, 5e-6);
    }

    [Fact]
    public void A_polygon_has_the_same_area_either_way_round_and_wherever_it_lies() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[0.1, 1], Gen.Double[0.1, 1]).Always((x, y, length, width) =>
        {
            PlanPoint[] corners = [new(x, y), new(x + length, y), new(x + length, y + width), new(x, y + width)];

            Assert.Equal(length * width, Done(Outline.Polygon("piece", corners)).Area.SquareMetres, 1e-12);
            Assert.Equal(length * width, Done(Outline.Polygon("piece", [.. corners.Reverse()])).Area.SquareMetres, 1e-12);
        });

    [Fact]
    public void Crossing_sides_are_refused_with_their_numbers()
    {
        var refused = Assert.IsType<Outcome<Outline>.Refused>(Outline.Polygon("piece 1", [new(0, 0), new(1, 1), new(1, 0), new(0, 1)]));

        Assert.Equal("sides 1 and 3 cross", Assert.Single(refused.Reasons).Given);
    }

    [Fact]
    public void A_sloping_live_edge_is_integrated_exactly()
    {
        var top = Done(Outline.Polygon("piece", [new(0, 0), new(1, 0), new(1, 0.10), new(0, 0.10)]));
        var bottom = Done(Outline.Polygon("piece", [new(0, 0), new(1, 0), new(1, 0.20), new(0, 0.20)]));
        var piece = new WoodPiece("piece 1", top, Mm(40), Light) { BottomOutline = bottom };

        Assert.Equal(1.0 * 0.15 * 0.040, piece.Volume.CubicMetres, 1e-12);
        Assert.Equal(1.0 * 0.175 * 0.020, piece.Immersed(Mm(20)).CubicMetres, 1e-12);
    }

    [Fact]
    public void A_pyramid_of_wood_is_integrated_exactly()
    {
        var bottom = Done(Outline.Polygon("piece", [new(0, 0), new(0.3, 0), new(0.3, 0.3), new(0, 0.3)]));
        var top = Done(Outline.Polygon("piece", [new(0.1, 0.1), new(0.2, 0.1), new(0.2, 0.2), new(0.1, 0.2)]));
        var frustum = new WoodPiece("block", top, Mm(60), Light) { BottomOutline = bottom };

        Assert.Equal(0.060 / 3.0 * (0.09 + 0.01 + Math.Sqrt(0.09 * 0.01)), frustum.Volume.CubicMetres, 1e-12);
    }

    [Fact]
    public void Wood_taller_than_the_pour_displaces_only_the_pour()
    {
        var mould = Done(Outline.Rectangle("mould", Mm(1000), Mm(400)));
        var piece = new WoodPiece("piece 1", Done(Outline.Polygon("piece", [new(0, 0), new(1, 0), new(1, 0.1), new(0, 0.1)])), Mm(60), Light);

        var volume = Done(PourVolume.Around(mould, Mm(40), [piece], ReadingAllowance.Usual));

        Assert.Equal(12.0, volume.Volume.Litres, 9);
        Assert.Equal(0.3, volume.OpenArea.SquareMetres, 9);
    }

    [Fact]
    public void A_river_by_stations_is_the_trapezoid_of_its_widths()
    {
        var river = Done(PourVolume.Between(
            Mm(1000), Mm(50), [new(Mm(0), Mm(100)), new(Mm(500), Mm(200)), new(Mm(1000), Mm(140))], ReadingAllowance.Usual));

        Assert.Equal(0.160, river.OpenArea.SquareMetres, 9);
        Assert.Equal(8.0, river.Volume.Litres, 9);
    }

    [Fact]
    public void The_band_holds_the_volume_and_widens_with_the_allowance() =>
        Gen.Select(Gen.Double[0.0, 5.0], Gen.Double[0.0, 3.0], Gen.Double[0.0, 0.1]).Always((edge, level, voids) =>
        {
            var table = All[0];
            var narrow = Done(PourVolume.Around(table.Mould, table.Depth, table.Pieces, new(Mm(edge), Mm(level), Share.FromFraction(voids))));
            var wide = Done(PourVolume.Around(table.Mould, table.Depth, table.Pieces, new(Mm(edge + 1), Mm(level + 1), Share.FromFraction(voids + 0.01))));

            Assert.True(narrow.Low <= narrow.Volume && narrow.Volume <= narrow.High);
            Assert.True(wide.Low < narrow.Low && narrow.High < wide.High);
        });

    [Fact]
    public void Wood_outside_the_mould_is_refused()
    {
        var mould = Done(Outline.Rectangle("mould", Mm(1000), Mm(400)));
        var piece = new WoodPiece("piece 1", Done(Outline.Polygon("piece", [new(0, 0), new(1.2, 0), new(1.2, 0.1), new(0, 0.1)])), Mm(40), Light);

        var refused = Assert.IsType<Outcome<PourVolume>.Refused>(PourVolume.Around(mould, Mm(40), [piece], ReadingAllowance.Usual));

        Assert.Equal("piece 1", Assert.Single(refused.Reasons).What);
    }

    [Fact]
    public void Wood_that_fills_the_mould_is_refused()
    {
        var mould = Done(Outline.Rectangle("mould", Mm(1000), Mm(400)));

        Assert.IsType<Outcome<PourVolume>.Refused>(PourVolume.Around(mould, Mm(40), [new("piece 1", mould, Mm(40), Light)], ReadingAllowance.Usual));
    }

    [Fact]
    public void Stations_out_of_order_are_refused() => Assert.IsType<Outcome<PourVolume>.Refused>(
        PourVolume.Between(Mm(1000), Mm(50), [new(Mm(500), Mm(100)), new(Mm(0), Mm(100))], ReadingAllowance.Usual));
}
