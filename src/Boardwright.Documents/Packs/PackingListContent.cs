namespace Boardwright.Documents.Packs;

/// <summary>What goes out together for one order: the packs and their piece tallies.</summary>
public sealed record PackingListContent
{
    public required string Yard { get; init; }

    /// <summary>Order number, or the number of the list where there is no order.</summary>
    public required string Order { get; init; }

    public required string Customer { get; init; }

    public string? DeliverTo { get; init; }

    public DateOnly? Promised { get; init; }

    public required DateOnly Date { get; init; }

    public required IReadOnlyList<PackTally> Packs { get; init; }
}
