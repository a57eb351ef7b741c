using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>A promise that another plan has on another day.</summary>
/// <param name="Id">The line of an order, as the plan names it.</param>
/// <param name="Order">The order's tag.</param>
/// <param name="Due">Its day.</param>
/// <param name="Was">Likely ready by the earlier plan; null where it had it not ready at all, or the order is new.</param>
/// <param name="SameLoads">Likely ready today were the earlier plan's loads kept: what the facts did. Null where it would not be ready.</param>
/// <param name="Now">Likely ready by the plan now: the rest is what the plan did. Null where it is not ready at all.</param>
/// <param name="Why">Facts about it, its wood and its kilns that moved.</param>
/// <param name="Loads">Its wood that goes elsewhere.</param>
/// <param name="WoodWas">The stacks that served it.</param>
/// <param name="WoodNow">The stacks that serve it now.</param>
public sealed record PromiseMoved(
    string Id, string Order, DateOnly Due, DateOnly? Was, DateOnly? SameLoads, DateOnly? Now, IReadOnlyList<FactMoved> Why, IReadOnlyList<LoadMoved> Loads, IReadOnlyList<string> WoodWas, IReadOnlyList<string> WoodNow)
{
    /// <summary>In time now though it was not, or sooner.</summary>
    public bool IsBetter => (Now ?? DateOnly.MaxValue) < (Was ?? DateOnly.MaxValue);
}

/// <summary>A stack that another plan loads elsewhere or on another day.</summary>
/// <param name="Stack">Its tag.</param>
/// <param name="Was">Kiln and day by the earlier plan; null for none.</param>
/// <param name="Now">Kiln and day now; null for none.</param>
/// <param name="Loaded">It stands in its kiln already.</param>
public sealed record LoadMoved(string Stack, (string Kiln, DateOnly Day)? Was, (string Kiln, DateOnly Day)? Now, bool Loaded);

