using static Boardwright.Documents.Blanks.BlankPart;

namespace Boardwright.Documents.Blanks;

/// <summary>From the telephone to the saw.</summary>
/// <remarks>
/// Fields: the log tag and its reasons, log intake: conners-for-128 (mark P) and common practice; the scale ticket: louisiana-7-xxxix-1503, virginia-55-1-2840 (mark P); contents of a sawing
/// agreement: contents of published contracts (mark P); the day sheet: common practice.
/// </remarks>
internal static class LogBlanks
{
    public static IReadOnlyList<BlankForm> All { get; } =
    [
        new("log-intake", "Log intake sheet", "One line a log, at the landing: numbered, measured, scanned, ends coated.",
        [
            new Boxes([new("Came from (owner, place of the tree)", 5), new("Log rule agreed", 3), new("Measured by", 2), new("Day", 2)]),
            new Rows(null,
            [
                ("Log", 12), ("Hour", 9), ("Species", 20), ("Small end,\nin", 11), ("at right\nangles", 11), ("Large end,\nin", 11), ("Scaled,\nft", 10), ("Whole,\nft  in", 12), ("Defect, deduction", 30),
                ("Metal:\nscan, hits", 14), ("Ends\ncoated", 10), ("Owner", 15), ("Paid", 11), ("In\nbook", 8),
            ]),
            new Note("Diameters inside bark. Write feet and inches apart (8 ft 6 in), never 8.6. Put a letter beside a figure that is in cm or m. Chock before you walk between logs."),
        ], IsWide: true),
        new("scale-ticket", "Scale ticket", "What was bought or received, for the seller and the yard.",
        [
            new Boxes(
            [
                new("Ticket number", 3), new("Day and hour", 3), new("County and state of the wood", 6), new("Timber owner", 6), new("Land owner", 6), new("Producer, hauler", 6), new("Receiving yard", 6),
                new("Product", 4), new("Measure: bf (name the rule), tons or cords", 8),
            ]),
            new Rows("Quantity", [("Log", 12), ("Species", 24), ("Diameter", 12), ("Length", 12), ("Gross", 14), ("Deduction\nand why", 30), ("Net", 14)]),
            new Boxes([new("Weighed: gross", 3), new("tare", 3), new("net", 3), new("Price, of what", 3)]),
            new Note("What a ticket must hold, whether the seller gets a copy and how long it is kept is the law of your state: look it up. One rule is not turned into another for payment."),
            new Signatures(["Seller", "Scaled by"]),
        ]),
        new("sawing-agreement", "Sawing agreement", "Somebody else’s logs, before the first cut.",
        [
            new Boxes(
            [
                new("Owner of the logs", 6), new("Telephone", 3), new("Day", 3), new("Where the logs lie", 6), new("Where they are sawn", 6), new("Logs, species (written proof of ownership seen?)", 12),
                new("Rate by bf of lumber tally", 4), new("or by hour", 4), new("or on shares", 4), new("Shortest length charged", 4), new("Set-up and moves", 4), new("A blade on metal, each", 4),
                new("Who loads the mill", 4), new("Who stacks and stickers", 4), new("Who keeps slabs and sawdust", 4), new("Thicknesses and sizes wanted", 12), new("Paid when and how, deposit", 6), new("Stored until, then at", 6),
            ]),
            new Rows("Logs as they lie", [("Log", 12), ("Species", 26), ("Small end", 14), ("Length", 14), ("Metal known, remark", 50)]),
            new Cautions("Known and accepted by both",
            [
                "A saw mill, rolling logs and lifting can hurt or kill: the owner and visitors stay where the sawyer says.",
                "Logs of yards, fences and ranges may hold metal that no detector finds.",
                "Lumber of a log can differ from its scale, and can check, warp or stain in drying.",
            ], "A reminder of what to agree on, not legal advice: liability, insurance and consumer law are local. Have your own wording checked."),
            new Signatures(["Owner of the logs, day", "Sawyer, day"]),
        ]),
        new("sawing-day", "Sawing day sheet", "At the mill, one line a log.",
        [
            new Boxes([new("Day", 3), new("Sawyer", 3), new("Off-bearer", 3), new("Hours of the mill running", 3)]),
            new Rows("Logs opened", [("Log", 12), ("Hour", 10), ("Species", 22), ("Pattern", 16), ("Into stack:\nboards, thickness, bf", 40), ("Metal,\nblade", 14), ("Remark", 28), ("In\nbook", 8)]),
            new Rows("Thickness checks, in (four points a board; 1-1/8 set is not 1-1/8 sawn)", [("Set", 14), ("1", 12), ("2", 12), ("3", 12), ("4", 12)], Count: 5, Panels: 2),
            new Boxes([new("Blades changed, hours", 4), new("Blades on metal: log, whose", 4), new("Stops and why", 4)]),
            new Note("Lock the mill out before a blade is touched. Nobody in the line of the band; guards shut."),
        ]),
    ];
}
