using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A stop of a kiln, as typed. Times as the book writes them.</summary>
/// <param name="Cause">Power cut, door open, heat lost, a sensor, another.</param>
/// <param name="From">When it began.</param>
/// <param name="To">When power or heat was back; empty while it is not.</param>
/// <param name="Lowest">Lowest dry bulb seen; empty where nobody saw it.</param>
/// <param name="Doors">"shut" or "open".</param>
/// <param name="Vents">"shut" or "open".</param>
/// <param name="Fans">"stood" or "ran".</param>
/// <param name="Note">Anything else.</param>
/// <param name="By">Who says so.</param>
public sealed record StopTyped(string? Cause, string? From, string? To, string? Lowest, string? Doors, string? Vents, string? Fans, string? Note, string? By);

/// <summary>Writes that a charge's kiln stood still. The gap stays a gap: nothing is drawn across it, and the clock of the charge stands.</summary>
public static class ChargeStop
{
    private static readonly string[] TimeForms = ["yyyy-MM-dd HH:mm", "yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss"];

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, StopTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        if (!Enum.TryParse<InterruptionCause>(typed.Cause, out var cause))
            read.Refuse("What happened", typed.Cause, string.Join(", ", Enum.GetNames<InterruptionCause>()));
        var from = Time(read, "It began", typed.From, book.Now);
        var to = string.IsNullOrWhiteSpace(typed.To) ? (DateTime?)null : Time(read, "It was back", typed.To, book.Now);
        var lowest = string.IsNullOrWhiteSpace(typed.Lowest) ? (Temperature?)null : read.Fahrenheit("Lowest dry bulb", typed.Lowest);
        var by = read.By(state, typed.By);
        if (to < from)
            read.Refuse("It was back", typed.To, $"a time from {typed.From} on");
        if (read.Refusals.Count == 0 && from < charge.LoadedAt)
            read.Refuse("It began", typed.From, string.Create(CultureInfo.InvariantCulture, $"a time after {tag} was loaded, {charge.LoadedAt:yyyy-MM-dd HH:mm}"));
        return read.Then(() => key.Write(
            book, by, new Interrupted(tag, cause, from, to, lowest?.Celsius, Word(typed.Doors, "shut"), Word(typed.Vents, "shut"), Word(typed.Fans, "ran"), ChargeSet.Note(typed.Note)),
            string.IsNullOrWhiteSpace(typed.Lowest) ? null : new Dictionary<string, string>(StringComparer.Ordinal) { ["dry_bulb_lowest_c"] = typed.Lowest }));
    }

    private static DateTime Time(Typed read, string what, string? text, DateTime now)
    {
        if (DateTime.TryParseExact(text?.Trim(), TimeForms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var at) && at <= now.AddHours(1.0))
            return at;
        read.Refuse(what, text, string.Create(CultureInfo.InvariantCulture, $"a time up to now, as {now:yyyy-MM-dd HH:mm}"));
        return now;
    }

    private static bool? Word(string? given, string yes) => string.IsNullOrWhiteSpace(given) ? null : given == yes;
}
