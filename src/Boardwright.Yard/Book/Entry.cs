using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book;

/// <summary>One line of the book. It is never changed or removed; a later entry may correct it.</summary>
/// <param name="Number">Place in the book: 1, 2, 3 … without gaps.</param>
/// <param name="Id">Given where the entry was made, by a phone without signal too, so that an entry sent twice is kept once.</param>
/// <param name="WrittenAtUtc">When the book took it.</param>
/// <param name="HappenedAt">When it happened, in the yard's own time.</param>
/// <param name="By">Who says so.</param>
/// <param name="Fact">What happened.</param>
/// <param name="Corrects">The entry this one replaces, if any.</param>
/// <param name="Reason">Why it was corrected.</param>
/// <param name="AsEntered">Figures as they were typed, by the fact's JSON name: small_end_a_mm = "16in".</param>
public sealed record Entry(
    long Number, Guid Id, DateTime WrittenAtUtc, DateTime HappenedAt, string By, Fact Fact, long? Corrects = null, string? Reason = null,
    IReadOnlyDictionary<string, string>? AsEntered = null)
{
    /// <summary>What was typed for a figure, or null when it was not typed.</summary>
    public string? Typed(string name) => AsEntered is not null && AsEntered.TryGetValue(name, out var text) ? text : null;
}
