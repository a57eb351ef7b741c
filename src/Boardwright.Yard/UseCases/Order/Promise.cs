using System.Globalization;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Whether a new order could be promised beside those that are: from what the plan dries anyway, and from wood that could be dried for it.</summary>
/// <param name="Answer">Yes, likely or no.</param>
/// <param name="Words">The answer in a sentence.</param>
/// <param name="Likely">Ready as often as not; null when there is not enough wood.</param>
/// <param name="Late">Ready nine times in ten.</param>
/// <param name="Stacks">Wood it would take, each with its board feet.</param>
/// <param name="SpareBf">Board feet there are beyond the asked; negative when wood is missing.</param>
/// <param name="PlanMoves">True when a kiln has to be found for it: other promises may move.</param>
public sealed record PromiseAnswer(Answer Answer, string Words, DateOnly? Likely, DateOnly? Late, IReadOnlyList<(string Stack, double Bf)> Stacks, double SpareBf, bool PlanMoves)
{
    /// <summary>The answer for boards of the mill.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="made">The plan of the kilns.</param>
    /// <param name="species">Common name.</param>
    /// <param name="thickness">Rough thickness, such as 4/4.</param>
    /// <param name="footage">Board feet, such as 300bf.</param>
    /// <param name="by">Day, year-month-day.</param>
    public static Outcome<PromiseAnswer> Of(YardState state, PlanMade made, string species, string thickness, string footage, string by)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        var calendar = made.Input.Calendar;
        var lastDay = calendar.DateOf(calendar.Days - 1);
        return SpeciesTable.Find("wood", species).Then(wood => QuartersTyped.Of(state, "thickness", thickness).Then(quarters => Read.Number("board feet", footage.Replace("bf", "", StringComparison.OrdinalIgnoreCase).Trim()).Then(bf =>
            bf is not (> 0.0 and <= 1e6) ? new Refusal("board feet", footage, "more than 0, at most 1000000")
            : !DateOnly.TryParseExact(by, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var due) || due < state.Today || due > lastDay
                ? new Refusal("by", by, $"a day of the plan, {state.Today:yyyy-MM-dd} to {lastDay:yyyy-MM-dd}")
                : (Outcome<PromiseAnswer>)Answered(state, made, wood, quarters, bf, due))));
    }

    private static PromiseAnswer Answered(YardState state, PlanMade made, Species species, NominalThickness thickness, double bf, DateOnly due)
    {
        var (left, planMoves) = (bf, false);
        DateOnly? likely = null, late = null;
        var stacks = new List<(string, double)>();
        foreach (var (tag, spare, half, most, planned) in Wood(state, made, species, thickness))
        {
            if (left > 0.0)
            {
                var taken = Math.Min(left, spare);
                left -= taken;
                stacks.Add((tag, taken));
                likely = half is null || likely > half ? likely : half;
                late = most is null || late > most ? late : most;
                planMoves |= !planned;
            }
        }

        var all = Wood(state, made, species, thickness).Sum(one => one.Spare);
        if (left > 0.0)
        {
            return new(Answer.No, Say($"No: {bf:#,0} bf are asked, {(all < 1.0 ? "none" : $"{all:#,0} bf")} of {species.CommonName} {thickness} is free and dry within the plan. What stands in the yard is kept, shaky, or too wet till then: offer another thickness or wood, or ask for a day after the plan’s end."), null, null, stacks, all - bf, planMoves);
        }

        var moves = planMoves ? " A kiln has to be found for it: other promises may move." : " The plan dries it anyway.";
        moves += Behind(state, made, [.. stacks.Select(one => one.Item1)]);
        return late <= due ? new(Answer.Yes, Say($"Yes: ready by {DayWords.Of(late, state.Today)} nine times in ten.{moves}"), likely, late, stacks, all - bf, planMoves)
            : likely <= due ? new(Answer.Likely, Say($"Likely: ready on {DayWords.Of(likely, state.Today)} as often as not, by {DayWords.Of(late, state.Today)} nine times in ten.{moves}"), likely, late, stacks, all - bf, planMoves)
            : new(Answer.No, Say($"No: not before {DayWords.Of(likely, state.Today)}, {DayWords.Of(late, state.Today)} to be sure.{moves}"), likely, late, stacks, all - bf, planMoves);
    }

    // Wood that is advised behind an order that may fall short is sold with open eyes.
    private static string Behind(YardState state, PlanMade made, HashSet<string> stacks) =>
        string.Concat(OrderCover.All(state, made, SeasonSheet.Of(state, made)).Values.Where(cover => stacks.Contains(cover.Stack))
            .Select(cover => $" {cover.Stack} is the stack to put behind {cover.Order}, which may fall short: settle that first."));

    // Wood of the mill that is kept for nobody, the soonest first; not what is left of a stack whose own order may come short: out of a charge of the plan, or with a kiln of its own.
    private static List<(string Tag, double Spare, DateOnly? Half, DateOnly? Most, bool Planned)> Wood(YardState state, PlanMade made, Species species, NominalThickness thickness)
    {
        var calendar = made.Input.Calendar;
        var found = new List<(string, double, DateOnly? Half, DateOnly?, bool)>();
        var shaky = Enumerable.Range(0, made.Input.Orders.Count).Where(order => OrderCover.MayFallShort(state, made, order)).SelectMany(made.ServedBy).ToHashSet(StringComparer.Ordinal);
        foreach (var planned in made.Input.Stacks)
        {
            var stack = state.Stacks[planned.Id];
            var spare = made.Yard.Yields[planned.Id].Likely - made.Answer.Plan.Servings.Where(serving => serving.Stack == planned.Id).Sum(serving => serving.Quantity.Count);
            if (stack is not { Owner: "mill", NeverKiln: false, Product: Product.Boards } || stack.Species != species || stack.Thickness != thickness || stack.ReservedFor is not (null or "stock") || shaky.Contains(planned.Id) || spare < 1.0)
            {
                continue;
            }

            if (made.Answer.Outlook.Charges.FirstOrDefault(charge => charge.Charge.Stacks.Contains(planned.Id)) is { } charge)
            {
                found.Add((planned.Id, spare, calendar.TimeOf(charge.EmptyAt).Day(), calendar.TimeOf(Math.Max(charge.EmptyAt, charge.DryAtMost)).Day(), true));
            }
            else
            {
                var kilned = stack.Stage is BookState.StackStage.AirDrying or BookState.StackStage.InKiln;
                var alone = EarliestPromise.Of(made.Input, new Order("asked", calendar.DateOf(calendar.Days - 1), BoardFeet.From(1.0), [new(planned.Id, kilned, 0m)], 0, 3, 0m));
                if (alone.Half is not null)
                {
                    found.Add((planned.Id, spare, alone.Half, alone.Most ?? calendar.DateOf(calendar.Days), false));
                }
            }
        }

        return [.. found.OrderBy(one => one.Half)];
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
