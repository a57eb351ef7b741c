using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Bulbs of the air, as typed; Fahrenheit unless another unit is written.</summary>
public sealed record AirTyped(string? DryBulb, string? WetBulb, string? Note, string? By, bool Keep = false)
{
    /// <summary>Core of the wood, by a probe.</summary>
    public string? Core { get; init; }

    /// <summary>Absolute pressure in a vacuum kiln; millibars unless another unit is written.</summary>
    public string? Pressure { get; init; }

    /// <summary>Litres of condensate so far.</summary>
    public string? CondensateL { get; init; }
}

/// <summary>Writes what the controller was set to.</summary>
public static class ChargeSet
{
    // A step of more than this at once is asked about. Common practice.
    private const double StepFahrenheit = 25.0;

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, AirTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var (dry, wet) = (read.Fahrenheit("Dry bulb", typed.DryBulb), read.Fahrenheit("Wet bulb", typed.WetBulb));
        var by = read.By(state, typed.By);
        if (read.Refusals.Count == 0)
        {
            var most = Temperature.FromCelsius(state.Kilns[charge.Kiln].Installed.DryBulbMaxC);
            if (dry.Fahrenheit > most.Fahrenheit + 0.5)
                read.Refuse("Dry bulb", typed.DryBulb, string.Create(CultureInfo.InvariantCulture, $"up to {most.Fahrenheit:0} °F, the hottest {charge.Kiln} may hold"));
            if (wet >= dry)
                read.Refuse("Wet bulb", typed.WetBulb, string.Create(CultureInfo.InvariantCulture, $"less than the dry bulb, {dry.Fahrenheit:0} °F"));
        }

        if (read.Refusals.Count == 0 && !typed.Keep && charge.DoubtfulWick is { } wick)
        {
            return Question.Of("The wick is in doubt", string.Create(CultureInfo.InvariantCulture, $"{dry.Fahrenheit:0} / {wet.Fahrenheit:0} °F"), string.Create(CultureInfo.InvariantCulture, $"the setting as it is until both bulbs are read again: on {wick.At:d MMM HH:mm} the wet one read {wick.WetBulb!.Value.Fahrenheit:0} °F beside {wick.DryBulb!.Value.Fahrenheit:0}"));
        }

        if (read.Refusals.Count == 0 && !typed.Keep && charge.Settings.LastOrDefault() is { } last && Math.Abs((dry - last.DryBulb).FahrenheitDegrees) > StepFahrenheit)
        {
            return Question.Of("A large step", string.Create(CultureInfo.InvariantCulture, $"{dry.Fahrenheit:0} °F, was {last.DryBulb.Fahrenheit:0}"), string.Create(CultureInfo.InvariantCulture, $"within {StepFahrenheit:0} °F of what was set"));
        }

        return read.Then(() => key.Write(book, by, new SettingsChanged(tag, dry.Celsius, wet.Celsius, Note(typed.Note)), AsEntered(typed)));
    }

    internal static string? Note(string? note) => string.IsNullOrWhiteSpace(note) ? null : note.Trim();

    internal static Dictionary<string, string> AsEntered(AirTyped typed)
    {
        var entered = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, text) in new[] { ("dry_bulb_c", typed.DryBulb), ("wet_bulb_c", typed.WetBulb), ("core_c", typed.Core), ("pressure_pa", typed.Pressure) })
        {
            if (!string.IsNullOrWhiteSpace(text))
                entered[name] = text;
        }

        return entered;
    }
}
