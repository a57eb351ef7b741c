using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Boards to be laid into a kiln.</summary>
/// <param name="Name">The stack.</param>
/// <param name="Footage">As tallied.</param>
/// <param name="Thickness">By name; a layer is of one thickness.</param>
public sealed record WoodToLay(string Name, BoardFeet Footage, NominalThickness Thickness);

/// <summary>Layers of one stack in one place, one over the other.</summary>
/// <param name="Name">The stack.</param>
/// <param name="Layers">How many; the last of a stack may be part of a layer.</param>
/// <param name="Footage">What lies in them.</param>
/// <param name="Height">With their stickers.</param>
public sealed record LaidLayers(string Name, int Layers, BoardFeet Footage, Length Height);

/// <summary>One place of a kiln as it is laid.</summary>
/// <param name="From">From the bottom up.</param>
/// <param name="Height">Of all layers.</param>
/// <param name="Gap">Left open above, for a baffle.</param>
public sealed record LaidPlace(IReadOnlyList<LaidLayers> From, Length Height, Length Gap)
{
    /// <summary>Board feet in the place.</summary>
    public BoardFeet Footage => BoardFeet.From(From.Sum(layers => layers.Footage.Count));
}

/// <summary>A charge laid out in space: which layers of which stack stand in which place.</summary>
/// <remarks>
/// Thick stock lies below, each stack together, and places are brought to heights as equal as whole layers allow: air takes the open way over a low pack (common practice).
/// Whole layers take a little more room than footage does, so a charge within a kiln's capacity may have some boards over.
/// </remarks>
/// <param name="Places">Lower row first, left to right.</param>
/// <param name="Over">What found no place, by stack.</param>
public sealed record ChargeLayout(IReadOnlyList<LaidPlace> Places, IReadOnlyList<WoodToLay> Over)
{
    /// <summary>Lays a charge.</summary>
    /// <param name="kiln">The room.</param>
    /// <param name="wood">What goes in; an empty list leaves every place open.</param>
    public static ChargeLayout Of(KilnPlaces kiln, IReadOnlyList<WoodToLay> wood)
    {
        ArgumentNullException.ThrowIfNull(kiln);
        ArgumentNullException.ThrowIfNull(wood);
        var layers = wood.OrderByDescending(one => one.Thickness.Quarters).SelectMany(one => Layers(kiln, one)).ToList();
        var even = Length.FromMetres(layers.Sum(layer => layer.Height.Metres) / kiln.Count);
        var level = Lay(kiln, layers, even);
        return level.Over.Count == 0 ? level : Lay(kiln, layers, kiln.Height);
    }

    // A place is left for the next once the next layer would bring it further over the wished height than it is under it.
    private static ChargeLayout Lay(KilnPlaces kiln, List<Layer> layers, Length wished)
    {
        var places = Enumerable.Range(0, kiln.Count).Select(_ => new List<Layer>()).ToList();
        var (place, height, next) = (0, 0.0, 0);
        for (; next < layers.Count; next++)
        {
            var rise = layers[next].Height.Metres;
            var full = height + rise > kiln.Height.Metres + 1e-9;
            var level = height + (0.5 * rise) > wished.Metres + 1e-9 && place < kiln.Count - 1;
            if (full || (level && height > 0.0))
            {
                if (++place == kiln.Count)
                    break;
                height = 0.0;
            }

            places[place].Add(layers[next]);
            height += rise;
        }

        return new([.. places.Select(one => Place(kiln, one))], [.. layers.Skip(next).GroupBy(layer => layer.Wood).Select(group => group.Key with { Footage = BoardFeet.From(group.Sum(layer => layer.Footage)) })]);
    }

    private static IEnumerable<Layer> Layers(KilnPlaces kiln, WoodToLay wood)
    {
        var whole = kiln.OfLayer(wood.Thickness).Count;
        for (var left = wood.Footage.Count; left > 1e-9; left -= whole)
        {
            yield return new(wood, Math.Min(left, whole), kiln.HeightOfLayer(wood.Thickness));
        }
    }

    private static LaidPlace Place(KilnPlaces kiln, List<Layer> layers)
    {
        var height = Length.FromMetres(layers.Sum(layer => layer.Height.Metres));
        return new(
            [.. layers.GroupBy(layer => layer.Wood.Name).Select(group => new LaidLayers(group.Key, group.Count(), BoardFeet.From(group.Sum(layer => layer.Footage)), Length.FromMetres(group.Sum(layer => layer.Height.Metres))))],
            height, Length.FromMetres(Math.Max(0.0, kiln.Height.Metres - height.Metres)));
    }

    private sealed record Layer(WoodToLay Wood, double Footage, Length Height);
}
