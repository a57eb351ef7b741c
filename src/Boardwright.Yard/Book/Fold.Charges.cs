using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

// Kiln charges and their sample boards.
internal sealed partial class Fold
{
    // A sample that gained more than a tenth since it was last weighed is another board, a tare, or pounds.
    private const double TrendMax = 1.1;

    private Refusal? On(ChargePlanned fact) => !kilns.ContainsKey(fact.Kiln) ? Unknown("kiln", fact.Kiln, kilns)
        : fact.OutOn < fact.InOn ? new("out_on", $"{fact.OutOn:yyyy-MM-dd}", $"a day from {fact.InOn:yyyy-MM-dd} on")
        : Set(plannedCharges, fact.Charge, new PlannedCharge(fact.Charge, fact.Kiln, fact.InOn, fact.OutOn, [.. fact.Stacks], fact.Serves, entry.Number));

    private Refusal? On(ScheduleWritten fact) =>
        (fact.Schedule.Trim().Length == 0 ? new Refusal("schedule", fact.Schedule, "a name that is not empty") : null)
        ?? (OwnSchedule.Of(fact.Schedule, [.. fact.Rows.Select(row => new OwnStep(row.Phase, row.McAbovePct, row.Hours, Temperature.FromCelsius(row.DryBulbC), Temperature.FromCelsius(row.WetBulbC)))]) switch
        {
            Outcome<KilnSchedule>.Done(var schedule) => Set(schedules, fact.Schedule, schedule with { Note = fact.Note is null || schedule.Note is null ? fact.Note ?? schedule.Note : $"{fact.Note}; {schedule.Note}" }),
            Outcome<KilnSchedule>.Refused(var reasons) => reasons[0],
            _ => throw new InvalidOperationException("A schedule stands or is refused."),
        });

    private Refusal? On(ScheduleChosen fact) => NoSchedule(fact.Schedule) ?? WithCharge(fact.Charge, charge => charge with { Schedule = fact.Schedule });

    private Refusal? NoSchedule(string? name) => name is { } asked && !schedules.ContainsKey(asked) ? Unknown("schedule", asked, schedules) : null;

    private Refusal? On(ChargeLoaded fact)
    {
        if (!kilns.TryGetValue(fact.Kiln, out var kiln))
            return Unknown("kiln", fact.Kiln, kilns);
        var refusal = Fresh("charge", fact.Charge, charges)
            ?? InRange("target_mc_pct", fact.TargetMcPct, 3.0, 30.0, "3 to 30 %")
            ?? NoSchedule(fact.Schedule)
            ?? (kiln.Charge is { } running ? new Refusal("kiln", fact.Kiln, $"an empty kiln; charge {running} is in it") : null)
            ?? (fact.Stacks.Count == 0 ? new Refusal("stacks", "none", "at least one stack") : null)
            ?? fact.Stacks.Select(MayBeLoaded).FirstOrDefault(r => r is not null);
        if (refusal is not null)
            return refusal;

        foreach (var stack in fact.Stacks)
            WithStack(stack, s => s with { Stage = StackStage.InKiln, Place = fact.Kiln, Charge = fact.Charge, Charges = s.Charges.Add(fact.Charge) });
        kilns[fact.Kiln] = kiln with { Charge = fact.Charge, History = kiln.History.Add(entry.Number) };
        plannedCharges.Remove(fact.Charge);
        return Set(charges, fact.Charge, new Charge
        {
            Tag = fact.Charge,
            Kiln = fact.Kiln,
            Stacks = [.. fact.Stacks],
            FootageIn = fact.Stacks.Aggregate(BoardFeet.From(0.0), (sum, stack) => sum + stacks[stack].Footage),
            Target = MoistureContent.FromPercent(fact.TargetMcPct),
            LoadedAt = entry.HappenedAt,
            ExpectedOutOn = fact.ExpectedOutOn,
            Schedule = fact.Schedule,
            History = [entry.Number],
        });
    }

