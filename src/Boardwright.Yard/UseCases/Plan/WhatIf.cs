using Boardwright.Planning;
using Boardwright.Planning.Solver;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>A plan laid beside the worked one: what it supposes and what follows.</summary>
/// <param name="Words">What it supposes.</param>
/// <param name="Input">The yard as it would be.</param>
/// <param name="Plan">The plan for that.</param>
/// <param name="Outlook">What follows from it.</param>
/// <param name="IsRemedy">Something the mill can do, as against something that happens to it or another way to plan.</param>
public sealed record PlanTried(string Words, PlanInput Input, Plan Plan, PlanOutlook Outlook, bool IsRemedy = false)
{
    /// <summary>Orders ready by their day.</summary>
    public int OnTime => Outlook.Orders.Count(order => order is { Met: true, LateDays: 0 });

    /// <summary>Days late of all orders; an order not met counts to a week after the plan's end.</summary>
    public int LateDays => Outlook.Orders.Sum(order => order.LateDays);

    /// <summary>What the lateness counts, money.</summary>
    public decimal LateMoney => Outlook.Score.LateCents / 100m;

    /// <summary>Kiln-days, fuel, waiting and wood bought, less the gain in value of what is dried: less is better.</summary>
    public decimal CostMoney => Outlook.Score.CostCents / 100m;

    /// <summary>Days on which a kiln is taken, loading and unloading included.</summary>
    public double KilnDays => Outlook.Charges.Sum(charge => (double)(charge.EmptyAt - charge.Charge.LoadStep)) / Input.Calendar.StepsPerDay;

    /// <summary>Heat and electricity of all charges, money.</summary>
    public decimal HeatMoney => Outlook.Charges.Sum(charge => charge.HeatMoney);

    /// <summary>Footage of the charges the plan begins.</summary>
    public double LoadedBf => Plan.Charges.Where(charge => charge.Started is null).SelectMany(charge => charge.Stacks).Sum(id => Input.Stacks.First(stack => stack.Id == id).Volume.Count);

    /// <summary>Days an order is late; 0 for one it does not have.</summary>
    public int DaysLate(string order) => Outlook.Orders.FirstOrDefault(one => one.Order == order)?.LateDays ?? 0;
}

/// <summary>The cheapest thing that makes a late order less late.</summary>
/// <param name="Order">The order.</param>
/// <param name="LateDays">Days late by the worked plan.</param>
/// <param name="Cause">Why it is late, in words; null where no reason was looked for.</param>
/// <param name="By">The plan that helps at least cost; null when none of those tried does.</param>
/// <param name="Money">What it costs beside the worked plan; below 0 it gains.</param>
public sealed record Remedy(string Order, int LateDays, string? Cause, PlanTried? By, decimal Money);

/// <summary>What ifs, each planned anew from the worked plan and laid beside it.</summary>
/// <method page="docs/methods/kiln-plan.md"/>
public static class PlanWhatIf
{
    private const double Work = 0.25;
    private const double SecondsMost = 5.0;
    private const int DaysToBuy = 3; // from the call to the load in the yard
    private const int BoughtMost = 4; // orders for which buying is tried, those that lose most first

    /// <summary>The worked plan as one of the rows.</summary>
    public static PlanTried Worked(PlanMade made)
    {
        ArgumentNullException.ThrowIfNull(made);
        return new("The worked plan", made.Input, made.Answer.Plan, made.Answer.Outlook);
    }

