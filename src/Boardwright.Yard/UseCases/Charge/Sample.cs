using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A sample board as cut, as typed; grams unless another unit is written.</summary>
/// <param name="Name">Its number.</param>
/// <param name="Stack">The stack it is of.</param>
/// <param name="Wet1">First section when cut.</param>
/// <param name="Dry1">First section out of the oven.</param>
/// <param name="Wet2">Second section when cut; empty where one was cut only.</param>
/// <param name="Dry2">Second section out of the oven.</param>
/// <param name="Weight">The sample when it was cut.</param>
/// <param name="By">Who cut it.</param>
public sealed record SampleTyped(string? Name, string? Stack, string? Wet1, string? Dry1, string? Wet2, string? Dry2, string? Weight, string? By);

/// <summary>Writes a sample board with its oven sections.</summary>
public static class ChargeSample
{
    /// <summary>The number after the highest one of a charge.</summary>
    public static string NextName(Charge charge)
    {
        ArgumentNullException.ThrowIfNull(charge);
        return (charge.Samples.Select(sample => int.TryParse(sample.Name, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 0).DefaultIfEmpty(0).Max() + 1).ToString(CultureInfo.InvariantCulture);
    }

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, SampleTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var name = read.Named("Sample", typed.Name, "its number");
        if (typed.Stack is null || !charge.StacksInside.Contains(typed.Stack))
            read.Refuse("Stack", typed.Stack, $"a stack of this charge: {string.Join(", ", charge.StacksInside)}");
        var sections = new List<Section> { Cut(read, "first section", typed.Wet1, typed.Dry1) };
        if (!string.IsNullOrWhiteSpace(typed.Wet2) || !string.IsNullOrWhiteSpace(typed.Dry2))
            sections.Add(Cut(read, "second section", typed.Wet2, typed.Dry2));
        var weight = read.Grams("Sample when cut", typed.Weight);
        var by = read.By(state, typed.By);
        return read.Then(() => key.Write(book, by, new SampleCut(tag, name, sections, weight.Grams, typed.Stack)));
    }

    private static Section Cut(Typed read, string what, string? wet, string? dry)
    {
        var section = new Section(read.Grams($"Wet {what}", wet).Grams, read.Grams($"Dry {what}", dry).Grams);
        if (section.DryG > section.WetG)
            read.Refuse($"Dry {what}", dry, $"at most its wet weight, {wet}");
        return section;
    }
}