    private Refusal? MayBeLoaded(string tag) => !stacks.TryGetValue(tag, out var stack) ? Unknown("stacks", tag, stacks)
        : stack.NeverKiln ? new("stacks", tag, $"stacks that may be kiln dried; {tag} is marked never kiln{(stack.ReservedFor is { } order ? $" for {order}" : "")}")
        : stack.Stage == StackStage.InKiln ? new("stacks", tag, $"stacks that are not in a kiln; {tag} is in charge {stack.Charge}")
        : stack.Stage == StackStage.Gone ? new("stacks", tag, $"stacks that are here; {tag} is used up")
        : null;

    private Refusal? On(SampleCut fact)
    {
        if (Got(SampleBoard.Cut([.. fact.Sections.Select(s => Mass.FromGrams(s.WetG))], [.. fact.Sections.Select(s => Mass.FromGrams(s.DryG))], Mass.FromGrams(fact.WeightG)), out var cut) is { } refusal)
            return refusal;
        return InRange("weight_g", fact.WeightG, 50.0, 50000.0, "50 to 50000 g") ?? WithCharge(fact.Charge, charge => charge.Samples.Exists(s => s.Name == fact.Sample)
            ? new Refusal("sample", fact.Sample, $"a sample that is not in charge {fact.Charge} yet")
            : charge with
            {
                Samples = charge.Samples.Add(new()
                {
                    Name = fact.Sample,
                    Stack = fact.Stack,
                    Sections = [.. fact.Sections],
                    CalculatedDry = cut.CalculatedDry,
                    Weighings = [new(entry.Number, entry.HappenedAt, Mass.FromGrams(fact.WeightG), cut.Average)],
                }),
            });
    }

    // A weight out of trend is asked about at once.
    private Refusal? On(SampleWeighed fact) => WithSample(fact.Charge, fact.Sample, sample =>
    {
        var (last, dry) = (sample.Weighings[^1].Weight.Grams, sample.CalculatedDry.Grams);
        var pounds = InTrend(fact.WeightG * 453.59237 / 1000.0) ? "; a weight in pounds is written with lb" : InTrend(fact.WeightG / 453.59237 * 1000.0) ? "; was the scale in pounds?" : "";
        return InTrend(fact.WeightG)
            ? Weighed(sample, sample.CalculatedDry, fact.WeightG)
            : new Refusal("weight_g", Given("weight_g", fact.WeightG), $"{dry:0} to {last * TrendMax:0} g after {last:0} g{pounds}; wood lost is entered as damage");

        bool InTrend(double grams) => grams >= dry && grams <= last * TrendMax;
    });

    private Refusal? On(SampleDamaged fact) => WithSample(fact.Charge, fact.Sample, sample => fact.AfterG is not { } after
        ? sample with { RetiredAt = entry.HappenedAt }
        : SampleBoard.AfterLoss(sample.CalculatedDry, Mass.FromGrams(fact.BeforeG), Mass.FromGrams(after)).Then(dry => Weighed(sample with { CalculatedDry = dry }, dry, after, afterDamage: true)));

    private Outcome<Sample> Weighed(Sample sample, Mass dry, double grams, bool afterDamage = false) =>
        SampleBoard.Current(dry, Mass.FromGrams(grams)).Then<Sample>(moisture => sample with
        {
            Weighings = sample.Weighings.Add(new(entry.Number, entry.HappenedAt, Mass.FromGrams(grams), moisture, afterDamage)),
        });

    private Refusal? On(SettingsChanged fact) =>
        InRange("wet_bulb_c", fact.WetBulbC, -20.0, fact.DryBulbC, $"at most the dry bulb {fact.DryBulbC:0.#} C")
        ?? WithCharge(fact.Charge, charge => charge with
        {
            Settings = charge.Settings.Add(new(entry.Number, entry.HappenedAt, Temperature.FromCelsius(fact.DryBulbC), Temperature.FromCelsius(fact.WetBulbC), fact.Note)),
        });

