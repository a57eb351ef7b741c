using System.Collections.Immutable;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Lineage;

/// <summary>Reads the way of the wood from the standing entries, in the order things happened.</summary>
internal sealed class WoodWayReader(YardState state)
{
    private readonly Dictionary<string, WoodStep> steps = new(StringComparer.Ordinal);
    private readonly List<WoodFlow> flows = [];

    // The step a stack's boards are in now.
    private readonly Dictionary<string, string> current = new(StringComparer.Ordinal);

    // Footage still on the stack in that step, and the share of the step's cost that lies on it.
    private readonly Dictionary<string, double> onStack = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> unshared = new(StringComparer.Ordinal);
    private readonly HashSet<string> ownTally = new(StringComparer.Ordinal);

    public WoodWay Read()
    {
        var misfits = state.Misfits.Select(misfit => misfit.Entry).ToHashSet();
        foreach (var (_, entry) in Corrections.Standing(state.Entries).Where(standing => !misfits.Contains(standing.Entry.Number)))
            Take(entry);
        foreach (var charge in state.Charges.Values.Where(charge => charge.IsRunning))
        {
            foreach (var stack in charge.StacksInside.Where(current.ContainsKey))
                Next($"{stack} in {charge.Tag}", stack, WoodForm.InKiln, charge.LoadedAt, charge.Tag, charge.History[0]);
        }

        foreach (var log in state.Logs.Values.Where(log => steps.ContainsKey(log.Tag)))
            ShareOut(log.Tag);
        foreach (var (stack, key) in current)
            steps[key] = steps[key] with { LeftBf = onStack[stack] };
        foreach (var step in steps.Values.Where(step => step.Form is WoodForm.Pack or WoodForm.Pour).ToList())
            steps[step.Key] = step with { LeftBf = step.Bf - flows.Where(flow => flow.From == step.Key).Sum(flow => flow.Bf) };
        return new(steps.Values.Select(Measured).ToImmutableDictionary(step => step.Key, StringComparer.Ordinal), [.. flows]);
    }

    private void Take(Entry entry)
    {
        switch (entry.Fact)
        {
            case LogReceived fact:
                Add(new(fact.Log, fact.Log, WoodForm.Log, entry.HappenedAt) { Bf = 0.0, Entry = entry.Number, Species = state.Logs[fact.Log].Species, Note = fact.Source });
                break;
            case StackBuilt fact:
                Add(new(fact.Stack, fact.Stack, WoodForm.Stack, fact.SawnOn.ToDateTime(TimeOnly.MinValue)) { Bf = fact.Bf ?? 0.0, Entry = entry.Number, Species = state.Stacks[fact.Stack].Species });
                Lies(fact.Stack, fact.Stack, fact.Bf ?? 0.0);
                if (fact.Bf is not null)
                    ownTally.Add(fact.Stack);
                break;
            case LogSawn fact:
                foreach (var boards in fact.Into)
                    Sawn(fact.Log, boards);
                break;
            case StackCounted fact:
                Lost(fact.Stack, onStack[fact.Stack] - fact.Bf);
                break;
            case StackTakenFrom fact:
                Add(new($"{fact.Stack} taken {entry.Number}", fact.Stack, WoodForm.Taken, entry.HappenedAt) { Bf = fact.Bf, Entry = entry.Number, Species = state.Stacks[fact.Stack].Species, Note = fact.Why });
                Leave(fact.Stack, $"{fact.Stack} taken {entry.Number}", fact.Bf);
                break;
            case StackDressed fact:
                Add(new(fact.OutStack, fact.OutStack, WoodForm.Dressed, entry.HappenedAt) { Bf = fact.BfOut, Entry = entry.Number, Species = state.Stacks[fact.OutStack].Species, Note = fact.Surfaces });
                Leave(fact.Stack, fact.OutStack, fact.BfIn);
                Lies(fact.OutStack, fact.OutStack, fact.BfOut);
                break;
            case PackTallied fact:
                Packed(fact.Pack);
                break;
            case PackRestacked fact:
                Restacked(fact, entry);
                break;
            case ChargeUnloaded fact:
                foreach (var stack in fact.Stacks)
                    Unloaded(fact.Charge, stack, entry);
                break;
            case PourPlanned fact:
                Add(new(fact.Pour, fact.Pour, WoodForm.Pour, entry.HappenedAt) { Bf = 0.0, Entry = entry.Number });
                break;
            case Poured fact:
                Cast(state.Pours[fact.Pour].Plan, entry);
                break;
            case Shipped fact:
                Left(fact, entry);
                break;
        }
    }

