using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

// Packs and what leaves the yard.
internal sealed partial class Fold
{
    // Packs tallied since their stack was last measured: another count of them changes what is left of it.
    private readonly HashSet<string> sinceMeasured = [];

    private Refusal? On(PackTallied fact)
    {
        var from = stacks.GetValueOrDefault(fact.Stack);
        var refusal = SpeciesOf(fact.Species, out var species)
            ?? InRange("thickness_quarters", fact.ThicknessQuarters, 1, 48, "1/4 to 48/4")
            ?? InRange("bf", fact.Bf, 0.0, 1e5, "0 to 1e5 bf")
            ?? (fact.Boards.Count == 0 && !fact.Open ? new Refusal("boards", "none", "at least one board") : null)
            ?? fact.Boards.Select(b => InRange("width_in", b.WidthIn, 0.5, 60.0, "0.5 to 60 in") ?? InRange("length_ft", b.LengthFt, 1.0, 40.0, "1 to 40 ft")).FirstOrDefault(r => r is not null)
            ?? (from is null ? Unknown("stack", fact.Stack, stacks) : null)
            ?? (fact.Order is { } order && !orders.ContainsKey(order) ? Unknown("order", order, orders) : null)
            ?? Counted(fact, species)
            ?? (fact.Order is { } whose ? Theirs("stack", fact.Stack, orders[whose], fact.Line ?? 1) : null)
            ?? (from!.Species != species && from.Proven ? new("species", species.CommonName, $"the species of stack {fact.Stack}, {from.Species}") : (Refusal?)null)
            ?? (packs.ContainsKey(fact.Pack) ? null : MayBePacked(from!));
        if (refusal is not null)
            return refusal;

        var tally = new Tally(entry.Number, entry.HappenedAt, entry.By, BoardFeet.From(fact.Bf), fact.Rule, Moisture(fact.McPct), [.. fact.Boards], fact.Open);
        if (packs.TryGetValue(fact.Pack, out var pack))
        {
            return pack.Shipment is { } gone ? new("pack", fact.Pack, $"a pack that is here; this one left with {gone}")
                : pack.Restacked is { } other ? new("pack", fact.Pack, $"a pack that is here; the boards of this one lie on {other}")
                : pack.Stack != fact.Stack ? new("stack", fact.Stack, $"the stack of the first tally of {fact.Pack}, {pack.Stack}")
                : Recount(fact.Pack, p => p with { Tallies = p.Tallies.Add(tally), Chosen = null, ChosenWhy = null });
        }

        packs[fact.Pack] = new()
        {
            Tag = fact.Pack,
            Species = species,
            Proven = from!.Proven,
            Thickness = NominalThickness.FromQuarters(fact.ThicknessQuarters),
            Stack = fact.Stack,
            Stage = from.Stage,
            Order = fact.Order,
            Line = fact.Line ?? (fact.Order is null ? null : 1),
            Tallies = [tally],
            History = [entry.Number],
        };
        var left = fact.StackEmpty ? 0.0 : Math.Max(from.Footage.Count - fact.Bf, 0.0);
        sinceMeasured.Add(fact.Pack);
        WithStack(fact.Stack, s => Left(s with { IntoPacks = s.IntoPacks.Add(fact.Pack), Footage = BoardFeet.From(left), Pieces = s.Pieces - fact.Boards.Count is > 0 and var pieces ? pieces : null }));
        return fact.Order is { } asked ? WithOrder(asked, o => o with { Packs = o.Packs.Add(fact.Pack) }) : null;
    }

    private Refusal? On(TallyChosen fact) => !packs.TryGetValue(fact.Pack, out var pack) ? Unknown("pack", fact.Pack, packs)
        : pack.Shipment is { } gone ? new("pack", fact.Pack, $"a pack that is here; this one left with {gone}, and its papers say what left")
        : !pack.Tallies.Exists(tally => tally.Entry == fact.Tally)
            ? new("tally", $"{fact.Tally}", $"the entry of a tally of {fact.Pack}: {string.Join(", ", pack.Tallies.Select(t => $"{t.Entry} by {t.By}"))}")
        : Recount(fact.Pack, p => p with { Chosen = fact.Tally, ChosenWhy = fact.Why });

