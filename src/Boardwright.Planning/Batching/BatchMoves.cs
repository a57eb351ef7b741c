using Boardwright.Numerics;

namespace Boardwright.Planning.Batching;

/// <summary>The changes the search tries, each drawn at random; a drawn change that cannot be is left undone.</summary>
internal sealed class BatchMoves(BatchTables tables, BatchState state, RandomSequence chance)
{
    private const int BlockMost = 4;
    private const int TriesEachJob = 6;

    /// <summary>Makes one change; false when the one drawn cannot be (what was begun must then be taken back).</summary>
    public bool Try() => chance.NextIndex(100) switch
    {
        < 26 => JobToBatch(),
        < 44 => JobForJob(),
        < 52 => JobToNewBatch(),
        < 60 => LateJobInstead(),
        < 73 => BatchToPlace(),
        < 81 => BatchForBatch(),
        < 88 => BlockToPlace(),
        < 92 => BatchIntoBatch(),
        < 95 => BatchIntoParts(),
        _ => BatchIntoOthers(),
    };

    private int AnyJob() => chance.NextIndex(tables.Jobs.Length);

    private int AnyBatch() => state.BatchOf(AnyJob());

    private int Alike(int job)
    {
        var alike = tables.OfAttribute[tables.Jobs[job].Attribute];
        return alike[chance.NextIndex(alike.Length)];
    }

    private bool JobToBatch()
    {
        var job = AnyJob();
        var batch = state.BatchOf(Alike(job));
        if (batch == state.BatchOf(job) || !state.Fits(job, batch))
        {
            return false;
        }

        state.Move(job, batch);
        return true;
    }

    private bool JobForJob()
    {
        var job = AnyJob();
        var other = Alike(job);
        var (own, others) = (state.BatchOf(job), state.BatchOf(other));
        ref readonly var one = ref tables.Jobs[job];
        ref readonly var two = ref tables.Jobs[other];
        if (own == others || (two.Ovens >> state.Of(own).Oven & 1) == 0 || (one.Ovens >> state.Of(others).Oven & 1) == 0
            || state.Of(own).Size - one.Size + two.Size > tables.Capacity[state.Of(own).Oven] || state.Of(others).Size - two.Size + one.Size > tables.Capacity[state.Of(others).Oven])
        {
            return false;
        }

        state.Exchange(job, other);
        return state.Of(own).Length <= state.Of(own).Most && state.Of(others).Length <= state.Of(others).Most;
    }

    private bool JobToNewBatch()
    {
        var job = AnyJob();
        if (state.Of(state.BatchOf(job)).Count == 1 || AnyOven(tables.Jobs[job].Ovens, tables.Jobs[job].Size) is not { } oven)
        {
            return false;
        }

        var place = chance.NextIndex(2) == 0 ? AnyPlace(oven) : PlaceAt(oven, tables.Jobs[job].Earliest + chance.NextIndex(Math.Max(1, tables.Jobs[job].Due - tables.Jobs[job].Earliest + 1)));
        state.Move(job, state.Open(tables.Jobs[job].Attribute, oven, place));
        return true;
    }

    // A late job gets a batch where it would be in time, with some others that are late; the batches that run there go to the end of some row.
    private bool LateJobInstead()
    {
        if (tables.Hopeful.Length == 0)
        {
            return false;
        }

        var job = tables.Hopeful[chance.NextIndex(tables.Hopeful.Length)];
        ref readonly var one = ref tables.Jobs[job];
        if (InTime(job) || one.Due - one.Least < one.Earliest || AnyOven(one.Ovens, one.Size) is not { } oven)
        {
            return false;
        }

        var place = Math.Max(0, PlaceAt(oven, one.Earliest + chance.NextIndex(one.Due - one.Least - one.Earliest + 1)) - chance.NextIndex(2));
        for (var count = 1 + chance.NextIndex(2); count > 0 && place < state.RowOf(oven).Length; count--)
        {
            ToTheEnd(state.RowOf(oven)[place]);
        }

        var batch = state.Open(one.Attribute, oven, Math.Min(place, state.RowOf(oven).Length));
        state.Move(job, batch);
        for (var tries = chance.NextIndex(TriesEachJob); tries > 0; tries--)
        {
            var other = Alike(job);
            if (!InTime(other) && state.BatchOf(other) != batch && tables.Jobs[other].Due >= one.Earliest + one.Least && tables.Jobs[other].Earliest <= one.Due - one.Least && state.Fits(other, batch))
            {
                state.Move(other, batch);
            }
        }

        return true;
    }

    private bool InTime(int job) => state.Start(state.BatchOf(job)) + state.Of(state.BatchOf(job)).Length <= tables.Jobs[job].Due;

    private void ToTheEnd(int batch)
    {
        var own = state.Of(batch).Oven;
        var oven = AnyOven(state.Of(batch).Ovens, state.Of(batch).Size) ?? own;
        state.Shift(batch, oven, state.RowOf(oven).Length - (oven == own ? 1 : 0));
    }

