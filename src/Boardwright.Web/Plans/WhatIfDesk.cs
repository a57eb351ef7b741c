using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Plans;

/// <summary>What can be shown of the what-ifs now.</summary>
/// <param name="Plan">The worked plan, or how far it is.</param>
/// <param name="Ways">Other ways to plan the same yard.</param>
/// <param name="Tried">What-ifs planned so far.</param>
/// <param name="IsRunning">More are being planned.</param>
public sealed record WhatIfView(PlanView Plan, IReadOnlyList<PlanTried> Ways, IReadOnlyList<PlanTried> Tried, bool IsRunning);

/// <summary>Plans the what-ifs beside the requests once the worked plan is there; kept until that plan is another.</summary>
/// <param name="book">The yard.</param>
/// <param name="plans">Makes the worked plan.</param>
/// <param name="workShare">Work put into each, as a share of the usual.</param>
public sealed class WhatIfDesk(YardBook book, PlanDesk plans, double workShare = 1.0) : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(300);

    private readonly Lock gate = new();
    private Work? work;

    /// <summary>What there is now.</summary>
    public WhatIfView Look()
    {
        var state = book.State;
        var plan = plans.Look();
        if (plan is not { IsRunning: false, Plan: { } made })
        {
            return new(plan, [], [], plan.IsRunning);
        }

        Work current;
        lock (gate)
        {
            if (work?.For != made)
            {
                work?.Cancel.Cancel();
                work = new(made, PlanWhatIf.OtherWays(state, made));
                var begun = work;
                begun.Task = Task.Run(() => begun.Run(state, workShare));
            }

            current = work;
        }

        _ = current.Task.Wait(Patience);
        return current.Task.IsFaulted ? throw new InvalidOperationException("The what-ifs could not be planned.", current.Task.Exception) : new(plan, current.Ways, current.Tried, !current.Task.IsCompleted);
    }

    public void Dispose()
    {
        lock (gate)
        {
            work?.Cancel.Cancel();
            work = null;
        }
    }

    private sealed class Work(PlanMade made, IReadOnlyList<PlanTried> ways)
    {
        private volatile IReadOnlyList<PlanTried> tried = [];

        public PlanMade For => made;

        public IReadOnlyList<PlanTried> Ways => ways;

        public CancellationTokenSource Cancel { get; } = new();

        public Task Task { get; set; } = Task.CompletedTask;

        public IReadOnlyList<PlanTried> Tried => tried;

        public void Run(YardState state, double workShare)
        {
            foreach (var one in PlanWhatIf.Tries(state, made, workShare, Cancel.Token))
            {
                tried = [.. tried, one];
                if (Cancel.IsCancellationRequested)
                {
                    return;
                }
            }
        }
    }
}
