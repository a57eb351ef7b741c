using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What is asked before a mix is written: ratio, lots, day, and the wood it is for.</summary>
internal static class PourQuestions
{
    public static IReadOnlyList<Refusal> Of(YardState state, Pour pour, Mass a, Mass b, (string A, string B) lots, DateTime at) =>
        [.. Ratio(state, pour, a, b), .. Lots(state, pour, lots, at), .. Day(pour, at), .. Wood(state, pour)];

    private static IEnumerable<Refusal> Ratio(YardState state, Pour pour, Mass a, Mass b)
    {
        if (PourModel.Resin(state, pour.Plan.Resin) is not Outcome<Casting.Resin>.Done(var resin))
            yield break;
        switch (MixCheck.Of(resin, a, b))
        {
            case Outcome<MixCheck>.Done({ Verdict: MixVerdict.Wrong } check):
                yield return Question.Of("Ratio", $"{check.OffShare * 100.0:+0.0;-0.0} % part B", $"within 5 %: {resin.HardenerPerResin * a.Kilograms:0.00} kg of B for {a.Kilograms:0.00} kg of A. It will not cure: weigh again");
                break;
            case Outcome<MixCheck>.Refused(var reasons):
                yield return reasons[0];
                break;
        }
    }

    private static IEnumerable<Refusal> Lots(YardState state, Pour pour, (string A, string B) lots, DateTime at)
    {
        var stock = state.Resins[pour.Plan.Resin];
        foreach (var (part, counted, lot) in new[] { ("A", stock.PartA, lots.A), ("B", stock.PartB, lots.B) })
        {
            if (counted?.Lot != lot)
                yield return Question.Of($"Lot of part {part}", lot, $"{(counted?.Lot is { } known ? $"{known}, the lot that was counted" : "a lot that was counted")}: {lot} is not in the book. Count it first; kept, it is taken from no other lot's stock");
            else if (counted.ExpiresOn is { } day && day < at.Day())
                yield return Question.Of($"Lot {lot}", $"use by {day:d MMM yyyy}", "a lot in date; test a small cup first");
        }
    }

    private static IEnumerable<Refusal> Day(Pour pour, DateTime at)
    {
        if (pour.Layers.Count == 0 && pour.PourOn > at.Day())
            yield return Question.Of("Another day", $"mixed {at:d MMM}", $"{pour.PourOn:ddd d MMM yyyy}, the day {pour.Tag} is planned for: mixed resin cannot wait, it sets in the bucket");
    }

    // The plan names what the wood is to be on the day; its stack says what it is.
    private static IEnumerable<Refusal> Wood(YardState state, Pour pour) => pour.Layers.Count > 0 ? [] : pour.Plan.Pieces.Select(piece => piece.Stack).OfType<string>().Distinct()
        .Where(state.Stacks.ContainsKey).Select(tag => state.Stacks[tag]).Where(stack => stack.IsHere)
        .Select(stack => (stack.Tag, Now: StackNow.Of(state, stack))).Where(one => one.Now is { } now && WoodForPour.Of(now.Mean).IsTooWet)
        .Select(one => Question.Of($"Wood of {one.Tag}", $"{one.Now!.Mean.Percent:0.0} % now ({one.Now.How})", "6 to 8 %, at most 12 % in any guide; a drier reading of these pieces"));
}
