using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Resin that does not reach for the pours planned, and lots that run out.</summary>
internal static class ResinShort
{
    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var resin in state.Resins.Values)
        {
            var pours = PourModel.Next(state, resin.Name);
            if (pours.Count == 0 || PourModel.Stock(state, resin.Name) is not Outcome<StockCheck>.Done(var stock) || stock.IsEnough)
                continue;
            var next = pours.Max(pour => pour.PourOn);
            var (part, need, miss, have) = stock.ShortB.Kilograms > 0.0 ? ("B", stock.NeedB, stock.ShortB, resin.PartB?.OnHand) : ("A", stock.NeedA, stock.ShortA, resin.PartA?.OnHand);
            var seats = state.Classes.Values.Where(one => one.PourOn >= state.Today).Sum(one => one.SeatMoney * one.Seats);
            yield return new($"{DayWords.Of(next, state.Today)}", $"Order {Math.Ceiling(miss.Kilograms * 10.0) / 10.0:0.0} kg of part {part}, or leave a table for another day.", $"{resin.Name}: {need.Kilograms:0.00} kg wanted for the pours of {DayWords.Of(next, state.Today)}, {have?.Kilograms ?? 0.0:0.0} on hand.",
                new($"Part {part} short", $"{miss.Kilograms:0.00}", "kg", $"{need.Kilograms:0.00} wanted, {have?.Kilograms ?? 0.0:0.0} on hand")
                {
                    Method = "resin-mix",
                    Source = "moulds and pieces as planned, stock as counted",
                    Inputs = [("part A wanted", $"{stock.NeedA.Kilograms:0.00} kg"), ("part A on hand", $"{resin.PartA?.OnHand.Kilograms ?? 0.0:0.0} kg"), ("part B wanted", $"{stock.NeedB.Kilograms:0.00} kg"), ("part B on hand", $"{resin.PartB?.OnHand.Kilograms ?? 0.0:0.0} kg")],
                },
                new(seats, Math.Max(1, next.DayNumber - state.Today.DayNumber), "seats of the class"), Duties.Casting | Duties.Office, "/pours", "See the pours");
        }
    }
}
