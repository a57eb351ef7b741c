using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Days off within the next ten: what ends or is due on them has to be looked after before.</summary>
internal static class DaysOff
{
    private const int LookDays = 10;

    public static IEnumerable<DayTask> Of(YardState state) =>
        state.Calendar.Closed.Values.Where(closed => closed.Day.DayNumber - state.Today.DayNumber is > 0 and <= LookDays).Select(closed =>
        {
            var ends = state.Charges.Values.Where(charge => charge.IsRunning && ChargeEnd.ReadyOn(state, charge) == closed.Day).Select(charge => charge.Tag).ToList();
            var due = state.Orders.Values.Where(order => order.IsOpen && order.DueOn == closed.Day).Select(order => order.Tag).ToList();
            return new DayTask($"{DayWords.Of(closed.Day, state.Today)}", $"Plan round {closed.Day:dddd} {DayWords.Of(closed.Day, state.Today)}: {closed.Why}.",
                $"{(ends.Count > 0 ? $"{string.Join(", ", ends)} would come out that day and has to wait. " : "")}{(due.Count > 0 ? $"{string.Join(", ", due)} is due that day. " : "")}Kilns and boilers run on.",
                new("Days to it", $"{closed.Day.DayNumber - state.Today.DayNumber}", "days", closed.From is { } from ? $"closed from {from:HH:mm}" : "closed all day") { Source = "the yard’s calendar" },
                new(10m * (1 + ends.Count + due.Count), closed.Day.DayNumber - state.Today.DayNumber, "a figure for the order of this sheet"), Duties.All, "/season", "See the season");
        });
}
