using Boardwright.Quantities;
using Boardwright.Yard.Book.Lineage;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Where a log, stack, charge, pack or load came from and what it became, with cost so far.</summary>
public static class LogHistory
{
    public static Command Command { get; } = Command.Of("log", "history", "Where a log, stack, charge, pack or load came from, what it became, and what it has cost", Run) with
    {
        Argument = new("TAG", "what is written on it, such as L-012, S-07, D-41, P-118"),
        Options = BookPlace.Options,
        Examples = ["log history S-07 --yard demonstration", "log history P-118 --yard demonstration"],
    };

    /// <summary>One form of the wood; footage is what belongs to this history of all it held.</summary>
    public sealed record Step(string Tag, string Form, DateOnly On, double PartBf, double AllBf, double? McPct, double? CostMoneyPerBf, bool Asked);

    public sealed record Cost(string Kind, double CostMoney);

    /// <summary>Something that would have to be looked at if the species were wrong.</summary>
    public sealed record Rests(string Tag, string Kind, string What);

    public sealed record Answer(
        string Tag, IReadOnlyList<Step> Steps, double CostInAllMoney, double? CostEachMoneyPerBf, double CountedOverBf, IReadOnlyList<Cost> Costs, IReadOnlyList<string> NotOnRecord, IReadOnlyList<Rests> RestsOnSpecies);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        if (ask.Book()?.State is not { } state)
            return ask.Refused<Answer>();
        return WoodHistory.Of(state, ask.Argument!).Then<Answer>(history => new Answer(
            history.Tag, [.. history.Steps.Select(Shown)], history.Cost.Money, CostRules.PerBoardFoot(history.Cost.Money, history.CostBf), history.CostBf,
            [.. history.Cost.Lines.Select(line => new Cost(line.What, line.Money))], history.Cost.Missing,
            SpeciesTouches.Of(state, history.Tag) is Outcome<IReadOnlyList<Touch>>.Done(var touches) ? [.. touches.Select(touch => new Rests(touch.Tag, touch.Kind, touch.Words))] : []));
    }

    private static Step Shown(HistoryStep step) => new(
        step.Step.Tag, Words(step.Step.Form), DateOnly.FromDateTime(step.Step.At), step.PartBf, step.Step.Bf, step.Step.Moisture?.Percent, step.MoneyPerBf, step.IsSelf);

    private static string Words(WoodForm form) => form switch
    {
        WoodForm.InKiln => "in a kiln",
        WoodForm.FromKiln => "out of a kiln",
        _ => form.ToString().ToLowerInvariant(),
    };
}
