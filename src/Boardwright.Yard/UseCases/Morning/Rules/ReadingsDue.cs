using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Stacks to read: never read, read too long ago, or promised on a reading of cold wood.</summary>
internal static class ReadingsDue
{
    private const int ColdReadingDays = 3;

    /// <summary>Stacks whose usual days between readings end on a day; today all that are due.</summary>
    public static IReadOnlyList<string> On(YardState state, DateOnly day) =>
    [
        .. state.Stacks.Values.Where(stack => stack is { IsHere: true, Stage: StackStage.AirDrying })
            .Where(stack => (stack.Moisture is { } reading ? reading.At.Day().AddDays(SheetSettings.ReadingDays(state)) : state.Today) is var due && (due == day || due < day && day == state.Today))
            .Select(stack => stack.Tag),
    ];

    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var stack in state.Stacks.Values.Where(stack => stack is { IsHere: true, Stage: StackStage.AirDrying }))
        {
            var days = stack.Moisture is { } reading ? state.Today.DayNumber - DateOnly.FromDateTime(reading.At).DayNumber : int.MaxValue;
            var promised = stack.ReservedFor is { } order && state.Orders.ContainsKey(order);
            var cold = stack.Moisture?.Wood is { } wood && wood.Fahrenheit < SheetSettings.ColdWoodF;
            if (days < SheetSettings.ReadingDays(state) && !(promised && cold && days >= ColdReadingDays))
                continue;
            var worth = WoodWorth.PerBf(state, stack) is { } price ? (decimal)stack.Footage.Count * price.Money : 0m;
            yield return new(stack.Place, $"Read {stack.Tag}, and the wood’s own temperature.",
                $"{(promised ? $"Promised for {stack.ReservedFor}. " : "")}{(stack.Moisture is { } last ? $"Last read {DayWords.Weekday(last.At, state.Today)}{(last.Wood is { } was ? $" at {was.Fahrenheit:0} °F in the wood" : "")}." : "Never read.")}",
                new("On the stack", $"{stack.Footage.Count:#,0}", "bf", stack.Moisture?.Mean is { } mean ? $"{mean.Percent:0.0} % when last read" : "never read") { Method = "moisture-meter", Source = stack.Moisture is { } from ? $"entry {from.Entry}" : null, Inputs = [("wood", $"{stack.Species.CommonName} {stack.Thickness}"), ("as read", stack.Moisture?.Raw is { } raw ? $"{raw.Percent:0.0} %" : "-")] },
                new(worth * (promised ? 0.01m : 0.002m), 1, promised ? "one part in a hundred of promised wood: common practice, for the order of this sheet" : "two parts in a thousand of the wood: common practice, for the order of this sheet"),
                Duties.Kilns, $"/stacks/{stack.Tag}/read", $"Read {stack.Tag}");
        }
    }
}