    private Refusal? On(GaugeRead fact) => (fact.DryBulbC is { } dry ? InRange("wet_bulb_c", fact.WetBulbC, -20.0, dry + 0.3, $"at most the dry bulb {dry:0.#} C") : null) ?? WithCharge(fact.Charge, charge => charge with
    {
        Gauges = charge.Gauges.Add(new(
            entry.Number, entry.HappenedAt, Celsius(fact.DryBulbC), Celsius(fact.WetBulbC), fact.PressurePa is { } pa ? Pressure.FromPascals(pa) : null, Celsius(fact.CoreC),
            fact.CondensateL, fact.EnergyKwh, fact.Note)
        { Set = charge.Settings.LastOrDefault(set => set.At <= entry.HappenedAt) }),
    });

    private Refusal? On(Interrupted fact) => fact.To < fact.From
        ? new("to", $"{fact.To:yyyy-MM-dd HH:mm}", $"a time from {fact.From:yyyy-MM-dd HH:mm} on")
        : WithCharge(fact.Charge, charge => charge with
        {
            Gaps = charge.Gaps.Add(new(entry.Number, fact.Cause, fact.From, fact.To, Celsius(fact.DryBulbLowestC), fact.DoorsShut, fact.VentsShut, fact.FansRan, fact.Note)),
        });

    // The last step ends the stop where nobody wrote its end.
    private Refusal? On(RestartStepDone fact) => WithCharge(fact.Charge, charge => charge.Gaps.Count == 0
        ? new Refusal("charge", fact.Charge, "a charge that was interrupted")
        : charge with
        {
            Restarts = charge.Restarts.Add(new(entry.Number, entry.HappenedAt, fact.Step)),
            Gaps = fact.Step == RestartStep.Resumed && charge.Gaps[^1] is { To: null } open && entry.HappenedAt >= open.From ? charge.Gaps.SetItem(charge.Gaps.Count - 1, open with { To = entry.HappenedAt }) : charge.Gaps,
        });

    private Refusal? On(StressTested fact) =>
        InRange("prong_length_mm", fact.ProngLengthMm, 20.0, 1000.0, "20 to 1000 mm") ?? InRange("gap_sawn_mm", fact.GapSawnMm, 0.0, 200.0, "0 to 200 mm") ?? InRange("gap_read_mm", fact.GapReadMm, 0.0, 400.0, "0 to 400 mm")
        ?? WithCharge(fact.Charge, charge => fact.Sample is { } sample && !charge.Samples.Exists(one => one.Name == sample)
            ? new Refusal("sample", sample, $"a sample of charge {fact.Charge}: {string.Join(", ", charge.Samples.Select(one => one.Name))}")
            : charge with { StressTests = charge.StressTests.Add(new(entry.Number, entry.HappenedAt, fact)) });

    private Refusal? On(HeatTreated fact) => InRange("core_c", fact.CoreC, 0.0, 120.0, "0 to 120 C") ?? InRange("held_minutes", fact.HeldMinutes, 0.0, 1e5, "0 to 1e5 min")
        ?? WithCharge(fact.Charge, charge => charge with
        {
            Treatments = charge.Treatments.Add(new(entry.Number, entry.HappenedAt, Temperature.FromCelsius(fact.CoreC), Elapsed.FromMinutes(fact.HeldMinutes), fact.Probe)),
        });