    private Refusal? On(PackRestacked fact)
    {
        if (!packs.TryGetValue(fact.Pack, out var pack))
            return Unknown("pack", fact.Pack, packs);
        var refusal = pack.Shipment is { } gone ? new("pack", fact.Pack, $"a pack that is here; this one left with {gone}")
            : pack.Restacked is { } other ? new("pack", fact.Pack, $"a pack that is here; the boards of this one lie on {other}")
            : pack.IsBeingTallied ? new("pack", fact.Pack, "a pack whose tally is closed; somebody is still counting")
            : Fresh("stack", fact.Stack, stacks) ?? KnownPlace(fact.Place);
        if (refusal is not null)
            return refusal;

        var source = stacks[pack.Stack];
        stacks[fact.Stack] = source with
        {
            Tag = fact.Stack,
            Species = pack.Species,
            Proven = pack.Proven,
            ConfusedWith = pack.ConfusedWith,
            Stage = pack.Stage,
            Footage = pack.Footage,
            FootageBuilt = pack.Footage,
            AboutSince = pack.Agreed is null ? entry.HappenedAt : null,
            Counts = [],
            Pieces = (pack.Agreed ?? pack.Tallies[0]).Boards.Count,
            Place = fact.Place,
            ReservedFor = pack.Order,
            Charge = null,
            Charges = [.. source.Charges.Where(charge => charges[charge].LoadedAt < pack.At)],
            Readings = [.. source.Readings.Where(reading => reading.At <= pack.At)],
            FromStack = pack.Stack,
            FromLogs = [],
            IntoStacks = [],
            IntoPacks = [],
            History = [entry.Number],
        };
        ownTally.Add(fact.Stack);
        return WithPack(fact.Pack, p => p with { Restacked = fact.Stack });
    }

    private Refusal? On(PackLabelled fact) => !packs.TryGetValue(fact.Pack, out var pack) ? Unknown("pack", fact.Pack, packs)
        : pack.Restacked is { } other ? new("pack", fact.Pack, $"a pack that is here; the boards of this one lie on {other}")
        : pack.Shipment is { } gone ? new("pack", fact.Pack, $"a pack that is here; this one left with {gone}")
        : pack.IsBeingTallied ? new("pack", fact.Pack, "a pack whose tally is closed; somebody is still counting")
        : pack.Agreed is null ? new("pack", fact.Pack, "a pack whose tally is agreed; two tallies differ, choose one first")
        : !pack.Proven ? new("pack", fact.Pack, "a pack of proven species; its tag was lost")
        : WithPack(fact.Pack, p => p with { LabelledAt = entry.HappenedAt });

    private Refusal? On(Shipped fact)
    {
        if (!orders.TryGetValue(fact.Order, out var order))
            return Unknown("order", fact.Order, orders);
        if (order.Lines.Find(line => line.Asked.Line == fact.Line) is not { } position)
            return new("line", $"{fact.Line}", $"a line of {fact.Order}: {string.Join(", ", order.Lines.Select(l => l.Asked.Line))}");
        var refusal = Fresh("shipment", fact.Shipment, shipments)
            ?? fact.Packs.Select(MayLeave).FirstOrDefault(r => r is not null)
            ?? fact.Stacks.Select(part => stacks.TryGetValue(part.Stack, out var stack)
                ? InRange("bf", part.Bf, 0.0, stack.Footage.Count + 0.5, $"at most the {stack.Footage.Count:0.#} bf on {part.Stack}")
                : Unknown("stacks", part.Stack, stacks)).FirstOrDefault(r => r is not null)
            ?? fact.Packs.Select(pack => packs[pack].Stack).Concat(fact.Stacks.Select(part => part.Stack)).Select(stack => Theirs("stacks", stack, order, fact.Line)).FirstOrDefault(r => r is not null)
            ?? Forbidden(position.Asked, fact);
        if (refusal is not null)
            return refusal;

        var bf = fact.Packs.Sum(pack => packs[pack].Agreed!.Footage.Count) + fact.Stacks.Sum(part => part.Bf);
        foreach (var pack in fact.Packs)
            WithPack(pack, p => p with { Shipment = fact.Shipment });

        foreach (var part in fact.Stacks)
            Take(part.Stack, part.Bf, null, sure: true);
        if (position.Asked.Unit == OrderUnit.M3Loose)
            shavings = shavings with { LooseM3 = Math.Max(shavings.LooseM3 - (fact.Quantity ?? 0.0), 0.0) };

        var quantity = fact.Quantity ?? (position.Asked.Unit == OrderUnit.M3 ? bf * BoardFeet.CubicMetresNominal : bf);
        shipments[fact.Shipment] = new(fact.Shipment, fact.Order, fact.Line, entry.HappenedAt, [.. fact.Packs], [.. fact.Stacks], quantity, fact, entry.Number);
        return WithLine(fact.Order, fact.Line, line => line with { Closed = line.Closed || fact.Closes, Shipped = line.Shipped + quantity, Shipments = line.Shipments.Add(fact.Shipment) });
    }

