using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>A value that waits beside what stands.</summary>
/// <param name="Entry">The entry that says it.</param>
/// <param name="Fact">Of which field of which entry.</param>
public sealed record OtherValue(long Entry, ValueBeside Fact);