    private Refusal? On(ChargeUnloaded fact)
    {
        if (!charges.TryGetValue(fact.Charge, out var charge))
            return Unknown("charge", fact.Charge, charges);
        foreach (var stack in fact.Stacks)
        {
            var refusal = charge.StacksInside.Contains(stack.Stack) ? null
                : new Refusal("stack", stack.Stack, $"a stack still in charge {fact.Charge}: {string.Join(", ", charge.StacksInside)}");
            refusal ??= InRange("bf", stack.Bf, 0.0, stacks[stack.Stack].Footage.Count * 1.05 + 1.0, $"about the {stacks[stack.Stack].Footage.Count:0} bf that went in, or less")
                ?? InRange("mc_mean_pct", stack.McMeanPct, 2.0, 100.0, "2 to 100 %") ?? KnownPlace(stack.Place)
                ?? (stack.OutStack is { } tag && tag != stack.Stack ? Fresh("out_stack", tag, stacks) : null);
            if (refusal is not null)
                return refusal;
        }

        foreach (var stack in fact.Stacks)
            Unload(stack);
        var emptied = charge with { Out = charge.Out.AddRange(fact.Stacks), History = charge.History.Add(entry.Number) };
        if (!emptied.StacksInside.Any())
        {
            emptied = emptied with { UnloadedAt = entry.HappenedAt };
            kilns[charge.Kiln] = kilns[charge.Kiln] with { Charge = null, History = kilns[charge.Kiln].History.Add(entry.Number) };
        }

        return Set(charges, fact.Charge, emptied);
    }

    private void Unload(StackOut unloaded)
    {
        var inside = stacks[unloaded.Stack];
        var readings = unloaded.McMeanPct is null ? inside.Readings : inside.Readings.Add(new(
            entry.Number, entry.HappenedAt, MoistureMethod.AtUnloading, Moisture(unloaded.McMeanPct), unloaded.McSdPct, unloaded.Boards));
        var dry = inside with
        {
            Stage = StackStage.KilnDried,
            Charge = null,
            Place = unloaded.Place,
            Footage = BoardFeet.From(unloaded.Bf),
            AboutSince = null,
            Pieces = unloaded.Pieces ?? inside.Pieces,
            Readings = readings,
            History = inside.History.Add(entry.Number),
        };
        ownTally.Add(unloaded.OutStack ?? unloaded.Stack);
        Measured(unloaded.Stack);
        if (unloaded.OutStack is not { } tag || tag == unloaded.Stack)
        {
            stacks[unloaded.Stack] = dry;
            return;
        }

        stacks[tag] = dry with { Tag = tag, FromStack = unloaded.Stack, FromLogs = [], IntoPacks = [], IntoStacks = [], History = [entry.Number] };
        stacks[unloaded.Stack] = inside with
        {
            Stage = StackStage.Gone,
            Charge = null,
            Footage = BoardFeet.From(0.0),
            IntoStacks = inside.IntoStacks.Add(tag),
            History = inside.History.Add(entry.Number),
        };
    }

    private Refusal? WithCharge(string tag, Func<Charge, Outcome<Charge>> change)
    {
        if (!charges.TryGetValue(tag, out var charge))
            return Unknown("charge", tag, charges);
        if (!charge.IsRunning)
            return new("charge", tag, $"a charge that is in its kiln; this one came out on {charge.UnloadedAt:yyyy-MM-dd}");
        switch (change(charge))
        {
            case Outcome<Charge>.Done(var changed):
                return Set(charges, tag, changed with { History = charge.History.Add(entry.Number) });
            case Outcome<Charge>.Refused(var reasons):
                return reasons[0];
            default:
                throw new InvalidOperationException("A charge is changed or refused.");
        }
    }

    private Refusal? WithSample(string charge, string name, Func<Sample, Outcome<Sample>> change) => WithCharge(charge, c =>
    {
        var which = c.Samples.FindIndex(s => s.Name == name);
        if (which < 0)
            return new Refusal("sample", name, $"a sample of charge {charge}: {string.Join(", ", c.Samples.Select(s => s.Name))}");
        if (c.Samples[which].Retired)
            return new Refusal("sample", name, "a sample that can still be believed; this one was retired");
        return change(c.Samples[which]).Then<Charge>(changed => c with { Samples = c.Samples.SetItem(which, changed) });
    });
}
