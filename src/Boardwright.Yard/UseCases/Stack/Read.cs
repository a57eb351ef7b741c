using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes a pin-meter reading of a stack as a person typed it. The raw reading is kept for ever; the correction is worked out from it.</summary>
public static class StackRead
{
    /// <param name="book">The book.</param>
    /// <param name="stack">The stack's tag.</param>
    /// <param name="by">Who read it.</param>
    /// <param name="reading">What the meter showed, such as 13.6 or 13.6%.</param>
    /// <param name="wood">The wood's own temperature, such as 42F.</param>
    /// <param name="boards">How many boards were read; empty when it was not counted.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string stack, string? by, string? reading, string? wood, string? boards)
    {
        ArgumentNullException.ThrowIfNull(book);
        var refusals = new List<Refusal>();
        var raw = Take(Read.MoistureContent("Reading", reading ?? ""), refusals);
        var temperature = Take(Read.Temperature("Temperature of the wood", wood ?? ""), refusals);
        var count = string.IsNullOrWhiteSpace(boards) ? null : (double?)Take(Read.Number("Boards read", boards), refusals);
        if (string.IsNullOrWhiteSpace(by))
        {
            refusals.Add(new("Who", "", "the name of who read it"));
        }

        if (refusals.Count > 0)
        {
            return new Outcome<IReadOnlyList<Entry>>.Refused(refusals);
        }

        var setting = book.State.Stacks.GetValueOrDefault(stack)?.Species.CommonName;
        var fact = new MoistureRead(stack, MoistureMethod.Pin, RawPct: raw.Percent, Boards: (int?)count, SpeciesSetting: setting, WoodC: temperature.Celsius);
        var typed = new Dictionary<string, string>(StringComparer.Ordinal) { ["raw_pct"] = reading!, ["wood_c"] = wood! };
        return book.Write([new NewEntry(by!, fact, AsEntered: typed)]);
    }

    private static T? Take<T>(Outcome<T> outcome, List<Refusal> refusals)
    {
        if (outcome is Outcome<T>.Done(var value))
        {
            return value;
        }

        refusals.AddRange(((Outcome<T>.Refused)outcome).Reasons);
        return default;
    }
}
