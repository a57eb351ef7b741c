using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A table whose wood no guide allows is poured only when whose it is has read the warning and signed; name and warning stay with the pour.</summary>
/// <remarks>Wood may be signed for, depth may not: a pour deeper than the label allows can smoke, whoever wants it.</remarks>
public static class PourSign
{
    /// <summary>What is wrong with the wood, piece by piece; null when some guide allows it all.</summary>
    public static string? Warning(Pour pour)
    {
        ArgumentNullException.ThrowIfNull(pour);
        var wet = pour.Plan.Pieces.Select((piece, index) => (piece, index, Verdict: WoodForPour.Of(MoistureContent.FromPercent(piece.McPct)))).Where(one => one.Verdict.IsTooWet)
            .Select(one => $"piece {one.index + 1}, {one.piece.Species}: {one.Verdict.Advice}").ToList();
        return wet.Count == 0 ? null : $"{string.Join("; ", wet)}. Indoors it shrinks away from the resin or cups, and neither heat nor time mends that.";
    }

    /// <summary>Whether it may be mixed for and poured: its wood is allowed, or somebody signed for this very warning.</summary>
    public static bool MayGoOn(Pour pour) => Warning(pour) is not { } warning || pour.RiskSigned?.Warning == warning;

    /// <summary>Writes a signature under the warning as it stands.</summary>
    /// <param name="book">The book.</param>
    /// <param name="tag">The pour's.</param>
    /// <param name="name">Who signs: whose table it is.</param>
    /// <param name="hasRead">They ticked that they have read the warning.</param>
    /// <param name="by">Who was there.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, string? name, bool hasRead, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var signed = read.Named("Signed by", name, "the name of whose table it is, written by themselves");
        if (!hasRead)
            read.Refuse("Warning", "not ticked", "a tick that it was read");
        var who = read.By(book.State, by);
        var warning = book.State.Pours.TryGetValue(tag, out var pour) ? Warning(pour) : null;
        if (warning is null)
            read.Refuse(tag, pour is null ? "not in the book" : "wood that some guide allows", "a pour with a warning to sign for");
        else if (pour!.PouredAt is { } at)
            read.Refuse(tag, $"poured {at:d MMM HH:mm}", "a signature before the pour, not after it");
        return read.Then(() => key.Write(book, who, new PourRiskSigned(tag, signed, warning!)));
    }

    internal static void Demand(Pour pour, Typed read)
    {
        if (!MayGoOn(pour))
            read.Refuse("Signature", pour.RiskSigned is null ? "none" : "one for another warning", $"drier wood, or a name under the warning on the page of {pour.Tag}: {Warning(pour)}");
    }
}
