using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A question of a normal week and where it is answered.</summary>
/// <param name="Number">1 to 25, by money and risk.</param>
/// <param name="Asks">As the owner asks it.</param>
/// <param name="Route">The page, with its tag in braces.</param>
/// <param name="Path">The page for the yard as it stands: the one thing it is most likely asked about now, and the part of a long page that answers it.</param>
/// <param name="Command">The command that answers it without a page; null where there is none.</param>
/// <param name="Answered">What the answer holds.</param>
/// <param name="Gap">What it does not say; null where nothing is known to be missing.</param>
public sealed record WeekQuestion(int Number, string Asks, string Route, Func<YardState, string> Path, string? Command, string Answered, string? Gap);

/// <summary>Twenty-five questions of a normal week at a small hardwood mill, by money and risk.</summary>
public static class WeekQuestions
{
    public static IReadOnlyList<WeekQuestion> All { get; } =
    [
        new(1, "Can I promise this order for that date?", "/promises", _ => "/promises", "plan", "yes, likely or no for wood, board feet and a day, with the days it could be ready, the stacks it would take, and whether another promise may move; below it every open order with its days; the morning sheet says what may fall short, with spare wood, and what cannot be dried in time", "nothing until a plan of the kilns is made, some seconds after the start"),
        new(2, "Is this charge dry? May I pull it?", "/charges/{Tag}", state => $"{Charge(state)}#pull", "moisture sample", "yes or no with driest, wettest and mean against the target, boards still wet and where, hours to equalize or condition, the stress test written and judged, and how many boards to read for the lot", null),
        new(3, "Is it drying too fast; am I ruining it?", "/charges/{Tag}", Charge, "dry rate", "loss a day of each sample against the safe figure of its own wood and thickness with its source, where checks can still form, and for how many hours it is in danger", null),
        new(4, "One boiler is out: what slips?", "/boiler", _ => "/boiler", "heat kiln", "heat of what the season runs by day, what the shop takes, what is left, the worst and all short days, in the season's numbers; all kilns held hot as a second question; shop cooler, slower, hold, postpone and electric heaters the house has compared, and where none is enough the cheapest together, in days and money with the orders each makes late; what to shut first and the hours until a charge is in danger", null),
        new(5, "What goes in the kiln next?", "/season", _ => "/season#next", "plan", "running and planned charges; the sheet names the stacks to stage and their load", null),
        new(6, "Will this pour run hot, or stay soft? Can we demould Saturday?", "/pours/{Tag}", Pour, "cast cure", "peak, gel and demould of centre and thin edge under the shop's own temperatures, by model and apart from it by the label; margins in °C and millimetres", "one depth through the middle: a narrow river stays cooler than this"),
        new(7, "Do I believe this meter?", "/stacks/{Tag}", Stack, "moisture meter", "as read and corrected, the reason, how far it may be off, and when an oven section is due", "no species correction is published for hackberry and silver maple"),
        new(8, "Is the tally right; how much did I ship?", "/tally/{Tag}", Pack, "pack tally", "piece list, both counts board by board, the boards that differ, the paper as shipped", null),
        new(9, "What is this log worth; what do I offer?", "/logs/offered", Offered, "log worth", "for a tree on the telephone: the figure to walk away at with its spread from girth or small end, haul, metal risk, weight for loader and trailer, the highest price that leaves the wanted margin line by line, and words for the caller; a log that is here has the same on its own page, from its boards on paper, and as slabs beside", "no value of burl or figure"),
        new(10, "How much is in it?", "/logs/{Tag}", Log, "log scale", "board feet by rule, cubic metres, weight, deductions shown", "Roy has no table yet and says so"),
        new(11, "Which log first?", "/logs", _ => "/logs", null, "every waiting log by days left before stain, borers or end checks, and by orders whose own stacks do not reach: the last day it can be sawn and dried for them; logs of the same wood and setting together", "prices and stains that have begun are seen, not computed"),
        new(12, "How thick must I saw?", "/logs/thickness", Thickness, "saw target", "the green target from the dressed size, shrinkage, planing and the mill's own variation, with its spread; the nearest setting, boards too thin and yield lost at each, and the house's own setting beside them", "warp is not counted: cup and twist may want more"),
        new(13, "How do I open this log?", "/logs/{Tag}", Log, "log saw", "pattern, boards and blade heights with their value, and how near it is to its ceiling; metal first", null),
        new(14, "When is this stack ready for the kiln?", "/stacks/{Tag}", Stack, "dry air", "a band of days from weather and readings, and whether it gains where it lies", null),
        new(15, "Moisture will not go down: why?", "/charges/{Tag}", state => $"{StalledCharge(state)}#why", "kiln schedule", "the air set and the air found, what each holds wood at, the corrected reading, and ten causes in the order to test them, each with its test and what the readings say of it", null),
        new(16, "May these share a charge?", "/charges/share", Sharing, "kiln schedule", "yes or no with the rule that decides and its setting, the mildest members' schedule, days alone and together, what mixing costs and one load saves, and what is given up", null),
        new(17, "How much must I dry to net the order?", "/promises/{Tag}", Order, "wood shrink", "net after shrinkage and falldown, low, likely and high, against what is sold and what dressing takes of it, and the chance of too little wood as a share", null),
        new(18, "What did this cost; what do I charge?", "/history/{Tag}", state => $"{History(state)}#cost", "log history", "cost by step from the house's own rates, along the way of the wood", null),
        new(19, "Power cut, door open, frozen wick: now what?", "/charges/{Tag}", state => $"{Charge(state)}#next", "dry rate", "the danger by wood and moisture, the way back step by step with heat before spray, the gap as a gap, the clock stopped and the days moved by it", null),
        new(20, "Is it bug-free; can I prove it?", "/charges/proof/{Tag}", TreatedCharge, "kiln treat", "proven, partly, not, or tag lost, for any log, stack, charge, pack, table or load from its way through the yard, years later too: coldest core and how long it was held, who wrote it, every form of the wood with its entry, and what may have happened since", "nothing is claimed where the book has no treatment"),
        new(21, "How much resin, hold-down and part B?", "/pours", _ => "/pours", "cast mix", "litres with a low and a high, both parts by mass, stock and what is short, hold-down of each piece", null),
        new(22, "Edges soft, bubbles, sinking: can it be saved?", "/pours/{Tag}", state => $"{SoftPour(state)}#soft", "cast cure", "the ratio as weighed, how far each place had set, the likeliest cause, its test, warm or scrape; bubbles and sinking ranked from the table's own record, each cause with the test that tells it", "viscosity is a usual one, not this resin's"),
        new(23, "What will it weigh; will it lift, fit the trailer?", "/stacks/{Tag}", Stack, "wood weight", "mass at today's moisture; trips of the trailer at the heaviest it may be, lifts of the forks, the hired truck, and the longest piece against the bed; a log or tree, on its own page, with its bark", "how it is tied down is the law of the road: look up 49 CFR 393 and your state's rules"),
        new(24, "Where is it, whose is it, what was it?", "/find", _ => "/find", "log history", "tag, place, owner, moisture, and the way of the wood from tree to load", null),
        new(25, "It shrank or cupped at the customer: our fault?", "/promises/claims", _ => "/promises/claims", "wood shrink", "moisture shipped with its spread, what the room holds wood at, the change that makes with its band beside the change measured, what is missing, and a letter with the facts in it to be changed", "cup and twist have no figure: only width is worked out"),
    ];

