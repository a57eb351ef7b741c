using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A customer under all names they ordered or complained under.</summary>
/// <param name="Names">In the order of letters.</param>
/// <param name="Orders">Theirs, under whatever name, the newest first.</param>
/// <param name="Joins">What made the names one; the last of them can be taken back.</param>
public sealed record CustomerRow(IReadOnlyList<string> Names, IReadOnlyList<Order> Orders, IReadOnlyList<CustomerJoin> Joins);

/// <summary>Two names that may be one customer's, because they are written nearly alike.</summary>
public sealed record LikelyOne(string Customer, string SameAs);

/// <summary>Customers and their names. Two names are joined by an entry: nothing is renamed, both stay findable, and taking the entry out parts them again.</summary>
public static class Customers
{
    /// <summary>Every name of the book, in the order of letters.</summary>
    public static IReadOnlyList<string> Names(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Orders.Values.Select(order => order.Customer).Concat(state.Complaints.Select(complaint => complaint.Fact.Customer)).Distinct(StringComparer.Ordinal).Order(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>Every customer once.</summary>
    public static IReadOnlyList<CustomerRow> Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. Names(state).Select(state.Customers.Of).DistinctBy(names => string.Join('\n', names)).Select(names => new CustomerRow(
            [.. names],
            [.. state.Orders.Values.Where(order => names.Contains(order.Customer)).OrderByDescending(order => order.TakenAt)],
            [.. state.Customers.Joins.Where(join => names.Contains(join.Customer))]))];
    }

    /// <summary>Names written nearly alike that nobody joined yet.</summary>
    public static IReadOnlyList<LikelyOne> Likely(YardState state)
    {
        var names = Names(state);
        return [.. from first in Enumerable.Range(0, names.Count)
                   from second in Enumerable.Range(first + 1, names.Count - first - 1)
                   where !state.Customers.AreOne(names[first], names[second]) && OrderLikeness.SameName(names[first], names[second])
                   select new LikelyOne(names[first], names[second])];
    }

    /// <summary>A name with the customer's other names behind it.</summary>
    public static string Named(YardState state, string name)
    {
        ArgumentNullException.ThrowIfNull(state);
        var others = state.Customers.Others(name);
        return others.Count == 0 ? name : $"{name} (also {string.Join(", ", others)})";
    }

    /// <summary>Joins two names.</summary>
    public static Outcome<IReadOnlyList<Entry>> Join(YardBook book, string? customer, string? sameAs, string? how, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var typed = new Typed();
        var (first, second) = (typed.Named("One name", customer, "a customer of the book"), typed.Named("The other name", sameAs, "a customer of the book"));
        var who = typed.By(book.State, by);
        return typed.Then(() => key.Write(book, who, new CustomersJoined(first, second, string.IsNullOrWhiteSpace(how) ? null : how.Trim())));
    }

    /// <summary>Parts two names again: the joining is struck through, not removed.</summary>
    public static Outcome<IReadOnlyList<Entry>> Part(YardBook book, long entry, string? by)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.State.Customers.Joins.Any(join => join.Entry == entry)
            ? EntryCorrect.Withdraw(book, entry, by, "they are two customers")
            : new Refusal("entry", $"{entry}", "an entry that joins two names");
    }
}
