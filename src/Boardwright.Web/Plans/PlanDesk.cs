using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Plans;

/// <summary>What can be shown of a plan now.</summary>
/// <param name="Plan">The plan that every page goes by: worked to its end, or the one before it under today's facts while a newer one is worked; null while there is none.</param>
/// <param name="Ended">The end of the search, or why there is no plan; null while it runs.</param>
/// <param name="Ran">How long it has run.</param>
/// <param name="Trying">The best plan of a search that still runs, checked; null while forecasts are being made and once it has ended. It is no plan to go by: the next moment has another.</param>
public sealed record PlanView(PlanMade? Plan, Outcome<PlanMade>? Ended, TimeSpan Ran, PlanMade? Trying = null)
{
    /// <summary>The same plan as pages tell it; null for a what-if, and while there is no plan.</summary>
    public SeasonNow? Season { get; init; }

    public bool IsRunning => Ended is null;

    /// <summary>What the best plan of a running search counts for lateness, and what no plan can go below; null where there is none.</summary>
    public string? Lateness => Trying?.Answer.Levels[0] is { } level ? $"lateness counts {level.Cents / 100.0:#,0} money, and no plan can have less than {level.BoundCents / 100.0:#,0}" : null;
}

/// <summary>Makes the kiln plan beside the requests: begun when a page first asks, kept until the book changes, shown while it runs.</summary>
/// <param name="book">The yard.</param>
/// <param name="clock">Tells how long a search runs.</param>
/// <param name="workShare">Work put into a plan, as a share of the usual.</param>
/// <param name="shelf">Where plans lie that newer ones begin from and are compared with; null keeps them as long as the program runs.</param>
/// <remarks>One search at a time, so that the pages stay quick. A write to the book or a new day ends the searches of the old state.</remarks>
public sealed class PlanDesk(YardBook book, TimeProvider clock, double workShare = 1.0, IPlanShelf? shelf = null) : IDisposable
{
    private const int KeptMost = 12;
    private const double FirstShare = 0.1; // of the work: somebody who opens the yard for the first time waits for it
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(300);

    private readonly IPlanShelf shelf = shelf ?? new MemoryPlanShelf();
    private readonly Lock gate = new();
    private readonly SemaphoreSlim oneAtATime = new(1, 1);
    private readonly Dictionary<(int Entries, DateOnly Today, string Without), Work> works = [];
    private int begun;

    /// <summary>How long the very first search waits before it begins: the page that asked for it is shown first.</summary>
    public TimeSpan FirstRest { get; init; }

    /// <summary>The plan of the yard as it stands, without some equipment where that is asked.</summary>
    public PlanView Look(IReadOnlyList<Interruption>? without = null)
    {
        var work = Begun(without ?? []);
        _ = work.Task.Wait(Patience);
        return work.Task.IsCompletedSuccessfully ? new(Done(work.Task.Result), work.Task.Result, default) { Season = work.Season }
            : work.Task.IsFaulted ? throw new InvalidOperationException("The plan could not be made.", work.Task.Exception)
            : new(work.Season?.Made, null, clock.GetElapsedTime(work.Since), work.Best) { Season = work.Season };
    }

    /// <summary>What every page says of the season, without waiting: the plan worked to its end, or the one before it under today's facts while a newer one is worked.</summary>
    public SeasonNow Season()
    {
        var work = Begun([]);
        return work.Season ?? (!work.Task.IsCompleted ? SeasonNow.StillWorked : SeasonNow.Without(!work.Task.IsCompletedSuccessfully ? "it could not be worked out." : work.Task.Result switch
        {
            Outcome<PlanMade>.Refused(var reasons) => string.Join("; ", reasons.Select(reason => $"{reason.What}: {reason.Given}")) + ".",
            Outcome<PlanMade>.NoAnswer(var why) => why,
            _ => "it is not there.",
        }));
    }

    /// <summary>Ends the search for the yard as it stands: the best plan so far is the plan. Nothing happens where none was found yet, or it has ended.</summary>
    public void Enough(IReadOnlyList<Interruption>? without = null)
    {
        if (Begun(without ?? []) is { Best: not null } work)
        {
            work.Enough();
        }
    }

