using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A pack or stack that may go on a load.</summary>
/// <param name="Tag">Its tag.</param>
/// <param name="IsPack">A pack goes whole; of a stack, board feet.</param>
/// <param name="Words">What it is and how wet.</param>
/// <param name="Bf">Footage there is.</param>
/// <param name="Usual">What would usually go: a pack whole, of a stack what the line still wants.</param>
/// <param name="KgPerBf">Weight of a board foot at its moisture; null when that is not known.</param>
/// <param name="MayNot">Why it may not leave; null when it may.</param>
/// <param name="Ordered">Its moisture beside what was asked for.</param>
public sealed record LoadPart(string Tag, bool IsPack, string Words, double Bf, double Usual, double? KgPerBf, string? MayNot, AsOrdered Ordered);

/// <summary>A load for one line of an order: what may go, what it weighs, and what to mind before it leaves.</summary>
/// <param name="Left">Still to ship, in the unit of the line.</param>
/// <param name="Kilograms">Weight of what would usually go; null when a part's is not known.</param>
/// <param name="Trips">Trips of the yard's own trailer; null without a weight or a payload.</param>
/// <param name="Cautions">What does not agree with what was asked.</param>
public sealed record LoadSheet(Order Order, OrderPosition Line, double Left, IReadOnlyList<LoadPart> Parts, double? Kilograms, int? Trips, IReadOnlyList<string> Cautions)
{
    /// <summary>What is wetter than ordered among what may leave: it goes only on a named decision.</summary>
    public IReadOnlyList<string> Wetter => [.. Parts.Where(part => part.MayNot is null && part.Ordered.IsWetter).Select(part => part.Tag)];

    /// <summary>True when something may leave now.</summary>
    public bool MayLeave => Parts.Any(part => part.MayNot is null) || Line.Asked.Unit == OrderUnit.M3Loose;

