namespace Boardwright.Yard.Book.Facts;

/// <summary>One person's tally of a pack, board by board in the order called. A second tally of the same pack stands beside the first.</summary>
/// <remarks>
/// Footage is the sum of whole surface measures under the named rule at the moisture the boards had; nothing is added for shrinkage. An open tally is still
/// being called: each board corrects it by one, and it holds for nothing until it is closed. The boards are off their stack from the first one called.
/// </remarks>
public sealed record PackTallied(
    string Pack, string Stack, string Species, int ThicknessQuarters, double Bf, IReadOnlyList<TallyBoard> Boards, string Rule = "nhla", double? McPct = null,
    string? Order = null, int? Line = null, bool Open = false, bool StackEmpty = false) : Fact;

/// <summary>The boards of a pack were laid on stickers again, as a stack of their own: too wet for its order, or to be planed.</summary>
/// <remarks>Tallies and papers of the pack stay in the book; what comes of the new stack is tallied anew.</remarks>
public sealed record PackRestacked(string Pack, string Stack, string Place, string? Why = null) : Fact;

/// <summary>One board as called: width in inches, length in feet.</summary>
public sealed record TallyBoard(double WidthIn, double LengthFt, string? Grade = null);

/// <summary>Of several tallies of a pack, the one that holds, and why. Tallies are named by their entry.</summary>
public sealed record TallyChosen(string Pack, long Tally, string Why) : Fact;

/// <summary>A tag was printed for a pack.</summary>
public sealed record PackLabelled(string Pack) : Fact;
