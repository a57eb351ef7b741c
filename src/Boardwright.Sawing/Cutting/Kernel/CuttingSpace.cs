namespace Boardwright.Sawing;

/// <summary>One log under one set of rules and prices, ready to be cut: stations, value of sizes, grid.</summary>
internal sealed class CuttingSpace
{
    public CuttingSpace(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices)
    {
        (Shape, Rules) = (shape, rules);
        var stepMm = rules.LengthStep.Millimetres;
        var shortestSteps = (int)Math.Ceiling((prices.Min(price => price.LengthMin.Millimetres) / stepMm) - 1e-6);
        Stations = Stations.Of(shape, stepMm, Math.Max(1, shortestSteps));
        Values = new ValueTable(rules, prices, 2.0 * Stations.SemiX.Concat(Stations.SemiY).Max(), (int)Math.Floor((shape.Length.Millimetres / stepMm) + 1e-6));
        KerfMm = rules.Kerf.Millimetres;
        GridMm = rules.GridStep?.Millimetres ?? SawGrid.StepFor(Values.GreenMm.Select(green => green + KerfMm));
        PitchSteps = [.. Values.GreenMm.Select(green => SawGrid.Cover(green + KerfMm, GridMm))];
        KerfSteps = SawGrid.Cover(KerfMm, GridMm);
        RotRadiusMm = shape.RotDiameter.Millimetres / 2.0;
    }

    public LogShape Shape { get; }

    public SawingRules Rules { get; }

    public Stations Stations { get; }

    public ValueTable Values { get; }

    public double KerfMm { get; }

    public double GridMm { get; }

    /// <summary>Thickness and kerf in steps of the grid, by thickness.</summary>
    public int[] PitchSteps { get; }

    public int KerfSteps { get; }

    public double RotRadiusMm { get; }
}
