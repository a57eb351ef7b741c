using System.Globalization;
using Boardwright.Planning;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A load of the owner's plan, and what the worked plan does with the same stacks; or one that only the worked plan has.</summary>
/// <param name="Stacks">The stacks.</param>
/// <param name="Yours">Kiln and days of the owner's plan, with its name; null where it has none.</param>
/// <param name="Worked">What the worked plan does.</param>
/// <param name="Same">Both load the same wood in the same kiln on the same day.</param>
public sealed record LoadBeside(string Stacks, string? Yours, string Worked, bool Same);

/// <summary>An order that the two plans have late by different days.</summary>
/// <param name="Order">Its line in the plan.</param>
/// <param name="OwnDays">Days late by the owner's plan.</param>
/// <param name="WorkedDays">Days late by the worked plan.</param>
public sealed record PromiseBeside(string Order, int OwnDays, int WorkedDays);

/// <summary>The owner's plan and the worked one side by side, under the same forecasts and rules.</summary>
/// <param name="Own">The owner's plan: kilns, company and first days are the owner's, the hours follow.</param>
/// <param name="Worked">The worked plan.</param>
/// <param name="Left">Stacks of the owner's plan that cannot go where they were put.</param>
/// <param name="Loads">Load by load: the owner's by their days, then those that only the worked plan has.</param>
/// <param name="LeftWhy">Why each of those cannot, in a sentence.</param>
/// <method page="docs/methods/kiln-plan.md"/>
public sealed record PlansBeside(PlanTried Own, PlanTried Worked, IReadOnlyList<string> Left, IReadOnlyList<LoadBeside> Loads, IReadOnlyList<string> LeftWhy)
{
    /// <summary>True when every load is the same in both.</summary>
    public bool Agree => Loads.All(load => load.Same);

    /// <summary>Orders that differ.</summary>
    public IReadOnlyList<PromiseBeside> Promises => [.. Own.Outlook.Orders.Zip(Worked.Outlook.Orders, (own, worked) => new PromiseBeside(own.Order, own.LateDays, worked.LateDays)).Where(one => one.OwnDays != one.WorkedDays)];

    /// <summary>Which plan is better for what, and which is followed unless the owner decides.</summary>
    public string Verdict
    {
        get
        {
            string List(string what, IEnumerable<PromiseBeside> which) => string.Join(", ", which.Select(one => $"{one.Order} {Late(one.OwnDays)} by yours, {Late(one.WorkedDays)} by the worked one")) is { Length: > 0 } words ? $" {what}: {words}." : "";
            return string.Create(CultureInfo.InvariantCulture, $"{Compared}{List("Better by the worked plan", Promises.Where(one => one.WorkedDays < one.OwnDays))}{List("Better by yours", Promises.Where(one => one.WorkedDays > one.OwnDays))} {Followed}");
        }
    }

    /// <summary>The same in one sentence.</summary>
    public string Compared => string.Create(CultureInfo.InvariantCulture, $"All orders: {PromisesByPlan.Days(Own.LateDays)} late by yours ({Own.LateMoney:#,0} money), {PromisesByPlan.Days(Worked.LateDays)} by the worked plan ({Worked.LateMoney:#,0}): {Better}.");

    private const string Followed = "Promises are told by the worked plan; a key that loads a kiln offers your load until you take the worked plan over.";

    /// <summary>True where the worked plan keeps promises better, or as well and for less.</summary>
    public bool WorkedIsBetter => (Own.LateMoney, Own.CostMoney).CompareTo((Worked.LateMoney, Worked.CostMoney)) > 0;

    private string Better => (Own.LateMoney - Worked.LateMoney) switch
    {
        > 0m => "the worked plan is the better one for promises",
        < 0m => "yours is the better one for promises",
        _ => Own.CostMoney > Worked.CostMoney ? "the worked plan is the cheaper one" : Own.CostMoney < Worked.CostMoney ? "yours is the cheaper one" : "neither is better",
    };

