using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>One stack out of a kiln, as typed.</summary>
/// <param name="Stack">Its tag; left out where it stays inside.</param>
/// <param name="Bf">Footage as tallied dry.</param>
/// <param name="Place">Where it goes.</param>
/// <param name="Readings">Moisture of boards picked at random, percent, parted by blanks or commas.</param>
public sealed record OutTyped(string Stack, string? Bf, string? Place, string? Readings);

/// <summary>What final readings say of a lot against what was wanted.</summary>
/// <param name="Lot">Mean and spread.</param>
/// <param name="SharePct">Share of boards likely within the allowance, percent; null from one reading.</param>
/// <param name="Accepted">At least nine boards in ten.</param>
public sealed record LotVerdict(LotStatistics Lot, double? SharePct, bool Accepted);

/// <summary>Writes stacks out of a kiln with their final readings. A lot that is not as wanted is asked about.</summary>
public static class ChargeUnload
{
    private const double AllowPoints = 1.0;
    private const double ShareLeastPct = 90.0;
    private const int ReadingsLeast = 5;
    private static readonly char[] Parted = [' ', ',', ';', '\n', '\r', '\t'];

    /// <summary>Judges a lot: at least five boards, nine in ten within one point of the target.</summary>
    public static Outcome<LotVerdict> Judge(IReadOnlyList<MoistureContent> readings, MoistureContent target)
    {
        ArgumentNullException.ThrowIfNull(readings);
        return LotStatistics.Of(readings).Then<LotVerdict>(lot =>
        {
            var share = 100.0 * lot.ShareWithin(target.Percent - AllowPoints, target.Percent + AllowPoints);
            return new LotVerdict(lot, share, readings.Count >= ReadingsLeast && share >= ShareLeastPct);
        });
    }

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, IReadOnlyList<OutTyped> stacks, string? by, bool keep, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(stacks);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var who = read.By(state, by);
        if (stacks.Count == 0)
            read.Refuse("Stacks", "none", $"at least one of {string.Join(", ", charge.StacksInside)}");
        var questions = new List<Refusal>();
        var outs = stacks.Select(one => Out(read, questions, one, charge.Target)).ToList();
        if (read.Refusals.Count == 0 && questions.Count > 0 && !keep)
            return new Outcome<IReadOnlyList<Entry>>.Refused(questions);
        return read.Then(() => key.Write(book, who, new ChargeUnloaded(tag, outs)));
    }

    private static StackOut Out(Typed read, List<Refusal> questions, OutTyped typed, MoistureContent target)
    {
        var bf = read.Number($"Footage of {typed.Stack}", typed.Bf, 1.0, 1e5, "the tally as it comes out, in bf");
        var place = read.Named($"Place of {typed.Stack}", typed.Place, "where it goes");
        var readings = (typed.Readings ?? "").Split(Parted, StringSplitOptions.RemoveEmptyEntries).Select(text => read.Percent($"Readings of {typed.Stack}", text)).ToList();
        if (readings.Count == 0)
        {
            read.Refuse($"Readings of {typed.Stack}", typed.Readings, $"moisture of boards picked at random, {ReadingsLeast} or more, such as 6.8 7.1 7.4");
            return new(typed.Stack, bf, place);
        }

        if (Judge(readings, target) is not Outcome<LotVerdict>.Done(var verdict))
            return new(typed.Stack, bf, place, readings.Average(reading => reading.Percent), Boards: readings.Count);
        if (!verdict.Accepted)
        {
            questions.Add(Question.Of(
                $"{typed.Stack} is not as wanted",
                string.Create(CultureInfo.InvariantCulture, $"mean {verdict.Lot.MeanPercent:0.0} %, {readings.Count} boards{(verdict.SharePct is { } share ? $", {share:0} of 100 within 1 point" : "")}"),
                string.Create(CultureInfo.InvariantCulture, $"{ReadingsLeast} boards or more and 90 of 100 within 1 point of {target.Percent:0.#} %: equalize on, or read more boards")));
        }

        return new(typed.Stack, bf, place, verdict.Lot.MeanPercent, verdict.Lot.StandardDeviationPercent, readings.Min(reading => reading.Percent), readings.Max(reading => reading.Percent), readings.Count);
    }
}
