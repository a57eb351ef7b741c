using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>A step of the walk through the demonstration.</summary>
/// <param name="Minute">Minute of the walk at which it begins.</param>
/// <param name="Title">What it is about.</param>
/// <param name="Look">One sentence: what to look at there.</param>
/// <param name="Path">Where.</param>
/// <param name="Key">What the link says.</param>
public sealed record TourStep(int Minute, string Title, string Look, string Path, string Key);

/// <summary>Ten minutes through the demonstration yard, one stop a minute. Every day and figure is read from the yard, which moves with the day it is opened on and changes as its days are turned.</summary>
public static class TourWalk
{
    /// <summary>The stops; empty in a yard that is no demonstration.</summary>
    public static IReadOnlyList<TourStep> Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.IsDemonstration)
            return [];
        return
        [
            new(0, "A tree on the telephone", $"{Caller(state)}: see how far it is there and back, what is asked before any price, and whether metal is likely.", Tree(state) is { } call ? $"/logs/offered?call={call.Entry}" : "/logs/offered", "The tree"),
            new(1, "A log from a fence line", "L-039 came in unscanned: the sheet puts the scan before the saw and says what a strike costs; its page keeps who brought it.", Paths.Log("L-039"), "L-039"),
            new(2, "What to open, and how thick", "L-012, quartersawn white oak: the pattern worth most, its boards and blade heights, and the days left before stain or checks.", Paths.Log("L-012"), "L-012"),
            new(3, "A meter in the frost", $"{Meter(state, "S-07")}: both stand on the card, with the reason and how far it may be off.", "/stacks/S-07", "S-07"),
            new(4, "A sample dropped, a power cut", "C-61: sample 4 lost wood and shows no sudden drying, and the night without power is a gap, not a line.", "/charges/C-61", "C-61"),
            new(5, "One boiler down, a cold day coming", Boiler(state), "/boiler", "The boilers"),
            new(6, "A refusal the customer can live with", Refusal(state, "O-309"), "/promises/O-309", "O-309"),
            new(7, "Two tallies of one pack", $"P-118 was counted {Counts(state, "P-118")} bf: the boards that differ are named, and no tag is printed until one count holds.", "/tally/P-118", "P-118"),
            new(8, "Wood enough for what was sold", Sold(state, "O-303"), "/promises/O-303", "O-303"),
            new(9, "The class: resin, part B, the cold night", $"{Resin(state)}Each table says whether its wood is dry enough, and how long after the middle its thin rim cures.", "/pours", "The pours"),
            new(10, "Then turn the days", "The season goes on: each day brings what happened, written by who saw it, and the sheet changes with it.", "/day", "The day"),
        ];
    }

    private static Book.State.Call? Tree(YardState state) => state.Calls.FirstOrDefault(call => call.Fact.Tree is not null);

    private static string Caller(YardState state) => Tree(state)?.Fact.Tree is { } tree ? $"A {tree.Species}, {tree.RoadMiles:0.#} miles out" : "A tree that is offered";

    private static string Meter(YardState state, string tag) =>
        state.Stacks.GetValueOrDefault(tag)?.Readings.LastOrDefault(reading => reading is { Raw: not null, Mean: not null, Wood: not null }) is { Raw: { } raw, Mean: { } mean, Wood: { } wood }
            ? $"{tag} read {raw.Percent:0.0} % in wood at {wood.Fahrenheit:0} °F and is {mean.Percent:0.0} %" : $"{tag} as the meter read it and as it is";

    private static string Boiler(YardState state)
    {
        var down = state.Boilers.Values.FirstOrDefault(boiler => boiler.Down is not null);
        var coldest = BoilerSheet.Days(state, SheetSettings.HeatDays).MinBy(day => day.OutsideC)!;
        var back = down?.Down switch
        {
            null => "All boilers run: ",
            { BackExpectedOn: { } expected, BackLateOn: { } late } => $"{down!.Name} is promised for {DayWords.Of(expected, state.Today)}, perhaps {DayWords.Of(late, state.Today)}: ",
            _ => $"{down!.Name} is down and no day is named: ",
        };
        return $"{back}look at {DayWords.Of(coldest.Date, state.Today)}, {DayWords.Celsius(coldest.OutsideC)} outside.";
    }

    private static string Refusal(YardState state, string tag) => state.Orders.GetValueOrDefault(tag) is { } order && order.Lines[0] is var line
        && line.Asked.Stacks.Select(stack => state.Stacks.GetValueOrDefault(stack)).FirstOrDefault(stack => stack?.Moisture is not null) is { Moisture.Mean: { } mean } wood
        ? $"{tag} wants {line.Asked.Goods} by {DayWords.Of(line.Asked.DueOn, state.Today)}; {wood.Tag} stands at {mean.Percent:0} %. The sheet says no early, with choices, and why."
        : $"{tag}: an early no, with choices, and why.";

    private static string Counts(YardState state, string tag) =>
        state.Packs.TryGetValue(tag, out var pack) ? string.Join(" and ", pack.Tallies.Select(tally => $"{tally.Footage.Count:0}")) : "twice, in";

    private static string Sold(YardState state, string tag) => state.Orders.GetValueOrDefault(tag) is { } order && PromisesAtRisk.Volume(state, order, order.Lines[0].Asked) is { } band
        ? $"{tag} sold {band.Sold:#,0} bf of wood that shrinks to about {band.Likely:#,0} ({band.Low:#,0} to {band.High:#,0}): see the chance of too little, and what stands by to cover it."
        : $"{tag}: what was sold, what the wood gave once dry, and what stood by to cover it.";

    private static string Resin(YardState state) => string.Concat(state.Resins.Keys.Where(name => PourModel.Next(state, name).Count > 0)
        .Select(name => PourModel.Stock(state, name)).OfType<Outcome<StockCheck>.Done>().Where(stock => stock.Value.ShortB.Kilograms > 0.0).Select(stock => $"Part B is {stock.Value.ShortB.Kilograms:0.00} kg short. "));
}
