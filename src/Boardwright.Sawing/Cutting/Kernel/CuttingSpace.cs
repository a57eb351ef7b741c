namespace Boardwright.Sawing;

/// <summary>One log under one set of rules and prices, ready to be cut: stations, value of sizes, grid, and its lies as they are asked for.</summary>
internal sealed class CuttingSpace
{
    private readonly Dictionary<double, LogLie> lies = [];

    /// <param name="shape">The log.</param>
    /// <param name="rules">What the mill does.</param>
    /// <param name="prices">What boards bring.</param>
    /// <param name="isPruned">Leave out what ceilings say cannot matter; otherwise no ceiling bounds anything and everything is worked out.</param>
    public CuttingSpace(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, bool isPruned = true)
    {
        (Shape, Rules, IsPruned) = (shape, rules, isPruned);
        var stepMm = rules.LengthStep.Millimetres;
        var boards = prices.Where(price => price.Edge == BoardEdge.Square).ToList();
        var shortestSteps = boards.Count == 0 ? 1 : (int)Math.Ceiling((boards.Min(price => price.LengthMin.Millimetres) / stepMm) - 1e-6);
        Stations = Stations.Of(shape, stepMm, Math.Max(1, shortestSteps), rules.CutsAcross ? rules.TrimKerf.Millimetres : null, boards.Count < prices.Count);
        Values = new ValueTable(rules, prices, 2.0 * Stations.SemiX.Concat(Stations.SemiY).Max(), (int)Math.Floor((shape.Length.Millimetres / stepMm) + 1e-6));
        KerfMm = rules.Kerf.Millimetres;
        GridMm = rules.GridStep?.Millimetres ?? SawGrid.StepFor(Values.GreenMm.Select(green => green + KerfMm));
        PitchSteps = [.. Values.GreenMm.Select(green => SawGrid.Cover(green + KerfMm, GridMm))];
        KerfSteps = SawGrid.Cover(KerfMm, GridMm);
        RotRadiusMm = shape.RotDiameter.Millimetres / 2.0;
        Turns = [.. TurnsOf(shape, rules)];
    }

    public LogShape Shape { get; }

    public SawingRules Rules { get; }

    public bool IsPruned { get; }

    public Stations Stations { get; }

    public ValueTable Values { get; }

    public double KerfMm { get; }

    public double GridMm { get; }

    /// <summary>Thickness and kerf in steps of the grid, by thickness.</summary>
    public int[] PitchSteps { get; }

    public int KerfSteps { get; }

    public double RotRadiusMm { get; }

    /// <summary>Turns to try, degrees from 0 to 180.</summary>
    public IReadOnlyList<double> Turns { get; }

    /// <summary>The log in a turn; worked out once.</summary>
    public LogLie Lie(double turnDegrees)
    {
        if (!lies.TryGetValue(turnDegrees, out var lie))
            lies[turnDegrees] = lie = new LogLie(this, turnDegrees);
        return lie;
    }

    /// <summary>Does work for every turn, on all cores: a turn and the turn a quarter on, which use each other's scratch, in one task. What it gives does not depend on the order.</summary>
    /// <returns>In the order of the turns.</returns>
    public T[] ForEachTurn<T>(Func<double, T> work)
    {
        // Lies are made before: the table of them is not for two hands.
        var tasks = Turns.Select((turn, place) => (Place: place, Key: Math.Min(Lie(turn).TurnDegrees, QuarterOn(turn).Lie.TurnDegrees))).GroupBy(one => one.Key, one => one.Place).ToList();
        var found = new T[Turns.Count];
        Parallel.ForEach(tasks, task =>
        {
            foreach (var place in task)
                found[place] = work(Turns[place]);
        });
        return found;
    }

    /// <summary>The log a quarter turn on. In a log that is its own mirror image a turn of 90 - x has the heights and values of one of 90 + x or of x - 90, left and right changed.</summary>
    public QuarterTurn QuarterOn(double turnDegrees) =>
        Shape.IsMirrored && turnDegrees <= 90.0 && Rules.Turn is null
            ? Shape.Sections.All(one => one.OffsetXMm == 0.0)
                ? new(Lie(90.0 - turnDegrees), false, (turnDegrees + 270.0) % 360.0, true)
                : new(Lie(90.0 - turnDegrees), true, turnDegrees + 90.0, false)
            : turnDegrees < 90.0 ? new(Lie(turnDegrees + 90.0), false, turnDegrees + 90.0, false) : new(Lie(turnDegrees - 90.0), true, turnDegrees - 90.0, true);

    // Half a turn gives the same boards, so half of the turns are enough. A round, straight log has one; in one that is its own mirror image a quarter of them will do.
    private static IEnumerable<double> TurnsOf(LogShape shape, SawingRules rules) =>
        rules.Turn is { } only ? [((only.Degrees % 180.0) + 180.0) % 180.0]
        : shape.IsRoundAndStraight ? [0.0]
        : Enumerable.Range(0, rules.TurnCount).Select(i => i * 360.0 / rules.TurnCount % 180.0).Distinct().Where(turn => !shape.IsMirrored || turn <= 90.0);
}
