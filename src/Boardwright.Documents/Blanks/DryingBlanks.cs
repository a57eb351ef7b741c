using Boardwright.Documents.Kilns;
using static Boardwright.Documents.Blanks.BlankPart;

namespace Boardwright.Documents.Blanks;

/// <summary>From the stickers to the end of the charge.</summary>
/// <remarks>
/// Fields: what a stack is known by and its dates as air-drying manuals keep them (fpl-gtr-117, mark M); sample sheet: wengert-answers-2000 (mark P); kiln log: ah-188, chapter 9
/// (mark M); boiler log: mark M.
/// </remarks>
internal static class DryingBlanks
{
    public static IReadOnlyList<BlankForm> All { get; } =
    [
        new("stack-card", "Stack card", "Stays with the stack; a line for each reading.",
        [
            new Boxes(
            [
                new("Stack", 2), new("Species", 4), new("Thickness", 2), new("Flat or quarter", 2), new("Owner", 2), new("From logs", 4), new("Sawn", 2), new("Stacked", 2), new("Pieces", 2), new("bf", 2),
                new("Stickers: size, dry?", 3), new("Spacing", 2), new("Cover", 2), new("Place", 2), new("Kept for", 3),
            ]),
            new Rows("Readings", [("Day", 12), ("Hour", 9), ("Meter set\nto species", 20), ("Wood,\n°F", 10), ("Depth", 10), ("Boards", 10), ("Mean,\n%", 11), ("High,\n%", 11), ("Low,\n%", 11), ("By", 10), ("In\nbook", 8)]),
            new Note("Always the wood’s own temperature. Below 32 °F and above about 30 % a pin meter cannot be believed: cut an oven section."),
            new Rows("Moved or taken", [("Day", 12), ("To, or boards and bf taken", 60), ("By", 12), ("In\nbook", 8)], Count: 3),
        ]),
        new("kiln-samples", "Kiln sample sheet", "Sections and sample boards of one charge.",
        [
            new Boxes([new("Kiln", 2), new("Charge", 2), new("Stacks", 4), new("Target, %", 2), new("In on", 2)]),
            new Rows("Sections and first weights, g",
            [
                ("Sample", 11), ("Stack", 11), ("Thick-\nness", 11), ("Heart,\nsap", 11), ("Flat,\nquarter", 12), ("Section\n1 wet", 13), ("1 dry", 13), ("Section\n2 wet", 13), ("2 dry", 13), ("MC,\n%", 10), ("First\nweight", 13), ("Dry weight\nworked out", 18),
            ], Count: 6),
            new Note("MC = (wet − dry) ÷ dry × 100. Dry weight of the sample = first weight ÷ (1 + MC ÷ 100), MC the mean of its two sections. MC later = (weight − dry weight) ÷ dry weight × 100."),
            new Rows("Weights, g",
            [
                ("Day, hour", 20), ("Sample 1", 13), ("Sample 2", 13), ("Sample 3", 13), ("Sample 4", 13), ("Sample 5", 13), ("Sample 6", 13), ("Wettest,\n%", 12), ("Driest,\n%", 12), ("Loss a\nday, %", 12), ("By", 9), ("In\nbook", 8),
            ]),
            new Note("A sample that was dropped or broken: weigh it as it is and what broke off; write both. Never alone in the kiln; fans off and locked out."),
        ]),
        new("kiln-log", "Kiln log", "One line a visit; the run sheet of a charge has the same with its settings printed.",
        [
            new Boxes([new("Kiln", 2), new("Charge", 2), new("Stacks", 4), new("Target, %", 2), new("In on", 2)]),
            new Rows(null,
            [
                ("Day", 11), ("Hour", 10), ("Dry bulb\nset", 12), ("read", 11), ("Wet bulb\nset", 12), ("read", 11), ("Fans,\nway", 10), ("Vents", 10), ("Spray", 10), ("Water\nin", 10), ("Wettest,\n%", 12), ("Driest,\n%", 12), ("Step", 9), ("Remark", 26), ("By", 9), ("In\nbook", 8),
            ]),
            new Boxes(
            [
                new("Equalize: EMC, hours", 3), new("Condition: EMC, hours", 3), new("Stress test", 3), new("Wettest, driest at the end", 3), new("Coldest core: place of probe", 4), new("Core at 56 °C or more: from, to", 4), new("Taken out: day, hour, by", 4),
            ]),
            new Cautions("Before you go in", KilnCautions.Air, KilnCautions.Deference),
        ], IsWide: true),
        new("boiler-log", "Boiler log", "At every stoking.",
        [
            new Boxes([new("Boiler", 3), new("Month", 3), new("Fuel: wood, dryness", 6)]),
            new Rows(null, [("Day", 10), ("Hour", 10), ("Water out,\n°F", 14), ("Water in,\n°F", 14), ("Pressure", 12), ("Wood\nloaded", 14), ("Ash\nout", 9), ("Blow-\ndown", 10), ("Low water\ntested", 13), ("Relief\ntested", 11), ("Remark", 30), ("By", 9), ("In\nbook", 8)]),
            new Cautions("A wood fire cannot be switched off",
            [
                "Low water or too hot: no cold water into a hot boiler; let the fire die, open the heat dump, call who is licensed for it.",
                "The relief valve is never tied, plugged or turned up.",
            ], "The maker’s instructions, the inspector and the local rules decide."),
        ]),
    ];
}
