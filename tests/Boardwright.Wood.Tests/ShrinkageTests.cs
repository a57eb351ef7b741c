using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Wood.Tests;

public sealed class ShrinkageTests
{
    private static readonly MoistureContent Thirty = MoistureContent.FromPercent(30);

    public static IEnumerable<object[]> Sizes => PublishedTable.Theory("shrinkage", "size_out_mm");

    public static TheoryData<string> Shrinking => [.. SpeciesTable.All.Where(s => s.ShrinkageRadialPercent is not null && s.ShrinkageTangentialPercent is not null).Select(s => s.CommonName)];

    [Theory, MemberData(nameof(Sizes))]
    public void A_species_shrinks_as_published(PublishedRow row)
    {
        var species = Expect.Species(row.Text("species"));
        var total = Expect.Done(Shrinkage.Total(species, Direction(row)));

        Assert.Equal(row["shrinkage_pct"], total);
        row.Agrees(Shrinkage.Size(Length.FromMillimetres(row["size_mm"]), total, species.ShrinkageStart, row.Moisture("from_mc_pct"), row.Moisture("to_mc_pct")).Millimetres);
    }

    [Theory, MemberData(nameof(Shrinking))]
    public void A_board_shrunk_and_swollen_again_has_its_size(string name)
    {
        var species = Expect.Species(name);
        Gen.Select(Gen.Double[0.0, 120.0], Gen.Double[0.0, 120.0], Gen.Double[0.0, 90.0]).Always(
            (from, to, degrees) =>
            {
                var total = Expect.Done(Shrinkage.TotalOfWidth(species, Angle.FromDegrees(degrees)));
                var there = Shrinkage.Size(Length.FromMillimetres(200), total, species.ShrinkageStart, MoistureContent.FromPercent(from), MoistureContent.FromPercent(to));
                var back = Shrinkage.Size(there, total, species.ShrinkageStart, MoistureContent.FromPercent(to), MoistureContent.FromPercent(from));
                Assert.Equal(200.0, back.Millimetres, 1e-9);
                Assert.True(from <= to ? there.Millimetres >= 200.0 - 1e-9 : there.Millimetres <= 200.0 + 1e-9);
            },
            draws: 50);
    }

    [Theory, MemberData(nameof(Shrinking))]
    public void Width_lies_between_quartersawn_and_flatsawn_and_turns_into_thickness(string name)
    {
        var species = Expect.Species(name);
        for (var degrees = 0.0; degrees <= 90.0; degrees += 7.5)
        {
            var width = Expect.Done(Shrinkage.TotalOfWidth(species, Angle.FromDegrees(degrees)));
            var thickness = Expect.Done(Shrinkage.TotalOfThickness(species, Angle.FromDegrees(degrees)));
            Assert.InRange(width, species.ShrinkageRadialPercent!.Value - 1e-9, species.ShrinkageTangentialPercent!.Value + 1e-9);
            Assert.Equal(species.ShrinkageRadialPercent!.Value + species.ShrinkageTangentialPercent!.Value, width + thickness, 1e-9);
        }
    }

    [Fact]
    public void The_turned_strain_is_within_a_thirtieth_of_a_point_of_the_exact_length()
    {
        // sqrt((1 - ST)² cos² a + (1 - SR)² sin² a): the length of a turned line under the two shrinkages.
        for (var degrees = 0.0; degrees <= 90.0; degrees += 1.0)
        {
            var radians = degrees * Math.PI / 180.0;
            var exact = 100.0 * (1.0 - Math.Sqrt(Math.Pow(0.901 * Math.Cos(radians), 2.0) + Math.Pow(0.952 * Math.Sin(radians), 2.0)));
            Assert.Equal(exact, Expect.Done(Shrinkage.TotalOfWidth(Expect.Species("sugar maple"), Angle.FromDegrees(degrees))), 0.0352);
        }
    }

    [Fact]
    public void A_square_cut_across_the_rings_goes_out_of_square() =>
        Assert.Equal(2.92, Expect.Done(Shrinkage.OutOfSquare(Expect.Species("sugar maple"), Angle.FromDegrees(45))).Degrees, 0.01);

    [Fact]
    public void Nothing_moves_above_the_start_of_shrinkage()
    {
        var cedar = Expect.Species("northern white-cedar");

        Assert.Equal(0.0, Expect.Done(Shrinkage.Percent(cedar, ShrinkageDirection.Tangential, MoistureContent.FromPercent(99), MoistureContent.FromPercent(22))));
        Assert.Equal(4.9 / 2.0, Expect.Done(Shrinkage.Percent(cedar, ShrinkageDirection.Tangential, MoistureContent.FromPercent(22), MoistureContent.FromPercent(11))), 1e-9);
    }

    [Fact]
    public void A_species_without_published_shrinkage_has_no_answer()
    {
        var why = Assert.IsType<Outcome<double>.NoAnswer>(Shrinkage.Percent(Expect.Species("red mulberry"), ShrinkageDirection.Radial, Thirty, MoistureContent.OvenDry)).Why;

        Assert.Equal("No radial shrinkage is known for red mulberry.", why);
    }

    private static ShrinkageDirection Direction(PublishedRow row) => Enum.Parse<ShrinkageDirection>(row.Text("direction"), ignoreCase: true);
}
