using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>What a person saw on a log, read from the form it came in by. Sizes without a unit are in the unit of its diameters, splits too.</summary>
internal static class LogSeenTyped
{
    private const string ClockForm = "an hour of the clock, 0 to 12";
    private static readonly Length Most = Length.FromInches(120.0);

    /// <summary>Null where nothing was seen; what was typed is added, and what cannot be.</summary>
    public static (LogSeen Seen, Dictionary<string, string> Sizes)? Read(string tag, LogEntry typed, List<Refusal> wrong)
    {
        var sizes = new Dictionary<string, string>(StringComparer.Ordinal);
        Length? Size(string what, string? text, string key)
        {
            if (string.IsNullOrWhiteSpace(text))
                return null;
            switch (SizeTyped.Across(what, text, typed.DiameterUnit, Most, "the most there can be"))
            {
                case Outcome<SizeTyped>.Done(var size):
                    sizes[key] = size.Kept;
                    return size.Length;
                case Outcome<SizeTyped>.Refused(var reasons):
                    wrong.AddRange(reasons);
                    break;
            }

            return null;
        }

        double? Hour(string what, string? text)
        {
            if (string.IsNullOrWhiteSpace(text))
                return null;
            if (Quantities.Reading.Read.Number(what, text) is Outcome<double>.Done(var hour) && hour is >= 0.0 and <= 12.0)
                return hour;
            wrong.Add(new(what, text, ClockForm));
            return null;
        }

        LogGrade? grade = Enum.TryParse<LogGrade>(typed.Grade, ignoreCase: true, out var read) ? read : null;
        var seen = new LogSeen(
            tag, Size(nameof(typed.Mid), typed.Mid, "mid_dib_mm")?.Millimetres, Size(nameof(typed.Sweep), typed.Sweep, "sweep_mm")?.Millimetres, Hour(nameof(typed.SweepHour), typed.SweepHour),
            Size(nameof(typed.HeartRot), typed.HeartRot, "heart_rot_mm")?.Millimetres, Size(nameof(typed.PithOff), typed.PithOff, "pith_off_mm")?.Millimetres, Hour(nameof(typed.PithHour), typed.PithHour),
            Size(nameof(typed.SplitSmall), typed.SplitSmall, "split_small_end_m")?.Metres, Size(nameof(typed.SplitLarge), typed.SplitLarge, "split_large_end_m")?.Metres,
            Size(nameof(typed.Bark), typed.Bark, "bark_mm")?.Millimetres, grade, typed.MetalMarks);
        return seen == new LogSeen(tag) ? null : (seen, sizes);
    }
}
