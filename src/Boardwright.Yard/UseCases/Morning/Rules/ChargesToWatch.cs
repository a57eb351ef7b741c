using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Running charges: samples to weigh, a setting to change, or the round to make.</summary>
internal static class ChargesToWatch
{
    public static IEnumerable<DayTask> Of(YardState state) => state.Charges.Values.Where(charge => charge.IsRunning && !ChargesToPull.IsDry(charge)).Select(charge =>
    {
        var worth = WoodWorth.Of(state, charge);
        var share = SheetSettings.UnwatchedShare(state);
        var stake = new Stake(worth * share, 1, $"{share:P0} of the charge’s {worth:#,0} for a day without watching");
        return charge.SoundSamples.Any() ? Samples(state, charge, stake)
            : state.Kilns.GetValueOrDefault(charge.Kiln)?.Installed.Type == Book.Facts.KilnType.RadioFrequencyVacuum ? Gauge(state, charge, stake) : ByPage(state, charge, stake);
    });

    private static DayTask Samples(YardState state, Charge charge, Stake stake)
    {
        var at = charge.SoundSamples.Max(sample => sample.Weighings[^1].At);
        var last = at.Day();
        var due = WeighingRhythm.Next(charge) <= state.Today;
        var next = due ? null : Change(state, charge);
        var (act, why, key, form) = (ChargeRun.FrozenBy(charge), due, next) switch
        {
            ({ } frozen, _, _) => ($"Wet or change the wick of {charge.Kiln}, then read both bulbs; leave the setting.", $"{char.ToUpperInvariant(frozen[0])}{frozen[1..]}; {SettingWords(charge)}.{(due ? " The samples are due too." : "")}", "Write the air", "air"),
            (_, true, _) => ($"Weigh the {charge.SoundSamples.Count()} samples of {charge.Tag}, then see the setting.", $"Last weighed {DayWords.Weekday(last, state.Today)}; {SettingWords(charge)}.", $"Weigh {charge.Tag}", "weigh"),
            (_, _, { } change) => ($"Set {charge.Kiln} to {change.Bulbs} °F.", $"{change.Why}; {SettingWords(charge)}.", $"Set {charge.Kiln}", "set"),
            _ => ($"Make the round of {charge.Kiln}: bulbs, fans, doors.", $"Samples were weighed {(last == state.Today ? (at.Hour < 12 ? "this morning" : $"today at {at:HH:mm}") : $"on {DayWords.Weekday(last, state.Today)}")}, next on {DayWords.Weekday(WeighingRhythm.Next(charge), state.Today)}; {SettingWords(charge)}.", "Write the air", "air"),
        };
        return new(Rounds(state) ?? charge.Kiln, act, why, Wettest(charge), stake, Duties.Kilns, $"/charges/{charge.Tag}/{form}", key) { Charge = charge.Tag, Caution = LostWood(charge) };
    }

    // An air kiln without samples: what its own page asks for, the first setting or the samples.
    private static DayTask ByPage(YardState state, Charge charge, Stake stake)
    {
        var next = (ChargeSheet.Of(state, charge.Tag, state.Today.ToDateTime(TimeOnly.MinValue)) as Outcome<ChargeSheet>.Done)?.Value.Next ?? new("Cut the samples.", "", "Write a sample", $"/charges/{charge.Tag}/sample");
        return Gauge(state, charge, stake) with { Do = $"{charge.Tag} in {charge.Kiln}: {char.ToLowerInvariant(next.Do[0])}{next.Do[1..]}", Why = $"{string.Join(", ", charge.Stacks)}. {next.Why}", Path = next.Path, Key = next.Key };
    }

    private static DayTask Gauge(YardState state, Charge charge, Stake stake)
    {
        var last = charge.Gauges.Count > 0 ? charge.Gauges[^1].At : (DateTime?)null;
        return new(charge.Kiln, $"Read the gauges of {charge.Tag} and write them down.", $"{string.Join(", ", charge.Stacks)}: no samples can be weighed inside. {(last is { } at ? $"Last read {at:ddd d MMM HH:mm}." : "Not read yet.")}",
            new("In the kiln", $"{charge.FootageIn.Count:#,0}", "bf", $"{charge.Target.Percent:0} % wanted{(ChargeEnd.OutDay(state, charge) is { } day ? $", out from about {DayWords.Of(day, state.Today)}" : "")}")
            {
                Source = $"loaded {charge.LoadedAt:d MMM yyyy}",
                Inputs = [("stacks", string.Join(", ", charge.Stacks)), ("target", $"{charge.Target.Percent:0.#} %")],
            },
            stake, Duties.Kilns, $"/charges/{charge.Tag}/air", $"Read {charge.Kiln}")
        { Charge = charge.Tag };
    }

