using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>A plan in the making: layers as they lie, then boards numbered in the order the cuts free them.</summary>
internal sealed class PlanDraft(CuttingSpace space, SawPattern pattern, double rotationDegrees, double valueMoney)
{
    private readonly List<PlannedBoard> boards = [];
    private readonly List<PlanOpening> openings = [];

    /// <summary>A layer of one thickness and the boards edged from it.</summary>
    public sealed record Layer(double BottomMm, double TopMm, IReadOnlyList<PlannedBoard> Boards);

    /// <summary>What the search found it worth, in whole quanta.</summary>
    public double ValueMoney => valueMoney;

    /// <summary>The layers of a solved programme, from the bottom up.</summary>
    public IReadOnlyList<Layer> Layers(LogLie lie, IEnumerable<(int Thickness, int Index)> walk, FlitchClip clip) => [.. walk.Select(step =>
    {
        var bottom = lie.Height(step.Index);
        var strips = lie.Trim.Strips(step.Thickness, bottom, clip);
        return new Layer(bottom, bottom + space.Values.GreenMm[step.Thickness], [.. strips.Count > 0 ? strips.SelectMany(strip => Edged(lie, step.Thickness, bottom, strip)) : Slab(lie, step.Thickness, bottom, space.Values.Slabs)]);
    })];

    /// <summary>The layers of a boule.</summary>
    public IReadOnlyList<Layer> Boule(LogLie lie, IEnumerable<(int Thickness, int Index)> walk) => [.. walk.Select(step =>
    {
        var bottom = lie.Height(step.Index);
        return new Layer(bottom, bottom + space.Values.GreenMm[step.Thickness], [.. Slab(lie, step.Thickness, bottom, space.Values.Boules)]);
    })];

    /// <summary>Saws a part level from the top to about its middle, turns it over and finishes: the last board never lies thin on the bed.</summary>
    /// <param name="part">What lies on the bed.</param>
    /// <param name="turnDegrees">Turn in which the layers lie level.</param>
    /// <param name="bedMm">Lowest point of the part in that turn.</param>
    /// <param name="layers">From the bottom up.</param>
    public void SawThrough(string part, double turnDegrees, double bedMm, IReadOnlyList<Layer> layers)
    {
        if (layers.Count == 0)
            return;

        var cuts = CutsOf(layers);
        var middle = cuts.MinBy(cut => Math.Abs(cut - ((cuts[0] + cuts[^1]) / 2.0)));
        Open(part, turnDegrees, bedMm, [.. cuts.Where(cut => cut >= middle)], [.. layers.Where(layer => layer.BottomMm >= middle)]);
        var below = cuts.Where(cut => cut < middle).Select(cut => -cut - space.KerfMm).OrderDescending().ToList();
        if (below.Count > 0)
            Open($"{part}, turned over", turnDegrees + 180.0, -middle, below, [.. layers.Where(layer => layer.BottomMm < middle).Select(Flip)]);
    }

    /// <summary>One lie on the bed with its cuts (lower edges of the kerfs) and the layers they free.</summary>
    public void Open(string part, double turnDegrees, double bedMm, IReadOnlyList<double> cutsMm, IReadOnlyList<Layer> layers)
    {
        var waiting = layers.OrderByDescending(layer => layer.BottomMm).ToList();
        var cuts = new List<PlanCut>();
        foreach (var cut in cutsMm.OrderDescending())
        {
            var last = cut == cutsMm.Min();
            var free = waiting.Where(layer => last || layer.BottomMm >= cut).ToList();
            waiting.RemoveAll(free.Contains);
            cuts.Add(new(Length.FromMillimetres(Math.Max(0.0, cut - bedMm)), [.. free.SelectMany(layer => layer.Boards).Select(Number)]));
        }

        openings.Add(new(part, Angle.FromDegrees(((turnDegrees % 360.0) + 360.0) % 360.0), bedMm, cuts));
    }

    /// <summary>The cuts of layers: the top of each, and a kerf under each that no neighbour shares.</summary>
    public IReadOnlyList<double> CutsOf(IReadOnlyList<Layer> layers)
    {
        var cuts = new List<double>();
        foreach (var layer in layers)
        {
            var under = layer.BottomMm - space.KerfMm;
            if (cuts.Count == 0 || under - cuts[^1] >= space.KerfMm - 1e-6)
                cuts.Add(under);
            cuts.Add(layer.TopMm);
        }

        return cuts;
    }

    public CuttingPlan Finish(double upperBound) => new()
    {
        Pattern = pattern,
        Rotation = Angle.FromDegrees(rotationDegrees),
        Boards = boards,
        Openings = openings,
        LogVolume = space.Shape.Volume,
        UpperBoundMoney = upperBound,
    };

    /// <summary>A layer with its part turned over.</summary>
    public static Layer Flip(Layer layer) => layer with { BottomMm = -layer.TopMm, TopMm = -layer.BottomMm };

    private int Number(PlannedBoard board)
    {
        boards.Add(board with { Number = boards.Count + 1 });
        return boards.Count;
    }

    private IEnumerable<PlannedBoard> Edged(LogLie lie, int thickness, double bottom, TrimmedStrip strip)
    {
        var values = space.Values;
        var (setting, grain) = (values.Thicknesses[thickness], (BoardGrain)strip.Grain);
        var widths = values.Rips(strip.Wane, thickness, grain, strip.Steps, values.Units(strip.High - strip.Low)).ToList();

        // Boards ripped side by side lie a kerf apart, in the middle of the strip.
        var left = (strip.Low + strip.High - (widths.Sum() * values.WidthStepMm) - (Math.Max(0, widths.Count - 1) * space.KerfMm)) / 2.0;
        foreach (var steps in widths)
        {
            var (width, length, row) = (steps * values.WidthStepMm, strip.Steps * values.LengthStepMm, values.Row(strip.Wane, thickness, grain, strip.Steps, steps)!);
            var footage = values.Footage(thickness, width, length);
            yield return new(
                0, setting.Nominal, setting.Green, Length.FromMillimetres(width), Length.FromMillimetres(length), grain, row.Grade, BoardFeet.From(footage),
                footage * row.MoneyPerBoardFoot, new(lie.TurnDegrees, left, bottom, space.Stations.AtMm[strip.From]))
            { Wane = Share.FromFraction(values.WaneShares[strip.Wane]), Order = row.Order };
            left += width + space.KerfMm;
        }
    }

    private IEnumerable<PlannedBoard> Slab(LogLie lie, int thickness, double bottom, BoardPrice[][] rows)
    {
        if (lie.Trim.Slab(rows[thickness], thickness, bottom, out var row, out var meanMm) <= 0.0 || row is null)
            yield break;

        var (setting, lengthMm) = (space.Values.Thicknesses[thickness], space.Stations.AtMm[^1]);
        var middle = space.Stations.SlabAt[SlabMeasure.Places / 2];
        lie.Log.Chord(middle, bottom + (setting.Green.Millimetres / 2.0), out var low, out var high);
        var footage = space.Values.Footage(thickness, meanMm, lengthMm);
        yield return new(
            0, setting.Nominal, setting.Green, Length.FromMillimetres(meanMm), Length.FromMillimetres(lengthMm), BoardGrain.Flat, row.Grade, BoardFeet.From(footage),
            footage * row.MoneyPerBoardFoot, new(lie.TurnDegrees, (low + high - meanMm) / 2.0, bottom, 0.0))
        { Edge = row.Edge, Order = row.Order };
    }
}
