using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Drying.Tests.Kiln;

/// <summary>A charge laid out in space. Sizes of kilns are invented; the rules are common practice, and the checks are counts done by hand.</summary>
public sealed class ChargeLayoutTests
{
    private static readonly KilnPlaces FourPlaces = new(4, 2, Length.FromInches(48), Length.FromFeet(16), Length.FromInches(32.2), Share.FromFraction(0.85), KilnRoom.UsualSticker);
    private static readonly KilnPlaces Press = new(1, 1, Length.FromInches(48), Length.FromFeet(13), Length.FromInches(35.6), Share.FromFraction(0.85), default);

    // 4 ft x 16 ft x 0.85 x 1 in = 54.4 bf a layer; 32.2 in / 1.75 in = 18.4: 18 whole layers.
    [Fact]
    public void A_layer_holds_what_its_place_covers_and_layers_are_whole()
    {
        Assert.Equal(54.4, FourPlaces.OfLayer(Thickness(4)).Count, 1e-9);
        Assert.Equal(18, FourPlaces.LayersMost(Thickness(4)));
        Assert.Equal(9, FourPlaces.StickersAcross(Length.FromInches(24)));
    }

    [Fact]
    public void Thick_stock_lies_below_and_places_stand_level()
    {
        var layout = ChargeLayout.Of(FourPlaces, [Wood("thin", 54.4 * 20, 4), Wood("thick", 68 * 12, 5)]);

        Assert.Empty(layout.Over);
        Assert.Equal("thick", layout.Places[0].From[0].Name);
        Assert.Equal(12, layout.Places.SelectMany(place => place.From).Where(part => part.Name == "thick").Sum(part => part.Layers));
        Assert.True(layout.Places.Max(place => place.Height.Inches) - layout.Places.Min(place => place.Height.Inches) <= 2.0);
        Assert.All(layout.Places, place => Assert.Equal(32.2, place.Height.Inches + place.Gap.Inches, 1e-9));
    }

    [Fact]
    public void In_a_press_board_lies_on_board()
    {
        var layout = ChargeLayout.Of(Press, [Wood("slabs", 44.2 * 3 * 10, 12)]);

        Assert.Equal(0, Press.StickersAcross(Length.FromInches(24)));
        Assert.Equal(30.0, layout.Places[0].Height.Inches, 1e-9);
    }

    [Fact]
    public void What_finds_no_place_is_named_with_its_footage()
    {
        var layout = ChargeLayout.Of(FourPlaces, [Wood("much", 54.4 * 73, 4)]);

        Assert.Equal(72, layout.Places.Sum(place => place.From.Sum(part => part.Layers)));
        var over = Assert.Single(layout.Over);
        Assert.Equal(54.4, over.Footage.Count, 1e-6);
    }

    [Fact]
    public void An_empty_charge_leaves_every_place_open() => Assert.All(ChargeLayout.Of(FourPlaces, []).Places, place => Assert.Equal(FourPlaces.Height, place.Gap));

    [Fact]
    public void Any_charge_keeps_its_footage_its_places_and_its_layers() => Gen.Select(Gen.Int[1, 6], Gen.Double[20, 60], Gen.Select(Gen.Double[1, 1500], Gen.Int[4, 12]).Array[0, 6]).Always(
        (count, height, stacks) =>
        {
            var kiln = FourPlaces with { Count = count, Wide = Math.Min(2, count), Height = Length.FromInches(height) };
            var wood = stacks.Select((stack, index) => Wood($"S-{index}", stack.Item1, stack.Item2)).ToList();

            var layout = ChargeLayout.Of(kiln, wood);

            Assert.Equal(count, layout.Places.Count);
            foreach (var one in wood)
            {
                var parts = layout.Places.SelectMany(place => place.From).Where(part => part.Name == one.Name).ToList();
                Assert.Equal(one.Footage.Count, parts.Sum(part => part.Footage.Count) + layout.Over.Where(over => over.Name == one.Name).Sum(over => over.Footage.Count), 1e-6);
                Assert.All(parts, part => Assert.True(part.Footage.Count <= (part.Layers * kiln.OfLayer(one.Thickness).Count) + 1e-6));
            }

            Assert.All(layout.Places, place => Assert.True(place.Height.Metres <= kiln.Height.Metres + 1e-9));
        },
        draws: 2000);

    [Fact]
    public void Places_are_as_level_as_any_parting_of_the_layers() => Gen.Select(Gen.Int[2, 3], Gen.Select(Gen.Double[10, 250], Gen.Int[4, 12]).Array[1, 3]).Always(
        (count, stacks) =>
        {
            var kiln = FourPlaces with { Count = count };
            var layout = ChargeLayout.Of(kiln, [.. stacks.Select((stack, index) => Wood($"S-{index}", stack.Item1, stack.Item2))]);
            double[] heights = [.. layout.Places.SelectMany(place => place.From).SelectMany(part => Enumerable.Repeat(part.Height.Inches / part.Layers, part.Layers))];

            Assert.Empty(layout.Over);
            Assert.Equal(LeastSquares(heights, count, 32.2), layout.Places.Sum(place => Math.Pow(place.Height.Inches, 2)), 1e-6);
        },
        draws: 300);

    // Every way to part the row, one by one.
    private static double LeastSquares(double[] heights, int places, double most) => places == 1
        ? heights.Sum() <= most + 1e-9 ? Math.Pow(heights.Sum(), 2) : double.PositiveInfinity
        : Enumerable.Range(0, heights.Length + 1).Where(first => heights[..first].Sum() <= most + 1e-9).Min(first => Math.Pow(heights[..first].Sum(), 2) + LeastSquares(heights[first..], places - 1, most));

    private static WoodToLay Wood(string name, double bf, int quarters) => new(name, BoardFeet.From(bf), Thickness(quarters));

    private static NominalThickness Thickness(int quarters) => NominalThickness.FromQuarters(quarters);
}