    /// <summary>The load of an order line.</summary>
    public static Outcome<LoadSheet> Of(YardState state, string order, int line)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Orders.TryGetValue(order ?? "", out var known))
            return new Refusal("order", order ?? "", $"an order of the book: {NearestNames.Of(order ?? "", [.. state.Orders.Keys])}");
        if (known.Lines.Find(position => position.Asked.Line == line) is not { } position)
            return new Refusal("line", $"{line}", $"a line of {order}: {string.Join(", ", known.Lines.Select(l => l.Asked.Line))}");

        var left = Math.Max(position.Asked.Quantity - position.Shipped, 0.0);
        var packs = known.Packs.Select(tag => state.Packs[tag]).Where(pack => pack.IsHere && (pack.Line ?? 1) == line).ToList();
        var wantedBf = (WoodWorth.FootageOf(position.Asked) is { } whole ? whole * left / position.Asked.Quantity : 0.0) - packs.Sum(pack => pack.Agreed?.Footage.Count ?? 0.0);
        List<LoadPart> parts = [.. packs.Select(pack => Part(state, pack))];
        foreach (var stack in position.Asked.Stacks.Select(tag => state.Stacks[tag]).Where(stack => stack.IsHere))
        {
            var part = Part(state, stack, wantedBf, position.Asked);
            wantedBf -= part.Usual;
            parts.Add(part);
        }

        var going = parts.Where(part => part.MayNot is null && part.Usual > 0.0).ToList();
        double? kilograms = going.Count > 0 && going.TrueForAll(part => part.KgPerBf is not null) ? going.Sum(part => part.Usual * part.KgPerBf!.Value) : null;
        int? trips = kilograms is { } kg && state.Setting("trailer_payload") is { } payload ? Carrying.Trips(Mass.FromKilograms(kg), Mass.FromKilograms(payload)) : null;
        return new LoadSheet(known, position, left, parts, kilograms, trips, [.. Cautioned(state, position.Asked, parts)]);
    }

    private static LoadPart Part(YardState state, Pack pack)
    {
        var sheet = PackSheet.Of(state, pack.Tag) is Outcome<PackSheet>.Done(var done) ? done : throw new InvalidOperationException($"{pack.Tag} is in the book.");
        var bf = pack.Agreed?.Footage.Count ?? 0.0;
        var why = pack.IsBeingTallied ? "somebody is still counting it" : pack.Agreed is null ? "two tallies differ" : !pack.Proven ? "its species is unproven" : null;
        return new(pack.Tag, true, $"pack from {pack.Stack}, {pack.Agreed?.Boards.Count ?? 0} boards{(sheet.Ordered.IsWetter ? $", {sheet.Ordered.Word}" : "")}", bf, why is null ? bf : 0.0, bf > 0.0 ? sheet.Weight?.Kilograms / bf : null, why, sheet.Ordered);
    }

    private static LoadPart Part(YardState state, Stack stack, double wanted, OrderLine asked)
    {
        var why = stack.Stage == StackStage.InKiln ? $"it is in charge {stack.Charge}" : !stack.Proven ? "its species is unproven" : null;
        var moisture = stack.Moisture?.Mean;
        var perBf = moisture is { } mc ? WoodWeight.OfFootage(stack.Species, mc, BoardFeet.From(1.0)).Kilograms : (double?)null;
        var words = $"{stack.Species.CommonName} {stack.Thickness}, {stack.Place}{(moisture is { } at ? string.Create(CultureInfo.InvariantCulture, $", {at.Percent:0.0} % on {DayWords.Of(stack.Moisture!.At, state.Today)}") : ", not read")}";
        return new(stack.Tag, false, words, stack.Footage.Count, why is null ? Math.Clamp(wanted, 0.0, stack.Footage.Count) : 0.0, perBf, why, AsOrdered.Of(moisture, asked));
    }

    private static IEnumerable<string> Cautioned(YardState state, OrderLine asked, List<LoadPart> parts)
    {
        foreach (var part in parts.Where(part => part.MayNot is null))
        {
            var stack = part.IsPack ? PackSheet.From(state, state.Packs[part.Tag]) : state.Stacks[part.Tag];
            if (part.Ordered.Is is OrderedMoisture.Wetter or OrderedMoisture.Drier)
                yield return string.Create(CultureInfo.InvariantCulture, $"{part.Tag} is at {part.Ordered.Mean!.Value.Percent:0.0} %; asked for {part.Ordered.Asked}.");
            if (part.Ordered.Is == OrderedMoisture.NotMeasured)
                yield return $"The moisture of {part.Tag} is not on record; {part.Ordered.Asked} was asked for.";
            if (!part.IsPack && !stack.FootageSure)
                yield return string.Create(CultureInfo.InvariantCulture, $"Are there still {stack.Footage.Count:#,0} bf on {part.Tag}? The card says {StackSheet.AboutWords(stack, state.Today).Trim()}: count it while it is picked.");
            if (asked.NeverKiln && stack.Charges.Count > 0)
                yield return $"{part.Tag} was in a kiln; it was never to see one.";
            if (asked.HeatTreated && !stack.Charges.SelectMany(charge => state.Charges[charge].Treatments).Any(HeatTreatmentRule.IsMet))
                yield return $"Heat treatment of {part.Tag} is unproven; it was asked for.";
        }

        if (asked.Unit == OrderUnit.M3Loose && asked.ForbiddenSpecies?.Where(name => state.Shavings.Species.Contains(name)).ToList() is { Count: > 0 } found)
            yield return $"{string.Join(", ", found)} is in the shavings bin: a danger to horses. Empty and sweep it first.";
    }
}

/// <summary>A load as it was typed.</summary>
/// <param name="Packs">Tags of the packs that go.</param>
/// <param name="StackBf">Board feet of stacks by tag, as typed; empty for none.</param>
/// <param name="Quantity">For goods that are not counted in board feet: slabs, pieces, loose m3.</param>
/// <param name="Despite">Who agreed that wood wetter than ordered goes, and why.</param>
/// <param name="Rest">"follows" or "nothing" of what is short of the line; asked for where little is short.</param>
public sealed record ShipTyped(IReadOnlyList<string> Packs, IReadOnlyDictionary<string, string> StackBf, string? Quantity, string? Carrier, string? By, string? Despite = null, string? Rest = null);

