using System.Globalization;
using Boardwright.Planning;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>A load of the owner's plan, and what the worked plan does with the same stacks; or one that only the worked plan has.</summary>
/// <param name="Stacks">The stacks.</param>
/// <param name="Yours">Kiln and days of the owner's plan, with its name; null where it has none.</param>
/// <param name="Worked">What the worked plan does.</param>
/// <param name="Same">Both load the same wood in the same kiln on the same day.</param>
public sealed record LoadBeside(string Stacks, string? Yours, string Worked, bool Same);

/// <summary>The owner's plan and the worked one side by side, under the same forecasts and rules.</summary>
/// <param name="Own">The owner's plan: kilns, company and first days are the owner's, the hours follow.</param>
/// <param name="Worked">The worked plan.</param>
/// <param name="Left">Stacks of the owner's plan that cannot go where they were put.</param>
/// <param name="Loads">Load by load: the owner's by their days, then those that only the worked plan has.</param>
/// <method page="docs/methods/kiln-plan.md"/>
public sealed record PlansBeside(PlanTried Own, PlanTried Worked, IReadOnlyList<string> Left, IReadOnlyList<LoadBeside> Loads)
{
    /// <summary>True when every load is the same in both.</summary>
    public bool Agree => Loads.All(load => load.Same);

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
        ]);
    }

    private static string Days(DateOnly from, DateOnly to, DateOnly today) => DayWords.Band(from, to, today);

    private static string Sentence(string words) => char.ToUpper(words[0], CultureInfo.InvariantCulture) + words[1..];
}
