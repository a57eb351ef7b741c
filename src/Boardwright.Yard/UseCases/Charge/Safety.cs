using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One sample's loss a day against the safe rate of its own wood and thickness.</summary>
/// <param name="Row">The sample.</param>
/// <param name="Species">Its wood; the slowest of the charge where its stack is not on record.</param>
/// <param name="Thickness">Its rough thickness.</param>
/// <param name="Safe">What is safe; no answer where none is printed.</param>
public sealed record SampleSafety(SampleRow Row, Species Species, Length Thickness, Outcome<SafeRate> Safe)
{
    private const double GuardedAbovePercent = 30.0;

    /// <summary>Loss over what is safe; null where one of them is not known.</summary>
    public double? Times => Row.DailyLossPct is { } loss && Safe is Outcome<SafeRate>.Done(var safe) ? loss / safe.DailyLossPercent : null;

    /// <summary>True where a new check can still form: above 30 %.</summary>
    public bool Guards => Row.Last.Moisture.Percent > GuardedAbovePercent;

    /// <summary>True when it loses too fast while it can still check.</summary>
    public bool TooFast => Guards && Times > 1.0;

    /// <summary>Hours for which it stays in danger at this loss; null when it is in none.</summary>
    public double? HoursInDanger => TooFast ? (Row.Last.Moisture.Percent - GuardedAbovePercent) / Row.DailyLossPct!.Value * 24.0 : null;

    /// <summary>The limit as a figure; a dash where none is printed.</summary>
    public string SafeWords => Safe is Outcome<SafeRate>.Done(var safe) ? safe.DailyLossPercent.ToString("0.0", CultureInfo.InvariantCulture) : "–";

    /// <summary>How it stands, in words.</summary>
    public string Says => Row.Sample.Retired ? "retired" : Row.DailyLossPct is null ? "weighed once" : Times is not { } times ? "no rate printed"
        : TooFast ? string.Create(CultureInfo.InvariantCulture, $"too fast, {times:0.0} times")
        : times > 1.0 ? "past 30 %, no danger"
        : Guards ? "safe" : "past 30 %";

    /// <summary>All samples of a charge that were ever weighed.</summary>
    public static IReadOnlyList<SampleSafety> Of(YardState state, Charge charge, IReadOnlyList<SampleRow> rows)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        ArgumentNullException.ThrowIfNull(rows);
        var slowest = charge.Stacks.Select(tag => state.Stacks[tag]).MinBy(stack => Rate(stack) is Outcome<SafeRate>.Done(var safe) ? safe.DailyLossPercent : double.MaxValue)!;
        return [.. rows.Select(row =>
        {
            var stack = row.Sample.Stack is { } tag && state.Stacks.TryGetValue(tag, out var own) ? own : slowest;
            return new SampleSafety(row, stack.Species, Sawn(stack), Rate(stack));
        })];
    }

    private static Length Sawn(Stack stack) => stack.SawnThickness ?? stack.Thickness.Length;

    private static Outcome<SafeRate> Rate(Stack stack) => SafeRate.For(stack.Species, Sawn(stack));
}
