using System.Collections.Immutable;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>A promise: who wants what by when, what was answered, what left.</summary>
public sealed record Order
{
    public required string Tag { get; init; }

    public required string Customer { get; init; }

    public required DateTime TakenAt { get; init; }

    /// <summary>1 to 5, 5 the most important.</summary>
    public required int Importance { get; init; }

    public required decimal LatePerDayMoney { get; init; }

    public required ImmutableList<OrderPosition> Lines { get; init; }

    public string? Note { get; init; }

    public string? WithdrawnWhy { get; init; }

    public ImmutableList<string> Packs { get; init; } = [];

    public ImmutableList<long> History { get; init; } = [];

    public bool IsOpen => WithdrawnWhy is null && Lines.Any(line => !line.IsFilled);

    /// <summary>First day on which something of it is due and not yet out.</summary>
    public DateOnly DueOn => Lines.Where(line => !line.IsFilled).Select(line => line.Asked.DueOn).DefaultIfEmpty(Lines[^1].Asked.DueOn).Min();
}

/// <summary>One line of an order as it stands.</summary>
/// <param name="Asked">What is asked for, with accepted changes.</param>
public sealed record OrderPosition(OrderLine Asked)
{
    public Answer? Answer { get; init; }

    public DateOnly? PromisedOn { get; init; }

    public string? AnswerWhy { get; init; }

    /// <summary>A change asked for and not settled.</summary>
    public OrderChangeAsked? ChangeAsked { get; init; }

    public double Shipped { get; init; }

    public ImmutableList<string> Shipments { get; init; } = [];

    /// <summary>Less than was ordered left, and it was agreed that nothing follows.</summary>
    public bool Closed { get; init; }

    /// <summary>Filled when no more is due: a count under the tally's own rounding is not a shortage.</summary>
    public bool IsFilled => Closed || (Shipped > 0.0 && Shipped >= Asked.Quantity - 0.5);
}

/// <summary>Goods that left.</summary>
public sealed record Shipment(string Tag, string Order, int Line, DateTime At, ImmutableList<string> Packs, ImmutableList<StackShare> Stacks, double Quantity, Shipped Fact, long Entry);

/// <summary>A customer who is not content.</summary>
public sealed record Complaint(long Entry, DateTime At, Complained Fact);