    /// <summary>The air to set now by the charge's own page; null when nothing is due.</summary>
    private static (string Bulbs, string Why)? Change(YardState state, Charge charge)
    {
        var weighed = charge.SoundSamples.Max(sample => sample.Weighings[^1].At);
        var morning = state.Today.ToDateTime(TimeOnly.MinValue);
        var byClock = charge.Schedule is { } own && state.Schedules.GetValueOrDefault(own) is { HasTimes: true };
        if (ChargeRun.FrozenBy(charge) is not null || charge.Settings.Count == 0 || ChargeRun.Of(state, charge, byClock && morning > weighed ? morning : weighed) is not Outcome<ChargeRun>.Done({ Next: { Kind: ChangeKind.NextStep or ChangeKind.Equalize } next }))
            return null;

        // A step by the clock that is run out in the course of the day is told in the morning, with its hour.
        if (next is { IsDue: false, After: { } clock, DueAt: { } at } && at.Day() == state.Today)
            return (ChargeFigures.Bulbs(next.DryBulb, next.WetBulb), $"at {at:HH:mm}: the {(clock.Run!.Value + clock.Left!.Value).Hours:0.#} h of its step are run then");
        return next.IsDue
            ? (ChargeFigures.Bulbs(next.DryBulb, next.WetBulb), $"{ChargeFigures.ChangeWords(next)}: {(next.After is null ? $"{next.Calls} is there" : next.CallsWords)}")
            : null;
    }

    private static string SettingWords(Charge charge) => charge.Settings.Count == 0 ? "no setting written"
        : $"set to {charge.Settings[^1].DryBulb.Fahrenheit:0} / {charge.Settings[^1].WetBulb.Fahrenheit:0} °F since {charge.Settings[^1].At:ddd d MMM HH:mm}"
          + (charge.Settings.Count > 1 ? $", was {charge.Settings[^2].DryBulb.Fahrenheit:0} / {charge.Settings[^2].WetBulb.Fahrenheit:0}" : "");

    private static Traced Wettest(Charge charge) => new("Wettest sample", $"{charge.Wettest!.Moisture.Percent:0.0}", "%", $"sample {charge.Wettest.Name}; {charge.Target.Percent:0} wanted")
    {
        Method = "moisture-content",
        Source = $"weighed {charge.Wettest.Weighings[^1].At:d MMM yyyy HH:mm}",
        Inputs = [.. charge.SoundSamples.Select(sample => ($"sample {sample.Name}", $"{sample.Weighings[^1].Weight.Grams:#,0} g on {sample.CalculatedDry.Grams:#,0.0} g dry: {sample.Moisture.Percent:0.0} %")), ("mean", $"{charge.SampleMean!.Value.Percent:0.0} %")],
    };

    private static (string, string)? LostWood(Charge charge) => charge.SoundSamples.Select(sample => (sample, Index: sample.Weighings.FindIndex(weighing => weighing.AfterDamage))).FirstOrDefault(pair => pair.Index >= 0) is { sample: { } hurt, Index: var index }
        ? ($"Sample {hurt.Name} lost wood", $"on {hurt.Weighings[index].At:dddd d MMM}. Its dry weight is {hurt.CalculatedDry.Grams:#,0.0} g now; with the old one it would read too dry.")
        : null;

    // The rounds still ahead cannot be known without a clock; all of the day's are named.
    private static string? Rounds(YardState state) =>
        state.People.Values.Where(person => Roles.Of(person).HasFlag(Duties.Kilns)).SelectMany(Roles.Rounds).Distinct().Order().ToList() is { Count: > 0 } hours
            ? string.Join(" ", hours.Select(hour => $"{hour:HH:mm}")) : null;
}
