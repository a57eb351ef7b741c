using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using LogState = Boardwright.Yard.Book.State.Log;

namespace Boardwright.Yard.UseCases;

/// <summary>Which waiting log is sawn for which order, wood by wood.</summary>
/// <param name="Woods">Woods that an open line wants and a waiting log has.</param>
/// <param name="Bare">Lines whose wood no waiting log has.</param>
public sealed record LogDeck(IReadOnlyList<DeckWood> Woods, IReadOnlyList<WantedLine> Bare)
{
    // A deck is planned many times over: few turns are looked at, and the log's own page looks at all.
    private const int Turns = 4;
    private static readonly ConditionalWeakTable<YardState, ConcurrentDictionary<OrdersWanted, LogDeck>> Done = [];

    /// <summary>The deck; worked out once for a state of the yard.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="wanted">Which lines count.</param>
    public static LogDeck Of(YardState state, OrdersWanted wanted)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Done.GetOrCreateValue(state).GetOrAdd(wanted, _ => WorkOut(state, wanted));
    }

    private static LogDeck WorkOut(YardState state, OrdersWanted wanted)
    {
        var (woods, bare) = (new List<DeckWood>(), new List<WantedLine>());
        foreach (var lines in LogOrders.All(state, wanted).GroupBy(line => line.Asked.Species!))
        {
            List<WantedLine> all = [.. lines];
            var ready = state.Logs.Values.Where(log => !log.IsSawn && LogOrders.Of(state, log, wanted).Any(line => line.Asked.Species == lines.Key))
                .Select(log => (Log: log, Outcome: LogCutting.Ready(state, log, null, all))).Where(one => one.Outcome is Outcome<DeckLog>.Done)
                .Select(one => (one.Log, Ready: ((Outcome<DeckLog>.Done)one.Outcome).Value)).Select(one => (one.Log, Ready: one.Ready with { Rules = one.Ready.Rules with { TurnCount = Turns } })).ToList();
            if (ready.Count > 0 && DeckPlanner.Plan([.. ready.Select(one => one.Ready)], [.. all.Select(line => line.Open)], SawPattern.Live) is Outcome<DeckPlan>.Done(var plan))
                woods.Add(new(lines.Key, [.. ready.Select(one => one.Log)], all, plan));
            else
                bare.AddRange(all);
        }

        return new(woods, bare);
    }
}

/// <summary>The deck of one wood.</summary>
/// <param name="Logs">In the order of the plan's.</param>
/// <param name="Lines">In the order of the plan's fills.</param>
public sealed record DeckWood(string Species, IReadOnlyList<LogState> Logs, IReadOnlyList<WantedLine> Lines, DeckPlan Plan);
