using Boardwright.Documents.Blanks;

namespace Boardwright.Documents.Tests;

/// <summary>Thirteen forms for pencil and paper. What each has to hold is what records of such yards are advised to hold; sources are at the forms.</summary>
public class BlankTests
{
    public static readonly DateTime Made = new(2026, 11, 2, 9, 0, 0);

    public static TheoryData<string, string> Fields => new()
    {
        { "log-intake", "Log|Hour|Species|Small end|Large end|Scaled|Whole|Log rule|Defect, deduction|Metal|Ends coated|Owner|Paid|Came from" },
        { "scale-ticket", "Ticket number|County and state|Day and hour|Product|Species|Timber owner|Land owner|Producer|Receiving yard|Deduction|gross|tare|net" },
        { "sawing-agreement", "Where they are sawn|lumber tally|by hour|Shortest length charged|Set-up and moves|A blade on metal|Who loads|Who stacks|Paid when|accepted by both|Owner of the logs, day|Sawyer, day" },
        { "sawing-day", "Log|boards, thickness, bf|Hours of the mill|Blades changed|Metal|Thickness checks" },
        { "stack-card", "Stack|Species|Thickness|Pieces|bf|From logs|Sawn|Stacked|Stickers: size, dry?|Cover|Place|Depth|Wood, °F|species|Boards|Mean|High|Low|Kept for" },
        { "kiln-samples", "Kiln|Charge|Sample|Stack|Thick-|Heart|quarter|1 wet|1 dry|MC|First|Dry weight|Loss a|By" },
        { "kiln-log", "Day|Hour|Dry bulb set|Wet bulb set|Fans|Vents|Spray|Water|Wettest|Driest|Step|Remark|Equalize|Condition|Stress test|Coldest core|Core at 56 °C" },
        { "boiler-log", "Hour|Water out|Water in|Pressure|Wood loaded|Ash|down|Low water|Relief" },
        { "pack-tag", "Pack|Species|Thickness|Grade|Pieces|bf, net|m³|Moisture|Charge|customer|Weight|Day|Tallied by|nothing added for shrinkage" },
        { "piece-tally", "Width|Length|SM|Grade|By length|Tallied by|Second count" },
        { "bill-of-lading", "Consignor|Consignee|Origin|Destination|Packages in all|Description|Weight|m³|Day|Carrier|Received in good order" },
        { "invoice", "Order|Pack|bf, net|Price|bf or hours|Blades|Tax|Terms|Measure: net board feet" },
        { "pour-sheet", "Table|Mould|depth|Wood|MC|Thick|Lot of A|lot of B|use by|A, kg|B, kg|Hour|Minutes|Shop|Resin|Layer|Held down|gel|out of the mould|bubbles|sinking|signs" },
    };

    [Fact]
    public void Every_form_is_listed_once() => Assert.Equal(Fields.Select(row => row.Data.Item1), BlankForms.All.Select(form => form.Name));

    [Theory, MemberData(nameof(Fields))]
    public void Form_has_its_fields(string name, string fields)
    {
        var words = Printed(name);

        Assert.All(fields.Split('|'), field => Assert.Contains(Bare(field), words, StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Fields))]
    public void Form_is_one_sheet_on_either_paper_and_asks_for_the_hour_of_each_thing(string name, string fields)
    {
        Assert.NotEmpty(fields);
        foreach (var paper in new[] { Paper.A4, Paper.Letter })
        {
            Assert.Single(Pdf.Pages(BlankPaper.Render(BlankForms.Find(name)!, Examples.Yard, Made, paper)));
        }

        Assert.Contains(Bare("the day and hour of each thing"), Printed(name), StringComparison.Ordinal);
    }

    [Fact]
    public void All_forms_come_in_one_file_the_same_each_time()
    {
        var whole = BlankPaper.RenderAll(BlankForms.All, Examples.Yard, Made);

        Assert.Equal(13, Pdf.Pages(whole).Count);
        Assert.Contains("Pour sheet", Pdf.Text(whole), StringComparison.Ordinal);
        Assert.Equal(whole, BlankPaper.RenderAll(BlankForms.All, Examples.Yard, Made));
    }

    [Fact]
    public void Where_work_can_hurt_somebody_the_form_says_so_and_who_decides()
    {
        foreach (var name in new[] { "sawing-agreement", "kiln-log", "boiler-log", "bill-of-lading", "pour-sheet" })
        {
            Assert.Matches("local|rules", Pdf.Text(BlankPaper.Render(BlankForms.Find(name)!, Examples.Yard, Made)));
        }
    }

    // Heads of columns stand on two lines, side by side with others: compared without blanks, each head by its own form.
    private static string Printed(string name) => Bare(string.Join(' ', BlankForms.Find(name)!.Parts.Select(Said)) + Pdf.Text(BlankPaper.Render(BlankForms.Find(name)!, Examples.Yard, Made)));

    private static string Said(BlankPart part) => part is BlankPart.Rows rows ? string.Join(' ', rows.Columns.Select(column => column.Head)) : "";

    private static string Bare(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
