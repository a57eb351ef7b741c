using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book;

/// <summary>Which version of each entry stands. Nothing is removed: a correction takes the place of the entry it names.</summary>
public static class Corrections
{
    /// <summary>The standing entries with the number of the place they stand in, in the order things happened.</summary>
    /// <remarks>
    /// The newest correction of an entry that was not itself withdrawn stands in its place; an entry corrected by a withdrawal does not stand.
    /// How the yard is set up comes first. Then order is by the time of happening, then by place: phones without signal send late, and what
    /// happened first comes first.
    /// </remarks>
    public static IReadOnlyList<(long Place, Entry Entry)> Standing(IReadOnlyList<Entry> entries)
    {
        var correctors = entries.Where(e => e.Corrects is not null).ToLookup(e => e.Corrects!.Value);
        return [.. entries.Where(e => e.Corrects is null)
            .Select(e => (Place: e.Number, Entry: Version(e, correctors)))
            .Where(e => e.Entry is not null)
            .Select(e => (e.Place, e.Entry!))
            .OrderBy(e => e.Item2.Fact is SetupFact ? 0 : 1).ThenBy(e => e.Item2.HappenedAt).ThenBy(e => e.Place)];
    }

    /// <summary>All versions of the entry in a place, oldest first: the record behind the corrected view.</summary>
    public static IReadOnlyList<Entry> Versions(IReadOnlyList<Entry> entries, long place)
    {
        var found = new HashSet<long> { place };
        return [.. entries.Where(e => e.Number == place || (e.Corrects is { } old && found.Contains(old) && found.Add(e.Number)))];
    }

    private static Entry? Version(Entry entry, ILookup<long, Entry> correctors)
    {
        foreach (var corrector in correctors[entry.Number].Reverse())
        {
            if (Version(corrector, correctors) is { } standing)
                return standing.Fact is Withdrawn ? null : standing;
        }

        return entry;
    }
}
