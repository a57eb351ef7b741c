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
/// Thick stock lies below, each stack together, and places are brought to heights as equal as whole layers in that order allow: air takes the open way over a low pack (common practice).
/// Whole layers take a little more room than footage does, so a charge within a kiln's capacity may have some boards over.
/// </remarks>
/// <param name="Places">Lower row first, left to right.</param>
/// <param name="Over">What found no place, by stack.</param>
public sealed record ChargeLayout(IReadOnlyList<LaidPlace> Places, IReadOnlyList<WoodToLay> Over)
{
    private const double Slack = 1e-9;

    /// <summary>Lays a charge.</summary>
    /// <param name="kiln">The room.</param>
    /// <param name="wood">What goes in; an empty list leaves every place open.</param>
    public static ChargeLayout Of(KilnPlaces kiln, IReadOnlyList<WoodToLay> wood)
    {
        ArgumentNullException.ThrowIfNull(kiln);
        ArgumentNullException.ThrowIfNull(wood);
        var layers = wood.OrderByDescending(one => one.Thickness.Quarters).SelectMany(one => Layers(kiln, one)).ToList();
        return Level(kiln, layers) ?? Filled(kiln, layers);
    }

    // Exact: of all ways to part the row of layers over the places, the one whose heights have the least sum of squares. Null where none keeps the height.
    private static ChargeLayout? Level(KilnPlaces kiln, List<Layer> layers)
    {
        var count = layers.Count;
        var below = new double[count + 1];
        for (var i = 0; i < count; i++)
            below[i + 1] = below[i] + layers[i].Height.Metres;

        // least[p][i]: least sum of squares with the first i layers in p places; from: where the last of them begins.
        var least = Enumerable.Range(0, kiln.Count + 1).Select(_ => Enumerable.Repeat(double.PositiveInfinity, count + 1).ToArray()).ToArray();
        var from = Enumerable.Range(0, kiln.Count + 1).Select(_ => new int[count + 1]).ToArray();
        least[0][0] = 0.0;
        for (var place = 1; place <= kiln.Count; place++)
        {
            for (var i = 0; i <= count; i++)
            {
                for (var j = i; j >= 0 && below[i] - below[j] <= kiln.Height.Metres + Slack; j--)
                {
                    var squares = least[place - 1][j] + ((below[i] - below[j]) * (below[i] - below[j]));
                    if (squares < least[place][i])
                        (least[place][i], from[place][i]) = (squares, j);
                }
            }
        }

        if (double.IsPositiveInfinity(least[kiln.Count][count]))
            return null;
        var places = new List<LaidPlace>();
        for (var (place, i) = (kiln.Count, count); place > 0; i = from[place--][i])
            places.Insert(0, Place(kiln, layers[from[place][i]..i]));
        return new(places, []);
    }

    // Too much for the room: each place to its height, the rest is over.
    private static ChargeLayout Filled(KilnPlaces kiln, List<Layer> layers)
    {
        var places = new List<LaidPlace>();
        var next = 0;
        while (places.Count < kiln.Count)
        {
            var (first, height) = (next, 0.0);
            for (; next < layers.Count && height + layers[next].Height.Metres <= kiln.Height.Metres + Slack; next++)
                height += layers[next].Height.Metres;
            places.Add(Place(kiln, layers[first..next]));
        }

        return new(places, [.. layers.Skip(next).GroupBy(layer => layer.Wood).Select(group => group.Key with { Footage = BoardFeet.From(group.Sum(layer => layer.Footage)) })]);
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
