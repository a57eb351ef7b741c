using static Boardwright.Documents.Blanks.BlankPart;

namespace Boardwright.Documents.Blanks;

/// <summary>The casting class.</summary>
/// <remarks>Fields: common practice; weighing, stirring time and a second bucket: published causes of incomplete cure (mark P).</remarks>
internal static class PourBlanks
{
    public static BlankForm PourSheet { get; } = new("pour-sheet", "Pour sheet", "One table: what was weighed, when, how warm, what was seen.",
    [
        new Boxes([new("Table", 2), new("Whose", 4), new("Day", 2), new("Lead", 2), new("Class", 2), new("Mould: length × width × depth, mm", 6), new("Tested for leaks", 3), new("Faces sealed, gelled", 3)]),
        new Rows("Wood", [("Piece", 10), ("Species", 24), ("MC,\n%", 10), ("Thick,\nmm", 12), ("Length,\nmm", 12), ("Widths, mm", 40), ("Held down\nwith, kg", 16)], Count: 2),
        new Boxes([new("Wood above 12 %: whose it is was told, and signs", 6), new("Lot of A, use by", 3), new("lot of B, use by", 3)]),
        new Rows("Mixed and poured", [("Layer", 10), ("Hour\nmixed", 14), ("A, kg", 14), ("B, kg", 14), ("B on A,\n%", 13), ("Minutes\nstirred", 14), ("2nd\nbucket", 12), ("Hour\npoured", 14), ("Depth,\nmm", 12), ("Shop,\n°C", 12), ("Resin,\n°C", 12)], Count: 3),
        new Rows("Watched: gel, bubbles, sinking, leaks; out of the mould: hard everywhere, or soft where", [("Day", 12), ("Hour", 12), ("Shop,\n°C", 12), ("Resin,\n°C", 12), ("Seen", 60), ("By", 10), ("In\nbook", 8)]),
        new Cautions("Before anybody opens a can",
        [
            "Gloves and sleeves, air moving; uncured parts can make an allergy for life. No solvent on skin.",
            "A bucket left standing heats itself: leftovers shallow, in metal, on metal, watched until cold. Smoke: out, doors shut, fire service.",
            "Never sawdust on a spill: hardener in sawdust can take fire by itself.",
        ], "The data sheets of both parts and the local rules come first."),
    ]);
}
