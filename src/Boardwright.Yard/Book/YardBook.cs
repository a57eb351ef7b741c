using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book;

/// <summary>The book at work: the yard as it stands, and the one way to write into it.</summary>
/// <remarks>
/// Safe for many threads, and beside other programs on the same store. A write is checked against the whole book as it would then read
/// and kept in one transaction: all of it or nothing. It is refused when any standing entry, old or new, would not fit any more.
/// </remarks>
public sealed class YardBook(IBookStore store, TimeProvider clock)
{
    private const int AttemptsMax = 50;
    private static readonly TimeSpan AheadMax = TimeSpan.FromHours(36);

    private readonly Lock gate = new();
    private List<Entry> entries = [];
    private YardState? state;
    private DateOnly stateDay;

    /// <summary>The yard as it stands now. Take it once for one answer: it never changes.</summary>
    public YardState State
    {
        get
        {
            lock (gate)
                return Current();
        }
    }

    /// <summary>Now, in the yard's own time; on a demonstration's day, its day at this hour.</summary>
    public DateTime Now => State.Today.ToDateTime(TimeOnly.FromDateTime(clock.GetLocalNow().DateTime));

    /// <summary>Writes one entry.</summary>
    public Outcome<IReadOnlyList<Entry>> Write(string by, Fact fact, DateTime? happenedAt = null) => Write([new NewEntry(by, fact, happenedAt)]);

    /// <summary>Writes entries, all or none. Those whose id the book has already are not written again; the kept ones are returned in their stead.</summary>
    public Outcome<IReadOnlyList<Entry>> Write(IReadOnlyList<NewEntry> wanted)
    {
        lock (gate)
        {
            for (var attempt = 0; attempt < AttemptsMax; attempt++)
            {
                var before = Current();
                var (refusals, written) = Number(before, wanted);
                if (refusals.Count > 0)
                    return new Outcome<IReadOnlyList<Entry>>.Refused(refusals);

                var added = written.Where(e => e.Number > entries.Count).ToList();
                List<Entry> after = [.. entries, .. added];
                var then = YardState.Of(after, ClockDay());
                if (NewMisfits(before, then) is { Count: > 0 } misfits)
                    return new Outcome<IReadOnlyList<Entry>>.Refused([.. misfits.Select(misfit => misfit.Why)]);

                if (store.TryAppend(added))
                {
                    (entries, state) = (after, then);
                    return written;
                }
            }

            throw new IOException($"The book was written by others {AttemptsMax} times in a row; nothing of this was kept.");
        }
    }

    /// <summary>What would keep each of these entries out, in their order; null where nothing does. Nothing is written.</summary>
    /// <remarks>An entry that only fails because another of them fails is refused too: what is left can be written together.</remarks>
    public IReadOnlyList<Refusal?> Check(IReadOnlyList<NewEntry> wanted)
    {
        lock (gate)
        {
            var before = Current();
            var why = new Refusal?[wanted.Count];
            while (true)
            {
                var open = Enumerable.Range(0, wanted.Count).Where(i => why[i] is null).ToList();
                var (refusals, numbered) = Number(before, [.. open.Select(i => wanted[i])], why, open);
                if (refusals.Count > 0)
                    continue;
                var then = YardState.Of([.. entries, .. numbered.Where(e => e.Number > entries.Count)], ClockDay());
                var misfits = NewMisfits(before, then);
                if (misfits.Count == 0)
                    return why;
                foreach (var misfit in misfits)
                {
                    var which = numbered.FindIndex(e => e.Number == misfit.Entry);

                    // An old entry that would not fit any more is laid to the newest of the new ones.
                    why[open[which >= 0 ? which : open.Count - 1]] ??= misfit.Why;
                }
            }
        }
    }

    /// <summary>Faults of what is kept, and entries that do not fit; empty when the book is sound.</summary>
    public IReadOnlyList<string> Verify() =>
        store.Verify() is { Count: > 0 } faults ? faults : [.. State.Misfits.Select(misfit => $"Entry {misfit.Entry} does not fit: {misfit.Why}")];

