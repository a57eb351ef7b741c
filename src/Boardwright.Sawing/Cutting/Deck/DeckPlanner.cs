using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Finds which log is sawn for which order line.</summary>
/// <remarks>
/// <para>A board that fills an open line is worth the line's price until the line is full. The lines alone tie the logs together: with a charge c on each board foot of a line the logs part, each is planned by
/// itself at line price less charge, and D(c) = sum over lines of c x open + sum over logs of best value bounds every choice from above (weak duality). Charges are moved against what
/// was asked over what is open. Of all plans met on the way one is taken for each log, then changed log by log while that gains. Value and bound meet where no line binds.</para>
/// <para>Cost: rounds x logs x one plan.</para>
/// </remarks>
/// <method page="docs/methods/sawing-plan.md"/>
public static class DeckPlanner
{
    private const int Rounds = 16;
    private const double Near = 1e-6;
    private const double CloseEnough = 5e-4;

    /// <summary>A plan for every log.</summary>
    /// <param name="logs">The deck.</param>
    /// <param name="lines">Open order lines, each of another name.</param>
    /// <param name="pattern">Pattern; null for the best of all.</param>
    /// <returns>The plans; refused for rules or prices that cannot be sawn; no answer where no log gives a board.</returns>
    public static Outcome<DeckPlan> Plan(IReadOnlyList<DeckLog> logs, IReadOnlyList<OpenLine> lines, SawPattern? pattern = null)
    {
        ArgumentNullException.ThrowIfNull(logs);
        ArgumentNullException.ThrowIfNull(lines);
        if (logs.Count == 0)
            return new Refusal("logs", "none", "one log or more");
        if (lines.FirstOrDefault(line => line.Name.Length == 0 || lines.Count(other => other.Name == line.Name) > 1) is { } twice)
            return new Refusal("order", twice.Name, "each line by a name of its own");
        if (lines.FirstOrDefault(line => !(line.Open.Count >= 0.0)) is { } wrong)
            return new Refusal($"open footage of {wrong.Name}", wrong.Open.Count.ToString(CultureInfo.InvariantCulture), "0 or more");
        if (logs.SelectMany(log => log.Prices).FirstOrDefault(price => price.Order is { } order && lines.All(line => line.Name != order)) is { } unknown)
            return new Refusal("order", unknown.Order!, lines.Count == 0 ? "no row of an order, as no line is open" : string.Join(", ", lines.Select(line => line.Name)));

        var search = new Search(logs, lines, pattern);
        return search.Run();
    }

    private sealed class Search(IReadOnlyList<DeckLog> logs, IReadOnlyList<OpenLine> lines, SawPattern? pattern)
    {
        private readonly LineFilling filling = new(logs, lines);
        private readonly List<CuttingPlan?>[] met = [.. logs.Select(_ => new List<CuttingPlan?>())];
        private readonly double[] most = [.. lines.Select(line => logs.SelectMany(log => log.Prices).Where(price => price.Order == line.Name).Select(price => price.MoneyPerBoardFoot).DefaultIfEmpty(0.0).Max())];
        private readonly double[] charges = new double[lines.Count];
        private CuttingPlan?[] best = new CuttingPlan?[logs.Count];
        private double value = double.NegativeInfinity;
        private double bound = double.PositiveInfinity;

        public Outcome<DeckPlan> Run()
        {
            var pace = 1.0;
            for (var round = 0; round == 0 || (round < Rounds && bound - value > CloseEnough * bound); round++)
            {
                var (plans, wrong) = Planned();
                if (wrong.Count > 0)
                    return new Outcome<DeckPlan>.Refused(wrong);

                var asked = filling.Asked(plans);
                var dual = plans.Sum(plan => plan?.ValueMoney ?? 0.0) + lines.Select((line, i) => charges[i] * line.Open.Count).Sum();
                pace = dual < bound ? pace : pace / 2.0;
                bound = Math.Min(bound, dual);
                Keep(plans);
                Move(asked, pace);
            }

            Improve();
            if (best.All(plan => plan is null))
                return new Outcome<DeckPlan>.NoAnswer("No log of the deck gives a board of the priced sizes.");
            var (total, fills) = filling.Of(best);
            return new DeckPlan(Ceiled(filling.Settled(best)), fills, total, Math.Max(bound, total));
        }

        private (CuttingPlan?[] Plans, IReadOnlyList<Refusal> Wrong) Planned()
        {
            var charged = lines.Select((line, i) => (line.Name, Charge: charges[i])).ToDictionary(one => one.Name, one => one.Charge, StringComparer.Ordinal);
            var plans = new CuttingPlan?[logs.Count];
            var refusals = new IReadOnlyList<Refusal>[logs.Count];
            Parallel.For(0, logs.Count, log =>
            {
                BoardPrice[] rows = [.. logs[log].Prices.Select(row => row.Order is { } order ? row with { MoneyPerBoardFoot = Math.Max(0.0, row.MoneyPerBoardFoot - charged[order]) } : row)];
                var outcome = CuttingPlanner.Plan(logs[log].Shape, logs[log].Rules, rows, pattern);
                plans[log] = outcome is Outcome<CuttingPlan>.Done(var plan) ? plan : null;
                refusals[log] = outcome is Outcome<CuttingPlan>.Refused(var reasons) ? reasons : [];
            });
            for (var log = 0; log < logs.Count; log++)
                met[log].Add(plans[log]);
            if (refusals.FirstOrDefault(reasons => reasons.Count > 0) is { } wrong)
                return (plans, wrong);

            return (plans, []);
        }

        private void Keep(CuttingPlan?[] plans)
        {
            if (filling.Of(plans).Value is var worth && worth > value)
                (value, best) = (worth, plans);
        }

        // A step towards closing the gap, along what was asked over what is open; a line that is not asked for up to its open footage pays no charge in the end.
        private void Move(double[] asked, double pace)
        {
            var over = lines.Select((line, i) => asked[i] > line.Open.Count || charges[i] > 0.0 ? asked[i] - line.Open.Count : 0.0).ToArray();
            var length = over.Sum(one => one * one);
            for (var i = 0; i < over.Length && length > 0.0; i++)
                charges[i] = Math.Clamp(charges[i] + (pace * (bound - value) * over[i] / length), 0.0, most[i]);
        }

        // A plan was met under charges; its ceiling is that of the full prices.
        private CuttingPlan?[] Ceiled(CuttingPlan?[] plans) =>
            [.. plans.Select((plan, log) => plan is null ? null : plan with { UpperBoundMoney = CuttingPlanner.Ceiling(logs[log].Shape, logs[log].Rules, logs[log].Prices) })];

        private void Improve()
        {
            for (var changed = true; changed;)
            {
                changed = false;
                for (var log = 0; log < best.Length; log++)
                {
                    foreach (var other in met[log])
                    {
                        CuttingPlan?[] trial = [.. best];
                        trial[log] = other;
                        if (filling.Of(trial).Value is var worth && worth > value + (Near * Math.Abs(value)))
                            (value, best, changed) = (worth, trial, true);
                    }
                }
            }
        }
    }
}
