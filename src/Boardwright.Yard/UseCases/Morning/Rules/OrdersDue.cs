using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Orders due within the week, and those past their day.</summary>
internal static class OrdersDue
{
    private const int WeekDays = 7;

    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        // What another rule says of an order says more than that it is due.
        var said = PromisesAtRisk.Of(state, season).Concat(ReadyToShip.Of(state)).Select(task => task.Path).ToHashSet(StringComparer.Ordinal);
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen && order.DueOn.DayNumber - state.Today.DayNumber <= WeekDays))
        {
            if (order.DueOn >= state.Today && said.Contains($"/promises/{order.Tag}"))
                continue;
            var position = order.Lines.First(line => !line.IsFilled);
            var line = position.Asked;
            var rest = position.Shipped > 0.0;
            var left = line.DueOn.DayNumber - state.Today.DayNumber;
            yield return new(order.Tag, left < 0 ? $"Ring {order.Customer}: {line.Goods} is late." : rest ? $"Send {order.Customer} the rest, or agree that none follows." : $"Get {line.Goods} ready for {order.Customer}.",
                $"{(left < 0 ? $"{-left} {(left == -1 ? "day" : "days")} past its day" : left == 0 ? "Due today" : $"Due {line.DueOn:ddd} {DayWords.Of(line.DueOn, state.Today)}")}{(rest ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"; {position.Shipped:#,0.#} of {line.Quantity:#,0.#} left already") : WoodWords(state, order, line))}{(left < 0 && season.Of(order.Tag, line.Line)?.Likely is { } likely ? $"; ready about {DayWords.Of(likely, state.Today)} by the season’s plan" : "")}: {line.Specification}.",
                new(rest ? "Open" : "Asked", $"{line.Quantity - position.Shipped:#,0.#}", WoodWorth.UnitWords(line.Unit), $"due {DayWords.Of(line.DueOn, state.Today)}") { Source = $"order taken {order.TakenAt:d MMM yyyy}", Inputs = [("a day late costs", $"{order.LatePerDayMoney:0}"), ("importance", $"{order.Importance} of 5")] },
                new(order.LatePerDayMoney * WeekDays, Math.Max(1, left), $"a week late at {order.LatePerDayMoney:0} a day"), Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}")
            { Standing = left < 0 ? "late" : null };
        }
    }

    // One small pack is not the whole line.
    private static string WoodWords(YardState state, Book.State.Order order, Book.Facts.OrderLine line)
    {
        var packed = AsOrdered.PackedBf(state, order, line.Line);
        var rest = WoodWorth.FootageOf(line) - packed;
        return line.Stacks.Count == 0 && packed <= 0.0 ? ""
            : rest <= 0.0 ? "; its wood is packed"
            : line.Stacks.Count > 0 && line.Stacks.All(tag => state.Stacks.GetValueOrDefault(tag)?.Stage is Book.State.StackStage.KilnDried or Book.State.StackStage.Dressed) ? "; its wood is dry"
            : packed > 0.0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"; {packed:#,0} bf of it are packed, the rest is not out of the kiln")
            : "; its wood is not out of the kiln";
    }
}
