using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Shavings owed this week, and what must not be in them.</summary>
internal static class ShavingsToFill
{
    private const int WeekDays = 7;

    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            var line = order.Lines.Where(line => !line.IsFilled && line.Asked.Unit == OrderUnit.M3Loose).Select(line => line.Asked).MinBy(line => line.DueOn);
            if (line is null || line.DueOn.DayNumber - state.Today.DayNumber > WeekDays)
                continue;
            var banned = (line.ForbiddenSpecies ?? []).Select(name => SpeciesTable.Find("species", name)).OfType<Quantities.Outcome<Species>.Done>().Select(found => found.Value.CommonName).ToList();
            var inBin = state.Shavings.Species.Where(banned.Contains).ToList();
            var without = string.Join(" or ", line.ForbiddenSpecies ?? []);
            yield return new(order.Tag, inBin.Count > 0 ? $"Stop: empty the shavings bin, {string.Join(" and ", inBin)} is in it." : $"Fill {WoodWorth.Words(line)} of shavings by {line.DueOn:dddd}{(without.Length > 0 ? $"; keep {without} out" : "")}.",
                $"For {order.Customer}. {(inBin.Count > 0 ? "None of it may go to this customer until the bin is emptied and swept." : $"In the bin since it was emptied: {state.Shavings.LooseM3:0.#} m³, {(state.Shavings.Species.Count == 0 ? "nothing named" : string.Join(", ", state.Shavings.Species))}.")}",
                new("Owed", $"{line.Quantity:0.#}", "m³ loose", $"due {line.DueOn:ddd} {DayWords.Of(line.DueOn, state.Today)}") { Source = $"order taken {order.TakenAt:d MMM yyyy}", Inputs = [("in the bin", $"{state.Shavings.LooseM3:0.0} m³"), ("must not hold", without.Length > 0 ? without : "nothing named")] },
                new(inBin.Count > 0 ? 500m : order.LatePerDayMoney, inBin.Count > 0 ? 1 : Math.Max(1, line.DueOn.DayNumber - state.Today.DayNumber), inBin.Count > 0 ? "an animal’s health: a figure for the order of this sheet" : "a day late"),
                Duties.Planer, inBin.Count > 0 ? "/write/entry/shavings_emptied" : $"/promises/{order.Tag}", inBin.Count > 0 ? "It is emptied" : $"Open {order.Tag}")
            {
                Caution = inBin.Count > 0 ? ("Walnut and its kin founder horses.", "Empty, sweep, and write that the bin was emptied.") : null,
            };
        }
    }
}
