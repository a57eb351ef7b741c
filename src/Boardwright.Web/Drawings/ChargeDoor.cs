using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Web.Drawings;

/// <summary>A running charge drawn from its kiln's door: its stacks, and its samples where they may hang.</summary>
public static class ChargeDoor
{
    private const int LayersMost = 11;

    // The book does not keep where a sample hangs; the places only keep the tags apart.
    private static readonly (double Across, double Down)[] Places = [(.07, .05), (.47, .32), (.88, .13), (.16, .6), (.92, .68), (.56, .78), (.3, .2), (.7, .5)];

    public static KilnDoorDrawing Of(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        var kiln = state.Kilns.GetValueOrDefault(charge.Kiln)?.Installed;
        var stacks = charge.StacksInside.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().ToList();
        var layers = Math.Max(2, LayersMost / Math.Max(1, (stacks.Count + 1) / 2));
        return new(charge.Kiln, [.. stacks.Select(stack => new KilnLoad(stack.Tag, stack.Proven ? stack.Species.CommonName : "unknown", layers, stack.SawnThickness?.Inches ?? stack.Thickness.Inches))])
        {
            Vacuum = kiln?.Type == KilnType.RadioFrequencyVacuum,
            PlacesWide = stacks.Count > 1 ? 2 : 1,
            Samples = [.. charge.SoundSamples.Take(Places.Length).Select((sample, index) =>
                new SampleTag(sample.Name, $"{sample.Moisture.Percent:0.0}", Places[index].Across, Places[index].Down, sample == charge.Wettest))],
        };
    }
}
