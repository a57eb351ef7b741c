using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Two values for one field, by two people neither of whom knew of the other: one of them is chosen by one press.</summary>
/// <param name="About">What it is about; empty for nothing in particular.</param>
/// <param name="Stands">The entry as it stands.</param>
/// <param name="Field">Its field, with the value that stands until then.</param>
/// <param name="Said">The entry that gave it that value: who and when.</param>
/// <param name="Other">The entry that says otherwise: who and when.</param>
/// <param name="Value">What it says.</param>
public sealed record TwoValues(string About, Entry Stands, EntryField Field, Entry Said, Entry Other, string Value)
{
    /// <summary>The value that stands, with its unit.</summary>
    public string Standing => EntryCorrect.WithUnit(Field.Value, Field.Unit);

    /// <summary>All that wait, oldest first. One whose entry was taken out, or says the same by now, waits no more.</summary>
    public static IReadOnlyList<TwoValues> Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.OtherValues.Select(other => One(state, other.Entry, other.Fact)).OfType<TwoValues>().OrderBy(one => one.Other.Number)];
    }

    /// <summary>Chooses one of the two: the other's entry is answered by a correction that names it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="other">Number of the entry that says otherwise.</param>
    /// <param name="isOther">It is right, and not what stands.</param>
    /// <param name="by">Who decides.</param>
    /// <param name="key">Of the press.</param>
    public static Outcome<IReadOnlyList<Entry>> Settle(YardBook book, long other, bool isOther, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var state = book.State;
        if (key.Id is { } id && state.Entries.Where(entry => entry.Id == id).ToList() is { Count: > 0 } kept)
            return kept;
        if (Of(state).FirstOrDefault(one => one.Other.Number == other) is not { } waiting)
            return new Refusal("two values", $"{other}", "two values that still wait; somebody has chosen");
        var read = new Typed();
        var who = read.By(state, by);
        return read.Then(() => isOther
            ? EntryCorrect.Correction(waiting.Stands, who, $"{waiting.Value} of {waiting.Other.By} holds (entry {other}), not {waiting.Standing} of {waiting.Said.By}", new Dictionary<string, string>(StringComparer.Ordinal) { [waiting.Field.Key] = waiting.Value })
                .Then(correction => book.Write([correction with { Id = key.Id }, new NewEntry(who, new Withdrawn(), null, other, $"chosen: {waiting.Value} of {waiting.Other.By} holds", Id: key.Numbered(1))]))
            : book.Write([new NewEntry(who, new Withdrawn(), null, other, $"chosen: {waiting.Standing} of {waiting.Said.By} holds (entry {waiting.Said.Number})", Id: key.Id)]));
    }

    private static TwoValues? One(YardState state, long other, ValueBeside fact)
    {
        if (EntryCorrect.Find(state, fact.Entry) is not Outcome<(Entry? Standing, IReadOnlyList<Entry> Versions)>.Done({ Standing: { } stands } found)
            || EntryCorrect.Fields(stands).FirstOrDefault(field => field.Key == fact.Field) is not { } standing)
            return null;
        var two = new TwoValues(EntryWords.About(stands.Fact) ?? "", stands, standing, EntryMerge.Said(found.Versions, stands, fact.Field), state.Entry(other), fact.Value);
        return two.Standing == two.Value ? null : two;
    }
}
