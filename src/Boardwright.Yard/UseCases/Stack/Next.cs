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

    /// <summary>The owner's plan and the worked one, where they differ about it; null where not.</summary>
    public string? Beside { get; init; }

    internal static StackNext For(YardState state, Stack stack, StackForecast? drying, SeasonNow season)
    {
        var read = $"/stacks/{stack.Tag}/read";
        if (stack.Stage == StackStage.InKiln)
            return new($"See charge {stack.Charge}.", "It is in the kiln; its samples tell how it dries.", "The charge", $"/charges/{stack.Charge}");
        if (stack.Stage == StackStage.Gone)
            return new("Nothing is left of it.", "Its history stays in the book.", "All stacks", "/stacks");
        if (!stack.Proven)
            return new($"Look at an end of {stack.Tag} and settle its species.", "Its tag is lost: no price, no promise and no treatment claim until it is proven.", "Pictures of both, and sign", $"/find/tag/{stack.Tag}");
        if (stack.Stage == StackStage.KilnDried && StackRedry.Of(state, stack.Tag) is Outcome<StackRedry>.Done({ Regained: true } redry))
        {
            return redry.ByReading
                ? new("Redry it before it is packed.", string.Create(CultureInfo.InvariantCulture, $"Read {redry.Reading.Mean!.Value.Percent:0.0} %, {redry.Target.Percent:0.#} is wanted: two steps bring it back."), "Redry, two steps", $"/charges/redry/{stack.Tag}")
                : new("Read it before it is packed.", string.Create(CultureInfo.InvariantCulture, $"In an unheated store {redry.Now.Percent:0.0} % is likely by now, {redry.Target.Percent:0.#} is wanted."), "Has it regained?", $"/charges/redry/{stack.Tag}");
        }

        if (stack.Stage is StackStage.KilnDried or StackStage.Dressed)
            return new("Pack it.", "It is dry. In an unheated building it gains.", "Packs", "/tally");
        if (stack.Readings.LastOrDefault() is { Meter: { IsFrozenAndWet: true } frozen })
            return new("Cut an oven section, or read it thawed.", frozen.Note, "Write a reading", read);
        if (stack.Moisture is not { Mean: not null } reading)
            return new("Read it.", "Nothing was measured yet.", "Write a reading", read);
        if (reading.Meter is { Usable: false } or { Corrected: null } && !WasCutSince(stack, reading))
            return new("Cut an oven section.", reading.Meter!.Note, "Write a reading", read);
        if (stack.NeverKiln)
            return stack.ReservedFor is { } order && state.Orders.ContainsKey(order)
                ? new("Ship it as soon as it may go.", $"It must never see a kiln{Gains(drying)}.", $"Order {order}", $"/promises/{order}")
                : new("Sell it as air-dried wood.", $"It must never see a kiln{Gains(drying)}.", "Another reading", read);
        if (state.PlannedCharges.Values.FirstOrDefault(charge => charge.Stacks.Contains(stack.Tag)) is { } planned)
            return Planned(state, stack, drying, planned, season) with { Beside = OwnLoad.Beside(state, planned, season, stack.Tag) };
        var days = state.Today.DayNumber - reading.At.Day().DayNumber;
        if (season.ChargeOf(stack.Tag) is { Tag: null } worked)
            return ByPlan(state, stack, worked, season.Name, days, $"{Gains(drying)}.");
        return drying?.Gain is not null ? new("Load it in a kiln when one is free.", $"Dry enough or not, left outdoors it gains: {Ahead(drying)}.", "Load a charge", $"/charges/new?stacks={stack.Tag}")
            : drying is { IsReady: true } ? new("Load it in a kiln when one is free.", "It is dry enough for the kiln.", "Load a charge", $"/charges/new?stacks={stack.Tag}")
            : days > OldDays ? new("Read it again.", $"The last reading is {days} days old.", "Another reading", read)
            : new("Leave it on stickers.", $"It still dries outdoors{(drying is null ? "" : $"; dry enough {drying.ReadyWords}")}.", "Another reading", read);
    }

    private static StackNext Planned(YardState state, Stack stack, StackForecast? drying, PlannedCharge planned, SeasonNow season)
    {
        if (LoadInTheWay.Of(state, planned) is { } hindered)
            return Otherwise(state, stack, planned, hindered, season.ChargeOf(stack.Tag), season.Name);
        if (season.Beside is { WorkedIsBetter: true } && season.ChargeOf(stack.Tag) is { Tag: null } better && !OwnLoad.Agrees(state, planned, season, stack.Tag))
            return ByPlan(state, stack, better, season.Name, 0, $". Your load {planned.Tag}, {planned.Kiln} on {DayWords.Of(planned.InOn, state.Today)}, is the worse one for promises: settle which it is") with { Key = "See both", Path = "/season/take" };
        var with = KilnsToLoad.With(planned.Stacks.Where(other => other != stack.Tag));
        var serves = planned.Serves is null ? "" : $" for {planned.Serves}";
        return new(
            $"Load it in {planned.Kiln} on {DayWords.Of(planned.InOn, state.Today)}{with}.",
            $"Planned as charge {planned.Tag}{serves}, out about {DayWords.Of(planned.OutOn, state.Today)}{BeforeDry(drying, planned)}{Gains(drying)}.", "Load the charge", $"/charges/new?plan={planned.Tag}");
    }

    // A load that cannot be as it was planned is no advice: the worked plan's is, where there is one.
    private static StackNext Otherwise(YardState state, Stack stack, PlannedCharge planned, string hindered, SeasonCharge? worked, string plan)
    {
        var why = $"Your load {planned.Tag}, {planned.Kiln} on {DayWords.Of(planned.InOn, state.Today)}, cannot be: {hindered}.";
        return worked is null
            ? new($"Plan another load for {stack.Tag}.", why, "Load a charge", $"/charges/new?stacks={stack.Tag}")
            : ByPlan(state, stack, worked, plan, 0, $". {why}");
    }

    // What the worked plan does with it; a reading too old to load by comes before.
    private static StackNext ByPlan(YardState state, Stack stack, SeasonCharge worked, string plan, int days, string more)
    {
        var place = $"{worked.Kiln} on {DayWords.Of(worked.In.Day(), state.Today)}";
        return days > OldDays
            ? new($"Read it again before it goes into {place}.", $"The last reading is {days} days old.", "Another reading", $"/stacks/{stack.Tag}/read")
            : new($"Load it in {place}{KilnsToLoad.With(worked.Stacks.Select(one => one.Tag).Where(tag => tag != stack.Tag))}.", $"By {char.ToLowerInvariant(plan[0])}{plan[1..]}, the worked one{(worked.Serves.Count > 0 ? $", for {string.Join(", ", worked.Serves)}" : ", for stock")}{more}",
                $"Load {worked.Kiln}", $"/charges/new?kiln={worked.Kiln}&stacks={string.Join(',', worked.Stacks.Select(one => one.Tag))}");
    }

    // A kiln need not wait for the air: it dries on from where the wood is, only longer.
    private static string BeforeDry(StackForecast? drying, PlannedCharge planned) => drying is null or { IsReady: true } || drying.Likely is { } ready && ready <= planned.InOn ? ""
        : string.Create(CultureInfo.InvariantCulture, $". It goes in before air alone has it dry enough ({drying.Target.Percent:0.#} %, {(drying.Likely is { } day ? DayWords.Of(day, drying.Today) : "not in sight")}): the kiln dries it on from about {AtLoading(drying, planned.InOn).Percent:0} %");

    private static MoistureContent AtLoading(StackForecast drying, DateOnly day) => drying.Ahead.LastOrDefault(one => one.Date <= day, drying.Now).P50;

    private static bool WasCutSince(Stack stack, MoistureReading reading) =>
        stack.Readings.Any(other => other.At > reading.At && other.Method == Book.Facts.MoistureMethod.OvenSections);

    private static string Gains(StackForecast? drying) => drying?.Gain is null ? "" : $". Left outdoors it gains: {Ahead(drying)}";

    private static string Ahead(StackForecast drying) => string.Create(CultureInfo.InvariantCulture, $"{drying.Gain!.Value.P50.Percent:0.0} % likely by {DayWords.Of(drying.Gain.Value.Date, drying.Today)}, {drying.Now.P50.Percent:0.0} now");
}
