using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

// Orders and complaints.
internal sealed partial class Fold
{
    private Refusal? On(OrderTaken fact)
    {
        var refusal = Fresh("order", fact.Order, orders)
            ?? InRange("importance", fact.Importance, 1, 5, "1 to 5")
            ?? (fact.Lines.Count == 0 ? new Refusal("lines", "none", "at least one line") : null)
            ?? (fact.Lines.GroupBy(line => line.Line).FirstOrDefault(g => g.Count() > 1) is { } twice ? new Refusal("line", $"{twice.Key}", "every line number once") : null)
            ?? fact.Lines.Select(LineFault).FirstOrDefault(r => r is not null);
        return refusal ?? Set(orders, fact.Order, new Order
        {
            Tag = fact.Order,
            Customer = fact.Customer,
            TakenAt = entry.HappenedAt,
            Importance = fact.Importance,
            LatePerDayMoney = fact.LatePerDayMoney,
            Lines = [.. fact.Lines.Select(line => new OrderPosition(line))],
            Note = fact.Note,
            History = [entry.Number],
        });
    }

    private Refusal? LineFault(OrderLine line) =>
        (line.Quantity > 0.0 ? null : new Refusal("quantity", Given("quantity", line.Quantity), "more than 0"))
        ?? (line.Species is { } species ? SpeciesOf(species, out _) : null)
        ?? line.Stacks.Where(stack => !stacks.ContainsKey(stack)).Select(stack => Unknown("stacks", stack, stacks)).FirstOrDefault();

    private Refusal? On(OrderAnswered fact) => WithLine(fact.Order, fact.Line, line => line with { Answer = fact.Answer, PromisedOn = fact.PromisedOn, AnswerWhy = fact.Why });

    private Refusal? On(OrderChangeAsked fact) => fact.Quantity is not > 0.0 && fact.DueOn is null
        ? new("quantity", Given("quantity", fact.Quantity ?? 0.0), "another quantity above 0, or another day")
        : WithLine(fact.Order, fact.Line, line => line with { ChangeAsked = fact });

    private Refusal? On(OrderChangeSettled fact) => WithLine(fact.Order, fact.Line, line => line.ChangeAsked is not { } change
        ? new Refusal("line", $"{fact.Line}", "a line with a change asked for")
        : fact.Outcome == ChangeOutcome.Accepted
            ? line with { ChangeAsked = null, Asked = line.Asked with { Quantity = change.Quantity ?? line.Asked.Quantity, DueOn = change.DueOn ?? line.Asked.DueOn } }
            : line with { ChangeAsked = null });

    private Refusal? On(OrderWithdrawn fact) => WithOrder(fact.Order, order => order with { WithdrawnWhy = fact.Why });

    private Refusal? On(Complained fact)
    {
        if (fact.Order is { } order && !orders.ContainsKey(order))
            return Unknown("order", order, orders);
        if (fact.Charge is { } charge && !charges.ContainsKey(charge))
            return Unknown("charge", charge, charges);
        complaints.Add(new(entry.Number, entry.HappenedAt, fact));
        return fact.Order is { } about ? WithOrder(about, o => o) : null;
    }

    // A join is read after the orders it speaks of; withdrawn, the names are two again.
    private Refusal? On(CustomersJoined fact)
    {
        var known = orders.Values.Select(order => order.Customer).Concat(complaints.Select(complaint => complaint.Fact.Customer)).Distinct(StringComparer.Ordinal).ToList();
        var unknown = new[] { ("customer", fact.Customer), ("same_as", fact.SameAs) }.FirstOrDefault(pair => !known.Contains(pair.Item2));
        if (unknown.Item1 is not null)
            return new(unknown.Item1, unknown.Item2, known.Count == 0 ? "none has ordered at that time" : $"a customer of the book at that time: {NearestNames.Of(unknown.Item2, known)}");
        if (customers.AreOne(fact.Customer, fact.SameAs))
            return new("same_as", fact.SameAs, $"another name than {fact.Customer} that is not joined with it yet");
        customers = customers.With(fact.Customer, fact.SameAs, entry.Number);
        return null;
    }

    private Refusal? WithOrder(string tag, Func<Order, Order> change)
    {
        if (!orders.TryGetValue(tag, out var order))
            return Unknown("order", tag, orders);
        orders[tag] = change(order) with { History = order.History.Add(entry.Number) };
        return null;
    }

    private Refusal? WithLine(string tag, int number, Func<OrderPosition, Outcome<OrderPosition>> change)
    {
        if (!orders.TryGetValue(tag, out var order))
            return Unknown("order", tag, orders);
        var which = order.Lines.FindIndex(line => line.Asked.Line == number);
        if (which < 0)
            return new("line", $"{number}", $"a line of {tag}: {string.Join(", ", order.Lines.Select(l => l.Asked.Line))}");
        return change(order.Lines[which]) switch
        {
            Outcome<OrderPosition>.Done(var changed) => WithOrder(tag, o => o with { Lines = o.Lines.SetItem(which, changed) }),
            Outcome<OrderPosition>.Refused(var reasons) => reasons[0],
            _ => throw new InvalidOperationException("A line is changed or refused."),
        };
    }
}