    private static string Order(YardState state) => PromisesAtRisk.Of(state, SeasonNow.NotAsked).FirstOrDefault()?.Path ?? (state.Orders.Values.FirstOrDefault(order => order.IsOpen) is { } order ? $"/promises/{order.Tag}" : "/promises");

    private static string Charge(YardState state) => state.Charges.Values.FirstOrDefault(charge => charge.IsRunning && charge.SoundSamples.Any()) is { } charge ? $"/charges/{charge.Tag}" : "/charges";

    private static string Sharing(YardState state) => state.PlannedCharges.Values.Where(planned => planned.Stacks.Count > 1).OrderBy(planned => planned.InOn).FirstOrDefault() is { } planned ? $"/charges/share?stacks={string.Join(',', planned.Stacks)}" : "/charges/share";

    private static string StalledCharge(YardState state) => state.Charges.Values.FirstOrDefault(charge => charge.Settings.Count > 0 && charge.Gauges.Count > 0 && !charge.SoundSamples.Any()) is { } charge ? $"/charges/{charge.Tag}" : Charge(state);

    private static string TreatedCharge(YardState state) => state.Charges.Values.LastOrDefault(charge => charge.Treatments.Count > 0) is { } charge ? $"/charges/proof/{charge.Tag}" : Charge(state);

    private static string Offered(YardState state) => state.Calls.LastOrDefault(call => call.Fact.Tree is not null) is { } call ? $"/logs/offered?call={call.Entry}" : "/logs/offered";

    private static string Thickness(YardState state) => state.Logs.Values.Where(log => log is { IsSawn: false, Proven: true }).FirstOrDefault(log => state.ThicknessSets.Any(set => set.Fact.Species == log.Species.CommonName)) is { } log
        ? $"/logs/thickness?species={Uri.EscapeDataString(log.Species.CommonName)}&thick={LogCutting.Planned(state, log)[0]}" : "/logs/thickness";

    private static string Stack(YardState state) => state.Stacks.Values.FirstOrDefault(stack => stack is { IsHere: true, Stage: StackStage.AirDrying, ReservedFor: not null, NeverKiln: false } && stack.Moisture?.Meter is not null) is { } stack ? $"/stacks/{stack.Tag}" : "/stacks";

    private static string Log(YardState state) => (state.Logs.Values.FirstOrDefault(log => log is { IsSawn: false, Proven: true, MetalScan: Book.Facts.MetalScan.Clear, EndCoated: true }) ?? state.Logs.Values.FirstOrDefault(log => !log.IsSawn)) is { } log ? Paths.Log(log.Tag) : "/logs";

    private static string Pack(YardState state) => (state.Packs.Values.FirstOrDefault(pack => pack.IsDisputed) ?? state.Packs.Values.FirstOrDefault()) is { } pack ? $"/tally/{pack.Tag}" : "/tally";

    private static string Pour(YardState state) => (state.Pours.Values.FirstOrDefault(pour => pour.DemouldedAt is null && pour.Plan.ThinnestMm is not null) ?? state.Pours.Values.FirstOrDefault(pour => pour.DemouldedAt is null)) is { } pour ? $"/pours/{pour.Tag}" : "/pours";

    private static string SoftPour(YardState state) => state.Pours.Values.FirstOrDefault(pour => SoftCastings.IsSoft(pour.Seen)) is { } pour ? $"/pours/{pour.Tag}" : "/pours";

    private static string History(YardState state) => state.Stacks.Values.FirstOrDefault(stack => stack is { IsHere: true, Charge: not null }) is { } stack ? $"/history/{stack.Tag}" : "/find";
}
