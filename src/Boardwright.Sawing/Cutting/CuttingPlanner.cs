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
    /// <summary>The best plan of one pattern, or of all.</summary>
    /// <param name="shape">The log.</param>
    /// <param name="rules">What the mill does.</param>
    /// <param name="prices">What boards bring; one row or more of a thickness the mill has a setting for.</param>
    /// <param name="pattern">Pattern; null for the best of all, live first where equal.</param>
    /// <returns>The plan; refused for rules or prices that cannot be sawn; no answer where no board of the priced sizes fits.</returns>
    public static Outcome<CuttingPlan> Plan(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, SawPattern? pattern = null) =>
        Plan(shape, rules, prices, pattern, isPruned: true);

    /// <summary>The same plan, pruned or with everything worked out.</summary>
    internal static Outcome<CuttingPlan> Plan(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, SawPattern? pattern, bool isPruned) =>
        Ready(shape, rules, prices, isPruned).Then(space => Found(space, prices, Plans(space, pattern is { } one ? [one] : Enum.GetValues<SawPattern>(), onlyBest: true))).Then<CuttingPlan>(plans => plans[^1]);

    /// <summary>The best plan of each of some patterns that gives any board.</summary>
    /// <param name="shape">The log.</param>
    /// <param name="rules">What the mill does.</param>
    /// <param name="prices">What boards bring.</param>
    /// <param name="patterns">One or more.</param>
    public static Outcome<IReadOnlyList<CuttingPlan>> All(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, IReadOnlyList<SawPattern> patterns) =>
        Ready(shape, rules, prices).Then(space => Found(space, prices, Plans(space, patterns, onlyBest: false)));

    /// <summary>No plan of a log under rules and prices that can be sawn is worth more.</summary>
    internal static double Ceiling(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices) => ValueField.Total(new CuttingSpace(shape, rules, prices));

    private static Outcome<CuttingSpace> Ready(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, bool isPruned = true)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(prices);
        var wrong = rules.Wrong().Concat(Wrong(rules, prices)).ToList();
        return wrong.Count > 0 ? new Outcome<CuttingSpace>.Refused(wrong) : new CuttingSpace(shape, rules, prices, isPruned);
    }

    private static Outcome<IReadOnlyList<CuttingPlan>> Found(CuttingSpace space, IReadOnlyList<BoardPrice> prices, List<PlanDraft> drafts)
    {
        if (drafts.Count > 0)
        {
            var bound = ValueField.Total(space);
            return new Outcome<IReadOnlyList<CuttingPlan>>.Done([.. drafts.Select(draft => draft.Finish(bound))]);
        }

        return new Outcome<IReadOnlyList<CuttingPlan>>.NoAnswer(string.Create(
            CultureInfo.InvariantCulture,
            $"No board fits: the smallest priced is {prices.Min(price => price.WidthMin.Inches):0.##} in wide and {prices.Min(price => price.LengthMin.Feet):0.##} ft long{(prices.All(price => price.Wane.Fraction == 0.0) ? ", without wane" : "")}."));
    }

    /// <summary>The best draft of each pattern; of the best only, a pattern is dropped as soon as it cannot pass those before it.</summary>
    private static List<PlanDraft> Plans(CuttingSpace space, IReadOnlyList<SawPattern> patterns, bool onlyBest)
    {
        var (drafts, best) = (new List<PlanDraft>(), 0.0);
        foreach (var pattern in patterns)
        {
            var draft = pattern switch
            {
                SawPattern.Live => LiveSawing.Best(space, best),
                SawPattern.Cant => CantSawing.Best(space, best),
                SawPattern.Quarter => QuarterSawing.Best(space, best),
                _ => BouleSawing.Best(space),
            };
            if (draft is null || draft.ValueMoney <= best)
                continue;
            drafts.Add(draft);
            best = onlyBest ? draft.ValueMoney : 0.0;
        }

        return drafts;
    }

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
            if (price.WidthMax < price.WidthMin)
                yield return new($"widest {price.Grade}", string.Create(CultureInfo.InvariantCulture, $"{price.WidthMax?.Millimetres:0.#} mm"), "at least the narrowest");
            if (price.LengthMax < price.LengthMin)
                yield return new($"longest {price.Grade}", string.Create(CultureInfo.InvariantCulture, $"{price.LengthMax?.Metres:0.##} m"), "at least the shortest");
            if (price.Wane.Fraction is < 0.0 or > 0.9)
                yield return new($"wane of {price.Grade}", string.Create(CultureInfo.InvariantCulture, $"{price.Wane.Percent:0.#} %"), "0 to 90 % of the thickness");
        }
    }
}