    private Refusal? MayLeave(string tag) => !packs.TryGetValue(tag, out var pack) ? Unknown("packs", tag, packs)
        : pack.Shipment is { } gone ? new("packs", tag, $"a pack that is here; this one left with {gone}")
        : pack.Restacked is { } other ? new("packs", tag, $"a pack that is here; the boards of this one lie on {other}")
        : pack.IsBeingTallied ? new("packs", tag, "a pack whose tally is closed; somebody is still counting")
        : pack.Agreed is null ? new("packs", tag, "a pack whose tally is agreed; two tallies differ, choose one first")
        : !pack.Proven ? new("packs", tag, "a pack of proven species; its tag was lost")
        : null;

    // A by-product carries every species planed since the bin was emptied.
    private Refusal? Forbidden(OrderLine line, Shipped fact)
    {
        var species = line.Unit == OrderUnit.M3Loose ? shavings.Species : fact.Stacks.Select(part => stacks[part.Stack].Species.CommonName);
        var found = species.Where(name => line.ForbiddenSpecies?.Contains(name, StringComparer.OrdinalIgnoreCase) == true).ToList();
        return found.Count == 0 ? null : new("shipped", string.Join(", ", found), $"goods without {string.Join(", ", line.ForbiddenSpecies!)}; empty the shavings bin first");
    }

    // Footage is what the boards measure, no more: nothing is added back for shrinkage.
    private Refusal? Counted(PackTallied fact, Species species)
    {
        var thickness = NominalThickness.FromQuarters(fact.ThicknessQuarters);
        var boards = fact.Boards.Select(board => new TalliedBoard(thickness, Length.FromInches(board.WidthIn), Length.FromFeet(board.LengthFt)) { Species = species });
        var measured = PackTally.Of(boards, fact.Rule == "exact" ? BoardRule.Exact : BoardRule.Nhla).BoardFeet.Count;
        return Math.Abs(measured - fact.Bf) > 0.5 ? new("bf", Given("bf", fact.Bf), $"{measured:0.##} bf, what its boards measure; nothing is added for shrinkage") : null;
    }

    // Wood of a customer goes to that customer: it may share a charge, never a pack or a load of somebody else.
    private Refusal? Theirs(string what, string tag, Order order, int line) =>
        stacks.TryGetValue(tag, out var stack) && stack.Owner != "mill" && order.Lines.Find(position => position.Asked.Line == line) is { Asked.CustomerWood: false }
            ? new(what, $"{tag}, wood of {stack.Owner}", $"wood of the mill for {order.Tag}; a customer's own wood goes out on the order for it")
            : null;

    private static Refusal? MayBePacked(Stack stack) =>
        stack.Stage == StackStage.Gone ? new("stack", stack.Tag, $"a stack that still holds boards; nothing is left of {stack.Tag} by its record: count it first if boards lie there")
        : stack.Stage == StackStage.InKiln ? new("stack", stack.Tag, $"a stack that is not in a kiln; {stack.Tag} is in charge {stack.Charge}")
        : null;

    // Another count of the same boards changes what they took off their stack, as long as the stack was not measured again since.
    private Refusal? Recount(string tag, Func<Pack, Pack> change)
    {
        var before = packs[tag].Footage.Count;
        if (WithPack(tag, change) is { } refusal)
            return refusal;
        var (pack, more) = (packs[tag], before - packs[tag].Footage.Count);
        return !sinceMeasured.Contains(tag) || more == 0.0 || !stacks[pack.Stack].IsHere ? null
            : WithStack(pack.Stack, stack => Left(stack with { Footage = BoardFeet.From(Math.Max(stack.Footage.Count + more, 0.0)) }));
    }

    // What a stack measures at a count or out of a kiln no longer has the boards in it that were packed before.
    private void Measured(string stack) => sinceMeasured.ExceptWith(stacks[stack].IntoPacks);

    private Refusal? WithPack(string tag, Func<Pack, Pack> change)
    {
        if (!packs.TryGetValue(tag, out var pack))
            return Unknown("pack", tag, packs);
        packs[tag] = change(pack) with { History = pack.History.Add(entry.Number) };
        return null;
    }
}
