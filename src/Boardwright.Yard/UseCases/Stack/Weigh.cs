using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A whole stack on a scale as typed.</summary>
/// <param name="Weight">What the scale shows, kg unless another unit is written.</param>
/// <param name="Tare">Of it stickers, bolsters and straps; empty for none.</param>
/// <param name="By">Who weighed.</param>
public sealed record WeightTyped(string? Weight, string? Tare, string? By);

/// <summary>Writes the weight of a whole stack as a reading of its moisture. The weight is kept for ever; the moisture is worked out from it.</summary>
public static class StackWeigh
{
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string stack, WeightTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var weight = read.Mass("Weight on the scale", typed.Weight);
        var tare = string.IsNullOrWhiteSpace(typed.Tare) ? default : read.Mass("Stickers and straps", typed.Tare);
        var by = read.By(book.State, typed.By);
        if (!book.State.Stacks.ContainsKey(stack))
            read.Refuse("Stack", stack, $"a stack of the book: {NearestNames.Of(stack, [.. book.State.Stacks.Keys])}");
        return read.Then(() => key.Write(book, by, new MoistureRead(stack, MoistureMethod.PackWeight, WeightKg: weight.Kilograms, TareKg: tare.Kilograms)));
    }
}