/// <summary>What changed between an earlier plan and the plan now, and why: facts that moved, and loads put elsewhere because of them.</summary>
/// <remarks>
/// The earlier plan is worked out from the book as it stood then, and its loads once more under today's facts. The way from then to now falls so in two
/// parts that add up: what the facts did to a promise, and what the plan did about it.
/// </remarks>
/// <param name="Since">Day of the earlier plan.</param>
/// <param name="Entries">Entries written since.</param>
/// <param name="Facts">What moved of all a plan is made from.</param>
/// <param name="Promises">Promises on another day, those that got later first.</param>
/// <param name="Loads">Stacks that go elsewhere.</param>
/// <param name="LateMoneySameLoads">What lateness would count today with the earlier plan's loads.</param>
/// <param name="LateMoney">What it counts now.</param>
/// <method page="docs/methods/kiln-plan.md"/>
public sealed record PlanChanges(
    DateOnly Since, int Entries, IReadOnlyList<FactMoved> Facts, IReadOnlyList<PromiseMoved> Promises, IReadOnlyList<LoadMoved> Loads, decimal LateMoneySameLoads, decimal LateMoney)
{
    /// <summary>True when no promise and no load moved.</summary>
    public bool IsNothing => Promises.Count == 0 && Loads.Count == 0;

    /// <summary>In a sentence.</summary>
    public string Words(DateOnly today)
    {
        var (later, sooner) = (Promises.Count(promise => !promise.IsBetter), Promises.Count(promise => promise.IsBetter));
        List<string> parts = [];
        if (later > 0)
        {
            parts.Add($"{later} {(later == 1 ? "promise" : "promises")} later");
        }

        if (sooner > 0)
        {
            parts.Add($"{sooner} sooner");
        }

        if (Loads.Count > 0)
        {
            parts.Add($"{Loads.Count} {(Loads.Count == 1 ? "stack" : "stacks")} loaded otherwise");
        }

        return $"Since the plan of {(Since == today ? "this morning" : DayWords.Of(Since, today))}: {string.Join(", ", parts)}. What changed and why.";
    }

    /// <summary>The changes; null where the yard of the earlier plan cannot be read any more.</summary>
    public static PlanChanges? Of(YardState state, PlanMade made, KeptPlan before)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(before);
        var then = before.StateThen(state);
        return PlanYard.Of(then, before.Days) is Outcome<PlanYard>.Done(var yard) && Fits(yard.Input, before.Plan)
            ? Of(state, made, then, yard, before)
            : null;
    }

    private static PlanChanges Of(YardState state, PlanMade made, YardState then, PlanYard yard, KeptPlan before)
    {
        var old = PlanOutlook.Of(yard.Input, before.Plan);
        var hand = HandPlan.Of(made.Input, before.Plan.Charges.Where(charge => charge.Started is null).OrderBy(charge => charge.LoadStep).Select(charge => new HandCharge(charge.Kiln, charge.Stacks, Day(yard.Input, charge))));
        var same = PlanOutlook.Of(made.Input, hand.Plan);
        var facts = FactMoved.Between(yard, then, made.Yard, state);
        var loads = LoadsMoved(yard.Input, before.Plan, made.Input, made.Answer.Plan);
        return new(
            then.Today, state.Entries.Count - before.Entries, facts,
            [.. Enumerable.Range(0, made.Input.Orders.Count).Select(order => Moved(made, order, old, before, same, facts, loads)).OfType<PromiseMoved>().OrderBy(moved => moved.IsBetter).ThenBy(moved => moved.Due)],
            loads, same.Score.LateCents / 100m, made.Answer.Outlook.Score.LateCents / 100m);
    }

    private static PromiseMoved? Moved(PlanMade made, int order, PlanOutlook old, KeptPlan kept, PlanOutlook same, IReadOnlyList<FactMoved> facts, IReadOnlyList<LoadMoved> loads)
    {
        var before = kept.Plan;
        var id = made.Input.Orders[order].Id;
        var (was, now) = (old.Orders.FirstOrDefault(one => one.Order == id), made.Answer.Outlook.Orders[order]);
        if (was is not null && was.ReadyHalf == now.ReadyHalf)
        {
            return null;
        }

        var charges = ChargesOf(before, id).Concat(ChargesOf(made.Answer.Plan, id)).ToList();
        var wood = Wood(before, id).Concat(made.ServedBy(order)).ToHashSet(StringComparer.Ordinal);
        if (charges.Count == 0 && was is not null && was.ReadyHalf == kept.Today && now.ReadyHalf == made.Input.Calendar.FirstDay)
        {
            return null; // dry and here both days: ready on whatever day it is asked
        }

        var about = charges.SelectMany(charge => charge.Stacks).Concat(charges.Select(charge => charge.Kiln)).Concat(wood).Append(id).Append(FactMoved.Everything).ToHashSet(StringComparer.Ordinal);
        about.UnionWith(made.Input.Heat.Boilers.Select(boiler => boiler.Id));
        return new(id, made.Yard.Lines[order].Order.Tag, made.Input.Orders[order].Due, was?.ReadyHalf, same.Orders[order].ReadyHalf, now.ReadyHalf, [.. facts.Where(fact => about.Contains(fact.About))], [.. loads.Where(load => wood.Contains(load.Stack))], [.. Wood(before, id).Distinct().Order(StringComparer.Ordinal)], [.. made.ServedBy(order).Order(StringComparer.Ordinal)]);
    }

    private static IReadOnlyList<LoadMoved> LoadsMoved(PlanInput then, Plan before, PlanInput now, Plan after)
    {
        var (was, @is) = (Places(then, before), Places(now, after));
        var waits = then.Stacks.Select(stack => stack.Id).Intersect(now.Stacks.Select(stack => stack.Id)).Order(StringComparer.Ordinal);
        return [.. waits.Select(tag => new LoadMoved(tag, was.GetValueOrDefault(tag)?.Place, @is.GetValueOrDefault(tag)?.Place, @is.GetValueOrDefault(tag)?.Runs ?? false))
            .Where(load => load.Was != load.Now && was.GetValueOrDefault(load.Stack)?.Runs != true && !(load.Loaded && load.Was?.Kiln == load.Now?.Kiln))]; // what stood in a kiln then is out of it by no plan
    }

    private static Dictionary<string, PlaceOf> Places(PlanInput input, Plan plan) =>
        plan.Charges.SelectMany(charge => charge.Stacks.Select(stack => (stack, Place: new PlaceOf((charge.Kiln, Day(input, charge)), charge.Started is not null)))).ToDictionary(one => one.stack, one => one.Place, StringComparer.Ordinal);

    private static IEnumerable<string> Wood(Plan plan, string order) => plan.Servings.Where(serving => serving.Order == order && serving.Quantity.Count > 0.0).Select(serving => serving.Stack);

    private static IEnumerable<Charge> ChargesOf(Plan plan, string order) => Wood(plan, order).ToHashSet(StringComparer.Ordinal) is var wood ? plan.Charges.Where(charge => charge.Stacks.Any(wood.Contains)) : [];

    private static DateOnly Day(PlanInput input, Charge charge) => input.Calendar.DateOf(input.Calendar.DayOf(charge.LoadStep));

    // The book then may hold a correction of something the plan was made from: the plan's own names must still be there.
    private static bool Fits(PlanInput input, Plan plan) =>
        plan.Charges.All(charge => input.Kilns.Any(kiln => kiln.Id == charge.Kiln) && charge.Stacks.All(tag => input.Stacks.Any(stack => stack.Id == tag)) && (charge.Started is null) == input.Started.All(started => started.Id != charge.Started))
        && plan.Servings.All(serving => input.Orders.Any(order => order.Id == serving.Order && order.Wood.Any(wood => wood.Stack == serving.Stack)))
        && PlanCheck.Faults(input, plan, PlanOutlook.Of(input, plan)).Count == 0;

    private sealed record PlaceOf((string Kiln, DateOnly Day) Place, bool Runs);
}
