using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Finds how to open a log for the most value.</summary>
/// <remarks>
/// <para>Exact dynamic programmes over blade positions for each pattern and turn: see the method page for the recurrences, the grid and what is held coarser.</para>
/// <para>Validity: logs of 3 to 60 in and 1 to 40 ft; boards are full rectangles without wane over their whole length; knots are not seen.</para>
/// </remarks>
/// <source id="faaland-briggs-1984" locator="dynamic programme over the log"/>
/// <method page="docs/methods/sawing-plan.md"/>
public static class CuttingPlanner
{
    /// <summary>Turns tried for live sawing of a log that is not round and straight: every 15 degrees; a half turn gives the same boards.</summary>
    private const int LiveTurns = 12;

    private static readonly double[] CoarseTurns = [0.0, 45.0, 90.0, 135.0];

    /// <summary>The best plan of one pattern, or of all.</summary>
    /// <param name="shape">The log.</param>
    /// <param name="rules">What the mill does.</param>
    /// <param name="prices">What boards bring; one row or more of a thickness the mill has a setting for.</param>
    /// <param name="pattern">Pattern; null for the best of all, live first where equal.</param>
    /// <returns>The plan; refused for rules or prices that cannot be sawn; no answer where no board of the priced sizes fits.</returns>
    public static Outcome<CuttingPlan> Plan(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, SawPattern? pattern = null) =>
        All(shape, rules, prices, pattern is { } one ? [one] : [SawPattern.Live, SawPattern.Cant, SawPattern.Quarter]).Then<CuttingPlan>(plans => plans.MaxBy(plan => plan.ValueMoney)!);

    /// <summary>The best plan of each of some patterns that gives any board.</summary>
    /// <param name="shape">The log.</param>
    /// <param name="rules">What the mill does.</param>
    /// <param name="prices">What boards bring.</param>
    /// <param name="patterns">One or more.</param>
    public static Outcome<IReadOnlyList<CuttingPlan>> All(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, IReadOnlyList<SawPattern> patterns)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(prices);
        var wrong = rules.Wrong().Concat(Wrong(rules, prices)).ToList();
        if (wrong.Count > 0)
            return new Outcome<IReadOnlyList<CuttingPlan>>.Refused(wrong);

        var space = new CuttingSpace(shape, rules, prices);
        var plans = Plans(space, patterns);
        return plans.Count > 0 ? plans : new Outcome<IReadOnlyList<CuttingPlan>>.NoAnswer(string.Create(
            CultureInfo.InvariantCulture,
            $"No board fits: the smallest priced is {space.Values.NarrowestMm / 25.4:0.##} in wide and {prices.Min(price => price.LengthMin.Feet):0.##} ft long, without wane."));
    }

    private static List<CuttingPlan> Plans(CuttingSpace space, IReadOnlyList<SawPattern> patterns)
    {
        var live = Turns(space, LiveTurns).Select(turn => (Value: LiveSawing.Best(space, turn, out var program), Program: program)).MaxBy(one => one.Value);
        var coarse = space.Shape.IsRoundAndStraight ? [0.0] : CoarseTurns.Append(live.Program.TurnDegrees).Distinct().ToArray();
        var drafts = new List<PlanDraft>();
        if (patterns.Contains(SawPattern.Live) && live.Value > 0.0)
            drafts.Add(LiveSawing.Draft(space, live.Program));
        if (patterns.Contains(SawPattern.Cant) && coarse.Select(turn => new CantSawing(space, Solved(space, turn, live.Program))).MaxBy(one => one.Best) is { Best: > 0.0 } cant)
            drafts.Add(cant.Draft());
        if (patterns.Contains(SawPattern.Quarter) && coarse.Select(turn => new QuarterSawing(space, turn)).MaxBy(one => one.Best) is { Best: > 0.0 } quarter)
            drafts.Add(quarter.Draft());
        var bound = new ValueField(space, 0.0).Total;
        return [.. drafts.Select(draft => draft.Finish(bound))];
    }

    private static LayerProgram Solved(CuttingSpace space, double turn, LayerProgram live)
    {
        if (live.TurnDegrees == turn)
            return live;

        LiveSawing.Best(space, turn, out var program);
        return program;
    }

    private static IEnumerable<double> Turns(CuttingSpace space, int count) =>
        space.Shape.IsRoundAndStraight ? [0.0] : Enumerable.Range(0, count).Select(i => i * 180.0 / count);

    private static IEnumerable<Refusal> Wrong(SawingRules rules, IReadOnlyList<BoardPrice> prices)
    {
        if (!prices.Any(price => rules.Settings.Any(setting => setting.Nominal == price.Thickness)))
            yield return new("prices", prices.Count == 0 ? "none" : string.Join(", ", prices.Select(price => price.Thickness).Distinct()), $"a thickness the mill saws: {string.Join(", ", rules.Settings.Select(one => one.Nominal))}");
        foreach (var price in prices)
        {
            if (!(price.MoneyPerBoardFoot is >= 0.0 and <= 1e6))
                yield return new($"price of {price.Grade}", price.MoneyPerBoardFoot.ToString(CultureInfo.InvariantCulture), "0 to 1000000 per board foot");
            if (price.WidthMin.Millimetres is < 10.0 or > 1600.0)
                yield return new($"narrowest {price.Grade}", string.Create(CultureInfo.InvariantCulture, $"{price.WidthMin.Millimetres:0.#} mm"), "10 to 1600 mm");
            if (price.LengthMin.Metres is < 0.3 or > 12.2)
                yield return new($"shortest {price.Grade}", string.Create(CultureInfo.InvariantCulture, $"{price.LengthMin.Metres:0.##} m"), "0.3 to 12.2 m");
        }
    }
}
