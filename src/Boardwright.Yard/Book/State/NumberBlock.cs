namespace Boardwright.Yard.Book.State;

/// <summary>Numbers set aside for a phone.</summary>
/// <param name="Entry">The entry that says so; taking it out releases them.</param>
/// <param name="At">Since when.</param>
/// <param name="By">Who had the phone then.</param>
/// <param name="Phone">Its name.</param>
/// <param name="Prefix">Letters of the tag, such as S-.</param>
/// <param name="First">The first number.</param>
/// <param name="Last">The last.</param>
public sealed record NumberBlock(long Entry, DateTime At, string By, string Phone, string Prefix, int First, int Last);