    private bool BatchToPlace()
    {
        var batch = AnyBatch();
        if (AnyOven(state.Of(batch).Ovens, state.Of(batch).Size) is not { } oven)
        {
            return false;
        }

        var most = state.RowOf(oven).Length - (state.Of(batch).Oven == oven ? 1 : 0);
        if (chance.NextIndex(2) == 0)
        {
            state.Shift(batch, oven, chance.NextIndex(most + 1));
            return true;
        }

        // Beside a batch of the same attribute, where no set-up or a small one is needed.
        var beside = state.BatchOf(Alike(state.FirstOf(batch)));
        oven = state.Of(beside).Oven;
        if (beside == batch || !state.Fits(state.Of(batch), oven))
        {
            return false;
        }

        var place = state.PlaceOf(beside);
        var own = state.Of(batch).Oven == oven && state.PlaceOf(batch) < place ? 1 : 0;
        state.Shift(batch, oven, place - own + chance.NextIndex(2));
        return true;
    }

    private bool BatchForBatch()
    {
        var (one, two) = (AnyBatch(), AnyBatch());
        var (ovenOne, ovenTwo) = (state.Of(one).Oven, state.Of(two).Oven);
        if (one == two || !state.Fits(state.Of(one), ovenTwo) || !state.Fits(state.Of(two), ovenOne))
        {
            return false;
        }

        var (placeOne, placeTwo) = (state.PlaceOf(one), state.PlaceOf(two));
        if (ovenOne == ovenTwo && placeOne > placeTwo)
        {
            (one, two, placeOne, placeTwo) = (two, one, placeTwo, placeOne);
        }

        state.Shift(one, ovenTwo, placeTwo);
        state.Shift(two, ovenOne, placeOne);
        return true;
    }

    // A few batches in a row go elsewhere together, as they are or turned round.
    private bool BlockToPlace()
    {
        var first = AnyBatch();
        var row = state.RowOf(state.Of(first).Oven);
        var place = state.PlaceOf(first);
        var count = Math.Min(2 + chance.NextIndex(BlockMost - 1), row.Length - place);
        var bits = ulong.MaxValue;
        var size = 0;
        Span<int> block = stackalloc int[BlockMost];
        for (var index = 0; index < count; index++)
        {
            block[index] = row[place + index];
            bits &= state.Of(block[index]).Ovens;
            size = Math.Max(size, state.Of(block[index]).Size);
        }

        if (count < 2 || AnyOven(bits, size) is not { } oven)
        {
            return false;
        }

        var to = chance.NextIndex(state.RowOf(oven).Length - (state.Of(first).Oven == oven ? count : 0) + 1);
        var turned = chance.NextIndex(2) == 0;
        for (var index = 0; index < count; index++)
        {
            state.Lift(block[index]);
        }

        for (var index = 0; index < count; index++)
        {
            state.Drop(block[index], oven, turned ? to : to + index);
        }

        return true;
    }

    private bool BatchIntoBatch()
    {
        var from = AnyBatch();
        var to = state.BatchOf(Alike(state.FirstOf(from)));
        ref readonly var one = ref state.Of(from);
        ref readonly var two = ref state.Of(to);
        if (from == to || one.Size + two.Size > tables.Capacity[two.Oven] || (one.Ovens >> two.Oven & 1) == 0 || Math.Max(one.Length, two.Length) > Math.Min(one.Most, two.Most))
        {
            return false;
        }

        while (state.Of(from).Count > 0)
        {
            state.Move(state.FirstOf(from), to);
        }

        return true;
    }

    // The longer jobs of a batch, or those due later, get one of their own behind it or elsewhere.
    private bool BatchIntoParts()
    {
        var batch = AnyBatch();
        if (state.Of(batch).Count < 2)
        {
            return false;
        }

        var byDue = chance.NextIndex(2) == 0;
        var pivot = Key(AnyIn(batch), byDue);
        var oven = state.Of(batch).Oven;
        var place = chance.NextIndex(2) == 0 ? state.PlaceOf(batch) + 1 : AnyPlace(oven);
        var part = state.Open(state.Of(batch).Attribute, oven, place);
        for (var job = state.FirstOf(batch); job >= 0 && state.Of(batch).Count > 1;)
        {
            var next = state.NextOf(job);
            if (Key(job, byDue) >= pivot)
            {
                state.Move(job, part);
            }

            job = next;
        }

        return true;
    }

    // Every job of a batch finds room in some other, or the change is off.
    private bool BatchIntoOthers()
    {
        var batch = AnyBatch();
        while (state.Of(batch).Count > 0)
        {
            var job = state.FirstOf(batch);
            var left = TriesEachJob;
            while (left > 0 && (state.BatchOf(Alike(job)) is var to && (to == batch || !state.Fits(job, to) || !Put(job, to))))
            {
                left--;
            }

            if (left == 0)
            {
                return false;
            }
        }

        return true;
    }

    private bool Put(int job, int batch)
    {
        state.Move(job, batch);
        return true;
    }

    private int Key(int job, bool byDue) => byDue ? tables.Jobs[job].Due : tables.Jobs[job].Least;

    private int AnyIn(int batch)
    {
        var job = state.FirstOf(batch);
        for (var skip = chance.NextIndex(state.Of(batch).Count); skip > 0; skip--)
        {
            job = state.NextOf(job);
        }

        return job;
    }

    private int AnyPlace(int oven) => chance.NextIndex(state.RowOf(oven).Length + 1);

    // Before the first batch that starts at the time or later.
    private int PlaceAt(int oven, int time)
    {
        var row = state.RowOf(oven);
        var (low, high) = (0, row.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = state.Start(row[middle]) < time ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private int? AnyOven(ulong bits, int size)
    {
        var oven = chance.NextIndex(tables.Capacity.Length);
        return (bits >> oven & 1) != 0 && size <= tables.Capacity[oven] ? oven : null;
    }
}