    private void Sawn(string log, SawnInto boards)
    {
        Grow(log, boards.Bf);
        if (ownTally.Contains(boards.Stack))
        {
            flows.Add(new(log, boards.Stack, boards.Bf, 0.0));
            return;
        }

        if (flows.Exists(flow => flow.From == current[boards.Stack]))
            Next($"{boards.Stack} with {log}", boards.Stack, WoodForm.Stack, state.Logs[log].SawnAt!.Value, null, state.Logs[log].History[^1]);
        flows.Add(new(log, current[boards.Stack], boards.Bf, 0.0));
        Grow(current[boards.Stack], boards.Bf);
        onStack[boards.Stack] += boards.Bf;
    }

    // A log is shared by footage among all that was sawn from it.
    private void ShareOut(string log)
    {
        for (var at = 0; at < flows.Count; at++)
        {
            if (flows[at].From == log && steps[log].Bf > 0.0)
                flows[at] = flows[at] with { Share = flows[at].Bf / steps[log].Bf };
        }
    }

    private void Unloaded(string charge, StackOut stack, Entry entry)
    {
        var tag = stack.OutStack ?? stack.Stack;
        var key = tag == stack.Stack ? $"{tag} from {charge}" : tag;
        Add(new(key, tag, WoodForm.FromKiln, entry.HappenedAt) { Bf = stack.Bf, Charge = charge, Entry = entry.Number, Species = state.Stacks[tag].Species });
        Leave(stack.Stack, key, onStack[stack.Stack]);
        Lies(tag, key, stack.Bf);
    }

    private void Cast(PourPlanned fact, Entry entry)
    {
        steps[fact.Pour] = steps[fact.Pour] with { At = entry.HappenedAt, Entry = entry.Number };
        foreach (var piece in fact.Pieces.Where(piece => piece.Stack is not null && current.ContainsKey(piece.Stack)))
        {
            var bf = Math.Min(PieceFootage.Of(piece), onStack[piece.Stack!]);
            Leave(piece.Stack!, fact.Pour, bf);
            Grow(fact.Pour, bf);
            steps[fact.Pour] = steps[fact.Pour] with { Species = state.Stacks[piece.Stack!].Species, Moisture = MoistureContent.FromPercent(piece.McPct), MoistureBasis = "as written on the pour sheet" };
        }
    }

    private void Left(Shipped fact, Entry entry)
    {
        var packs = fact.Packs.Select(tag => state.Packs[tag]).ToList();
        var bf = packs.Sum(pack => pack.Footage.Count) + fact.Stacks.Sum(part => part.Bf);
        if (bf <= 0.0)
            return; // shavings are no lumber
        Add(new(fact.Shipment, fact.Shipment, WoodForm.Shipped, entry.HappenedAt)
        {
            Bf = bf,
            Entry = entry.Number,
            Moisture = fact.McPct is { } mc ? MoistureContent.FromPercent(mc) : null,
            MoistureBasis = fact.McPct is null ? null : "as written at loading",
            Note = state.Orders[fact.Order].Customer,
            Species = packs.Select(pack => pack.Species).Concat(fact.Stacks.Select(part => state.Stacks[part.Stack].Species)).Distinct().ToList() is [var only] ? only : null,
        });
        foreach (var pack in packs)
            flows.Add(new(pack.Tag, fact.Shipment, pack.Footage.Count, 1.0));

        foreach (var part in fact.Stacks)
            Leave(part.Stack, fact.Shipment, part.Bf);
    }

    // A pack leaves its stack at its first tally, as that is then; other tallies are of the same boards.
    private void Packed(string tag)
    {
        if (steps.ContainsKey(tag) || !state.Packs.TryGetValue(tag, out var pack))
            return;
        var tally = pack.Agreed ?? pack.Tallies[0];
        Add(new(pack.Tag, pack.Tag, WoodForm.Pack, pack.At)
        {
            Bf = pack.Footage.Count,
            Entry = tally.Entry,
            Species = pack.Species,
            Moisture = tally.Moisture,
            MoistureBasis = tally.Moisture is null ? null : $"at the tally, {tally.At:d MMM}",
            Note = pack.Order,
        });
        Leave(pack.Stack, pack.Tag, pack.Footage.Count, last: state.Entry(pack.Tallies[0].Entry).Fact is PackTallied { StackEmpty: true });
    }

