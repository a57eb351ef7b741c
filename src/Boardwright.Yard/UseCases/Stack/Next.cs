using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What to do next with a stack: one act, why, and where it is done.</summary>
/// <param name="Do">A sentence that begins with a verb.</param>
/// <param name="Why">What speaks for it.</param>
/// <param name="Key">What stands on the key.</param>
/// <param name="Path">Where the key leads.</param>
public sealed record StackNext(string Do, string Why, string Key, string Path)
{
    private const int OldDays = 14;

    internal static StackNext For(YardState state, Stack stack, StackForecast? drying)
    {
        var read = $"/stacks/{stack.Tag}/read";
        if (stack.Stage == StackStage.InKiln)
            return new($"See charge {stack.Charge}.", "It is in the kiln; its samples tell how it dries.", "The charge", $"/charges/{stack.Charge}");
        if (stack.Stage == StackStage.Gone)
            return new("Nothing is left of it.", "Its history stays in the book.", "All stacks", "/stacks");
        if (stack.Stage == StackStage.KilnDried && StackRedry.Of(state, stack.Tag) is Outcome<StackRedry>.Done({ Regained: true } redry))
        {
            return redry.ByReading
                ? new("Redry it before it is packed.", string.Create(CultureInfo.InvariantCulture, $"Read {redry.Reading.Mean!.Value.Percent:0.0} %, {redry.Target.Percent:0.#} is wanted: two steps bring it back."), "Redry, two steps", $"/charges/redry/{stack.Tag}")
                : new("Read it before it is packed.", string.Create(CultureInfo.InvariantCulture, $"In an unheated store {redry.Now.Percent:0.0} % is likely by now, {redry.Target.Percent:0.#} is wanted."), "Has it regained?", $"/charges/redry/{stack.Tag}");
        }

        if (stack.Stage is StackStage.KilnDried or StackStage.Dressed)
            return new("Pack it.", "It is dry. In an unheated building it gains.", "Packs", "/tally");
        if (stack.Moisture is not { Mean: not null } reading)
            return new("Read it.", "Nothing was measured yet.", "Write a reading", read);
        if (reading.Meter is { Usable: false } or { Corrected: null } && !WasCutSince(stack, reading))
            return new("Cut an oven section.", reading.Meter!.Note, "Write a reading", read);
        if (stack.NeverKiln)
            return stack.ReservedFor is { } order && state.Orders.ContainsKey(order)
                ? new("Ship it as soon as it may go.", $"It must never see a kiln{Gains(drying)}.", $"Order {order}", $"/promises/{order}")
                : new("Sell it as air-dried wood.", $"It must never see a kiln{Gains(drying)}.", "Another reading", read);
        if (state.PlannedCharges.Values.FirstOrDefault(charge => charge.Stacks.Contains(stack.Tag)) is { } planned)
            return Planned(state, stack, drying, planned);
        var days = state.Today.DayNumber - reading.At.Day().DayNumber;
        return drying?.Gain is not null ? new("Load it in a kiln when one is free.", $"Dry enough or not, left outdoors it gains: {Ahead(drying)}.", "Load a charge", $"/charges/new?stacks={stack.Tag}")
            : drying is { IsReady: true } ? new("Load it in a kiln when one is free.", "It is dry enough for the kiln.", "Load a charge", $"/charges/new?stacks={stack.Tag}")
            : days > OldDays ? new("Read it again.", $"The last reading is {days} days old.", "Another reading", read)
            : new("Leave it on stickers.", $"It still dries outdoors{(drying is null ? "" : $"; dry enough {drying.ReadyWords}")}.", "Another reading", read);
    }

    private static StackNext Planned(YardState state, Stack stack, StackForecast? drying, PlannedCharge planned)
    {
        var others = planned.Stacks.Where(other => other != stack.Tag).ToList();
        var with = others.Count == 0 ? "" : $" with {string.Join(", ", others.SkipLast(1))}{(others.Count > 1 ? " and " : "")}{others[^1]}";
        var serves = planned.Serves is null ? "" : $" for {planned.Serves}";
        return new(
            $"Load it in {planned.Kiln} on {DayWords.Of(planned.InOn, state.Today)}{with}.",
            $"Planned as charge {planned.Tag}{serves}, out about {DayWords.Of(planned.OutOn, state.Today)}{Gains(drying)}.", "Load the charge", $"/charges/new?plan={planned.Tag}");
    }

    private static bool WasCutSince(Stack stack, MoistureReading reading) =>
        stack.Readings.Any(other => other.At > reading.At && other.Method == Book.Facts.MoistureMethod.OvenSections);

    private static string Gains(StackForecast? drying) => drying?.Gain is null ? "" : $". Left outdoors it gains: {Ahead(drying)}";

    private static string Ahead(StackForecast drying) => string.Create(CultureInfo.InvariantCulture, $"{drying.Gain!.Value.P50.Percent:0.0} % likely by {DayWords.Of(drying.Gain.Value.Date, drying.Today)}, {drying.Now.P50.Percent:0.0} now");
}
