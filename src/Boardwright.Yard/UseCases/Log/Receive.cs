using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes a new log into the book; every fault comes back under the name of its field.</summary>
public static class LogReceive
{
    private const double SuspectTaper = 2.5;
    private static readonly Length LargestEnd = Length.FromMetres(3.0);

    // The book names its figures its own way; the person knows the fields.
    private static readonly Dictionary<string, string> FieldOf = new(StringComparer.Ordinal)
    {
        ["log"] = nameof(LogEntry.Tag),
        ["species"] = nameof(LogEntry.Species),
        ["small_end_a_mm"] = nameof(LogEntry.SmallEndA),
        ["small_end_b_mm"] = nameof(LogEntry.SmallEndB),
        ["large_end_mm"] = nameof(LogEntry.LargeEnd),
        ["scale_length_m"] = nameof(LogEntry.ScaleLength),
        ["actual_length_m"] = nameof(LogEntry.ActualLength),
        ["mid_dib_mm"] = nameof(LogEntry.Mid),
        ["sweep_mm"] = nameof(LogEntry.Sweep),
        ["sweep"] = nameof(LogEntry.Sweep),
        ["sweep_towards_hour"] = nameof(LogEntry.SweepHour),
        ["heart_rot_mm"] = nameof(LogEntry.HeartRot),
        ["rot"] = nameof(LogEntry.HeartRot),
        ["pith_off_mm"] = nameof(LogEntry.PithOff),
        ["pith_towards_hour"] = nameof(LogEntry.PithHour),
        ["split_small_end_m"] = nameof(LogEntry.SplitSmall),
        ["split_large_end_m"] = nameof(LogEntry.SplitLarge),
        ["splits"] = nameof(LogEntry.SplitLarge),
        ["bark_mm"] = nameof(LogEntry.Bark),
        ["by"] = "Who",
    };

    /// <summary>Writes it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="typed">As typed.</param>
    /// <param name="key">Of the form; null for none.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, LogEntry typed, PostedKey? key = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        var wrong = new List<Refusal>();
        var tag = Words(nameof(typed.Tag), typed.Tag, "the number painted on the log, such as L-041", wrong);
        if (TagNumbers.Fault(book.State, nameof(typed.Tag), tag, key?.Phone) is { } others)
            wrong.Add(others);
        var species = Take(SpeciesTable.Find(nameof(typed.Species), typed.Species ?? ""), wrong);
        var sizes = new Dictionary<string, string>(StringComparer.Ordinal);
        var throat = book.State.Yard is { ThroatMm: var mm } ? Length.FromMillimetres(mm) : LargestEnd;
        Length Through(string what, string? text, string key, Length most, string why) => Size(SizeTyped.Across(what, text, typed.DiameterUnit, most, why), key, sizes, wrong);
        Length Along(string what, string? text, string key) => Size(SizeTyped.Along(what, text, typed.LengthUnit, SizeTyped.Longest(book.State)), key, sizes, wrong);
        var a = Through(nameof(typed.SmallEndA), typed.SmallEndA, "small_end_a_mm", throat, "the throat of the mill");
        var b = string.IsNullOrWhiteSpace(typed.SmallEndB) ? a : Through(nameof(typed.SmallEndB), typed.SmallEndB, "small_end_b_mm", throat, "the throat of the mill");
        var large = Through(nameof(typed.LargeEnd), typed.LargeEnd, "large_end_mm", LargestEnd, "the largest log the book takes");
        var scale = Along(nameof(typed.ScaleLength), typed.ScaleLength, "scale_length_m");
        var actual = Along(nameof(typed.ActualLength), typed.ActualLength, "actual_length_m");
        var source = Words(nameof(typed.Source), typed.Source, "where it came from, such as T-23 or Y-75", wrong);
        var scan = Enum.TryParse<MetalScan>(typed.Scan, ignoreCase: true, out var read) ? read : MetalScan.NotScanned;
        var hits = string.IsNullOrWhiteSpace(typed.Hits) ? 0.0 : Take(Read.Number(nameof(typed.Hits), typed.Hits), wrong);
        var paid = string.IsNullOrWhiteSpace(typed.Paid) ? (double?)null : Take(Read.Number(nameof(typed.Paid), typed.Paid), wrong);
        var seen = LogSeenTyped.Read(tag, typed, wrong);
        var signed = new Typed();
        var by = signed.By(book.State, typed.By);
        wrong.AddRange(signed.Refusals);
        if (hits is < 0.0 or > 100.0 || hits != Math.Floor(hits))
            wrong.Add(new(nameof(typed.Hits), typed.Hits!, "a whole number, 0 to 100"));
        if (paid is < 0.0 or > 1e6)
            wrong.Add(new(nameof(typed.Paid), typed.Paid!, "0 to 1000000"));
        if (wrong.Count == 0 && large < (a + b) * 0.5)
            wrong.Add(new(nameof(typed.LargeEnd), typed.LargeEnd!, $"at least the small end, {((a + b) * 0.5).Inches:0.#} in"));
        if (wrong.Count == 0 && large > (a + b) * 0.5 * SuspectTaper)
            wrong.Add(Flared(typed, large, (a + b) * 0.5));
        if (wrong.Count == 0 && seen?.Seen.MidDibMm is { } mid && (mid < (a + b).Millimetres * 0.5 || mid > large.Millimetres))
            wrong.Add(new(nameof(typed.Mid), typed.Mid!, $"between the small end, {((a + b) * 0.5).Inches:0.#} in, and the large, {large.Inches:0.#} in"));
        if (wrong.Count > 0)
            return new Outcome<IReadOnlyList<Entry>>.Refused(wrong);