    private void Restacked(PackRestacked fact, Entry entry)
    {
        var bf = state.Packs[fact.Pack].Footage.Count;
        Add(new(fact.Stack, fact.Stack, WoodForm.Stack, entry.HappenedAt) { Bf = bf, Entry = entry.Number, Species = state.Stacks[fact.Stack].Species, Note = fact.Pack });
        flows.Add(new(fact.Pack, fact.Stack, bf, 1.0));
        ownTally.Add(fact.Stack);
        Lies(fact.Stack, fact.Stack, bf);
    }

    private void Lies(string stack, string key, double bf) => (current[stack], onStack[stack], unshared[key]) = (key, bf, 1.0);

    // What goes takes its part of what the stack has cost by then; the last of it takes all the rest. A tally that measures more than the card said proves the card short.
    private void Leave(string stack, string to, double bf, bool last = false)
    {
        var (from, there) = (current[stack], onStack[stack]);
        var share = last || bf >= there ? unshared[from] : unshared[from] * bf / there;
        flows.Add(new(from, to, bf, share));
        unshared[from] -= share;
        onStack[stack] = Math.Max(there - bf, 0.0);
        if (bf > there)
            steps[from] = steps[from] with { LostBf = steps[from].LostBf + there - bf };
        if (last)
            Lost(stack, onStack[stack]);
    }

    private void Lost(string stack, double bf)
    {
        var key = current[stack];
        steps[key] = steps[key] with { LostBf = steps[key].LostBf + bf };
        onStack[stack] -= bf;
    }

    private void Next(string key, string stack, WoodForm form, DateTime at, string? charge, long entry)
    {
        var bf = onStack[stack];
        Add(new(key, stack, form, at) { Bf = bf, Charge = charge, Entry = entry, Species = state.Stacks[stack].Species });
        Leave(stack, key, bf);
        Lies(stack, key, bf);
    }

    private void Add(WoodStep step) => steps[step.Key] = step;

    private void Grow(string key, double bf) => steps[key] = steps[key] with { Bf = steps[key].Bf + bf };

    // A stack's moisture in a form: the last reading before it became something else.
    private WoodStep Measured(WoodStep step)
    {
        if (step.Form is not (WoodForm.Stack or WoodForm.InKiln or WoodForm.FromKiln or WoodForm.Dressed) || !state.Stacks.TryGetValue(step.Tag, out var stack))
            return step;
        if (step.Form == WoodForm.InKiln && state.Charges[step.Charge!] is { SampleMean: { } mean } charge)
            return step with { Moisture = mean, MoistureBasis = $"mean of {charge.SoundSamples.Count()} samples" };
        var ends = flows.Where(flow => flow.From == step.Key && steps[flow.To].Form is WoodForm.FromKiln or WoodForm.InKiln)
            .Select(flow => EndOf(steps[flow.To])).DefaultIfEmpty(DateTime.MaxValue).Min();
        var reading = stack.Readings.LastOrDefault(r => r.Mean is not null && r.At >= step.At && r.At <= ends && (step.Form == WoodForm.FromKiln || r.Method != MoistureMethod.AtUnloading));
        return reading is null ? step : step with { Moisture = reading.Mean, MoistureBasis = $"{Words(reading.Method)}, {reading.At:d MMM}" };
    }

    private DateTime EndOf(WoodStep dried) => state.Charges[dried.Charge!].LoadedAt;

    private static string Words(MoistureMethod method) => method switch
    {
        MoistureMethod.Pin => "pin meter, corrected",
        MoistureMethod.CorePins => "core pins",
        MoistureMethod.OvenSections => "oven sections",
        MoistureMethod.SampleBoards => "sample boards",
        MoistureMethod.AtUnloading => "at unloading",
        MoistureMethod.InKiln => "in the kiln",
        MoistureMethod.PackWeight => "weighed whole",
        _ => "estimate",
    };
}
