using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>The weighings of a mix, as typed.</summary>
/// <param name="PartA">kg.</param>
/// <param name="PartB">kg.</param>
/// <param name="Buckets">How many.</param>
/// <param name="MinutesEach">Stirred, each.</param>
/// <param name="LotA">Of part A.</param>
/// <param name="LotB">Of part B.</param>
/// <param name="By">Who weighed.</param>
/// <param name="AsWeighed">True to write weighings that are off ratio, as they were.</param>
public sealed record MixTyped(string? PartA, string? PartB, string? Buckets, string? MinutesEach, string? LotA, string? LotB, string? By, bool AsWeighed);

/// <summary>Writes a mix. Both lots have to be named; weighings off ratio or an old lot are asked about before they are written.</summary>
public static class PourWeigh
{
    /// <summary>Writes it, or says why not.</summary>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, MixTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var state = book.State;
        var read = new Typed();
        var (a, b) = (read.Mass("Part A, kg", typed.PartA), read.Mass("Part B, kg", typed.PartB));
        var buckets = read.Whole("Buckets", typed.Buckets, 1, 40);
        var minutes = read.Whole("Minutes stirred, each", typed.MinutesEach, 1, 60);
        var lotA = read.Named("Lot of part A", typed.LotA, "the lot on the can; an unlabelled can is not poured");
        var lotB = read.Named("Lot of part B", typed.LotB, "the lot on the can; an unlabelled can is not poured");
        var by = read.By(state, typed.By);
        var pour = state.Pours.GetValueOrDefault(tag);
        if (read.Refusals.Count == 0 && !typed.AsWeighed && pour is not null)
            Question(state, pour.Plan.Resin, a, b, lotA, lotB, read);
        if (pour is not null)
            PourSign.Demand(pour, read);
        return read.Then(() => key.Write(book, by, new ResinMixed(tag, a.Kilograms, b.Kilograms, buckets, minutes, lotA, lotB),
            new Dictionary<string, string>(StringComparer.Ordinal) { ["part_a_kg"] = typed.PartA!, ["part_b_kg"] = typed.PartB! }));
    }

    private static void Question(YardState state, string name, Mass a, Mass b, string lotA, string lotB, Typed read)
    {
        if (PourModel.Resin(state, name) is not Outcome<Casting.Resin>.Done(var resin))
            return;
        switch (MixCheck.Of(resin, a, b))
        {
            case Outcome<MixCheck>.Done({ Verdict: MixVerdict.Wrong } check):
                read.Refuse("Ratio", $"{check.OffShare * 100.0:+0.0;-0.0} % part B", $"within 5 %: {resin.HardenerPerResin * a.Kilograms:0.00} kg of B for {a.Kilograms:0.00} kg of A. It will not cure: weigh again, or tick \"as weighed\"");
                break;
            case Outcome<MixCheck>.Refused(var reasons):
                read.Refuse(reasons[0].What, reasons[0].Given, reasons[0].Accepted);
                break;
        }

        var stock = state.Resins[name];
        foreach (var (part, lot) in new[] { (stock.PartA, lotA), (stock.PartB, lotB) })
        {
            if (part is { ExpiresOn: { } day } && part.Lot == lot && day < state.Today)
                read.Refuse($"Lot {lot}", $"use by {day:d MMM yyyy}", "a lot in date; test a small cup first, or tick \"as weighed\"");
        }
    }
}
