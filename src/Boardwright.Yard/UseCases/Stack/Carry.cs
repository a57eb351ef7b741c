using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes that a stack lies somewhere else now. It dries by its new place from this day on.</summary>
public static class StackCarry
{
    /// <summary>Places a stack may be carried to.</summary>
    public static IReadOnlyList<string> Places(YardState state, Stack stack)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(stack);
        return [.. state.Places.Values.Where(place => place.Type != PlaceKind.LogYard && place.Place != stack.Place).Select(place => place.Place)];
    }

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string stack, string? place, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        var who = read.By(state, by);
        if (!state.Stacks.TryGetValue(stack, out var card))
            read.Refuse("Stack", stack, $"a stack of the book: {NearestNames.Of(stack, [.. state.Stacks.Keys])}");
        else if (card.Stage is StackStage.InKiln or StackStage.Gone)
            read.Refuse("Stack", stack, card.Stage == StackStage.InKiln ? $"a stack that is not in a kiln; unload charge {card.Charge} first" : "a stack that is here");
        else if (place is null || !Places(state, card).Contains(place))
            read.Refuse("To", place, string.Join(", ", Places(state, card)));
        return read.Then(() => key.Write(book, who, new StackMoved(stack, place!)));
    }
}
