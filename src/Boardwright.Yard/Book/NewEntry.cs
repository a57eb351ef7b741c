using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book;

/// <summary>An entry on its way into the book.</summary>
/// <param name="By">Who says so.</param>
/// <param name="Fact">What happened.</param>
/// <param name="HappenedAt">When, in the yard's own time; null for now, and for a correction the time of the entry it replaces.</param>
/// <param name="Corrects">The entry it replaces, if any.</param>
/// <param name="Reason">Why it is corrected; a correction needs one.</param>
/// <param name="AsEntered">Figures as they were typed.</param>
/// <param name="Id">Given by a phone; null for a new one.</param>
public sealed record NewEntry(
    string By, Fact Fact, DateTime? HappenedAt = null, long? Corrects = null, string? Reason = null, IReadOnlyDictionary<string, string>? AsEntered = null, Guid? Id = null);
