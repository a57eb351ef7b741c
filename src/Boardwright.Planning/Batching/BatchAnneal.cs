using Boardwright.Numerics;

namespace Boardwright.Planning.Batching;

/// <summary>Improves a schedule by simulated annealing over job, batch and block moves, with reheating.</summary>
/// <source id="kirkpatrick-1983" locator="simulated annealing"/>
/// <method page="docs/methods/batching.md"/>
public static class BatchAnneal
{
    private const int MovesEachLook = 512;

    /// <summary>The best schedule met.</summary>
    /// <param name="instance">The instance.</param>
    /// <param name="start">A sound schedule to begin with.</param>
    /// <param name="seed">The same seed and the same spending give the same schedule.</param>
    /// <param name="spent">Asked after every 512 moves: the share of the effort spent, ends at 1.</param>
    /// <param name="better">Told of each better schedule, with its cost undivided.</param>
    public static IReadOnlyList<Batch> Improve(BatchInstance instance, IReadOnlyList<Batch> start, ulong seed, Func<double> spent, Action<IReadOnlyList<Batch>, long>? better = null)
    {
        ArgumentNullException.ThrowIfNull(instance);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(spent);
        var search = new Search(instance, start, seed, better);
        for (var share = spent(); share < 1.0; share = spent())
        {
            search.Run(MovesEachLook, share);
        }

        search.Note();
        return search.Best;
    }

    private sealed class Search
    {
        private readonly BatchState state;
        private readonly BatchMoves moves;
        private readonly RandomSequence chance;
        private readonly Action<IReadOnlyList<Batch>, long>? better;
        private readonly double hot;
        private readonly double cold;
        private long least;
        private bool noted = true;

        public Search(BatchInstance instance, IReadOnlyList<Batch> start, ulong seed, Action<IReadOnlyList<Batch>, long>? better)
        {
            var tables = new BatchTables(instance);
            state = new(tables, start);
            chance = new(seed);
            moves = new(tables, state, chance);
            this.better = better;
            (Best, least) = (start, state.Cost);
            hot = Math.Max(1.0, instance.Weights.Late / 2.0);
            cold = Math.Max(0.1, instance.Weights.Running / 8.0);
        }

        public IReadOnlyList<Batch> Best { get; private set; }

        public void Run(int count, double share)
        {
            var temperature = hot * Math.Pow(cold / hot, share);
            for (var move = 0; move < count; move++)
            {
                if (moves.Try() && state.Settle() is { } change && change <= -temperature * Math.Log(1.0 - chance.NextUniform()))
                {
                    if (change > 0 && !noted)
                    {
                        // The best schedule so far is about to be left: it is read first, and the change forgone.
                        state.TakeBack();
                        Note();
                        continue;
                    }

                    state.Keep();
                    (noted, least) = state.Cost < least ? (false, state.Cost) : (noted, least);
                }
                else
                {
                    state.TakeBack();
                }
            }
        }

        /// <summary>Keeps the best schedule, before it is left.</summary>
        public void Note()
        {
            if (!noted)
            {
                Best = state.Read();
                noted = true;
                better?.Invoke(Best, least);
            }
        }
    }
}