    /// <summary>What an order that the worked plan has later than the owner's loses, and which orders gain by it; null where it loses nothing.</summary>
    public string? Trade(string order)
    {
        if (Promises.FirstOrDefault(one => one.Order == order && one.WorkedDays > one.OwnDays) is not { } lost)
            return null;
        var gains = Promises.Where(one => one.WorkedDays < one.OwnDays).Select(one => $"{one.Order} by {PromisesByPlan.Days(one.OwnDays - one.WorkedDays)}").ToList();
        return $"By your own plan it is {Late(lost.OwnDays)}, by the worked plan {Late(lost.WorkedDays)}{(gains.Count > 0 ? $"; less late for it: {string.Join(", ", gains)}" : "")}. {Compared}";
    }

    private static string Late(int days) => days > 0 ? $"{PromisesByPlan.Days(days)} late" : "in time";

    // The planner closes a kiln to wood that it cannot dry; what else is left out has no room in its load.
    private static string Why(YardState state, PlanMade made, PlannedCharge own, string tag)
    {
        var (kiln, stack) = (state.Kilns[own.Kiln], state.Stacks[tag]);
        return made.Input.Stacks.FirstOrDefault(one => one.Id == tag)?.DryingTimes.Any(time => time.KilnKind == own.Kiln) == true ? $"{tag} does not fit in {own.Kiln} beside the rest of {own.Tag}."
            : LoadInTheWay.Closed(state, kiln, stack) is { } closed ? $"{closed}."
            : $"{own.Kiln} has no drying time for {tag} that ends within the plan.";
    }

    /// <summary>The two plans; null where the book has no load planned by hand that is still to come.</summary>
    public static PlansBeside? Of(YardState state, PlanMade made) => Of(state, made, SeasonSheet.Of(state, made));

    /// <summary>The same where the plan's sheet is there already.</summary>
    public static PlansBeside? Of(YardState state, PlanMade made, SeasonSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(sheet);
        var own = state.PlannedCharges.Values.Where(charge => !state.Charges.ContainsKey(charge.Tag) && OwnLoad.Waiting(state, charge).Count > 0).OrderBy(charge => charge.InOn).ThenBy(charge => charge.Tag, StringComparer.Ordinal).ToList();
        if (own.Count == 0)
        {
            return null;
        }

        var hand = HandPlan.Of(made.Input, own.Select(charge => new HandCharge(charge.Kiln, OwnLoad.Waiting(state, charge), charge.InOn)));
        var words = hand.Left.Count == 0 ? "Your own plan" : $"Your own plan, without {string.Join(", ", hand.Left)} that cannot go where you put {(hand.Left.Count == 1 ? "it" : "them")}";
        var season = SeasonNow.NotAsked with { Made = made, Sheet = sheet };
        return new(new(words, made.Input, hand.Plan, PlanOutlook.Of(made.Input, hand.Plan)), PlanWhatIf.Worked(made), hand.Left,
        [
            .. own.Select(charge => new LoadBeside(string.Join(", ", OwnLoad.Waiting(state, charge)), $"{charge.Tag}: {charge.Kiln}, {Days(charge.InOn, charge.OutOn, state.Today)}", Sentence(OwnLoad.Worked(state, charge, season)), OwnLoad.Agrees(state, charge, season))),
            .. sheet.Kilns.SelectMany(row => row.Charges).Where(charge => charge.Tag is null && !charge.Stacks.Any(stack => own.Any(one => one.Stacks.Contains(stack.Tag)))).OrderBy(charge => charge.In)
                .Select(charge => new LoadBeside(string.Join(", ", charge.Stacks.Select(stack => stack.Tag)), null, $"{charge.Kiln}, {Days(charge.In.Day(), charge.Out.Day(), state.Today)}", false)),
        ], [.. hand.Left.Select(tag => own.FirstOrDefault(charge => charge.Stacks.Contains(tag)) is { } charge ? Why(state, made, charge, tag) : null).OfType<string>()]);
    }

    private static string Days(DateOnly from, DateOnly to, DateOnly today) => DayWords.Band(from, to, today);

    private static string Sentence(string words) => char.ToUpper(words[0], CultureInfo.InvariantCulture) + words[1..];
}
