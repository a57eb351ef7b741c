using System.Collections.Immutable;

namespace Boardwright.Yard.Book.State;

/// <summary>Names that were said to be of one customer, each by an entry of the book. Orders keep the name they were taken under.</summary>
/// <param name="Groups">Names that are one, by group; a name that was never joined is in none.</param>
/// <param name="Joins">The entries that joined them, oldest first.</param>
public sealed record CustomerNames(ImmutableList<ImmutableSortedSet<string>> Groups, ImmutableList<CustomerJoin> Joins)
{
    /// <summary>No names are joined.</summary>
    public static CustomerNames None { get; } = new([], []);

    /// <summary>Every name of a customer, this one among them.</summary>
    public ImmutableSortedSet<string> Of(string name) => Groups.Find(group => group.Contains(name)) ?? ImmutableSortedSet.Create(StringComparer.Ordinal, name);

    /// <summary>The other names of a customer.</summary>
    public ImmutableSortedSet<string> Others(string name) => Of(name).Remove(name);

    /// <summary>Whether two names are of one customer: the same, or joined over any number of steps.</summary>
    public bool AreOne(string left, string right) => Of(left).Contains(right);

    internal CustomerNames With(string left, string right, long entry) => new(
        [.. Groups.Where(group => !group.Contains(left) && !group.Contains(right)), Of(left).Union(Of(right))], Joins.Add(new(entry, left, right)));
}

/// <summary>One joining of two names.</summary>
/// <param name="Entry">That says so; withdrawn, the names are two again.</param>
public sealed record CustomerJoin(long Entry, string Customer, string SameAs);
