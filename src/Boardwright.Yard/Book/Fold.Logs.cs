using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

// Logs, and tags that are lost or wrong.
internal sealed partial class Fold
{
    private Refusal? On(LogReceived fact)
    {
        var refusal = Fresh("log", fact.Log, logs) ?? SpeciesOf(fact.Species, out _)
            ?? SmallEnd("small_end_a_mm", fact.SmallEndAMm) ?? SmallEnd("small_end_b_mm", fact.SmallEndBMm)
            ?? InRange("large_end_mm", fact.LargeEndMm, 50.0, 3000.0, "50 to 3000 mm")
            ?? InRange("scale_length_m", fact.ScaleLengthM, 0.3, 20.0, "0.3 to 20 m")
            ?? InRange("actual_length_m", fact.ActualLengthM, fact.ScaleLengthM, 20.0, "at least the scaled length, at most 20 m");
        if (refusal is not null)
            return refusal;

        SpeciesOf(fact.Species, out var species);
        return Set(logs, fact.Log, new Log
        {
            Tag = fact.Log,
            ReceivedAt = entry.HappenedAt,
            Source = fact.Source,
            Species = species,
            SmallEndA = Length.FromMillimetres(fact.SmallEndAMm),
            SmallEndB = Length.FromMillimetres(fact.SmallEndBMm),
            LargeEnd = Length.FromMillimetres(fact.LargeEndMm),
            ScaleLength = Length.FromMetres(fact.ScaleLengthM),
            ActualLength = Length.FromMetres(fact.ActualLengthM),
            MetalScan = fact.MetalScan,
            MetalHits = fact.MetalHits,
            EndCoated = fact.EndCoated,
            Defect = fact.Defect,
            PlannedFor = fact.PlannedFor,
            Owner = fact.Owner,
            PaidMoney = fact.PaidMoney,
            FelledOn = fact.FelledOn,
            History = [entry.Number],
        });
    }

    // A small end past the mill's throat is mostly centimetres read as inches: the answer meant is offered.
    private Refusal? SmallEnd(string name, double mm)
    {
        if (yard is not { ThroatMm: var throat } || mm <= throat)
            return InRange(name, mm, 50.0, 3000.0, "50 to 3000 mm");
        var inches = mm / 25.4;
        var mayBeCm = mm / 2.54 <= throat && Math.Abs(inches - Math.Round(inches)) < 1e-6;
        return new(name, Given(name, mm), $"up to {throat / 25.4:0.##} in ({throat / 10.0:0} cm), the throat of the mill{(mayBeCm ? $"; did you mean {inches:0} cm ({inches / 2.54:0} in)?" : "")}")
        {
            Meant = mayBeCm ? [new($"{inches:0} cm ({inches / 2.54:0} in)", $"{inches:0} = {inches:0}cm")] : [],
        };
    }

    private Refusal? On(LogSeen fact)
    {
        if (!logs.TryGetValue(fact.Log, out var log))
            return Unknown("log", fact.Log, logs);
        var (small, seen) = (log.ScalingDiameter.Millimetres, log.Seen);
        var refusal = InRange("mid_dib_mm", fact.MidDibMm, 50.0, 3000.0, "50 to 3000 mm") ?? InRange("sweep_mm", fact.SweepMm, 0.0, small, "at most the small end") ?? InRange("sweep_towards_hour", fact.SweepTowardsHour, 0.0, 12.0, "an hour of the clock, 0 to 12")
            ?? InRange("heart_rot_mm", fact.HeartRotMm, 0.0, 0.98 * small, "less than the small end") ?? InRange("pith_off_mm", fact.PithOffMm, 0.0, 0.35 * small, "at most a third of the small end off its middle") ?? InRange("pith_towards_hour", fact.PithTowardsHour, 0.0, 12.0, "an hour of the clock, 0 to 12")
            ?? InRange("split_small_end_m", fact.SplitSmallEndM, 0.0, log.ActualLength.Metres, "at most the log") ?? InRange("split_large_end_m", fact.SplitLargeEndM, 0.0, log.ActualLength.Metres, "at most the log") ?? InRange("bark_mm", fact.BarkMm, 0.0, 100.0, "0 to 100 mm");
        if (refusal is not null)
            return refusal;

        var now = log with
        {
            Seen = new(
                fact.Log, fact.MidDibMm ?? seen.MidDibMm, fact.SweepMm ?? seen.SweepMm, fact.SweepTowardsHour ?? seen.SweepTowardsHour, fact.HeartRotMm ?? seen.HeartRotMm, fact.PithOffMm ?? seen.PithOffMm,
                fact.PithTowardsHour ?? seen.PithTowardsHour, fact.SplitSmallEndM ?? seen.SplitSmallEndM, fact.SplitLargeEndM ?? seen.SplitLargeEndM, fact.BarkMm ?? seen.BarkMm, fact.Grade ?? seen.Grade, fact.MetalMarks || seen.MetalMarks),
        };
        return LogShapes.Of(now) is Outcome<LogShape>.Refused(var reasons) ? reasons[0] : WithLog(fact.Log, _ => now);
    }

    private Refusal? On(LogRadiiMeasured fact)
    {
        if (!logs.TryGetValue(fact.Log, out var log))
            return Unknown("log", fact.Log, logs);
        if (log.IsSawn)
            return new("log", fact.Log, $"a log that is not sawn; this one was opened on {log.SawnAt:yyyy-MM-dd}");
        return LogShapes.Measured(fact.Places) is Outcome<LogShape>.Refused(var reasons) ? reasons[0]
            : LogShapes.WrongEnd(log, fact.Places) ?? WithLog(fact.Log, known => known with { Radii = [.. fact.Places], RadiiEntry = entry.Number });
    }

