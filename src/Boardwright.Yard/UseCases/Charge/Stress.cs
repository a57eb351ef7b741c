using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A stress section as typed; millimetres unless another unit is written.</summary>
/// <param name="Turn">How the prongs stand by eye; left out where they were measured.</param>
/// <param name="Settled">True when it had lain a day in the shop, or was evened out in a microwave oven.</param>
/// <param name="Sample">The sample it was cut from; empty for another board.</param>
/// <param name="Prong">Length of the prongs, where measured.</param>
/// <param name="GapSawn">Between the tips as sawn.</param>
/// <param name="GapRead">Between the tips when read.</param>
/// <param name="Note">Anything else.</param>
/// <param name="By">Who cut it.</param>
public sealed record StressTyped(string? Turn, bool Settled, string? Sample, string? Prong, string? GapSawn, string? GapRead, string? Note, string? By);

/// <summary>Writes a stress test.</summary>
public static class ChargeStress
{
    /// <summary>How prongs stand, in words.</summary>
    public static string Words(ProngTurn turn) => turn switch
    {
        ProngTurn.Straight => "straight",
        ProngTurn.SlightlyIn => "a little in",
        ProngTurn.In => "in",
        _ => "out",
    };

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, StressTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.ContainsKey(tag))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var (prong, sawn, seen) = (read.Millimetres("Length of the prongs", typed.Prong), read.Millimetres("Gap as sawn", typed.GapSawn), read.Millimetres("Gap when read", typed.GapRead));
        var by = read.By(state, typed.By);
        var measured = new[] { prong, sawn, seen }.Count(one => one is not null);
        if (measured is 1 or 2)
            read.Refuse("Measures", $"{measured} of 3", "length of the prongs, gap as sawn and gap when read: all three or none");
        if (prong is { Metres: <= 0.0 })
            read.Refuse("Length of the prongs", typed.Prong, "more than 0 mm");
        var turn = ProngTurn.Straight;
        if (measured == 0 && !Enum.TryParse(typed.Turn, out turn))
            read.Refuse("Prongs", typed.Turn, "straight, a little in, in, or out; or the three measures");
        return read.Then(() => key.Write(book, by, new StressTested(
            tag, measured == 3 ? StressTest.Turn(StressTest.Index(prong!.Value, sawn!.Value, seen!.Value)) : turn, typed.Settled, string.IsNullOrWhiteSpace(typed.Sample) ? null : typed.Sample,
            prong?.Millimetres, sawn?.Millimetres, seen?.Millimetres, ChargeSet.Note(typed.Note)), Entered(typed)));
    }

    private static Dictionary<string, string>? Entered(StressTyped typed)
    {
        var entered = new (string Key, string? Text)[] { ("prong_length_mm", typed.Prong), ("gap_sawn_mm", typed.GapSawn), ("gap_read_mm", typed.GapRead) }
            .Where(one => !string.IsNullOrWhiteSpace(one.Text)).ToDictionary(one => one.Key, one => one.Text!, StringComparer.Ordinal);
        return entered.Count > 0 ? entered : null;
    }
}
