using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One stack for a person: what it is, how it is, what next.</summary>
public sealed record StackSheet
{
    public required Stack Stack { get; init; }

    public required string Title { get; init; }

    public required string Under { get; init; }

    public required IReadOnlyList<Traced> Figures { get; init; }

    /// <summary>How it dried and will dry; no answer for wood that is not outdoors.</summary>
    public required Outcome<StackForecast> Forecast { get; init; }

    /// <summary>The first words and the rest of the one caution; null when there is none.</summary>
    public (string First, string Words)? Caution { get; init; }

    public required StackNext Next { get; init; }

    /// <summary>What its footage becomes; null where no order in board feet waits for it.</summary>
    public StackParts? Parts { get; init; }

    /// <summary>Said where nobody read it: in a kiln, what the samples of its charge say.</summary>
    public required string Unread { get; init; }

    /// <summary>Newest first, each with who wrote it.</summary>
    public required IReadOnlyList<(MoistureReading Reading, string By)> Readings { get; init; }

    /// <param name="state">The yard.</param>
    /// <param name="tag">The stack.</param>
    /// <param name="target">Moisture the air-drying forecast is asked for; null for the usual one.</param>
    /// <param name="plan">The season's plan; null where nobody asks for it.</param>
    public static Outcome<StackSheet> Of(YardState state, string tag, string? target = null, SeasonNow? plan = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Stacks.TryGetValue(tag, out var stack))
            return new Refusal("stack", tag, $"a stack of the book: {NearestNames.Of(tag, [.. state.Stacks.Keys])}");

        var forecast = StackForecast.Of(state, tag, target);
        if (forecast is Outcome<StackForecast>.Refused(var reasons))
            return new Outcome<StackSheet>.Refused(reasons);
        var drying = (forecast as Outcome<StackForecast>.Done)?.Value;
        return new StackSheet
        {
            Stack = stack,
            Title = $"Stack {stack.Tag}, {(stack.Proven ? stack.Species.CommonName : "unproven species")} {ThicknessWords(stack)}",
            Under = UnderTitle(stack, state.Today),
            Figures = StackFigures.Of(state, stack, drying),
            Forecast = forecast,
            Caution = CautionFor(stack, drying),
            Next = StackNext.For(state, stack, drying, plan ?? SeasonNow.NotAsked),
            Parts = stack.Proven ? StackParts.Of(state, stack) : null,
            Unread = UnreadWords(state, stack),
            Readings = [.. stack.Readings.Reverse().Select(reading => (reading, ByWords(state, reading.Entry)))],
        };
    }

    /// <summary>The air a month holds wood at; null without normals.</summary>
    public static (MoistureContent Moisture, ClimateNormalSet Normal)? OutdoorMoisture(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Normals.TryGetValue(state.Today.Month, out var normal)
            ? (HouseRules.Equilibrium(state).At(Temperature.FromCelsius(normal.MeanC), RelativeHumidity.FromPercent(normal.MeanRhPct)), normal)
            : null;
    }

    /// <summary>"8/4", or the thickness as sawn where that was measured.</summary>
    public static string ThicknessWords(Stack stack)
    {
        ArgumentNullException.ThrowIfNull(stack);
        return stack.SawnThickness is { } sawn ? string.Create(CultureInfo.InvariantCulture, $"{sawn.Millimetres:0.#} mm") : stack.Thickness.ToString();
    }

    /// <summary>Who wrote an entry, with a comma behind; nothing where it was read from a table.</summary>
    public static string ByWords(YardState state, long entry)
    {
        ArgumentNullException.ThrowIfNull(state);
        var by = state.Entry(entry).By;
        return state.People.ContainsKey(by) ? $"{by}, " : "";
    }

    /// <summary>"pins, 12 boards": how a reading was made.</summary>
    public static string HowWords(MoistureReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return StackFigures.Words(reading.Method) + (reading.Boards is { } boards ? $", {boards} boards" : "");
    }

    /// <summary>"about ", with how long nobody counted, in front of a footage that was taken from since; empty where it is counted.</summary>
    public static string AboutWords(Stack stack, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(stack);
        return stack.AboutSince is not { } since ? "" : today.DayNumber - since.Day().DayNumber is var days && days < 1 ? "about (taken from today) " : $"about (taken from, not counted for {days} {(days == 1 ? "day" : "days")}) ";
    }

    private static string UnreadWords(YardState state, Stack stack)
    {
        var samples = stack.Stage == StackStage.InKiln && state.Charges.GetValueOrDefault(stack.Charge ?? "") is { } charge
            ? charge.SoundSamples.Where(sample => (sample.Stack ?? stack.Tag) == stack.Tag && sample.Weighings.Count > 0).ToList() : [];
        return samples.Count == 0 ? "Nothing was measured yet. Write the first reading."
            : string.Create(CultureInfo.InvariantCulture, $"Nobody read the stack itself. Its samples in {stack.Charge}, {DayWords.Of(samples.Max(sample => sample.Weighings[^1].At), state.Today)}: {string.Join(", ", samples.Select(sample => string.Create(CultureInfo.InvariantCulture, $"{sample.Name} at {sample.Moisture.Percent:0.0} %")))}.");
    }

    private static string UnderTitle(Stack stack, DateOnly today)
    {
        var things = stack.Product is Product.Boards ? "boards" : stack.Product is Product.Blocking ? "cants" : stack.Pieces == 1 ? "slab" : "slabs";
        var pieces = stack.Pieces is { } count ? $"{count} {things}, " : "";
        var owner = stack.Owner == "mill" ? "Mill’s own wood" : $"Wood of {stack.Owner}, kept apart";
        var reserved = stack.ReservedFor is { } order ? $", reserved for {order}" : "";
        var grain = stack.Grain == Grain.Quarter ? ", quartersawn" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{pieces}{AboutWords(stack, today)}{stack.Footage.Count:#,0} bf net as it lies{grain}. Sawn {DayWords.Of(stack.SawnOn, today)}, {stack.Place}. {owner}{reserved}.");
    }

    private static (string First, string Words)? CautionFor(Stack stack, StackForecast? drying)
    {
        var reading = stack.Moisture;
        return !stack.Proven ? ("Tag lost.", "The species is unproven: no price, promise or heat-treatment claim until it is settled.")
            : stack.Readings.LastOrDefault() is { Meter: { IsFrozenAndWet: true } frozen, Raw: { } shown } ? ("No moisture content.", string.Create(CultureInfo.InvariantCulture, $"The last reading showed {shown.Percent:0.0}. {frozen.Note}"))
            : reading is { SpeciesUnknown: true } ? ("Species correction unknown.", "No resistance is published for this wood: the figure may be off by 2 either way. Cut an oven section before promising anything.")
            : reading?.Meter is { Usable: false } && reading.Raw?.Percent > 20.0 ? ("Wetter than a pin meter reads.", "Above 28 % pins hardly change: the reading is kept, the forecast does not use it. Cut a section and use the oven.")
            : reading?.Wood is { } wood && wood.Fahrenheit < 32.0 ? ("Below freezing.", "Pins in frozen wood read low. Weigh a board or bring one indoors before you sell on this figure.")
            : drying is { Gain: { } gain } && stack.NeverKiln ? ("It only gains now.", string.Create(CultureInfo.InvariantCulture, $"Left outdoors, {gain.P50.Percent:0.0} % is likely by {DayWords.Of(gain.Date, drying.Today)}, {gain.P10.Percent:0.0} to {gain.P90.Percent:0.0}."))
            : null;
    }
}
