using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Oven sections of a stack as typed: one board a line, wet and dry weight in grams.</summary>
/// <param name="Wet">Weights when cut, parted by blanks or commas.</param>
/// <param name="Dry">The same sections out of the oven, in the same order.</param>
/// <param name="By">Who weighed.</param>
public sealed record SectionsTyped(string? Wet, string? Dry, string? By);

/// <summary>Writes oven sections of a stack.</summary>
public static class StackSections
{
    private static readonly char[] Parted = [' ', ',', ';', '\n', '\r', '\t'];

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string stack, SectionsTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var (wet, dry) = (Weights(read, "Weight when cut", typed.Wet), Weights(read, "Weight out of the oven", typed.Dry));
        var by = read.By(book.State, typed.By);
        if (wet.Count == 0)
            read.Refuse("Weight when cut", typed.Wet, "at least one weight in grams, such as 119.9");
        if (wet.Count != dry.Count)
            read.Refuse("Weight out of the oven", $"{dry.Count} weights", $"one for each section cut, {wet.Count}");
        return read.Then(() => key.Write(book, by, new SectionsWeighed(stack, [.. wet.Zip(dry, (w, d) => new Section(w.Grams, d.Grams))])));
    }

    private static List<Mass> Weights(Typed read, string what, string? text) => [.. (text ?? "").Split(Parted, StringSplitOptions.RemoveEmptyEntries).Select(one => read.Grams(what, one))];
}
