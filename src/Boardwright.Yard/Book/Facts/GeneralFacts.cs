namespace Boardwright.Yard.Book.Facts;

/// <summary>The named entry does not count any more. It stays in the book, struck through.</summary>
public sealed record Withdrawn : Fact;

/// <summary>Another value for a field of an entry, by somebody who had not seen what stands there. It changes nothing until one of the two is chosen.</summary>
/// <param name="Entry">The entry that stood when this was written.</param>
/// <param name="Field">Its field, by its name in the fact.</param>
/// <param name="Value">As it would be typed, with its unit.</param>
public sealed record ValueBeside(long Entry, string Field, string Value) : Fact;

/// <summary>Numbers that only one phone gives to new logs, stacks, packs or orders, so that two without signal never give one twice. A number not used is a gap and harmless.</summary>
/// <param name="Phone">Its name, such as phone 1.</param>
/// <param name="Prefix">Letters of the tag, such as S-.</param>
/// <param name="First">The first number.</param>
/// <param name="Count">How many.</param>
public sealed record NumbersSetAside(string Phone, string Prefix, int First, int Count) : Fact;

/// <summary>The demonstration's day. Where one stands in the book it is today; a real yard has none and uses the clock.</summary>
public sealed record DayTurned(DateOnly Day) : Fact;

/// <summary>A remark, about an item when one is named.</summary>
public sealed record NoteWritten(string Text, string? About = null) : Fact;

/// <summary>A telephone call: who, about what, and the tree when one is offered.</summary>
public sealed record PhoneCallTaken(string Caller, string Text, string? About = null, TreeOffered? Tree = null) : Fact;

/// <summary>A tree as its caller describes it.</summary>
public sealed record TreeOffered(
    string Species, double? GirthMm = null, double? FirstLimbM = null, double? RoadMiles = null, double? LogLengthM = null,
    double? SmallEndLowMm = null, double? SmallEndHighMm = null, bool MetalNearby = false, string? FelledBy = null);
