using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>What a posted form says about itself: its identity, so that it is kept once however often it arrives, and how long it waited on a phone without signal.</summary>
/// <param name="Entry">An id made when the form was opened.</param>
/// <param name="WaitedSeconds">Seconds since it was written; null or empty for none. A span, because a phone's clock may be wrong.</param>
public sealed record PostedKey(string? Entry, string? WaitedSeconds)
{
    private static readonly TimeSpan WaitMost = TimeSpan.FromDays(31);

    /// <summary>Neither id nor wait.</summary>
    public static PostedKey None { get; } = new(null, null);

    /// <summary>The id; null when there is none or it is none.</summary>
    public Guid? Id => Guid.TryParse(Entry, out var id) ? id : null;

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

    /// <summary>Writes one fact under this key.</summary>
    public Outcome<IReadOnlyList<Entry>> Write(YardBook book, string by, Fact fact, IReadOnlyDictionary<string, string>? asEntered = null, DateTime? at = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Write([new NewEntry(by, fact, at ?? (Waited > TimeSpan.Zero ? book.Now - Waited : null), AsEntered: asEntered, Id: Id)]);
    }
}