/// <summary>Writes that a load left.</summary>
public static class LoadWrite
{
    private const double FewShare = 0.05; // of the order: less is not worth a load of its own; common practice, no source

    public static Outcome<IReadOnlyList<Entry>> Left(YardBook book, string order, int line, ShipTyped load, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(key);
        var state = book.State;
        return LoadSheet.Of(state, order, line).Then(sheet =>
        {
            var typed = new Typed();
            var shares = load.StackBf.Where(pair => !string.IsNullOrWhiteSpace(pair.Value)).Select(pair => new StackShare(pair.Key, Figure(typed, $"Board feet of {pair.Key}", pair.Value))).Where(share => share.Bf > 0.0).ToList();
            var counted = WoodWorth.FootageOf(sheet.Line.Asked) is null;
            var quantity = counted ? Figure(typed, sheet.Line.Asked.Unit == OrderUnit.M3Loose ? "Loose m³" : "Pieces", load.Quantity) : (double?)null;
            if (load.Packs.Count == 0 && shares.Count == 0 && !(sheet.Line.Asked.Unit == OrderUnit.M3Loose && quantity > 0.0))
                typed.Refuse("Load", "nothing", "at least one pack, board feet of a stack, or a loose quantity");
            var going = sheet.Parts.Where(part => part.IsPack ? load.Packs.Contains(part.Tag) : shares.Exists(share => share.Stack == part.Tag)).ToList();
            if (string.IsNullOrWhiteSpace(load.Despite) && going.Find(part => part.Ordered.IsWetter) is { } wet)
            {
                var refusal = PackWrite.Wetter(string.Join(", ", going.Where(part => part.Ordered.IsWetter).Select(part => part.Tag)), wet.Ordered);
                typed.Refuse(refusal.What, refusal.Given, refusal.Accepted);
            }

            if (string.IsNullOrWhiteSpace(load.Rest) && ShortBf(sheet, going, shares) is { } few)
                typed.Refuse("The rest", string.Create(CultureInfo.InvariantCulture, $"{few:#,0.#} bf short of the line"), "whether the rest follows, or nothing follows as agreed with the customer: choose one below");
            var by = typed.By(state, load.By);
            return typed.Then(() => key.Write(book, by, new Shipped(
                PackWrite.NextShipment(state), order, load.Packs, shares, line, quantity, string.IsNullOrWhiteSpace(load.Carrier) ? null : load.Carrier.Trim(), Kilograms(going, shares), Moisture(going),
                Despite: string.IsNullOrWhiteSpace(load.Despite) ? null : load.Despite.Trim(), Closes: load.Rest == "nothing")));
        });
    }

    // A few board feet under the order: nobody saws them for themselves, so somebody has to say what becomes of them. Null where the line is filled, or much is to come.
    private static double? ShortBf(LoadSheet sheet, List<LoadPart> going, List<StackShare> shares)
    {
        if (WoodWorth.FootageOf(sheet.Line.Asked) is not { } whole || going.Count == 0)
            return null;
        var left = whole * sheet.Left / sheet.Line.Asked.Quantity;
        var goes = going.Sum(part => part.IsPack ? part.Bf : shares.Where(share => share.Stack == part.Tag).Sum(share => share.Bf));
        return left - goes is > 0.5 and var few && few <= FewShare * whole ? few : null;
    }

    private static double Figure(Typed typed, string what, string? text)
    {
        if (Read.Number(what, text ?? "") is Outcome<double>.Done(var value) && value is >= 0.0 and < 1e6)
            return value;
        typed.Refuse(what, text, "a number from 0");
        return 0.0;
    }

    private static double? Kilograms(List<LoadPart> going, List<StackShare> shares) => going.Count > 0 && going.TrueForAll(part => part.KgPerBf is not null)
        ? going.Sum(part => part.KgPerBf!.Value * (part.IsPack ? part.Bf : shares.Find(share => share.Stack == part.Tag)!.Bf))
        : null;

    private static double? Moisture(List<LoadPart> going)
    {
        var means = going.Select(part => part.Ordered.Mean?.Percent).ToList();
        return means.Count > 0 && means.TrueForAll(mean => mean is not null) ? means.Average() : null;
    }
}
