using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One thing a piece with a lost tag may be.</summary>
/// <param name="Tag">A candidate's, or the piece's own when its old tag may be right.</param>
/// <param name="Species">Its species by the book.</param>
/// <param name="EndGrain">What its end looks like; null where the key has none.</param>
/// <param name="Record">What the book says of it: to be laid against the piece with a tape.</param>
/// <param name="Tells">How its end differs from the other candidates'.</param>
public sealed record TagCandidate(string Tag, Species Species, EndGrain? EndGrain, IReadOnlyList<(string Name, string Value)> Record, IReadOnlyList<string> Tells);

/// <summary>The key of a lost tag: its candidates by picture and by the book. Nothing is decided here; somebody looks, writes what was seen, and signs.</summary>
/// <param name="Tag">The piece's.</param>
/// <param name="IsProven">Settled already.</param>
/// <param name="Candidates">What it may be; the first is what its tag said.</param>
/// <param name="Words">What to look at first.</param>
public sealed record TagKey(string Tag, bool IsProven, IReadOnlyList<TagCandidate> Candidates, string Words)
{
    private const double UsualStickerInches = 24.0;

    /// <summary>The key of a log, stack or pack.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="tag">Its tag.</param>
    /// <param name="also">A species somebody thinks of besides; null or empty for none.</param>
    public static Outcome<TagKey> Of(YardState state, string tag, string? also = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (state.Find(tag) is not { } item)
            return new Refusal("tag", tag, $"a log, stack or pack of the book: {NearestNames.Of(tag, [.. state.Logs.Keys, .. state.Stacks.Keys, .. state.Packs.Keys])}");
        var others = Confused(item).Select(state.Find).OfType<ITagged>().Where(other => other.Tag != tag).ToList();
        var items = new List<(string Tag, Species Species, IReadOnlyList<(string, string)> Record)> { (item.Tag, item.Species, RecordOf(state, item)) };
        items.AddRange(others.Select(other => (other.Tag, other.Species, RecordOf(state, other))));
        if (!string.IsNullOrWhiteSpace(also))
        {
            if (SpeciesTable.Find("Species", also) is not Outcome<Species>.Done(var thought))
                return new Refusal("Species", also, "a wood of the table, by its common name");
            if (items.TrueForAll(one => one.Species != thought))
                items.Add(("", thought, []));
        }

        var candidates = items.Select(one => new TagCandidate(one.Tag, one.Species, EndGrain.Of(one.Species), one.Record, Tells(one.Species, items.Select(two => two.Species)))).ToList();
        return new TagKey(tag, item.Proven, candidates, WordsOf(candidates));
    }

