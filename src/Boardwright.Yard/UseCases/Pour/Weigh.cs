using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>The weighings of a mix, as typed.</summary>
/// <param name="PartA">kg.</param>
/// <param name="PartB">kg.</param>
/// <param name="Buckets">How many.</param>
/// <param name="MinutesEach">Stirred, each.</param>
/// <param name="LotA">Of part A.</param>
/// <param name="LotB">Of part B.</param>
/// <param name="By">Who weighed.</param>
/// <param name="Keep">True to write what was asked about as it is.</param>
public sealed record MixTyped(string? PartA, string? PartB, string? Buckets, string? MinutesEach, string? LotA, string? LotB, string? By, bool Keep = false);

/// <summary>Writes a mix. Both lots have to be named; weighings off ratio, a lot that is old or not in the book, another day than planned and wood still wet are asked about before they are written; a layer too deep is not written.</summary>
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
        var at = read.Time(book, key);
        if (key.IsKept(state))
            return read.Then(() => key.Write(book, by, new ResinMixed(tag, a.Kilograms, b.Kilograms, buckets, minutes, lotA, lotB))); // it came again: nothing is judged or written twice
        if (read.Refusals.Count == 0 && pour is not null)
            Layer(state, pour, a + b, at, read);
        if (pour is not null && read.Refusals.Count == 0)
            PourSign.Demand(pour, read);
        if (read.Refusals.Count == 0 && !typed.Keep && pour is not null && PourQuestions.Of(state, pour, a, b, (lotA, lotB), at) is { Count: > 0 } questions)
            return new Outcome<IReadOnlyList<Entry>>.Refused(questions);
        return read.Then(() => key.Write(book, by, new ResinMixed(tag, a.Kilograms, b.Kilograms, buckets, minutes, lotA, lotB),
            new Dictionary<string, string>(StringComparer.Ordinal) { ["part_a_kg"] = typed.PartA!, ["part_b_kg"] = typed.PartB! }));
    }

    // What stands mixed in other buckets goes into the same layer.
    private static void Layer(YardState state, Pour pour, Mass mixed, DateTime at, Typed read)
    {
        var all = mixed + PourBucket.Of(state, pour, at).LiquidMass;
        if (PourLayers.Of(state, pour) is Outcome<PourLayers>.Done(var layers) && PourLayers.Fills(state, pour, all) is Outcome<double>.Done(var mm))
            layers.Demand(pour, "Depth in one layer", $"{all.Kilograms:0.00} kg, which fill {mm:0} mm", mm, at, read);
    }
}
