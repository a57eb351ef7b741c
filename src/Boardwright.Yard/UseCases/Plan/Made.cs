using System.Globalization;
using Boardwright.Numerics;
using Boardwright.Planning;
using Boardwright.Planning.Solver;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>What a plan is asked for.</summary>
/// <param name="Days">Days planned; null for two weeks beyond the last open order.</param>
/// <param name="Seconds">Search by the clock; null for a set amount of work that gives the same plan each time.</param>
/// <param name="Without">Kilns or boilers that cannot be used, and when.</param>
/// <param name="WorkShare">The set amount of work as a share of the usual; the same share gives the same plan.</param>
/// <param name="Start">An earlier plan to begin from: what of it can still be done is kept where nothing better is found. Null for none.</param>
/// <param name="GapPercent">End once lateness is proven to be within so much of the least, percent of what the plan counts; by the clock, so two runs may differ. Null to go on.</param>
public sealed record PlanRequest(int? Days = null, double? Seconds = null, IReadOnlyList<Interruption>? Without = null, double WorkShare = 1.0, Plan? Start = null, double? GapPercent = null);

/// <summary>A checked plan of a yard, with what may be promised and why not more.</summary>
/// <param name="Yard">The yard as the planner saw it, without interruptions.</param>
/// <param name="Input">The input it was made for.</param>
/// <param name="Answer">The plan and its bounds.</param>
/// <param name="Promises">Early, likely and late day and chance of each order.</param>
/// <param name="Enough">Chance that each order's wood yields enough, 0 to 1; independent of time.</param>
/// <param name="Reasons">Why an order is late or not met.</param>
public sealed record PlanMade(
    PlanYard Yard, PlanInput Input, PlanAnswer Answer, IReadOnlyList<Promise> Promises, IReadOnlyList<double> Enough, IReadOnlyDictionary<string, LateReason> Reasons)
{
    private const double UsualWork = 1.5;
    private const double ReasonWork = 0.3;
    private const double HurriedShare = 0.1; // for reasons somebody waits for who has said that the plan is good enough
    private const int Workers = 1; // the same on every machine, so that the plan is the same; one alone finds more for its work than several taking turns
    private const int WorkersByGap = 2; // plans and bounds at once, for the gap between them ends the search
    private const double SecondsMost = 120.0;
    private const double ReasonSeconds = 20.0;
    private const int ChargesEachKiln = 5; // a season of nine weeks; more make the search slow and no order sooner

    /// <summary>The input of a request; refused for days out of range or equipment the yard does not have.</summary>
    public static Outcome<(PlanYard Yard, PlanInput Input)> Ask(YardState state, PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var days = request.Days ?? PlanYard.UsualDays(state);
        return days is < PlanYard.DaysMin or > PlanYard.DaysMax
            ? new Refusal("days", days.ToString(CultureInfo.InvariantCulture), $"{PlanYard.DaysMin} to {PlanYard.DaysMax}")
            : PlanYard.Of(state, days).Then(yard => (request.Without ?? []).Aggregate(
                (Outcome<PlanInput>)yard.Input, (input, interruption) => input.Then(interruption.ApplyTo)).Then<(PlanYard, PlanInput)>(input => (yard, input)));
    }

    /// <summary>Makes the plan. Every plan that leaves here, the ones on the way included, has passed the separate checker.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="request">What is asked.</param>
    /// <param name="better">Told of each better plan, from solver threads, one at a time.</param>
    /// <param name="cancel">Ends early with the best plan so far, without the reasons.</param>
    /// <param name="enough">Ends the search early: the best plan so far is the plan, with its reasons.</param>
    public static Outcome<PlanMade> Of(YardState state, PlanRequest request, Action<PlanMade>? better = null, CancellationToken cancel = default, CancellationToken enough = default) =>
        Ask(state, request).Then(asked => Of(state, asked, request, better, cancel, enough));

    /// <summary>The same where the input is there already.</summary>
    public static Outcome<PlanMade> Of(YardState state, (PlanYard Yard, PlanInput Input) asked, PlanRequest request, Action<PlanMade>? better, CancellationToken cancel, CancellationToken enough)
    {
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(cancel, enough);
        var limits = Limits(request.GapPercent is { } gap ? new(request.Seconds ?? SecondsMost, WorkersByGap) { EnoughGapPercent = gap } : request.Seconds is { } seconds ? new(seconds, Workers) : new(SecondsMost, Workers, UsualWork * request.WorkShare)) with { Start = request.Start, ChangeWorthCents = (long)(100m * PlanFigures.Of(state).ChangeWorthMoney) };
        return YardSolver.Solve(asked.Input, limits, progress => better?.Invoke(Checked(asked.Yard, asked.Input, Progress(asked.Input, progress), [])), ends.Token)
            .Then<PlanMade>(answer => Checked(asked.Yard, asked.Input, answer, LateReasons.Find(asked.Input, answer.Plan, Limits(new(ReasonSeconds, Workers, ReasonWork * (enough.IsCancellationRequested ? Math.Min(HurriedShare, request.WorkShare) : request.WorkShare))), cancel)));
    }

    /// <summary>An earlier plan under today's facts, without any search: what of it can still be done, each load as early as may be. It has no reasons for what is late.</summary>
    public static Outcome<PlanMade> Carried((PlanYard Yard, PlanInput Input) asked, Plan earlier) =>
        YardSolver.Carried(asked.Input, earlier).Then<PlanMade>(answer => Checked(asked.Yard, asked.Input, answer, []));

    /// <summary>Chance out of ten that the order is ready on its day with enough wood.</summary>
    public int ChanceOfTen(int order) => (int)Math.Round(10.0 * Promises[order].OnTime * Enough[order], MidpointRounding.AwayFromZero);

    /// <summary>Board feet the wood behind an order yields beyond what it asks, likely; null when it is not met, and for whole slabs and a customer's own wood.</summary>
    public double? SpareBf(int order) => Answer.Outlook.Orders[order].Met && SoldByFootage(order) ? Behind(order).Sum(stack => Left(stack, order)) - Input.Orders[order].Quantity.Count : null;

    /// <summary>The stacks that serve an order.</summary>
    public IReadOnlyList<string> ServedBy(int order) => [.. Answer.Plan.Servings.Where(serving => serving.Order == Input.Orders[order].Id && serving.Quantity.Count > 0.0).Select(serving => serving.Stack).Distinct()];

    // What is kept for an order and ready with the rest of it stands behind it as well, though the plan may need nothing of it.
    private IReadOnlyList<string> Behind(int order)
    {
        var served = ServedBy(order);
        var ready = Answer.Outlook.Orders[order].ReadyHalf;
        var wood = Input.Orders[order].Wood;
        return [.. served, .. Yard.Lines[order].Kept.Except(served).Where(tag => WorkedReady.Of(this, order, wood.First(one => one.Stack == tag)) is { InPlan: true, On: { } on } && (on <= ready || on <= Input.Orders[order].Due))];
    }

    private static SolverLimits Limits(SolverLimits limits) => limits with { ChargesEachKiln = ChargesEachKiln };

    private static PlanAnswer Progress(PlanInput input, PlanProgress progress) => new(progress.Plan, PlanOutlook.Of(input, progress.Plan), [progress.Level]);

    private static PlanMade Checked(PlanYard yard, PlanInput input, PlanAnswer answer, IReadOnlyList<LateReason> reasons)
    {
        var faults = PlanCheck.Faults(input, answer.Plan, answer.Outlook);
        if (faults.Count > 0)
        {
            throw new InvalidOperationException($"The plan breaks a rule and is not shown: {string.Join("; ", faults.Select(fault => fault.Words))}");
        }

        var made = new PlanMade(yard, input, answer, Promise.Of(input, answer.Plan), [], reasons.ToDictionary(reason => reason.Order, StringComparer.Ordinal));
        return made with { Enough = [.. Enumerable.Range(0, input.Orders.Count).Select(made.EnoughFor)] };
    }

    // Whole slabs and boules do not shrink away, and of a customer's own wood all there is goes back; board feet sold do.
    private double EnoughFor(int order) => !Answer.Outlook.Orders[order].Met ? 0.0
        : !SoldByFootage(order) ? 1.0
        : new SplitNormal(
            Behind(order).Sum(stack => Left(stack, order) * Yard.Yields[stack].Low / Yard.Yields[stack].Likely),
            Behind(order).Sum(stack => Left(stack, order)),
            Behind(order).Sum(stack => Left(stack, order) * Yard.Yields[stack].High / Yard.Yields[stack].Likely)).AtLeast(Input.Orders[order].Quantity.Count);

    private bool SoldByFootage(int order) => Yard.Lines[order].Asked is { CustomerWood: false, Unit: Book.Facts.OrderUnit.Bf or Book.Facts.OrderUnit.M3 };

    // What a stack yields, less what other orders take of it.
    private double Left(string stack, int order) =>
        Yard.Yields[stack].Likely - Answer.Plan.Servings.Where(serving => serving.Stack == stack && serving.Order != Input.Orders[order].Id).Sum(serving => serving.Quantity.Count);
}
