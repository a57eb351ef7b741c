namespace Boardwright.Yard.Book.Facts;

public enum OrderUnit
{
    Bf,
    M3,
    Slabs,
    Pieces,
    M3Loose,
}

/// <summary>An order and its lines.</summary>
public sealed record OrderTaken(string Order, string Customer, IReadOnlyList<OrderLine> Lines, int Importance, decimal LatePerDayMoney, string? Note = null) : Fact;

/// <summary>One thing asked for by one day.</summary>
public sealed record OrderLine(
    int Line, string Goods, double Quantity, OrderUnit Unit, DateOnly DueOn, string Specification, IReadOnlyList<string> Stacks,
    string? Species = null, int? ThicknessQuarters = null, Grain? Grain = null, double? McLowPct = null, double? McHighPct = null, double? ThicknessMinMm = null, double? DressedMm = null,
    double? PieceLengthMinM = null, bool NeverKiln = false, bool HeatTreated = false, bool Delivered = false, bool CustomerWood = false, IReadOnlyList<string>? ForbiddenSpecies = null, decimal? PriceMoneyPerBf = null);

public enum Answer
{
    Yes,
    Likely,
    No,
}

/// <summary>What the customer was told.</summary>
public sealed record OrderAnswered(string Order, Answer Answer, DateOnly? PromisedOn = null, string? Why = null, int Line = 1) : Fact;

/// <summary>The customer asks for something else; nothing changes until it is settled.</summary>
public sealed record OrderChangeAsked(string Order, double? Quantity = null, DateOnly? DueOn = null, string? Why = null, int Line = 1) : Fact;

public enum ChangeOutcome
{
    Accepted,
    Refused,
    Withdrawn,
}

/// <summary>The change asked for is accepted, refused or withdrawn.</summary>
public sealed record OrderChangeSettled(string Order, ChangeOutcome Outcome, int Line = 1) : Fact;

/// <summary>The order is off.</summary>
public sealed record OrderWithdrawn(string Order, string Why) : Fact;

/// <summary>Two names are of one customer. Nothing is renamed: every entry keeps the name it was written under.</summary>
public sealed record CustomersJoined(string Customer, string SameAs, string? How = null) : Fact;

/// <summary>Goods left on an order line: packs, parts of stacks, or a loose quantity. What was not as ordered left on a decision: who agreed, and why. It closes the line where nothing follows, though it is less than was ordered.</summary>
public sealed record Shipped(
    string Shipment, string Order, IReadOnlyList<string> Packs, IReadOnlyList<StackShare> Stacks, int Line = 1, double? Quantity = null, string? Carrier = null,
    double? WeightKg = null, double? McPct = null, string? Note = null, string? Despite = null, bool Closes = false) : Fact;

/// <summary>Board feet of a stack.</summary>
public sealed record StackShare(string Stack, double Bf);

public enum ComplaintCause
{
    ShortCount,
    Shrank,
    Insects,
    Wet,
    Other,
}

/// <summary>A customer is not content, and what they say they found.</summary>
public sealed record Complained(
    string Customer, ComplaintCause Cause, string Text, string? Order = null, string? Charge = null, double? CountedBf = null, string? CountedHow = null,
    double? WidthThenMm = null, double? WidthNowMm = null, double? RoomC = null, double? RoomRhPct = null) : Fact;
