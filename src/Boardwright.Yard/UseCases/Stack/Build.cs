using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Boards of one log on a new stack, as typed.</summary>
public sealed record SawnTyped(string? Log, string? Bf, string? Pieces);

/// <summary>A new stack's card as typed.</summary>
/// <param name="Tag">What is written on it.</param>
/// <param name="Species">The wood; empty takes that of the first log.</param>
/// <param name="Thickness">Such as 4/4; 27 mm = 4/4 where it was measured, which is kept as the sawn thickness.</param>
/// <param name="Product">A word of <see cref="Book.Facts.Product"/>.</param>
/// <param name="Grain">A word of <see cref="Book.Facts.Grain"/>.</param>
/// <param name="Place">Where it lies.</param>
/// <param name="Owner">Whose it is; empty for the logs' owner.</param>
/// <param name="Logs">What was sawn onto it; rows left empty do not count.</param>
/// <param name="Bf">Its tally where no log is named.</param>
/// <param name="Pieces">Pieces where no log is named.</param>
/// <param name="By">Who writes it.</param>
public sealed record StackTyped(
    string? Tag, string? Species, string? Thickness, string? Product, string? Grain, string? Place, string? Owner, IReadOnlyList<SawnTyped> Logs, string? Bf, string? Pieces, string? By);

/// <summary>Writes a new stack and the logs sawn onto it, all or nothing.</summary>
public static class StackBuild
{
    /// <summary>The next free tag: one of the phone's own, else the one after all that are used or set aside.</summary>
    public static string NextTag(YardState state, string? phone = null) => TagNumbers.Next(state, TagNumbers.Stacks, phone);

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, StackTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        var tag = read.Named("Stack", typed.Tag, "a tag, such as " + NextTag(state));
        if (state.Stacks.ContainsKey(tag))
            read.Refuse("Stack", tag, $"a tag that is not in use, such as {NextTag(state, key.Phone)}");
        read.Refuse(TagNumbers.Fault(state, "Stack", tag, key.Phone));
        var logs = typed.Logs.Where(row => !string.IsNullOrWhiteSpace(row.Log)).Select(row => Sawn(state, read, tag, row)).ToList();
        var first = logs.Count > 0 ? state.Logs.GetValueOrDefault(logs[0].Log) : null;
        var species = string.IsNullOrWhiteSpace(typed.Species) ? first?.Species.CommonName ?? "" : Species(read, typed.Species);
        if (species.Length == 0)
            read.Refuse("Wood", typed.Species, "a wood, or a log whose wood it is");
        var quarters = read.Take(QuartersTyped.Of(state, "Thickness", typed.Thickness), NominalThickness.FromQuarters(4)).Quarters;
        var sawn = QuartersTyped.SizeBefore(typed.Thickness);
        var (product, grain) = (Word<Product>(read, "Product", typed.Product), Word<Grain>(read, "Grain", typed.Grain));
        var place = read.Named("Place", typed.Place, string.Join(", ", state.Places.Keys));
        if (place.Length > 0 && !state.Places.ContainsKey(place))
            read.Refuse("Place", place, string.Join(", ", state.Places.Keys));
        var by = read.By(state, typed.By);
        var bf = logs.Count > 0 ? (double?)null : read.Number("Footage", typed.Bf, 1.0, 1e5, "1 to 100000 bf, or the logs it was sawn from");
        var pieces = logs.Count > 0 || string.IsNullOrWhiteSpace(typed.Pieces) ? (int?)null : read.Whole("Pieces", typed.Pieces, 1, 10000);
        var at = read.Time(book, key);
        return read.Then(() =>
        {
            var owner = !string.IsNullOrWhiteSpace(typed.Owner) ? typed.Owner.Trim() : first?.Owner ?? "mill";
            return book.Write(
            [
                new NewEntry(by, new StackBuilt(tag, species, quarters, product, at.Day(), place, owner, bf, pieces, grain, sawn?.Millimetres), at, AsEntered: sawn is null ? null : new Dictionary<string, string>(StringComparer.Ordinal) { ["thickness_quarters"] = typed.Thickness!.Trim() }, Id: key.Id),
                .. logs.Select((log, index) => new NewEntry(by, new LogSawn(log.Log, [new SawnInto(tag, log.Bf, log.Pieces)]), at, Id: key.Numbered(index + 1))),
            ]);
        });
    }

    private static (string Log, double Bf, int Pieces) Sawn(YardState state, Typed read, string tag, SawnTyped row)
    {
        var log = row.Log!.Trim();
        if (!state.Logs.TryGetValue(log, out var known))
            read.Refuse("Log", log, $"a log of the yard: {NearestNames.Of(log, [.. state.Logs.Keys])}");
        else if (known.IsSawn)
            read.Refuse("Log", log, $"a log that is not sawn; it went to {string.Join(", ", known.Into.Select(into => into.Stack))}");
        return (log, read.Number($"Footage of {log}", row.Bf, 1.0, 1e4, "1 to 10000 bf"), read.Whole($"Pieces of {log}", row.Pieces, 1, 1000));
    }

    private static string Species(Typed read, string text)
    {
        if (SpeciesTable.Find("Wood", text) is Outcome<Species>.Done(var species))
            return species.CommonName;
        read.Refuse("Wood", text, "a wood of the species table, such as black cherry");
        return text;
    }

    private static T Word<T>(Typed read, string what, string? text)
        where T : struct, Enum
    {
        if (string.IsNullOrWhiteSpace(text))
            return default;
        if (Enum.TryParse<T>(text, ignoreCase: true, out var value))
            return value;
        read.Refuse(what, text, string.Join(", ", Enum.GetNames<T>().Select(name => name.ToLowerInvariant())));
        return default;
    }
}
