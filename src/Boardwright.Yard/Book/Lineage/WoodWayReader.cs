using System.Collections.Immutable;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book.Lineage;

/// <summary>Reads the way of the wood from the standing entries, in the order things happened.</summary>
internal sealed class WoodWayReader(YardState state)
{
    private readonly Dictionary<string, WoodStep> steps = new(StringComparer.Ordinal);
    private readonly List<WoodFlow> flows = [];

    // The step a stack's boards are in now.
    private readonly Dictionary<string, string> current = new(StringComparer.Ordinal);

    // Footage still on the stack in that step.
    private readonly Dictionary<string, double> onStack = new(StringComparer.Ordinal);
    private readonly HashSet<string> ownTally = new(StringComparer.Ordinal);
    private readonly HashSet<string> shipped = new(StringComparer.Ordinal);

    public WoodWay Read()
    {
        var misfits = state.Misfits.Select(misfit => misfit.Entry).ToHashSet();
        foreach (var (_, entry) in Corrections.Standing(state.Entries).Where(standing => !misfits.Contains(standing.Entry.Number)))
            Take(entry);
        foreach (var charge in state.Charges.Values.Where(charge => charge.IsRunning))
        {
            foreach (var stack in charge.StacksInside.Where(current.ContainsKey))
                Next($"{stack} in {charge.Tag}", stack, WoodForm.InKiln, charge.LoadedAt, onStack[stack], charge.Tag, charge.History[0]);
        }

        foreach (var pack in state.Packs.Values.Where(pack => pack.Shipment is null))
            Packed(pack);
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
                (current[fact.Stack], onStack[fact.Stack]) = (fact.Stack, fact.Bf ?? 0.0);
                if (fact.Bf is not null)
                    ownTally.Add(fact.Stack);
                break;
            case LogSawn fact:
                foreach (var boards in fact.Into)
                    Sawn(fact.Log, boards);
                break;
            case StackCounted fact:
                onStack[fact.Stack] = fact.Bf;
                break;
            case StackTakenFrom fact:
                Add(new($"{fact.Stack} taken {entry.Number}", fact.Stack, WoodForm.Taken, entry.HappenedAt) { Bf = fact.Bf, Entry = entry.Number, Species = state.Stacks[fact.Stack].Species, Note = fact.Why });
                Leave(fact.Stack, $"{fact.Stack} taken {entry.Number}", fact.Bf);
                break;
            case StackDressed fact:
                Add(new(fact.OutStack, fact.OutStack, WoodForm.Dressed, entry.HappenedAt) { Bf = fact.BfOut, Entry = entry.Number, Species = state.Stacks[fact.OutStack].Species, Note = fact.Surfaces });
                Leave(fact.Stack, fact.OutStack, fact.BfIn);
                (current[fact.OutStack], onStack[fact.OutStack]) = (fact.OutStack, fact.BfOut);
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
        flows.Add(new(log, boards.Stack, boards.Bf));
        Grow(log, boards.Bf);
        if (ownTally.Contains(boards.Stack))
            return;
        Grow(boards.Stack, boards.Bf);
        onStack[boards.Stack] += boards.Bf;
    }

    private void Unloaded(string charge, StackOut stack, Entry entry)
    {
        var tag = stack.OutStack ?? stack.Stack;
        var key = tag == stack.Stack ? $"{tag} from {charge}" : tag;
        Add(new(key, tag, WoodForm.FromKiln, entry.HappenedAt) { Bf = stack.Bf, Charge = charge, Entry = entry.Number, Species = state.Stacks[tag].Species });
        flows.Add(new(current[stack.Stack], key, onStack[stack.Stack]));
        onStack[stack.Stack] = 0.0;
        (current[tag], onStack[tag]) = (key, stack.Bf);
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
        var bf = packs.Sum(Footage) + fact.Stacks.Sum(part => part.Bf);
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
        {
            Packed(pack);
            shipped.Add(pack.Tag);
            onStack[pack.Stack] = Math.Max(onStack[pack.Stack] - Footage(pack), 0.0);
            flows.Add(new(pack.Tag, fact.Shipment, Footage(pack)));
        }

        foreach (var part in fact.Stacks)
            Leave(part.Stack, fact.Shipment, part.Bf);
    }

    // A pack is part of its stack until it leaves, also through a kiln: it hangs on the stack as that is when it leaves.
    private void Packed(Pack pack)
    {
        if (shipped.Contains(pack.Tag) || !current.TryGetValue(pack.Stack, out var from))
            return;
        var tally = pack.Agreed ?? pack.Tallies[0];
        Add(new(pack.Tag, pack.Tag, WoodForm.Pack, pack.Tallies[0].At)
        {
            Bf = Footage(pack),
            Entry = tally.Entry,
            Species = pack.Species,
            Moisture = tally.Moisture,
            MoistureBasis = tally.Moisture is null ? null : $"at the tally, {tally.At:d MMM}",
            Note = pack.Order,
        });
        flows.Add(new(from, pack.Tag, Footage(pack)));
    }

    private static double Footage(Pack pack) => (pack.Agreed ?? pack.Tallies[0]).Footage.Count;

    private void Leave(string stack, string to, double bf)
    {
        flows.Add(new(current[stack], to, bf));
        onStack[stack] = Math.Max(onStack[stack] - bf, 0.0);
    }

    private void Next(string key, string stack, WoodForm form, DateTime at, double bf, string charge, long entry)
    {
        Add(new(key, stack, form, at) { Bf = bf, Charge = charge, Entry = entry, Species = state.Stacks[stack].Species });
        flows.Add(new(current[stack], key, bf));
        current[stack] = key;
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
        _ => "estimate",
    };
}