    /// <summary>Writes what was seen and signed: the tag was right, or the wood is that of another candidate.</summary>
    /// <param name="book">The book.</param>
    /// <param name="tag">The piece's.</param>
    /// <param name="species">The wood it is.</param>
    /// <param name="asTag">The candidate it is; empty for its own tag.</param>
    /// <param name="seen">What was seen on the end, in their words.</param>
    /// <param name="by">Who looked, and signs for it.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Settle(YardBook book, string tag, string? species, string? asTag, string? seen, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var what = read.Named("What was seen", seen, "what the end showed, such as: plugged pores, flames, broad rays");
        var who = read.By(book.State, by);
        return read.Then(() => Of(book.State, tag, species).Then(found => found.IsProven
            ? new Refusal("tag", tag, "a piece that is unproven; correct the entry that settled it if it was wrong")
            : SpeciesTable.Find("Species", species ?? "").Then(wood =>
            {
                var how = $"{(string.IsNullOrWhiteSpace(asTag) || asTag == tag ? "" : $"it is {asTag}; ")}end grain: {what}";
                return key.Write(book, who, wood == found.Candidates[0].Species ? new TagProven(tag, how) : new SpeciesCorrected(tag, wood.CommonName, how));
            })));
    }

    private static System.Collections.Immutable.ImmutableList<string> Confused(ITagged item) => item switch { Log log => log.ConfusedWith, Stack stack => stack.ConfusedWith, Pack pack => pack.ConfusedWith, _ => [] };

    private static IReadOnlyList<string> Tells(Species species, IEnumerable<Species> all)
    {
        if (EndGrain.Of(species) is not { } mine)
            return [];
        return [.. all.Where(other => other != species).Distinct().Select(EndGrain.Of).OfType<EndGrain>().Select(other => mine.Differences(other).Take(3).ToList() is { Count: > 0 } differences
            ? $"Not {other.Species}: {string.Join("; ", differences.Select(one => $"{one.Feature.ToLowerInvariant()} {one.Here}, not {one.There}"))}." : $"By its end it cannot be told from {other.Species}.")];
    }

    private static string WordsOf(List<TagCandidate> candidates)
    {
        var woods = candidates.Select(one => one.EndGrain).OfType<EndGrain>().DistinctBy(one => one.Species).ToList();
        if (woods.Count < 2)
            return candidates.Select(one => one.Species).Distinct().Count() < 2 ? "All candidates are of one wood: the tape decides, not the lens. Or think of another wood." : "The key has no picture of one of them: lay a known piece beside it.";
        return woods[0].Differences(woods[1]) is [var first, ..] ? $"Look first at the {first.Feature.ToLowerInvariant()}: {first.Here} is {woods[0].Species}, {first.There} is {woods[1].Species}." : $"{woods[0].Species} and {woods[1].Species} look alike: send a piece to a laboratory where it matters.";
    }

    private static IReadOnlyList<(string, string)> RecordOf(YardState state, ITagged item) => item switch
    {
        Log log =>
        [
            ("small end", Text($"{log.SmallEndA.Inches:0.#} × {log.SmallEndB.Inches:0.#} in")), ("large end", Text($"{log.LargeEnd.Inches:0.#} in")), ("whole length", Text($"{log.ActualLength.Feet:0.0#} ft")), ("from", $"{log.Source}, {log.ReceivedAt:d MMM yyyy}"),
            ("ends", log.EndCoated ? "coated" : "not coated"), ("noted", string.IsNullOrWhiteSpace(log.Defect) ? "nothing" : log.Defect), ("owner", log.Owner),
        ],
        Stack stack =>
        [
            ("thickness", $"{stack.Thickness}{(stack.SawnThickness is { } sawn ? Text($", sawn {sawn.Inches:0.###} in") : "")}"), ("pieces", stack.Pieces is { } pieces ? Text($"{pieces}") : "not counted"), ("footage", Text($"{stack.Footage.Count:#,0} bf")),
            ("longest piece", stack.LongestPiece is { } longest ? Text($"{longest.Feet:0.#} ft") : "not on the card"), .. Stickers(state, stack), ("place", stack.Place), ("sawn", $"{stack.SawnOn:d MMM yyyy}, from {(stack.FromLogs.Count > 0 ? string.Join(", ", stack.FromLogs) : "logs not named")}"), ("owner", stack.Owner),
        ],
        Pack pack => [("thickness", $"{pack.Thickness}"), ("from stack", pack.Stack), ("boards", Text($"{pack.Tallies[^1].Boards.Count}")), ("widest, longest", Text($"{pack.Tallies[^1].Boards.Max(board => board.WidthIn):0.##} in, {pack.Tallies[^1].Boards.Max(board => board.LengthFt):0.#} ft"))],
        _ => [],
    };

    private static IEnumerable<(string, string)> Stickers(YardState state, Stack stack) => stack.LongestPiece is { } longest
        ? [("stickers to a layer", Text($"{Math.Round(longest.Inches / (state.Setting("sticker_spacing") ?? UsualStickerInches)) + 1:0}, at {state.Setting("sticker_spacing") ?? UsualStickerInches:0} in"))]
        : [];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
