using System.Collections.Immutable;

namespace Boardwright.Yard.Book.Lineage;

/// <summary>The way of all wood through the yard, from the logs to what left: steps, and what went from one to the next.</summary>
/// <remarks>
/// Shares are by footage. Boards of a stack are not told apart by log, so a pack holds of each log what the stack holds of it: a proportional
/// share, exact only for a stack of one log. Wood never goes backwards, so the steps have no ring.
/// </remarks>
public sealed class WoodWay
{
    private readonly ILookup<string, WoodFlow> into;
    private readonly ILookup<string, WoodFlow> outOf;

    internal WoodWay(ImmutableDictionary<string, WoodStep> steps, ImmutableList<WoodFlow> flows)
    {
        (Steps, Flows) = (steps, flows);
        into = flows.ToLookup(flow => flow.To, StringComparer.Ordinal);
        outOf = flows.ToLookup(flow => flow.From, StringComparer.Ordinal);
    }

    /// <summary>Every step, by its key.</summary>
    public ImmutableDictionary<string, WoodStep> Steps { get; }

    /// <summary>Every flow.</summary>
    public ImmutableList<WoodFlow> Flows { get; }

    /// <summary>The way of a yard's wood.</summary>
    public static WoodWay Of(YardState state) => new WoodWayReader(state).Read();

    /// <summary>What came into a step.</summary>
    public IEnumerable<WoodFlow> Into(string key) => into[key];

    /// <summary>What went out of a step.</summary>
    public IEnumerable<WoodFlow> OutOf(string key) => outOf[key];

    /// <summary>Footage lost in becoming this step: shrinkage and falldown of a drying, what the planer rejects. None where wood only moves.</summary>
    public double LostInto(string key) => Into(key).Any() ? Into(key).Sum(flow => flow.Bf) - Steps[key].Bf : 0.0;

    /// <summary>The steps of a tag, first form first: of a log, stack, charge, pack, pour or shipment.</summary>
    public IReadOnlyList<WoodStep> Of(string tag) =>
        [.. Steps.Values.Where(step => step.Tag == tag || (step.Charge == tag && step.Form is WoodForm.InKiln or WoodForm.FromKiln)).OrderBy(step => step.At).ThenBy(step => step.Form)];

    /// <summary>All that went into these steps, by key, with the part of each that is in them: 0 to 1.</summary>
    public IReadOnlyDictionary<string, double> Back(IEnumerable<string> keys) => Spread(keys, Into, flow => flow.From, BackPart);

    /// <summary>All that these steps became, by key, with the part of each that is from them: 0 to 1.</summary>
    public IReadOnlyDictionary<string, double> Forward(IEnumerable<string> keys) => Spread(keys, OutOf, flow => flow.To, ForwardPart);

    private static Dictionary<string, double> Spread(
        IEnumerable<string> keys, Func<string, IEnumerable<WoodFlow>> next, Func<WoodFlow, string> end, Func<string, Dictionary<string, double>, IReadOnlySet<string>, double> part)
    {
        var start = keys.ToHashSet(StringComparer.Ordinal);
        var reached = new HashSet<string>(start, StringComparer.Ordinal);
        var open = new Queue<string>(start);
        while (open.TryDequeue(out var key))
        {
            foreach (var other in next(key).Select(end).Where(reached.Add))
                open.Enqueue(other);
        }

        var parts = start.ToDictionary(key => key, _ => 1.0, StringComparer.Ordinal);
        foreach (var key in reached)
            parts[key] = part(key, parts, reached);
        return parts;
    }

    // What the wanted steps need of this one: the part each next step needs, times the share that went there.
    private double BackPart(string key, Dictionary<string, double> parts, IReadOnlySet<string> reached)
    {
        if (parts.TryGetValue(key, out var known))
            return known;
        return parts[key] = Math.Min(OutOf(key).Where(flow => reached.Contains(flow.To)).Sum(flow => flow.Share * BackPart(flow.To, parts, reached)), 1.0);
    }

    // What of this step is from the wanted ones: the part of each flow into it.
    private double ForwardPart(string key, Dictionary<string, double> parts, IReadOnlySet<string> reached)
    {
        if (parts.TryGetValue(key, out var known))
            return known;
        var all = Into(key).Sum(flow => flow.Bf);
        var theirs = Into(key).Where(flow => reached.Contains(flow.From)).Sum(flow => flow.Bf * ForwardPart(flow.From, parts, reached));
        return parts[key] = all > 0.0 ? theirs / all : 0.0;
    }
}