    /// <summary>Takes a whole book into this empty one as it was: numbers, ids and times stay.</summary>
    /// <param name="whole">Entries numbered 1, 2, 3 … as <see cref="BookFile.Read"/> gives them.</param>
    public Outcome<YardState> Restore(IReadOnlyList<Entry> whole)
    {
        lock (gate)
        {
            return Current().Entries.Count > 0 || !store.TryAppend(whole) ? new Refusal("book", $"{Current().Entries.Count} entries", "an empty book") : Current();
        }
    }

    private YardState Current()
    {
        var newer = store.ReadAfter(entries.Count);
        if (newer.Count > 0)
            entries = [.. entries, .. newer];
        if (state is null || newer.Count > 0 || stateDay != ClockDay())
            (state, stateDay) = (YardState.Of(entries, ClockDay()), ClockDay());
        return state;
    }

    private DateOnly ClockDay() => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    private (List<Refusal> Refusals, List<Entry> Entries) Number(YardState before, IReadOnlyList<NewEntry> wanted, Refusal?[]? why = null, List<int>? places = null)
    {
        var known = entries.ToDictionary(e => e.Id);
        var (refusals, numbered) = (new List<Refusal>(), new List<Entry>());
        var nowUtc = Whole(clock.GetUtcNow().UtcDateTime, TimeSpan.TicksPerMillisecond);
        var today = wanted.Select(w => w.Fact).OfType<DayTurned>().LastOrDefault()?.Day ?? before.Today;
        var now = today.ToDateTime(TimeOnly.FromDateTime(clock.GetLocalNow().DateTime));
        if (before.IsDemonstration)
            now = AfterWhatHappened(today, now);
        var next = entries.Count + 1L;
        for (var index = 0; index < wanted.Count; index++)
        {
            var one = wanted[index];
            if (one.Id is { } id && known.TryGetValue(id, out var kept))
            {
                numbered.Add(kept);
                continue;
            }

            if (Fault(one, next, now) is { } refusal)
            {
                refusals.Add(refusal);
                if (why is not null)
                    why[places![index]] ??= refusal;
                continue;
            }

            var happened = one.HappenedAt ?? (one.Corrects is { } old ? Of(old).HappenedAt : now);
            var entry = new Entry(next++, one.Id ?? Guid.CreateVersion7(), nowUtc, DateTime.SpecifyKind(Whole(happened, TimeSpan.TicksPerSecond), DateTimeKind.Unspecified), one.By, one.Fact, one.Corrects, one.Reason, one.AsEntered);
            known.Add(entry.Id, entry);
            numbered.Add(entry);
        }

        return (refusals, numbered);

        Entry Of(long number) => number <= entries.Count ? entries[(int)number - 1] : numbered.First(e => e.Number == number);
    }

    // A demonstration's day has its hours already: who opens it early in the morning still comes after the packs tallied that day at eleven.
    private DateTime AfterWhatHappened(DateOnly day, DateTime now) =>
        entries.Where(e => e.Fact is not WeatherObserved && DateOnly.FromDateTime(e.HappenedAt) == day).Select(e => e.HappenedAt).Append(now).Max();

    // Databases keep fewer digits of a time than memory does; the book keeps none it could lose.
    private static DateTime Whole(DateTime time, long ticks) => new(time.Ticks - time.Ticks % ticks, time.Kind);

    private static Refusal? Fault(NewEntry one, long next, DateTime now) =>
        string.IsNullOrWhiteSpace(one.By) ? new("by", one.By, "the name of whoever says so")
        : one.Corrects is { } old && (old < 1 || old >= next) ? new("corrects", $"{old}", $"the number of an earlier entry, 1 to {next - 1}")
        : one.Corrects is not null && string.IsNullOrWhiteSpace(one.Reason) ? new("reason", one.Reason ?? "none", "why the entry is corrected")
        : one.HappenedAt > now + AheadMax ? new("happened_at", $"{one.HappenedAt:yyyy-MM-dd HH:mm}", $"a time that is not ahead of {now:yyyy-MM-dd HH:mm}; is the clock right?")
        : null;

    private static List<State.Misfit> NewMisfits(YardState before, YardState then)
    {
        var old = before.Misfits.Select(m => m.Entry).ToHashSet();
        return [.. then.Misfits.Where(m => !old.Contains(m.Entry))];
    }
}
