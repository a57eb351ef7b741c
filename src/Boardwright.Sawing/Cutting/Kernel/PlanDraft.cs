using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>A plan in the making: layers as they lie, then boards numbered in the order the cuts free them.</summary>
internal sealed class PlanDraft(CuttingSpace space, SawPattern pattern, double rotationDegrees)
{
    private readonly List<PlannedBoard> boards = [];
    private readonly List<PlanOpening> openings = [];

    /// <summary>A layer of one thickness and the boards edged from it.</summary>
    public sealed record Layer(double BottomMm, double TopMm, IReadOnlyList<PlannedBoard> Boards);

    /// <summary>The layers of a solved programme.</summary>
    public IReadOnlyList<Layer> Layers(
        LayerProgram program, IEnumerable<(int Thickness, int Index)> walk, double clipLow = double.NegativeInfinity, double clipHigh = double.PositiveInfinity, double heartRadiusMm = 0.0) =>
        [.. walk.Select(step =>
        {
            var bottom = program.Height(step.Index);
            program.BestWindow(step.Thickness, step.Index, clipLow, clipHigh, Math.Max(heartRadiusMm, space.RotRadiusMm), out var window);
            return new Layer(bottom, bottom + space.Values.GreenMm[step.Thickness], [.. Edged(program, step.Thickness, bottom, window)]);
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

    private static Layer Flip(Layer layer) => layer with { BottomMm = -layer.TopMm, TopMm = -layer.BottomMm };

    private int Number(PlannedBoard board)
    {
        boards.Add(board with { Number = boards.Count + 1 });
        return boards.Count;
    }

    private IEnumerable<PlannedBoard> Edged(LayerProgram program, int thickness, double bottom, FlitchWindow window)
    {
        if (Board(program, thickness, bottom, window, window.LeftLow, window.LeftHigh, (BoardGrain)window.LeftGrain) is { } left)
            yield return left;
        if (Board(program, thickness, bottom, window, window.RightLow, window.RightHigh, (BoardGrain)window.RightGrain) is { } right)
            yield return right;
    }

    private PlannedBoard? Board(LayerProgram program, int thickness, double bottom, FlitchWindow window, double from, double to, BoardGrain grain)
    {
        var values = space.Values;
        var widthSteps = to > from ? values.WidthSteps(to - from) : 0;
        if (widthSteps == 0 || values.Row(thickness, grain, window.Steps, widthSteps) is not { } row)
            return null;

        var (width, setting, footage) = (widthSteps * values.WidthStepMm, values.Thicknesses[thickness], values.Footage(thickness, window.Steps, widthSteps));
        return new(
            0, setting.Nominal, setting.Green, Length.FromMillimetres(width), Length.FromMillimetres(window.Steps * values.LengthStepMm), grain, row.Grade, BoardFeet.From(footage),
            footage * row.MoneyPerBoardFoot, new(program.TurnDegrees, ((from + to) - width) / 2.0, bottom, space.Stations.AtMm[window.From]));
    }
}
