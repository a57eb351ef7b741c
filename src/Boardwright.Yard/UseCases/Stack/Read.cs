using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A pin-meter reading as a person typed it.</summary>
/// <param name="Reading">What the meter showed, such as 13.6; percent.</param>
/// <param name="Wood">The wood's own temperature, such as 42; Fahrenheit unless another unit is written.</param>
/// <param name="Boards">How many boards were read; empty when they were not counted.</param>
/// <param name="By">Who read it.</param>
/// <param name="Keep">True to keep a reading that is out of trend.</param>
public sealed record ReadingTyped(string? Reading, string? Wood, string? Boards, string? By, bool Keep = false);

/// <summary>Writes a pin-meter reading of a stack. The raw reading is kept for ever; the correction is worked out from it.</summary>
/// <remarks>A reading out of trend is asked about at once and kept when the person says so; a note then stands beside it.</remarks>
public static class StackRead
{
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string stack, ReadingTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        var raw = read.Percent("Reading", typed.Reading);
        var wood = read.Fahrenheit("Temperature of the wood", typed.Wood);
        var boards = string.IsNullOrWhiteSpace(typed.Boards) ? (int?)null : read.Whole("Boards read", typed.Boards, 1, 1000);
        var by = read.By(state, typed.By);
        if (!state.Stacks.TryGetValue(stack, out var card))
            read.Refuse("Stack", stack, $"a stack of the book: {NearestNames.Of(stack, [.. state.Stacks.Keys])}");
        var question = read.Refusals.Count == 0 ? Asked(state, card!, raw, wood) : null;
        if (question is { } asked && !typed.Keep)
            return asked;

        return read.Then(() => key.Write(book, by, new MoistureRead(stack, MoistureMethod.Pin, RawPct: raw.Percent, Boards: boards, SpeciesSetting: card!.Species.CommonName, WoodC: wood.Celsius),
            new Dictionary<string, string>(StringComparer.Ordinal) { ["raw_pct"] = typed.Reading!, ["wood_c"] = typed.Wood! })
            .Then(written => question is { } kept ? Noted(book, by, stack, kept, written) : new Outcome<IReadOnlyList<Entry>>.Done(written)));
    }

    // What the trend says of it, or null when it fits; wood that is not forecast has no trend.
    private static Refusal? Asked(YardState state, Book.State.Stack stack, MoistureContent raw, Temperature wood)
    {
        if (MeterReading.Correct(raw, wood, stack.Species, MeterSetting.For(stack.Species), MeterTemperatureRule.OnePerTwentyFahrenheit) is Outcome<MeterReading>.Done({ IsFrozenAndWet: true }))
        {
            return Question.Of(
                "No moisture content", string.Create(CultureInfo.InvariantCulture, $"{raw.Percent:0.0} % in wood at {wood.Fahrenheit:0} °F"),
                "below fibre saturation, or wood that is not frozen: bring a board indoors and read it thawed, weigh a sample, or cut an oven section. Kept, the raw reading alone stands in the book and nothing is reckoned from it");
        }

        if (StackExpected.Of(state, stack.Tag) is not Outcome<StackExpected>.Done(var expected)
            || MeterReading.Correct(raw, wood, stack.Species, MeterSetting.For(stack.Species), MeterTemperatureRule.OnePerTwentyFahrenheit) is not Outcome<MeterReading>.Done(var meter))
            return null;

        var corrected = (meter.Corrected ?? meter.TemperatureCorrected).Percent;
        return corrected >= expected.Low.Percent && corrected <= expected.High.Percent ? null : Question.Of(
            "Out of trend", string.Create(CultureInfo.InvariantCulture, $"{raw.Percent:0.0} % in wood at {wood.Fahrenheit:0} °F, {corrected:0.0} % corrected"),
            string.Create(CultureInfo.InvariantCulture, $"{StackExpected.Shown(expected.Low, wood).Percent:0.0} to {StackExpected.Shown(expected.High, wood).Percent:0.0} on the meter in such wood ({expected.Low.Percent:0.0} to {expected.High.Percent:0.0} corrected)"));
    }

    private static Outcome<IReadOnlyList<Entry>> Noted(YardBook book, string by, string stack, Refusal asked, IReadOnlyList<Entry> written) =>
        book.Write(by, new NoteWritten($"{asked.What} and kept: {asked.Given}; expected {asked.Accepted.Split(';')[0].Split(':')[0]}.", stack), written[0].HappenedAt).Then<IReadOnlyList<Entry>>(_ => new Outcome<IReadOnlyList<Entry>>.Done(written));
}