    private Refusal? On(MetalScanned fact) => WithLog(fact.Log, log => log with { MetalScan = fact.MetalScan, MetalHits = fact.MetalHits });

    private Refusal? On(EndCoated fact) => WithLog(fact.Log, log => log with { EndCoated = true });

    private Refusal? On(BladeStruck fact) => WithLog(fact.Log, log => log with { Strikes = log.Strikes + 1, StrikeMoney = log.StrikeMoney + fact.CostMoney });

    private Refusal? On(LogSawn fact)
    {
        if (!logs.TryGetValue(fact.Log, out var log))
            return Unknown("log", fact.Log, logs);
        if (log.IsSawn)
            return new("log", fact.Log, $"a log that is not sawn; this one was opened on {log.SawnAt:yyyy-MM-dd}");
        if ((fact.Boards ?? []).FirstOrDefault(one => one.Pieces < 0 || !(one.WidthIn is > 0.0 and < 100.0) || !(one.LengthFt is > 0.0 and < 60.0) || one.ThicknessQuarters < 1) is { } board)
            return new("boards", $"{board.Pieces} of {board.ThicknessQuarters}/4, {board.WidthIn} in, {board.LengthFt} ft", "a count, a thickness, inches and feet over 0");
        foreach (var into in fact.Into)
        {
            var refusal = stacks.TryGetValue(into.Stack, out var stack) ? InRange("bf", into.Bf, 0.0, 1e5, "0 to 1e5 bf") : Unknown("stack", into.Stack, stacks);
            refusal ??= stack!.Species == log.Species || !log.Proven ? null
                : new("stack", $"{into.Stack}, {stack.Species}", $"a stack of {log.Species}; or correct the species of the log or of the stack");
            if (refusal is not null)
                return refusal;
        }

        foreach (var into in fact.Into)
        {
            var stack = stacks[into.Stack];
            var tallied = ownTally.Contains(into.Stack);
            stacks[into.Stack] = stack with
            {
                FromLogs = stack.FromLogs.Add(fact.Log),
                Footage = tallied ? stack.Footage : stack.Footage + BoardFeet.From(into.Bf),
                FootageBuilt = tallied ? stack.FootageBuilt : stack.FootageBuilt + BoardFeet.From(into.Bf),
                Pieces = tallied ? stack.Pieces : (stack.Pieces ?? 0) + into.Pieces,
                History = stack.History.Add(entry.Number),
            };
        }

        return WithLog(fact.Log, l => l with
        {
            SawnAt = entry.HappenedAt,
            Into = [.. fact.Into],
            MillHours = fact.MillHours,
            SawnBy = fact.Sawyer ?? entry.By,
            SawnBoards = [.. fact.Boards ?? []],
            SawnPlan = fact.Plan,
        });
    }

    private Refusal? On(YieldReset fact)
    {
        if (fact.Species is { } species && SpeciesOf(species, out _) is { } unknown)
            return unknown;
        yieldsBegun.Add(new(entry.Number, entry.HappenedAt, fact));
        return null;
    }

    private Refusal? On(ThicknessMeasured fact)
    {
        thicknessSets.Add(new(entry.Number, entry.HappenedAt, fact));
        return SpeciesOf(fact.Species, out _);
    }

    private Refusal? On(TagLost fact) => WithTagged(fact.Item,
        log => log with { Proven = false, ConfusedWith = [.. fact.ConfusedWith] },
        stack => stack with { Proven = false, ConfusedWith = [.. fact.ConfusedWith] },
        pack => pack with { Proven = false, ConfusedWith = [.. fact.ConfusedWith] });

    private Refusal? On(TagProven fact) => WithTagged(fact.Item,
        log => log with { Proven = true, ConfusedWith = [] },
        stack => stack with { Proven = true, ConfusedWith = [] },
        pack => pack with { Proven = true, ConfusedWith = [] });

    private Refusal? On(SpeciesCorrected fact)
    {
        if (SpeciesOf(fact.Species, out var species) is { } unknown)
            return unknown;
        return WithTagged(fact.Item,
            log => log with { Species = species, Proven = true, ConfusedWith = [] },
            stack => stack with { Species = species, Proven = true, ConfusedWith = [], Readings = [.. stack.Readings.Select(reading => Reread(reading, species))] },
            pack => pack with { Species = species, Proven = true, ConfusedWith = [] });
    }

    private Refusal? WithLog(string tag, Func<Log, Log> change)
    {
        if (!logs.TryGetValue(tag, out var log))
            return Unknown("log", tag, logs);
        logs[tag] = change(log) with { History = log.History.Add(entry.Number) };
        return null;
    }

    private Refusal? WithTagged(string tag, Func<Log, Log> log, Func<Stack, Stack> stack, Func<Pack, Pack> pack) =>
        logs.ContainsKey(tag) ? WithLog(tag, log)
        : packs.ContainsKey(tag) ? WithPack(tag, pack)
        : stacks.ContainsKey(tag) ? WithStack(tag, stack)
        : new("item", tag, $"a log, stack or pack in the book at that time: {NearestNames.Of(tag, [.. logs.Keys, .. stacks.Keys, .. packs.Keys])}");
}
