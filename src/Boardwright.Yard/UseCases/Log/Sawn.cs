using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Boards of one size as typed.</summary>
/// <param name="Planned">How many the plan has of this size; 0 for a size it does not have.</param>
/// <param name="WidthUnit">Of a bare width: in or cm.</param>
/// <param name="LengthUnit">Of a bare length: ft or m.</param>
public sealed record CountTyped(string? Thickness, string? Width, string? Length, string? Pieces, int Planned = 0, string WidthUnit = "in", string LengthUnit = "ft");

/// <summary>A stack boards went to, as typed: footage and pieces where nothing was counted by size, a thickness where its card is not open yet.</summary>
public sealed record OntoTyped(string? Stack, string? Thickness, string? Bf, string? Pieces);

/// <summary>What came out of a log, as typed.</summary>
/// <param name="Counts">By size; rows without a count do not count.</param>
/// <param name="AsPlanned">Sizes of the plan without a count are taken as planned.</param>
/// <param name="Onto">Where it went.</param>
/// <param name="Place">Of stacks whose card is opened with it.</param>
/// <param name="Minutes">On the saw; empty for unknown.</param>
/// <param name="By">Who writes it.</param>
/// <param name="Sawyer">Who sawed; empty for the same.</param>
public sealed record LogSawnTyped(IReadOnlyList<CountTyped> Counts, bool AsPlanned, IReadOnlyList<OntoTyped> Onto, string? Place, string? Minutes, string? By, string? Sawyer = null);

/// <summary>Writes what a log gave, beside what its plan promised that day.</summary>
public static class LogSawnWrite
{
    private const double WidestMm = 1500.0;

