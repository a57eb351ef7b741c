using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>What a posted form says about itself: its identity, so that it is kept once however often it arrives, how long it waited on a phone without signal, and when it happened where it was on paper before.</summary>
/// <param name="Entry">An id made when the form was opened.</param>
/// <param name="WaitedSeconds">Seconds since it was written; null or empty for none. A span, because a phone's clock may be wrong.</param>
/// <param name="Happened">The time that stands on the paper, 2026-11-02 06:10; null or empty for now.</param>
/// <param name="Seen">Number of the book's last entry when the form was opened: what was written later, its writer has not seen.</param>
/// <param name="Phone">Name of the phone it comes from, where numbers are set aside for it; null for none.</param>
public sealed record PostedKey(string? Entry, string? WaitedSeconds, string? Happened = null, string? Seen = null, string? Phone = null)
{
    private static readonly string[] TimeForms = ["yyyy-MM-dd HH:mm", "yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss"];

    private static readonly TimeSpan WaitMost = TimeSpan.FromDays(31);

    /// <summary>Neither id nor wait.</summary>
    public static PostedKey None { get; } = new(null, null);

    /// <summary>The id; null when there is none or it is none.</summary>
    public Guid? Id => Guid.TryParse(Entry, out var id) ? id : null;

    /// <summary>The last entry its writer can have seen; null where the form does not say.</summary>
    public long? SeenEntry => long.TryParse(Seen, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>True when the book has it already: it came again.</summary>
    public bool IsKept(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Id is { } id && state.Entries.Any(entry => entry.Id == id);
    }

    /// <summary>The id of a further entry of the same form, the same whenever it arrives; null when the form has none.</summary>
    /// <param name="index">1 for the first further entry.</param>
    public Guid? Numbered(int index)
    {
        if (Id is not { } id)
            return null;
        var bytes = id.ToByteArray();
        bytes[^1] ^= (byte)index;
        bytes[^2] ^= (byte)(index >> 8);
        return new Guid(bytes);
    }

    /// <summary>How long it waited; zero when it did not say.</summary>
    public TimeSpan Waited => double.TryParse(WaitedSeconds, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) && seconds > 0.0
        ? TimeSpan.FromSeconds(Math.Min(seconds, WaitMost.TotalSeconds)) : TimeSpan.Zero;

    /// <summary>When it happened: the time on the paper, else now less the wait.</summary>
    public Outcome<DateTime> Time(YardBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var now = book.Now;
        if (string.IsNullOrWhiteSpace(Happened))
            return now - Waited;
        return DateTime.TryParseExact(Happened.Trim(), TimeForms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var at) && at <= now
            ? at : new Refusal("When it happened", Happened, $"the day and hour on the paper, such as 2026-11-02 06:10, not after {now:yyyy-MM-dd HH:mm}");
    }

    /// <summary>Writes facts of one form, all or none; the first under this key, the others numbered after it.</summary>
    public Outcome<IReadOnlyList<Entry>> Write(YardBook book, string by, IReadOnlyList<(Fact Fact, IReadOnlyDictionary<string, string>? AsEntered)> facts)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(facts);
        Outcome<IReadOnlyList<Entry>> At(DateTime? at) => book.Write([.. facts.Select((one, i) => new NewEntry(by, one.Fact, at, AsEntered: one.AsEntered, Id: i == 0 ? Id : Numbered(i)))]);
        return Waited > TimeSpan.Zero || !string.IsNullOrWhiteSpace(Happened) ? Time(book).Then(time => At(time)) : At(null);
    }

    /// <summary>Writes one fact under this key. Where somebody else said otherwise of the same thing since the form was opened, theirs stands and this one's values are laid beside it.</summary>
    public Outcome<IReadOnlyList<Entry>> Write(YardBook book, string by, Fact fact, IReadOnlyDictionary<string, string>? asEntered = null, DateTime? at = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (SeenEntry is { } seen && !IsKept(book.State) && Statement.Unseen(book.State, fact, seen, by) is { } stands)
            return Time(book).Then(time => Statement.Beside(stands, fact, by, time, this)).Then(book.Write);
        if (at is null && (Waited > TimeSpan.Zero || !string.IsNullOrWhiteSpace(Happened)))
            return Time(book).Then(time => book.Write([new NewEntry(by, fact, time, AsEntered: asEntered, Id: Id)]));
        return book.Write([new NewEntry(by, fact, at, AsEntered: asEntered, Id: Id)]);
    }
}