    /// <summary>Ends when the plan of the yard as it stands is made, cannot be made, or is given up for a newer state.</summary>
    public async Task MadeAsync() => await ((Task)Begun([]).Task).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);

    public void Dispose()
    {
        lock (gate)
        {
            foreach (var work in works.Values)
            {
                work.Cancel();
            }

            works.Clear();
        }

        oneAtATime.Dispose();
    }

    private Work Begun(IReadOnlyList<Interruption> without)
    {
        var state = book.State;
        var key = (state.Entries.Count, state.Today, string.Join(' ', without));
        lock (gate)
        {
            foreach (var old in works.Where(one => one.Key.Entries != key.Item1 || one.Key.Today != key.Today).ToList())
            {
                old.Value.Cancel();
                works.Remove(old.Key);
            }

            if (!works.TryGetValue(key, out var work))
            {
                if (works.Count >= KeptMost && works.FirstOrDefault(one => one.Value.Task.IsCompleted) is { Value: not null } finished)
                {
                    works.Remove(finished.Key);
                }

                work = works[key] = new Work(clock.GetTimestamp());
                work.Task = Task.Run(() => Make(state, without, work));
            }

            return work;
        }
    }

    private async Task<Outcome<PlanMade>> Make(YardState state, IReadOnlyList<Interruption> without, Work work)
    {
        if (Interlocked.Exchange(ref begun, 1) == 0)
        {
            await Task.Delay(FirstRest, clock, work.Token).ConfigureAwait(false);
        }

        await oneAtATime.WaitAsync(work.Token).ConfigureAwait(false);
        try
        {
            return PlanMade.Ask(state, new(Without: without)).Then(asked => without.Count == 0 ? Worked(state, asked, work) : PlanMade.Of(state, asked, new(WorkShare: workShare, Start: KeptPlan.Newest(shelf.Read(), state)?.Plan), better => work.Best = better, work.Token, work.IsEnough));
        }
        finally
        {
            oneAtATime.Release();
        }
    }

    // Pages go by the plan before under today's facts until the search has ended: the best of a running search is another one each moment. A yard's very first plan is a short search.
    private Outcome<PlanMade> Worked(YardState state, (PlanYard Yard, PlanInput Input) asked, Work work)
    {
        var kept = shelf.Read();
        var before = KeptPlan.Newest(kept, state);
        var number = before?.Number ?? 1;
        var first = before is not null ? PlanMade.Carried(asked, before.Plan) : PlanMade.Of(state, asked, new(WorkShare: FirstShare * workShare), null, work.Token, work.IsEnough);
        if (Done(first) is not { } start || work.Token.IsCancellationRequested)
        {
            return first;
        }

        work.Season = SeasonNow.Of(state, start) with { Number = number, Carried = true };
        var made = PlanMade.Of(state, asked, new(WorkShare: workShare, Start: before?.Plan ?? start.Answer.Plan), better => work.Best = better, work.Token, work.IsEnough);
        if (Done(made) is { } plan && !work.Token.IsCancellationRequested)
        {
            var season = SeasonNow.Of(state, plan) with { Number = number + 1, Changes = KeptPlan.Before(kept, state) is { } earlier ? PlanChanges.Of(state, plan, earlier) : null };
            shelf.Write(KeptPlan.After(kept, state, KeptPlan.Of(number + 1, state, plan))); // a number that was shown is not given again
            work.Season = season;
        }

        return made;
    }

    private static PlanMade? Done(Outcome<PlanMade> ended) => ended is Outcome<PlanMade>.Done(var made) ? made : null;

    private sealed class Work(long since) : IDisposable
    {
        private readonly CancellationTokenSource cancel = new();
        private readonly CancellationTokenSource enough = new();
        private volatile PlanMade? best;
        private volatile SeasonNow? season;

        public long Since { get; } = since;

        public CancellationToken Token => cancel.Token;

        public CancellationToken IsEnough => enough.Token;

        public Task<Outcome<PlanMade>> Task { get; set; } = null!;

        public PlanMade? Best
        {
            get => best;
            set => best = value;
        }

        public SeasonNow? Season
        {
            get => season;
            set => season = value;
        }

        public void Cancel() => cancel.Cancel();

        public void Enough() => enough.Cancel();

        public void Dispose()
        {
            cancel.Dispose();
            enough.Dispose();
        }
    }
}