    /// <summary>Planned boards by size, the largest first: the rows of the form.</summary>
    public static IReadOnlyList<(PlannedBoard Size, int Pieces)> Sizes(CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Boards.GroupBy(board => (board.Thickness.Quarters, Width: Math.Round(board.Width.Inches, 2), Length: Math.Round(board.Length.Feet, 2)))
            .OrderByDescending(group => group.Key.Quarters).ThenByDescending(group => group.Key.Width * group.Key.Length).Select(group => (group.First(), group.Count()))];
    }

    /// <summary>Stacks that boards of the log can go to: of its wood, still drying in the air, of its owner.</summary>
    public static IReadOnlyList<Stack> Open(YardState state, Log log)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(log);
        return [.. state.Stacks.Values.Where(stack => stack.Stage == StackStage.AirDrying && stack.Proven && stack.Species == log.Species && stack.Owner == log.Owner).OrderByDescending(stack => stack.SawnOn)];
    }

    /// <summary>Writes it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="tag">The log.</param>
    /// <param name="typed">As typed.</param>
    /// <param name="choice">The plan that lay beside the saw.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, LogSawnTyped typed, LogChoice choice, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Logs.TryGetValue(tag, out var log))
            return new Refusal("Log", tag, $"a log of the yard: {NearestNames.Of(tag, [.. state.Logs.Keys])}");
        if (log.IsSawn)
            return new Refusal("Log", tag, $"a log that is not sawn; it went to {string.Join(", ", log.Into.Select(into => into.Stack))} on {log.SawnAt:d MMMM}");

        var boards = typed.Counts.Select((row, i) => Counted(state, read, row, typed.AsPlanned, i + 1)).OfType<SawnSize>().ToList();
        var onto = typed.Onto.Where(row => !string.IsNullOrWhiteSpace(row.Stack)).Select(row => Onto(state, read, log, row, boards)).ToList();
        var homeless = boards.Select(board => board.Thickness).Distinct().Where(thickness => onto.All(one => one.Thickness != thickness)).ToList();
        if (onto.Count == 0 || homeless.Count > 0)
            read.Refuse("Stack", "", onto.Count == 0 ? "the stack the boards went to" : $"a stack for {string.Join(" and ", homeless)}");
        var fresh = onto.Where(one => !state.Stacks.ContainsKey(one.Stack)).ToList();
        fresh.ForEach(one => read.Refuse(TagNumbers.Fault(state, "Stack", one.Stack, key.Phone)));
        if (fresh.Count > 0 && !state.Places.ContainsKey(typed.Place ?? ""))
            read.Refuse("Place", typed.Place, $"where {fresh[0].Stack} lies: {string.Join(", ", state.Places.Keys)}");
        var minutes = string.IsNullOrWhiteSpace(typed.Minutes) ? (double?)null : read.Number("Minutes on the saw", typed.Minutes, 1.0, 1440.0, "1 to 1440 minutes, or nothing");
        var by = read.By(state, typed.By);
        var at = read.Time(book, key);
        Holds(read, log, onto);
        return read.Then(() =>
        {
            var plan = LogCutting.Of(state, log, choice.Thickness, choice.Pattern, choice.Orders) is Outcome<LogCutting>.Done(var cutting) ? Planned(cutting, onto, boards) : null;
            var fact = new LogSawn(
                tag, [.. onto.Select(one => new SawnInto(one.Stack, Math.Round(one.Bf, 3), one.Pieces))], minutes / 60.0, plan?.Pattern,
                boards.Count == 0 ? null : [.. boards.Select(board => new SawnBoards(board.Thickness.Quarters, Math.Round(board.Width.Inches, 4), Math.Round(board.Length.Feet, 4), board.Pieces))],
                plan, string.IsNullOrWhiteSpace(typed.Sawyer) || typed.Sawyer.Trim() == by ? null : typed.Sawyer.Trim());
            var grain = plan?.Pattern == "quarter" ? Grain.Quarter : Grain.Flat;
            var product = log.PlannedFor?.Contains("slab", StringComparison.OrdinalIgnoreCase) == true ? Product.Slabs : Product.Boards;
            return book.Write(
            [
                .. fresh.Select((one, i) => new NewEntry(by, new StackBuilt(one.Stack, log.Species.CommonName, one.Thickness.Quarters, product, at.Day(), typed.Place!, log.Owner, null, null, grain), at, Id: key.Numbered(i + 1))),
                new NewEntry(by, fact, at, Id: key.Id),
            ]);
        });
    }

    private static SawnSize? Counted(YardState state, Typed read, CountTyped row, bool asPlanned, int number)
    {
        var text = string.IsNullOrWhiteSpace(row.Pieces) && asPlanned && row.Planned > 0 ? row.Planned.ToString(CultureInfo.InvariantCulture) : row.Pieces;
        if (string.IsNullOrWhiteSpace(text))
            return null;
        var pieces = read.Whole($"Count {number}", text, 0, 500);
        if (pieces == 0)
            return null;
        var thickness = Thickness(state, read, $"Thickness {number}", row.Thickness);
        var width = read.Size(SizeTyped.Across($"Width {number}", row.Width, row.WidthUnit, Length.FromMillimetres(state.Yard?.ThroatMm ?? WidestMm), "what the mill lets through"));
        var length = read.Size(SizeTyped.Along($"Length {number}", row.Length, row.LengthUnit, SizeTyped.Longest(state)));
        return new(thickness, width, length, pieces);
    }

    private static (string Stack, NominalThickness Thickness, double Bf, int Pieces) Onto(YardState state, Typed read, Log log, OntoTyped row, List<SawnSize> boards)
    {
        var tag = row.Stack!.Trim();
        var known = state.Stacks.GetValueOrDefault(tag);
        if (known is not null && !Open(state, log).Contains(known))
            read.Refuse("Stack", tag, $"a stack of {log.Owner}’s {log.Species.CommonName} that dries in the air{(Open(state, log) is { Count: > 0 } open ? $": {string.Join(", ", open.Select(one => one.Tag).Take(5))}" : "")}, or a new tag such as {StackBuild.NextTag(state)}");
        var thickness = known?.Thickness ?? Thickness(state, read, $"Thickness of {tag}", row.Thickness);
        var counted = boards.Where(board => board.Thickness == thickness).ToList();
        if (counted.Count > 0 && !string.IsNullOrWhiteSpace(row.Bf))
            read.Refuse($"Footage of {tag}", row.Bf, $"nothing: {thickness} was counted by size");
        return counted.Count > 0
            ? (tag, thickness, counted.Sum(board => board.Footage.Count), counted.Sum(board => board.Pieces))
            : (tag, thickness, read.Number($"Footage of {tag}", row.Bf, 1.0, 1e4, $"1 to 10000 bf, or counts of {thickness} by size"), read.Whole($"Pieces of {tag}", row.Pieces, 1, 1000));
    }

    // More lumber than wood is a slip of the pencil, whatever the saw.
    private static void Holds(Typed read, Log log, IReadOnlyList<(string Stack, NominalThickness Thickness, double Bf, int Pieces)> onto)
    {
        foreach (var twice in onto.GroupBy(one => one.Stack).Where(group => group.Count() > 1))
            read.Refuse("Stack", twice.Key, "each stack once");
        var twoOf = onto.GroupBy(one => one.Thickness).FirstOrDefault(group => group.Count() > 1 && group.Select(one => one.Bf).Distinct().Count() == 1);
        if (twoOf is not null && read.Refusals.Count == 0)
            read.Refuse("Stack", string.Join(", ", twoOf.Select(one => one.Stack)), $"one stack of {twoOf.Key} where boards are counted by size");
        var sawn = BoardFeet.From(onto.Sum(one => one.Bf));
        if (YardLog.Volume(log) is { } wood && sawn.NominalVolume > wood)
            read.Refuse("Footage", string.Create(CultureInfo.InvariantCulture, $"{sawn.Count:0} bf"), string.Create(CultureInfo.InvariantCulture, $"less than the log holds: {wood.CubicMetres / BoardFeet.From(1.0).NominalVolume.CubicMetres:0} bf without kerf or slab"));
    }

    private static SawnPlan Planned(LogCutting cutting, IReadOnlyList<(string Stack, NominalThickness Thickness, double Bf, int Pieces)> onto, List<SawnSize> boards)
    {
        var plan = cutting.Plan;
        var parts = plan.Boards.GroupBy(board => board.Thickness.Quarters).OrderBy(group => group.Key)
            .Select(group => new SawnPlanPart(group.Key, group.Count(), Math.Round(group.Sum(board => board.Footage.Count), 3), Math.Round(group.Sum(board => board.ValueMoney), 2))).ToList();
        double PerFoot(int quarters) => parts.Find(part => part.ThicknessQuarters == quarters) is { Bf: > 0.0 } part ? part.Money / part.Bf : plan.ValueMoney / plan.Footage.Count;
        var money = boards.Sum(board => board.Money(plan, cutting.Prices)) + onto.Where(one => boards.All(board => board.Thickness != one.Thickness)).Sum(one => one.Bf * PerFoot(one.Thickness.Quarters));
        return new(plan.Pattern.ToString().ToLowerInvariant(), parts, Math.Round(money, 2));
    }

    private static NominalThickness Thickness(YardState state, Typed read, string what, string? text) => read.Take(QuartersTyped.Of(state, what, text), NominalThickness.FromQuarters(4));
}
