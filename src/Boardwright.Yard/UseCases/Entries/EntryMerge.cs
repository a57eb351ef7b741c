using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Fields typed on a form, held against the entry as its writer saw it and as it stands now.</summary>
/// <param name="Taken">Fields nobody else changed meanwhile: they are corrected.</param>
/// <param name="Beside">Fields somebody else gave another value meanwhile: both are kept until one is chosen.</param>
internal sealed record EntryMerge(IReadOnlyDictionary<string, string> Taken, IReadOnlyList<(string Field, string Value)> Beside)
{
    /// <summary>Parts them.</summary>
    /// <param name="versions">Of the entry, oldest first.</param>
    /// <param name="stands">What stands now.</param>
    /// <param name="seen">What stood when the form was opened.</param>
    /// <param name="by">Who typed.</param>
    /// <param name="values">As typed, by field; a form sends what was not touched as it was shown.</param>
    public static Outcome<EntryMerge> Of(IReadOnlyList<Entry> versions, Entry stands, Entry seen, string? by, IReadOnlyDictionary<string, string> values)
    {
        if (seen.Number == stands.Number)
            return new EntryMerge(values, []);
        var now = EntryCorrect.Fields(stands).ToDictionary(field => field.Key, StringComparer.Ordinal);
        var taken = new Dictionary<string, string>(StringComparer.Ordinal);
        var beside = new List<(string, string)>();
        foreach (var field in EntryCorrect.Fields(seen))
        {
            if (!values.TryGetValue(field.Key, out var given) || given.Trim() == field.Value || !now.TryGetValue(field.Key, out var standing))
                continue;
            var typed = EntryCorrect.WithUnit(given.Trim(), field.Unit);
            var isAsSeen = EntryCorrect.WithUnit(standing.Value, standing.Unit) == EntryCorrect.WithUnit(field.Value, field.Unit);
            if (isAsSeen || Said(versions, stands, field.Key).By == by)
                taken[field.Key] = typed;
            else if (typed != EntryCorrect.WithUnit(standing.Value, standing.Unit))
                beside.Add((field.Key, typed));
        }

        return new EntryMerge(taken, beside);
    }

    /// <summary>The version that gave a field the value that stands.</summary>
    public static Entry Said(IReadOnlyList<Entry> versions, Entry stands, string field)
    {
        var shown = versions.Where(version => version.Number <= stands.Number).Select(version => (Version: version, Field: EntryCorrect.Fields(version).FirstOrDefault(one => one.Key == field)))
            .Where(one => one.Field is not null).Select(one => (one.Version, Value: EntryCorrect.WithUnit(one.Field!.Value, one.Field.Unit))).ToList();
        var last = shown.Count - 1;
        while (last > 0 && shown[last].Value == shown[last - 1].Value)
            last--;
        return last >= 0 ? shown[last].Version : stands;
    }
}
