using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes that resin went into a mould.</summary>
public static class PourFill
{
    /// <param name="book">The book.</param>
    /// <param name="tag">The pour's.</param>
    /// <param name="depth">Depth of this layer, mm; empty for all that is still to be poured.</param>
    /// <param name="by">Who poured.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, string? depth, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var poured = read.Millimetres("Depth poured, mm", depth);
        if (poured is { Millimetres: < 1.0 or > 500.0 })
            read.Refuse("Depth poured, mm", depth, "1 to 500 mm");
        if (book.State.Pours.TryGetValue(tag, out var pour))
            PourSign.Demand(pour, read);
        if (pour is { Mixes.Count: 0 })
            read.Refuse(tag, "nothing weighed yet", "a pour whose mix was weighed and written: its lots and ratio have to be known");
        if (read.Refusals.Count == 0 && pour is not null && !key.IsKept(book.State))
            Deep(book.State, pour, poured?.Millimetres, depth, read.Time(book, key), read);
        var who = read.By(book.State, by);
        return read.Then(() => key.Write(book, who, new Poured(tag, poured?.Millimetres)));
    }

    private static void Deep(YardState state, Pour pour, double? mm, string? typed, DateTime at, Typed read)
    {
        if (PourBucket.Of(state, pour, at) is { Liquid.Count: 0, Set: [.., var set] })
            read.Refuse(pour.Tag, $"a mix of {set.At:d MMM HH:mm}", $"a fresh mix: that one has set in the bucket, past {state.Resins[pour.Plan.Resin].Label.GelHours:0} h");
        else if (PourLayers.Of(state, pour) is Outcome<PourLayers>.Done(var layers))
            layers.Demand(pour, "Depth poured, mm", string.IsNullOrWhiteSpace(typed) ? $"nothing, so all of {pour.LeftMm:0} mm" : $"{mm:0.#} mm", mm ?? pour.LeftMm, at, read);
    }
}