        var fact = new LogReceived(
            tag, source, species!.CommonName, a.Millimetres, b.Millimetres, large.Millimetres, scale.Metres, actual.Metres, scan, (int)hits, typed.EndCoated,
            string.IsNullOrWhiteSpace(typed.Owner) ? "mill" : typed.Owner.Trim(), Blank(typed.Defect), Blank(typed.PlannedFor), (decimal?)paid);
        return Named(seen is var (looked, shown) ? (key ?? PostedKey.None).Write(book, by, [(fact, sizes), (looked, shown)]) : (key ?? PostedKey.None).Write(book, by, fact, sizes), typed);
    }

    // A large end far over the small one is mostly typed in the other unit.
    private static Refusal Flared(LogEntry typed, Length large, Length small)
    {
        var accepted = $"at most {SuspectTaper:0.#} times the small end, {(small * SuspectTaper).Inches:0.#} in";
        return SizeTyped.Across(nameof(typed.LargeEnd), typed.LargeEnd, typed.DiameterUnit, small * SuspectTaper, "") is Outcome<SizeTyped>.Refused(var reasons)
            ? reasons[0] with { Accepted = accepted }
            : new(nameof(typed.LargeEnd), $"{large.Inches:0.#} in", accepted);
    }

    private static Outcome<IReadOnlyList<Entry>> Named(Outcome<IReadOnlyList<Entry>> written, LogEntry typed) => written is Outcome<IReadOnlyList<Entry>>.Refused(var reasons)
        ? new Outcome<IReadOnlyList<Entry>>.Refused([.. reasons.Select(reason => FieldOf.TryGetValue(reason.What, out var field) ? reason with { What = field, Given = Given(typed, field) ?? reason.Given } : reason)])
        : written;

    private static string? Given(LogEntry typed, string field) => field switch
    {
        nameof(typed.SmallEndA) => typed.SmallEndA,
        nameof(typed.SmallEndB) => typed.SmallEndB ?? typed.SmallEndA,
        nameof(typed.LargeEnd) => typed.LargeEnd,
        nameof(typed.ScaleLength) => typed.ScaleLength,
        nameof(typed.ActualLength) => typed.ActualLength,
        nameof(typed.Mid) => typed.Mid,
        nameof(typed.Sweep) => typed.Sweep,
        nameof(typed.SweepHour) => typed.SweepHour,
        nameof(typed.HeartRot) => typed.HeartRot,
        nameof(typed.PithOff) => typed.PithOff,
        nameof(typed.PithHour) => typed.PithHour,
        nameof(typed.SplitSmall) => typed.SplitSmall,
        nameof(typed.SplitLarge) => typed.SplitLarge,
        nameof(typed.Bark) => typed.Bark,
        _ => null,
    };

    private static Length Size(Outcome<SizeTyped> typed, string key, Dictionary<string, string> sizes, List<Refusal> wrong)
    {
        if (Take(typed, wrong) is not { } size)
            return default;
        sizes[key] = size.Kept;
        return size.Length;
    }

    private static string Words(string what, string? text, string accepted, List<Refusal> wrong)
    {
        if (string.IsNullOrWhiteSpace(text))
            wrong.Add(new(what, "", accepted));
        return (text ?? "").Trim();
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static T? Take<T>(Outcome<T> outcome, List<Refusal> wrong)
    {
        if (outcome is Outcome<T>.Done(var value))
            return value;
        if (outcome is Outcome<T>.Refused(var reasons))
            wrong.AddRange(reasons);
        return default;
    }
}
