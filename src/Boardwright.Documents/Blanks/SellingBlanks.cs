using static Boardwright.Documents.Blanks.BlankPart;

namespace Boardwright.Documents.Blanks;

/// <summary>From the pack to the money.</summary>
/// <remarks>
/// Fields: statement of net footage: ncwm-1977 (mark P); piece tally: mckinney-1991 (mark P); the five items of a bill of lading: cfr-49-373 (mark P); pack tag and invoice: common
/// practice.
/// </remarks>
internal static class SellingBlanks
{
    private static readonly Boxes Tag = new(
    [
        new("Pack", 3), new("Species", 5), new("Thickness, surface", 4), new("Grade and rule", 5), new("Pieces", 2), new("bf, net", 3), new("m³", 2), new("Moisture low to high, how read", 6), new("Charge", 3), new("Heat treated: yes, no, unproven", 3),
        new("Order, customer", 6), new("Weight", 2), new("Day", 2), new("Tallied by", 2),
    ]);

    public static IReadOnlyList<BlankForm> All { get; } =
    [
        new("pack-tag", "Pack tags", "Two for one pack, one at each end; cut along the line.",
        [
            Tag,
            new Note("Net: measured after drying, nothing added for shrinkage. No tag on wood of unproven species, or on a pack with two tallies that differ."),
            new Note("– – – – – – – – – – – – – – – – – – – – – – – – – – cut here – – – – – – – – – – – – – – – – – – – – – – – – – –"),
            Tag,
            new Note("Net: measured after drying, nothing added for shrinkage. No tag on wood of unproven species, or on a pack with two tallies that differ."),
        ]),
        new("piece-tally", "Piece tally", "Board by board, as called.",
        [
            new Boxes([new("Pack", 2), new("Stack", 2), new("Species, thickness", 4), new("Order", 2), new("Moisture, %", 2), new("Tallied by", 4), new("Day, hour from", 4), new("to", 4)]),
            new Rows(null, [("Board", 11), ("Width,\nin", 13), ("Length,\nft", 13), ("SM,\nft²", 11), ("Grade", 15)], Panels: 3),
            new Rows("By length", [("Length, ft", 20), ("Pieces", 20), ("SM, ft²", 20), ("bf, net", 20)], Count: 4, Panels: 2),
            new Note("Surface measure = width (in, with quarters) × whole feet ÷ 12, to the nearest whole foot; exact halves up and down in turn. bf = SM × nominal thickness. A second person counts on a second sheet."),
            new Signatures(["Tallied by, day", "Second count by, day"]),
        ]),
        new("bill-of-lading", "Bill of lading", "Goes with the truck, signed by who takes it.",
        [
            new Boxes(
            [
                new("Number", 3), new("Day, hour", 3), new("Order", 3), new("Truck, plate", 3), new("Consignor (from whom)", 6), new("Consignee (to whom)", 6), new("Origin", 6), new("Destination", 6), new("Carrier", 6), new("Whose wood, if not the mill’s", 6),
            ]),
            new Rows("Goods", [("Pack", 14), ("Description", 44), ("Pieces", 14), ("bf, net", 16), ("m³", 14), ("Weight", 18)]),
            new Boxes([new("Packages in all", 3), new("Weight in all", 3), new("Wet, dry, wrapped, seen by both", 6)]),
            new Cautions("Before it leaves", ["Axles and payload; every tie-down within its working load.", "Look at the tie-downs again at the public road and when the load has settled."], "The rules of your state and of the road decide how a load is tied."),
            new Signatures(["Shipper, day", "Carrier, day", "Received in good order by, day"]),
        ]),
        new("invoice", "Invoice", "What is owed, by what measure.",
        [
            new Boxes([new("Number", 3), new("Day", 3), new("Order", 3), new("Terms, due", 3), new("From (name, address)", 6), new("To (name, address)", 6)]),
            new Rows("Lumber, net footage", [("Pack", 13), ("Species, thickness, grade", 44), ("Pieces", 13), ("bf, net", 15), ("Price\na bf", 14), ("Money", 17)]),
            new Rows("Services", [("What", 50), ("Of", 20), ("bf or hours", 20), ("Rate", 16), ("Money", 17)], Count: 4),
            new Boxes([new("Blades on metal", 3), new("Hauling", 3), new("Storage", 3), new("Deposit paid", 3), new("Tax", 4), new("Total", 4), new("Paid on, how", 4)]),
            new Note("Measure: net board feet after drying, board by board, nothing added for shrinkage. Tax and what an invoice must hold are local."),
        ]),
    ];
}