    /// <summary>Other ways to plan the same yard: the owner's charges by hand where the book has them, and two rules of thumb.</summary>
    public static IReadOnlyList<PlanTried> OtherWays(YardState state, PlanMade made)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        PlanTried Tried(string words, Plan plan) => new(words, made.Input, plan, PlanOutlook.Of(made.Input, plan));
        List<PlanTried> ways = [Tried("Rule of thumb: the driest wood first", RuleOfThumb.FirstDryFirstLoaded(made.Input)), Tried("Rule of thumb: the earliest due day first", RuleOfThumb.EarliestDueDate(made.Input))];
        return PlansBeside.Of(state, made) is { } beside ? [beside.Own, .. ways] : ways;
    }

    /// <summary>Plans for what may happen and what can be done, one after the other as they are made.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="made">The worked plan.</param>
    /// <param name="workShare">Work put into each, as a share of the usual.</param>
    /// <param name="cancel">Ends early.</param>
    public static IEnumerable<PlanTried> Tries(YardState state, PlanMade made, double workShare = 1.0, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        foreach (var (words, input, remedy) in Suppositions(state, made))
        {
            if (YardSolver.Solve(input, new SolverLimits(SecondsMost, 1, Work * workShare) { ChargesEachKiln = 5, Start = made.Answer.Plan }, cancel: cancel) is Outcome<PlanAnswer>.Done(var answer))
            {
                yield return new(words, input, answer.Plan, answer.Outlook, remedy);
            }
        }
    }

    /// <summary>For each late order the cheapest of the remedies tried that makes it less late.</summary>
    public static IReadOnlyList<Remedy> Remedies(PlanMade made, IReadOnlyList<PlanTried> tried)
    {
        ArgumentNullException.ThrowIfNull(made);
        var now = Worked(made);
        return
        [
            .. made.Answer.Outlook.Orders.Where(order => order.LateDays > 0).Select(order =>
            {
                var by = tried.Where(one => one.IsRemedy && one.DaysLate(order.Order) < order.LateDays).OrderBy(one => one.CostMoney).FirstOrDefault();
                return new Remedy(order.Order, order.LateDays, made.Reasons.GetValueOrDefault(order.Order)?.Words, by, by is null ? 0m : by.CostMoney - now.CostMoney);
            }),
        ];
    }

    private static IEnumerable<(string Words, PlanInput Input, bool Remedy)> Suppositions(YardState state, PlanMade made)
    {
        foreach (var boiler in state.Boilers.Values.Where(boiler => boiler.Down is { BackExpectedOn: not null, BackLateOn: not null }))
        {
            var (from, back) = (boiler.Down!.BackExpectedOn!.Value, boiler.Down.BackLateOn!.Value);
            if (from < back && new Interruption(boiler.Name, from, back.AddDays(-1)).ApplyTo(made.Input) is Outcome<PlanInput>.Done(var input))
            {
                yield return ($"{boiler.Name} is back only on {DayWords.Of(back, state.Today)}", input, false);
            }
        }

        foreach (var kiln in made.Input.Kilns)
        {
            if (new Interruption(kiln.Id, state.Today, state.Today.AddDays(6)).ApplyTo(made.Input) is Outcome<PlanInput>.Done(var input))
            {
                yield return ($"{kiln.Id} is out until {DayWords.Of(state.Today.AddDays(6), state.Today)}", input, false);
            }
        }

        var hours = state.Calendar.Week.TryGetValue(DayOfWeek.Monday, out var monday) ? (monday.From, monday.To) : (new TimeOnly(8, 0), new TimeOnly(16, 0));
        var saturdays = Supposing.WorkToo(made.Input, day => day.DayOfWeek == DayOfWeek.Saturday && !state.Calendar.Closed.ContainsKey(day), hours.Item1, hours.Item2);
        if (saturdays.Calendar.CrewWindows.Count > made.Input.Calendar.CrewWindows.Count)
        {
            yield return ("Load and unload on Saturdays too (wages not counted)", saturdays, true);
        }

        foreach (var order in made.Answer.Outlook.Orders.Where(order => order.LateDays > 0).OrderByDescending(order => order.LateDays).Take(BoughtMost))
        {
            if (Price(state, made, order.Order) is { } money)
            {
                var here = state.Today.AddDays(DaysToBuy);
                yield return ($"Buy dry wood for {order.Order}, here on {DayWords.Of(here, state.Today)}, about {money:#,0} money", Supposing.Buy(made.Input, order.Order, here, money), true);
            }
        }
    }

    // What wood like that named in the order sells for dry; null where the yard has no price for it or the wood is the customer's own.
    private static decimal? Price(YardState state, PlanMade made, string id)
    {
        var index = made.Input.Orders.ToList().FindIndex(order => order.Id == id);
        var named = made.Yard.Lines[index].Asked;
        var stack = named.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).FirstOrDefault(one => one is not null);
        return named.CustomerWood || stack is null || PlanWorth.DryMoneyPerBf(state, stack) is not (> 0.0 and var price) ? null : Math.Round((decimal)(price * made.Input.Orders[index].Quantity.Count), 0);
    }
}
