using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A board as it was pressed or typed, with its units.</summary>
public sealed record BoardPressed(string? Width, string? Part, string WidthUnit, string? Length, string LengthUnit, string? Grade = null);

/// <summary>What the tally is of, for its first board.</summary>
public sealed record TallyOf(string Pack, string Stack, string By, string? Order = null, int? Line = null);

/// <summary>Writes a pack's tally board by board. Each board, and each taking back, is an entry that corrects the tally by one board; nothing is wiped out.</summary>
public static class PackWrite
{
    private const double StackOver = 1.05;
    private const double WidestMm = 900.0;
    private const double NarrowestIn = 2.0;

    /// <summary>Writes the next board of a person's open tally, or opens it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="what">Pack, stack, person.</param>
    /// <param name="pressed">The board.</param>
    /// <param name="key">Of the press: sent twice it is written once, however long it waited on a phone; null for none.</param>
    public static Outcome<IReadOnlyList<Entry>> Board(YardBook book, TallyOf what, BoardPressed pressed, PostedKey? key = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(what);
        return Once(book, key) ?? Read(book.State, pressed).Then(board => Stack(book.State, what).Then(stack => Next(book, what, stack, board, pressed, key ?? PostedKey.None)));
    }

    /// <summary>Takes the last board of a person's open tally back.</summary>
    public static Outcome<IReadOnlyList<Entry>> TakeBack(YardBook book, string pack, string by, PostedKey? key = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Once(book, key) ?? Open(book.State, pack, by).Then(open => open.Fact.Boards.Count == 0
            ? new Refusal("tally", "no board", "a tally with a board to take back")
            : Correct(book, open, open.Fact with { Boards = [.. open.Fact.Boards.SkipLast(1)] }, $"board {open.Fact.Boards.Count} taken back", key: key));
    }

