using System.Globalization;
using Boardwright.Planning;
using Boardwright.Quantities;

namespace Boardwright.Yard.UseCases;

/// <summary>When a stack could serve an order without another load than the worked plan has, and what it serves there already: read by every page that offers wood.</summary>
/// <param name="Stack">The stack.</param>
/// <param name="Kiln">The kiln the worked plan has it in; null where it has it in none.</param>
/// <param name="On">Ready for the order, planing included, as often as not: by the worked plan, or with the yard to itself where that has it in no kiln and it needs one. Null where it is not ready within the plan.</param>
/// <param name="LateDays">Days after the order's day; 0 for in time.</param>
/// <param name="InPlan">False where only the yard to itself would have it ready.</param>
/// <param name="Serves">Orders it serves in the worked plan, this one aside.</param>
/// <param name="SpareBf">Board feet it likely yields beyond what those take.</param>
public sealed record WorkedReady(string Stack, string? Kiln, DateOnly? On, int LateDays, bool InPlan, IReadOnlyList<string> Serves, double SpareBf)
{
    /// <summary>The day it is told on.</summary>
    public required DateOnly Today { get; init; }


    /// <summary>The day of a stack for an order of the plan.</summary>
    /// <param name="made">The worked plan.</param>
    /// <param name="order">The order's place in its input.</param>
    /// <param name="wood">The stack, as the order would take it.</param>
    public static WorkedReady Of(PlanMade made, int order, OrderWood wood)
    {
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(wood);
        var asked = made.Input.Orders[order] with { Wood = [wood], Quantity = BoardFeet.From(1.0) };
        var charge = made.Answer.Plan.Charges.FirstOrDefault(one => one.Stacks.Contains(wood.Stack));
        var inPlan = charge is not null || !wood.Kilned;
        var on = inPlan
            ? PlanOutlook.Of(made.Input with { Orders = [asked] }, made.Answer.Plan with { Servings = [new(asked.Id, wood.Stack, asked.Quantity)] }).Orders[0].ReadyHalf
            : EarliestPromise.Of(made.Input, asked).Half;
        var others = made.Answer.Plan.Servings.Where(one => one.Stack == wood.Stack && one.Order != asked.Id && one.Quantity.Count > 0.0).ToList();
        return new(wood.Stack, charge?.Kiln, on, on is { } day ? Math.Max(0, day.DayNumber - asked.Due.DayNumber) : 0, inPlan, [.. others.Select(one => one.Order).Distinct()],
            Math.Max(0.0, made.Yard.Yields[wood.Stack].Likely - others.Sum(one => one.Quantity.Count)))
        { Today = made.Input.Calendar.FirstDay };
    }

    /// <summary>"By the worked plan it comes out of K1 and is ready about 12 Dec. It serves O-310 too."</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"{Day}{(Serves.Count > 0 ? $" It serves {string.Join(", ", Serves)} too: that is taken off." : "")}");

    private string Day => (On, InPlan, Kiln) switch
    {
        (null, _, _) => "It is not ready within the plan.",
        ({ } on, false, _) => string.Create(CultureInfo.InvariantCulture, $"The worked plan has it in no kiln; with the yard to itself it is ready about {DayWords.Of(on, Today)}, and other loads move for it."),
        ({ } on, _, { } kiln) => string.Create(CultureInfo.InvariantCulture, $"By the worked plan it comes out of {kiln} and is ready about {DayWords.Of(on, Today)}."),
        ({ } on, _, null) => string.Create(CultureInfo.InvariantCulture, $"It needs no kiln and is ready about {DayWords.Of(on, Today)}."),
    };
}
