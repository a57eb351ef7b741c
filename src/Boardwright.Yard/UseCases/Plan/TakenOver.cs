using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>The worked plan as it was taken over last: what was struck through, what was written, and the way back.</summary>
/// <param name="Entries">The entries it wrote.</param>
/// <param name="Struck">Loads of the owner's that it took out.</param>
/// <param name="Written">Loads it put in their place.</param>
public sealed record PlanTakenOver(IReadOnlyList<Entry> Entries, IReadOnlyList<ChargePlanned> Struck, IReadOnlyList<ChargePlanned> Written)
{
    /// <summary>Who, when and how much, in a sentence.</summary>
    public string Words => $"Done: {Entries[0].By} took the worked plan over, {Entries[^1].HappenedAt:d MMM HH:mm}. {Count(Written.Count)} written, {Count(Struck.Count)} struck through.";

    /// <summary>The last time; null where it never was, where it was taken back or planned over since, and where one of its loads is in a kiln.</summary>
    public static PlanTakenOver? Last(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var all = state.Entries.Where(entry => entry.Reason == PlanTakeOver.Reason).ToList();
        if (all is not [.., var last])
            return null;
        var entries = all.Where(entry => entry.By == last.By && entry.WrittenAtUtc == last.WrittenAtUtc).ToList();
        var numbers = entries.Select(entry => entry.Number).ToHashSet();
        var written = entries.Select(entry => entry.Fact).OfType<ChargePlanned>().ToList();
        return state.Entries.Any(entry => entry.Corrects is { } old && numbers.Contains(old)) || written.Any(load => state.Charges.ContainsKey(load.Charge))
            ? null
            : new(entries, [.. entries.Where(entry => entry.Fact is Withdrawn).Select(entry => Corrected(state, entry.Corrects!.Value)).OfType<ChargePlanned>()], written);
    }

    /// <summary>Takes it back: a correction for each entry, so that the loads struck through stand again. All or none.</summary>
    public Outcome<IReadOnlyList<Entry>> TakeBack(YardBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Write([.. Entries.Reverse().Select(entry => new NewEntry(entry.By, new Withdrawn(), null, entry.Number, "the worked plan was given back"))]);
    }

    // The version that stood before it was struck through.
    private static Fact Corrected(YardState state, long place) => Corrections.Versions(state.Entries, place).Last(version => version.Fact is not Withdrawn).Fact;

    private static string Count(int loads) => loads == 1 ? "1 load" : $"{loads} loads";
}