    /// <summary>Closes a person's tally: from then on it counts.</summary>
    /// <param name="book">The book.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="by">Who counts.</param>
    /// <param name="key">Of the press.</param>
    /// <param name="stackEmpty">Nothing is left of the stack: what its card still says is written off with this pack.</param>
    public static Outcome<IReadOnlyList<Entry>> Close(YardBook book, string pack, string by, PostedKey? key = null, bool stackEmpty = false)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Once(book, key) ?? Open(book.State, pack, by).Then(open => stackEmpty && Later(book.State, pack) is { } other
            ? new Refusal("Stack empty", pack, $"the last pack of {open.Fact.Stack}; {other} was begun after this one: say it there, or count the stack again")
            : Correct(book, open, open.Fact with { Open = false, StackEmpty = stackEmpty }, $"closed with {open.Fact.Boards.Count} boards{(stackEmpty ? $", {open.Fact.Stack} is empty" : "")}", key: key));
    }

    /// <summary>Of several tallies, the one that holds.</summary>
    public static Outcome<IReadOnlyList<Entry>> Choose(YardBook book, string pack, long tally, string by, string? why)
    {
        ArgumentNullException.ThrowIfNull(book);
        return string.IsNullOrWhiteSpace(why)
            ? new Refusal("Why", "", "what the third look at the boards showed")
            : book.Write(by, new TallyChosen(pack, tally, why));
    }

    /// <summary>Notes that a pack's tag was printed.</summary>
    public static Outcome<IReadOnlyList<Entry>> Label(YardBook book, string pack, string by)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Write(by, new PackLabelled(pack));
    }

    /// <summary>Lays the boards of a pack on stickers again, as a stack of their own: to be dried or planed.</summary>
    public static Outcome<IReadOnlyList<Entry>> Restack(YardBook book, string pack, string? stack, string? place, string? why, string? by)
    {
        ArgumentNullException.ThrowIfNull(book);
        var read = new Typed();
        var tag = read.Named("Stack", stack, $"a tag, such as {StackBuild.NextTag(book.State)}");
        var where = read.Named("Place", place, string.Join(", ", book.State.Places.Keys));
        var who = read.By(book.State, by);
        return read.Then(() => book.Write(who, new PackRestacked(pack, tag, where, string.IsNullOrWhiteSpace(why) ? null : why.Trim())));
    }

    /// <summary>Packs leave on an order line, together.</summary>
    /// <param name="book">The book.</param>
    /// <param name="packs">What goes.</param>
    /// <param name="order">The order.</param>
    /// <param name="line">Its line.</param>
    /// <param name="by">Who says so.</param>
    /// <param name="carrier">Who carries it.</param>
    /// <param name="despite">Who agreed that wood wetter than ordered goes, and why; wanted only for such wood.</param>
    public static Outcome<IReadOnlyList<Entry>> Ship(YardBook book, IReadOnlyList<string> packs, string order, int line, string by, string? carrier, string? despite = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(packs);
        if (packs.Count == 0)
            return new Refusal("Packs", "none", "at least one pack");
        var state = book.State;
        var going = packs.Where(state.Packs.ContainsKey).Select(tag => (Tag: tag, Ordered: AsOrdered.Of(state, state.Packs[tag]))).ToList();
        if (string.IsNullOrWhiteSpace(despite) && going.Where(pack => pack.Ordered.IsWetter).ToList() is { Count: > 0 } wet)
            return Wetter(string.Join(", ", wet.Select(pack => pack.Tag)), wet[0].Ordered);
        var readings = going.Select(pack => pack.Ordered.Mean?.Percent).OfType<double>().ToList();
        return book.Write(by, new Shipped(
            NextShipment(state), order, packs, [], line, Carrier: string.IsNullOrWhiteSpace(carrier) ? null : carrier, McPct: readings.Count > 0 ? readings.Average() : null, Despite: string.IsNullOrWhiteSpace(despite) ? null : despite.Trim()));
    }

    /// <summary>Writes what a buyer counted of an order, as they say it.</summary>
    public static Outcome<IReadOnlyList<Entry>> Claim(YardBook book, string order, string? counted, string? how, string by)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (!book.State.Orders.TryGetValue(order, out var known))
            return new Refusal("order", order, "an order of the book");
        return Number("Board feet they counted", counted).Then(bf => bf is > 0.0 and < 1e6
            ? book.Write(by, new Complained(known.Customer, ComplaintCause.ShortCount, $"counted {bf:0.#} bf for {known.Lines.Sum(line => line.Shipped):0.#}", order, CountedBf: bf, CountedHow: string.IsNullOrWhiteSpace(how) ? null : how))
            : new Refusal("Board feet they counted", counted ?? "", "more than 0 bf"));
    }

    /// <summary>The next free pack tag: one of the phone's own, else the one after all that are used or set aside.</summary>
    public static string NextPack(YardState state, string? phone = null) => TagNumbers.Next(state, TagNumbers.Packs, phone);

    internal static string NextShipment(YardState state) => Next("SH-", state.Shipments.Keys);

    internal static string Next(string prefix, IEnumerable<string> used) =>
        prefix + (used.Where(tag => tag.StartsWith(prefix, StringComparison.Ordinal)).Select(tag => int.TryParse(tag[prefix.Length..], CultureInfo.InvariantCulture, out var number) ? number : 0).DefaultIfEmpty(0).Max() + 1)
            .ToString("000", CultureInfo.InvariantCulture);

    internal static Refusal Wetter(string what, AsOrdered ordered) => new("Wetter than ordered", $"{what} at {ordered.Mean!.Value.Percent.ToString("0.0", CultureInfo.InvariantCulture)} %",
        $"{ordered.Asked} as ordered; or who agreed that it goes all the same, and why");

    // Another pack of the same stack that was begun after this one.
    private static string? Later(YardState state, string tag) =>
        state.Packs.Values.FirstOrDefault(other => other.Stack == state.Packs[tag].Stack && other.Tag != tag && (other.At, other.Tallies[0].Entry).CompareTo((state.Packs[tag].At, state.Packs[tag].Tallies[0].Entry)) > 0)?.Tag;

    // The entry a press made before, where it did: its answer was lost on the way and it came again.
    private static Outcome<IReadOnlyList<Entry>>? Once(YardBook book, PostedKey? key) =>
        key?.Id is { } id && book.State.Entries.FirstOrDefault(entry => entry.Id == id) is { } kept ? new Outcome<IReadOnlyList<Entry>>.Done([kept]) : null;

    private static Outcome<Stack> Stack(YardState state, TallyOf what) =>
        string.IsNullOrWhiteSpace(what.By) ? new Refusal("Who", "", "the name of who counts")
        : state.Stacks.TryGetValue(what.Stack, out var stack) ? stack
        : new Refusal("stack", what.Stack, $"a stack of the book: {NearestNames.Of(what.Stack, [.. state.Stacks.Keys])}");

    private static Outcome<IReadOnlyList<Entry>> Next(YardBook book, TallyOf what, Stack stack, TallyBoard board, BoardPressed pressed, PostedKey key)
    {
        var open = Open(book.State, what.Pack, what.By) is Outcome<(Entry Entry, PackTallied Fact)>.Done(var found) ? found : default;
        var boards = (open.Fact?.Boards ?? []).Append(board).ToList();
        var bf = Footage(boards, stack);
        var there = stack.Footage.Count + (book.State.Packs.TryGetValue(what.Pack, out var begun) && begun.Stack == stack.Tag ? begun.Footage.Count : 0.0);
        if (bf > there * StackOver + 1.0)
            return new Refusal("Board", $"{bf:0} bf with this board", $"about the {there:0} bf left of {stack.Tag}, at most; is the stack's card right? Count it again if more lies there");
        var typed = new Dictionary<string, string>(StringComparer.Ordinal) { [$"board_{boards.Count}"] = $"{Shown(pressed)}" };
        if (open.Fact is { } fact)
            return Correct(book, open, fact with { Boards = boards }, $"board {boards.Count} added", typed, key);
        if (!book.State.Packs.ContainsKey(what.Pack) && TagNumbers.Fault(book.State, "Pack", what.Pack, key.Phone) is { } others)
            return others;
        var first = new PackTallied(what.Pack, what.Stack, stack.Species.CommonName, stack.Thickness.Quarters, bf, boards, McPct: stack.Moisture?.Mean?.Percent, Order: what.Order, Line: what.Line, Open: true);
        return key.Write(book, what.By, first, typed);
    }

    private static string Shown(BoardPressed pressed) => $"{pressed.Width}{(pressed.Part is null or "" or "0" ? "" : $" + {pressed.Part}")}{Unit(pressed.Width, pressed.WidthUnit)} x {pressed.Length}{Unit(pressed.Length, pressed.LengthUnit)}";

    private static string Unit(string? typed, string unit) => typed?.Any(char.IsLetter) == true ? "" : $" {unit}";

    private static double Footage(IReadOnlyList<TallyBoard> boards, Stack stack) => PackTally.Of(PackSheet.Boards(boards, stack.Thickness, stack.Species), BoardRule.Nhla).BoardFeet.Count;

    private static Outcome<(Entry Entry, PackTallied Fact)> Open(YardState state, string pack, string by) =>
        state.Packs.TryGetValue(pack, out var tallied) && tallied.Tallies.FindLast(tally => tally.Open && tally.By == by) is { } open
            ? (state.Entry(open.Entry), (PackTallied)state.Entry(open.Entry).Fact)
            : new Refusal("tally", $"{pack} by {by}", "a tally that this person has open");

    private static Outcome<IReadOnlyList<Entry>> Correct(
        YardBook book, (Entry Entry, PackTallied Fact) open, PackTallied fact, string why, IReadOnlyDictionary<string, string>? typed = null, PostedKey? key = null)
    {
        var stack = book.State.Stacks[fact.Stack];
        return book.Write([new NewEntry(open.Entry.By, fact with { Bf = Footage(fact.Boards, stack) }, Corrects: open.Entry.Number, Reason: why, AsEntered: typed, Id: key?.Id)]);
    }

    // A board no log of this mill could give is asked about; what may have been meant is named.
    private static Outcome<TallyBoard> Read(YardState state, BoardPressed pressed)
    {
        var part = string.IsNullOrEmpty(pressed.Part) ? "0" : pressed.Part;
        var (widest, longest) = (Length.FromMillimetres(state.Yard?.ThroatMm ?? WidestMm), SizeTyped.Longest(state));
        return SizeTyped.Across("Width", pressed.Width, pressed.WidthUnit, widest, "what the mill lets through").Then(across => Number("Quarter", part).Then(quarters => SizeTyped.Along("Length", pressed.Length, pressed.LengthUnit, longest).Then<TallyBoard>(along =>
        {
            var width = across.Length.Inches + (pressed.WidthUnit == "cm" ? quarters / 2.54 : quarters);
            var feet = along.Length.Feet;
            if (!(width >= NarrowestIn && width <= widest.Inches))
                return new Refusal("Width", Shown(pressed), $"2 to {widest.Inches:0.#} in, what the mill lets through");
            if (!(feet >= 1.0 && feet <= longest.Feet))
                return new Refusal("Length", along.Kept, $"1 to {longest.Feet:0.#} ft, the longest log");
            return new TallyBoard(Math.Round(width, 9), Math.Round(feet, 9), string.IsNullOrWhiteSpace(pressed.Grade) ? null : pressed.Grade);
        })));
    }

    private static Outcome<double> Number(string what, string? text) => Quantities.Reading.Read.Number(what, text ?? "");
}
