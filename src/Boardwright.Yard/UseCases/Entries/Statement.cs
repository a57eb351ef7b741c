using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Facts of which the last one holds: a price, a promise, whom a stack is kept for. Two people who did not know of each other may say two things of one; what merely happened (a reading, a move, a weight) both keep.</summary>
internal static class Statement
{
    /// <summary>The standing entry in which somebody else said something of the same thing after an entry that this writer has seen; null where nobody did.</summary>
    public static Entry? Unseen(YardState state, Fact fact, long seen, string by)
    {
        if (Thing(fact) is not { } thing)
            return null;
        var since = state.Entries.Skip((int)Math.Min(seen, state.Entries.Count)).Where(entry => entry.By != by && Thing(entry.Fact) == thing).Select(entry => entry.Number).ToHashSet();
        return since.Count == 0 ? null : Corrections.Standing(state.Entries).Select(one => one.Entry).LastOrDefault(entry => since.Contains(entry.Number));
    }

    /// <summary>The entries that lay what a fact says beside what stands, a field each; what both say needs none.</summary>
    public static Outcome<IReadOnlyList<NewEntry>> Beside(Entry stands, Fact fact, string by, DateTime at, PostedKey key)
    {
        var (theirs, ours) = (Fields(stands), Fields(stands with { Fact = fact, AsEntered = null }));
        if (!theirs.Keys.ToHashSet().SetEquals(ours.Keys) || Lists(stands.Fact) != Lists(fact))
            return new Refusal("Changed meanwhile", EntryWords.Of(fact), $"a form that knows what {stands.By} wrote since it was opened: {EntryWords.Of(stands.Fact)} Open it again");
        var differ = ours.Where(pair => pair.Value != theirs[pair.Key]).ToList();
        return new Outcome<IReadOnlyList<NewEntry>>.Done(differ.Count == 0
            ? [new NewEntry(by, new NoteWritten($"The same as entry {stands.Number}, said by two.", EntryWords.About(fact)), at, Id: key.Id)]
            : [.. differ.Select((pair, index) => new NewEntry(by, new ValueBeside(stands.Number, pair.Key, pair.Value), at, Id: index == 0 ? key.Id : key.Numbered(index)))]);
    }

    // The kind and what it is about, where a later one takes the place of an earlier.
    private static string? Thing(Fact fact) => fact switch
    {
        StackReserved f => $"kept {f.Stack}",
        StackCounted f => $"counted {f.Stack}",
        MetalScanned f => $"scanned {f.Log}",
        EquipmentPromised f => $"back {f.Equipment}",
        OrderAnswered f => Line("answered", f.Order, f.Line),
        OrderChangeAsked f => Line("change", f.Order, f.Line),
        OrderChangeSettled f => Line("settled", f.Order, f.Line),
        PourMoved f => $"pours {f.Pour}",
        SetupFact f => HouseTable.All.Where(table => table.Key(f) is not null).Select(table => $"house {table.Name} {table.Key(f)}").FirstOrDefault(),
        _ => null,
    };

    private static string Line(string word, string order, int line) => string.Create(CultureInfo.InvariantCulture, $"{word} {order} {line}");

    private static Dictionary<string, string> Fields(Entry entry) =>
        EntryCorrect.Fields(entry).Where(field => field.Key != EntryCorrect.WhenKey).ToDictionary(field => field.Key, field => EntryCorrect.WithUnit(field.Value, field.Unit), StringComparer.Ordinal);

    private static string Lists(Fact fact) => string.Join('|', EntryWords.Node(fact).Where(pair => pair.Value is not System.Text.Json.Nodes.JsonValue).Select(pair => $"{pair.Key}{pair.Value?.ToJsonString()}"));
}
