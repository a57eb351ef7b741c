using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes the air read beside the load, a core probe, the pressure of a vacuum kiln, or the condensate caught. At least one of them.</summary>
public static class ChargeGauge
{
    private const double LeastPascals = 1000.0;
    private const double MostPascals = 110_000.0;

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, AirTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var (dry, wet, core) = (Read(read, "Dry bulb", typed.DryBulb), Read(read, "Wet bulb", typed.WetBulb), Read(read, "Core", typed.Core));
        var litres = string.IsNullOrWhiteSpace(typed.CondensateL) ? (double?)null : read.Number("Condensate", typed.CondensateL, 0.0, 1e5, "0 to 100000 L");
        var pressure = string.IsNullOrWhiteSpace(typed.Pressure) ? (Pressure?)null : Chamber(read, typed.Pressure, state.Kilns[charge.Kiln]);
        var by = read.By(state, typed.By);
        if (read.Refusals.Count == 0 && (dry ?? wet ?? core) is null && litres is null && pressure is null)
            read.Refuse("Reading", "nothing", "both bulbs, a core, the pressure, or the condensate");
        if (read.Refusals.Count == 0 && dry is null != wet is null)
            read.Refuse(dry is null ? "Dry bulb" : "Wet bulb", "nothing", "both bulbs: one alone says nothing of the air");
        if (wet > dry)
            read.Refuse("Wet bulb", typed.WetBulb, string.Create(CultureInfo.InvariantCulture, $"at most the dry bulb, {dry.Value.Fahrenheit:0} °F"));
        if (read.Refusals.Count == 0 && !typed.Keep && dry is { } air && wet is { } wick && Book.State.Gauge.IsWickInDoubt(air, wick, charge.Settings.LastOrDefault()))
            return Question.Of("Wet bulb as high as the dry one", $"{typed.DryBulb} / {typed.WetBulb}", "a clean wet wick in moving air, read again; a dry wick says nothing");

        return read.Then(() => key.Write(book, by, new GaugeRead(tag, dry?.Celsius, wet?.Celsius, pressure?.Pascals, core?.Celsius, CondensateL: litres, Note: ChargeSet.Note(typed.Note)), ChargeSet.AsEntered(typed)));
    }

    private static Pressure Chamber(Typed read, string text, Book.State.Kiln kiln)
    {
        const string What = "Chamber pressure, absolute";
        var faults = read.Refusals.Count;
        var pressure = read.Millibars(What, text);
        if (kiln.Installed.Type != KilnType.RadioFrequencyVacuum)
            read.Refuse(What, text, $"a vacuum kiln; {kiln.Name} dries with air");
        else if (read.Refusals.Count == faults && (pressure.Pascals is < LeastPascals or > MostPascals))
            read.Refuse(What, text, "10 to 1100 mbar absolute; a vacuum gauge reads down from the barometer: absolute = barometer - vacuum");
        return pressure;
    }

    private static Temperature? Read(Typed read, string what, string? text) => string.IsNullOrWhiteSpace(text) ? null : read.Fahrenheit(what, text);
}
