using Boardwright.Drying;
using System.Globalization;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A charge to be loaded, as typed.</summary>
/// <param name="Tag">Its name.</param>
/// <param name="Kiln">The kiln.</param>
/// <param name="Stacks">Stacks that go in.</param>
/// <param name="Target">Moisture wanted.</param>
/// <param name="By">Who loads.</param>
/// <param name="OwnersAgree">Owners of different wood agree that it is dried together.</param>
public sealed record LoadTyped(string? Tag, string? Kiln, IReadOnlyList<string> Stacks, string? Target, string? By, bool OwnersAgree = false)
{
    /// <summary>Schedule of the house it is dried by; empty for the listed one of its woods.</summary>
    public string? Schedule { get; init; }
}

/// <summary>Writes that stacks went into a kiln as one charge. What may not be dried together is refused: which, and why.</summary>
/// <remarks>Thickness ratio, moisture gap, owners, never kiln, length of pieces and room; the house's own figures where they are set.</remarks>
public static class ChargeLoad
{
    /// <summary>Stacks that could go into a kiln now: air drying, or dry wood that has regained.</summary>
    public static IReadOnlyList<Book.State.Stack> Loadable(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Stacks.Values.Where(stack => stack is { Stage: StackStage.AirDrying, NeverKiln: false } || StackRedry.IsRegainedByReading(state, stack))];
    }

    /// <summary>Why a kiln is closed to each of these stacks; empty where it takes them.</summary>
    public static IReadOnlyList<string> Closed(YardState state, string kiln, IReadOnlyList<string> stacks)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(stacks);
        return !state.Kilns.TryGetValue(kiln, out var found) ? [] : [.. stacks.Select(tag => state.Stacks.GetValueOrDefault(tag) is { } stack ? LoadInTheWay.Closed(state, found, stack) : null).OfType<string>()];
    }

    /// <summary>A name for the next charge of a kiln: the letter its last one had, one number on.</summary>
    public static string NextTag(YardState state, string kiln)
    {
        ArgumentNullException.ThrowIfNull(state);
        var used = state.Charges.Values.Where(charge => charge.Kiln == kiln).Select(charge => charge.Tag).Concat(state.PlannedCharges.Values.Where(charge => charge.Kiln == kiln).Select(charge => charge.Tag));
        var last = used.Select(tag => (Letter: tag[..1], Number: tag.Length > 2 && int.TryParse(tag.AsSpan(2), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 0)).DefaultIfEmpty((Letter: "C", Number: 0)).MaxBy(tag => tag.Number);
        return string.Create(CultureInfo.InvariantCulture, $"{last.Letter}-{last.Number + 1}");
    }

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, LoadTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        var tag = read.Named("Charge", typed.Tag, "a name for the charge");
        var kiln = read.Named("Kiln", typed.Kiln, string.Join(", ", state.Kilns.Keys));
        var target = read.Percent("Moisture wanted", typed.Target);
        var by = read.By(state, typed.By);
        var schedule = ChargeSchedules.Known(read, state, typed.Schedule);
        if (typed.Stacks.Count == 0)
            read.Refuse("Stacks", "none", "at least one stack");
        foreach (var unknown in typed.Stacks.Where(stack => !state.Stacks.ContainsKey(stack)))
            read.Refuse("Stacks", unknown, $"a stack of the book: {NearestNames.Of(unknown, [.. state.Stacks.Keys])}");
        if (kiln.Length > 0 && !state.Kilns.ContainsKey(kiln))
            read.Refuse("Kiln", kiln, string.Join(", ", state.Kilns.Keys));
        if (read.Refusals.Count > 0)
            return new Outcome<IReadOnlyList<Entry>>.Refused(read.Refusals);

        var faults = Faults(state, state.Kilns[kiln], [.. typed.Stacks.Select(stack => state.Stacks[stack])], typed.OwnersAgree);
        return faults.Count > 0
            ? new Outcome<IReadOnlyList<Entry>>.Refused(faults)
            : key.Write(book, by, new ChargeLoaded(tag, kiln, typed.Stacks, target.Percent, state.PlannedCharges.GetValueOrDefault(tag)?.OutOn, Schedule: schedule));
    }

    /// <summary>Why these stacks may not share this kiln; empty when they may.</summary>
    public static IReadOnlyList<Refusal> Faults(YardState state, Book.State.Kiln kiln, IReadOnlyList<Book.State.Stack> stacks, bool ownersAgree)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(kiln);
        ArgumentNullException.ThrowIfNull(stacks);
        var rules = new SharingRules(
            state.Setting("share_charge_thickness_ratio") ?? SharingRules.Usual.ThicknessRatioMost, state.Setting("share_charge_moisture_gap") ?? SharingRules.Usual.MoistureGapMostPercent);
        var faults = new List<Refusal>();
        foreach (var stack in stacks)
        {
            if (stack.NeverKiln)
                faults.Add(new("Never kiln", stack.Tag, $"stacks that may be kiln dried; {stack.Tag} is kept out{(stack.ReservedFor is { } order ? $" for {order}" : "")}"));
            if (!stack.Proven)
                faults.Add(new("Species", $"{stack.Tag}, unproven", "wood whose species is proven: the schedule goes by it"));
            if (stack.Moisture is null)
                faults.Add(new("Moisture", $"{stack.Tag}, never read", "stacks that were read: wet wood beside dry wood spoils one of them"));
            if (stack.LongestPiece is { } longest && longest.Metres > kiln.Installed.PieceLengthMaxM + 0.05)
                faults.Add(new("Length", string.Create(CultureInfo.InvariantCulture, $"{stack.Tag}, {longest.Feet:0.#} ft"), string.Create(CultureInfo.InvariantCulture, $"pieces up to {kiln.Installed.PieceLengthMaxM / 0.3048:0.#} ft in {kiln.Name}")));
        }

        var read = stacks.Where(stack => !stack.NeverKiln && stack.Moisture?.Mean is not null).Select(stack => AsPlanned(stack, ownersAgree)).ToList();
        foreach (var (a, b) in read.SelectMany((a, index) => read.Skip(index + 1).Select(b => (a, b))))
        {
            if (Sharing.Fault(a, b, rules) is { } why)
                faults.Add(new("Together", $"{a.Id} with {b.Id}", $"{why}; dry them apart{(a.Owner != b.Owner && !ownersAgree ? ", or tick that the owners agree" : "")}"));
        }

        var room = stacks.Sum(stack => KilnRoom.AsFourQuarter(stack.Footage, stack.Thickness).Count);
        if (room > kiln.Installed.CapacityBf)
            faults.Add(new("Room", string.Create(CultureInfo.InvariantCulture, $"{room:#,0} bf as 4/4"), string.Create(CultureInfo.InvariantCulture, $"up to {kiln.Installed.CapacityBf:#,0} bf as 4/4 in {kiln.Name}")));
        return faults;
    }

    // Only what the rule of sharing looks at; the rest of a planned stack does not bear on it.
    private static Planning.Stack AsPlanned(Book.State.Stack stack, bool ownersAgree) => new(
        stack.Tag, stack.Species.StainGroup == "softwood" ? "softwood" : "hardwood", stack.Thickness.Length, stack.LongestPiece ?? Length.FromFeet(1.0), stack.Footage, stack.Footage, stack.Footage,
        stack.Moisture!.Mean!.Value, new(1, 1), stack.Owner, ownersAgree, stack.NeverKiln, null, default, null, [], 0m, 0m);
}
