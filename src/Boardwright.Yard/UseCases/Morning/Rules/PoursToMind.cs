using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Class days ahead, moulds to prepare, tables to test and take out of their moulds.</summary>
internal static class PoursToMind
{
    private const int PrepareDays = 7;

    public static IEnumerable<DayTask> Of(YardState state) => Ahead(state).Concat(InTheMould(state));

    private static IEnumerable<DayTask> Ahead(YardState state)
    {
        foreach (var day in state.Pours.Values.Where(pour => pour.PouredAt is null && pour.PourOn >= state.Today).GroupBy(pour => pour.PourOn).OrderBy(day => day.Key).Take(1))
        {
            var left = day.Key.DayNumber - state.Today.DayNumber;
            var one = state.Classes.Values.FirstOrDefault(one => one.PourOn == day.Key);
            var seats = one is null ? 390m * day.Count() : one.SeatMoney * one.Seats;
            yield return new($"{DayWords.Of(day.Key, state.Today)}", left == 0 ? $"Pour {day.Count()} tables today." : left <= PrepareDays ? $"Prepare the moulds: {day.Count()} tables pour on {day.Key:dddd}." : $"Keep the class sheet in hand: {day.Count()} tables pour on {DayWords.Weekday(day.Key, state.Today)}.",
                $"{(one is null ? "" : $"{one.Tag}, {one.Seats} seats. ")}Wood at 6 to 8 %, moulds leak-tested, faces sealed the day before, resin and wood in a warm shop.",
                new("Days to the pour", $"{left}", "days", $"demould planned {DayWords.Of(day.Max(pour => pour.DemouldOn), state.Today)}") { Source = "the plan of the pours", Inputs = [("tables", string.Join(", ", day.Select(pour => pour.Tag)))] },
                new(seats * (left <= PrepareDays ? 1m : 0.25m), Math.Max(1, left), left <= PrepareDays ? "seats of the class" : "a quarter of the seats of the class, while it is early"), Duties.Casting, "/pours", "See the pours");
        }
    }

    private static IEnumerable<DayTask> InTheMould(YardState state)
    {
        foreach (var pour in state.Pours.Values.Where(pour => pour is { PouredAt: not null, DemouldedAt: null }))
        {
            var hours = (state.Today.ToDateTime(new TimeOnly(8, 0)) - pour.PouredAt!.Value).TotalHours;
            var due = pour.DemouldOn <= state.Today;
            yield return new(pour.Tag, due ? $"Test the thinnest place of {pour.Tag} with a nail, then demould." : $"Read the shop’s temperature for {pour.Tag}.", due ? "Its day is here; the thin edge cures last and decides." : $"Poured {pour.PouredAt:ddd d MMM HH:mm}; demould planned {DayWords.Weekday(pour.DemouldOn, state.Today)}. A cold night moves the day.",
                new("In the mould", $"{hours:0}", "h", $"planned out {DayWords.Of(pour.DemouldOn, state.Today)}") { Method = "resin-cure", Source = "the entry of the pour" },
                new(Seat(state, pour), due ? 1 : Math.Max(1, pour.DemouldOn.DayNumber - state.Today.DayNumber), "the seat"), Duties.Casting, due ? $"/pours/{pour.Tag}/demould" : $"/pours/shop", due ? $"Demould {pour.Tag}" : "Write the shop");
        }
    }

    internal static decimal Seat(YardState state, Pour pour) =>
        pour.Plan.Class is { } name && state.Classes.TryGetValue(name, out var one) ? one.SeatMoney : (decimal)(state.Setting("class_seat") ?? 0.0);
}
