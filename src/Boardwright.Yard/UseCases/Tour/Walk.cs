using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>A step of the walk through the demonstration.</summary>
/// <param name="Minute">Minute of the walk at which it begins.</param>
/// <param name="Title">What it is about.</param>
/// <param name="Look">One sentence: what to look at there.</param>
/// <param name="Path">Where.</param>
/// <param name="Key">What the link says.</param>
public sealed record TourStep(int Minute, string Title, string Look, string Path, string Key);

/// <summary>Ten minutes through the demonstration yard, one stop a minute.</summary>
public static class TourWalk
{
    /// <summary>The stops; empty in a yard that is no demonstration.</summary>
    public static IReadOnlyList<TourStep> Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.IsDemonstration)
            return [];
        return
        [
            new(0, "A tree on the telephone", "A red oak beside an old fence, 22 miles out: see how far it is there and back, what is asked before any price, and that metal is likely.", "/?who=Oda", "The owner’s sheet"),
            new(1, "A log from a fence line", "L-039 came in unscanned: the sheet puts the scan before the saw and says what a strike costs; its page keeps who brought it.", Paths.Log("L-039"), "L-039"),
            new(2, "What to open, and how thick", "L-012, quartersawn white oak: the pattern worth most, its boards and blade heights, and the days left before stain or checks.", Paths.Log("L-012"), "L-012"),
            new(3, "A meter in the frost", "S-07 read 13.6 % in cold wood and is 15.0 %: both stand on the card, with the reason and how far it may be off.", "/stacks/S-07", "S-07"),
            new(4, "A sample dropped, a power cut", "C-61 in K1: sample 4 lost wood and shows no sudden drying, and the night without power is a gap, not a line.", "/charges/C-61", "C-61"),
            new(5, "One boiler down, a cold day coming", "B1 is promised for 16 November, perhaps the 23rd: look at 20 November, 14 degrees of frost.", "/boiler", "The boilers"),
            new(6, "A refusal the customer can live with", "O-309 wants white oak 8/4 in December; it stands at 52 %. The sheet says no today, with choices, and why.", "/promises/O-309", "O-309"),
            new(7, "Two tallies of one pack", "P-118 was counted 218 and 214 bf: the boards that differ are named and no tag is printed until one count holds.", "/tally/P-118", "P-118"),
            new(8, "Is 2,900 bf safe?", "O-303 sold 2,900 bf of wood that shrinks to about 2,903: a coin toss, and S-06 stands by to cover it.", "/promises/O-303", "O-303"),
            new(9, "The class: resin, part B, the cold night", "Part B is 2.16 kg short, one table is too wet, and a 6 mm rim cures a day and a half after the middle.", "/pours", "The pours"),
            new(10, "Then turn the days", "The season goes on: each day brings what happened, written by who saw it, and the sheet changes with it.", "/day", "The day"),
        ];
    }
}
