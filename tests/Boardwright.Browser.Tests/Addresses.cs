namespace Boardwright.Browser.Tests;

/// <summary>Every page and form of the demonstration yard, by the name of its picture.</summary>
public static class Addresses
{
    private static readonly string[] Methods = [.. Directory.EnumerateFiles(Boardwright.Testing.Repository.PathOf("docs", "methods"), "*.md").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal)!];

    /// <summary>Name and path; a page that is not there, or that refuses what it is asked, is a page too.</summary>
    public static TheoryData<string, string> All => Data(
    [
        ("morning", "/"), ("morning-office", "/?who=Oda"), ("morning-kilns", "/?who=Pell"), ("morning-hands", "/?who=Tam"),
        ("logs", "/logs"), ("log", "/logs/L-012"), ("log-metal", "/logs/L-011"), ("log-unscanned", "/logs/L-039"), ("log-another-way", "/logs/L-009?thickness=8/4&pattern=live"), ("log-sawn", "/logs/M-053"),
        ("log-new", "/logs/new"), ("log-offered", "/logs/offered"), ("log-offered-worth", "/logs/offered?species=black+walnut&girth=75&length=8&miles=12"), ("log-thickness", "/logs/thickness?species=white+oak&thick=8/4"),
        ("log-deck", "/logs/deck"), ("log-deck-whole", "/logs/deck?orders=whole"), ("log-for-orders", "/logs/L-010?orders=whole"), ("log-rules", "/logs/L-013/rules"), ("log-cuts", "/logs/L-012/cuts"), ("log-cuts-metal", "/logs/L-011/cuts?scale=mm"), ("log-gave", "/logs/L-009/sawn"), ("log-measured", "/logs/L-014/measured?sections=0%3A+8+8+x&wide=0&small=25"), ("saw", "/saw"), ("saw-yield", "/saw/yield"), ("board-grade", "/boards/grade"), ("board-graded", "/boards/grade?width=8&length=10&thickness=4/4&species=red+oak&face=a&kind=knot&x=30&y=2&along=3&across=2"),
        ("log-unknown", "/logs/L-999"),
        ("stacks", "/stacks"), ("stacks-drying", "/stacks?show=drying"), ("stack-cherry", "/stacks/S-07"), ("stack-ash", "/stacks/S-02"), ("stack-unproven", "/stacks/S-13"), ("stack-in-kiln", "/stacks/S-10"),
        ("stack-slab", "/stacks/S-20"), ("stack-read", "/stacks/S-07/read"), ("stack-sections", "/stacks/S-07/read?how=sections"), ("stack-weight", "/stacks/S-07/read?how=weight"), ("stack-move", "/stacks/S-07/move"), ("stack-new", "/stacks/new"), ("stacks-learned", "/stacks/learned"),
        ("stack-unknown", "/stacks/S-99"),
        ("charges", "/charges"), ("charge-oak", "/charges/C-61"), ("charge-hung", "/charges/D-40"), ("charge-vacuum", "/charges/V-19"), ("charge-sample", "/charges/C-61/sample"), ("charge-weigh", "/charges/C-61/weigh"),
        ("charge-set", "/charges/C-61/set"), ("charge-air", "/charges/C-61/air"), ("charge-unload", "/charges/V-19/unload"), ("charge-stopped", "/charges/C-61/stopped"), ("charge-new", "/charges/new?plan=D-41"), ("charge-unknown", "/charges/C-99"),
        ("season", "/season"), ("charge-stress", "/charges/C-61/stress"), ("charge-schedule", "/charges/C-61/schedule"), ("own-schedules", "/charges/schedules"), ("charge-proof", "/charges/proof/D-40"), ("charge-proof-none", "/charges/proof/P-119"), ("charge-redry", "/charges/redry/S-02"),
        ("charge-lay", "/charges/lay?kiln=K2&stacks=S-07,S-01,S-05"), ("charge-lay-press", "/charges/lay?kiln=K3&stacks=S-19,S-20"), ("charge-lay-ask", "/charges/lay"), ("charge-lay-unknown", "/charges/lay?kiln=K9&stacks=S-07"), ("charge-share", "/charges/share"), ("charge-share-yes", "/charges/share?stacks=S-03&stacks=S-04"), ("charge-share-no", "/charges/share?stacks=S-02&stacks=S-23"),
        ("season-what-if", "/season/what-if"), ("season-take", "/season/take"), ("season-changed", "/season/changed"), ("season-refused", "/season?without=B9:2026-11-02..2026-11-03"), ("boiler", "/boiler"),
        ("tally", "/tally"), ("pack-disputed", "/tally/P-118"), ("pack", "/tally/P-119"), ("pack-new", "/tally/new"), ("pack-open", "/tally/open?pack=P-118"),
        ("pack-count", "/tally/P-118/count?stack=R-39&order=O-300&line=1"), ("pack-unknown", "/tally/P-999"),
        ("promises", "/promises"), ("order", "/promises/O-303"), ("order-cannot", "/promises/O-309"), ("order-flooring", "/promises/O-310"), ("order-new", "/promises/new"), ("order-ship", "/promises/O-310/ship"), ("customers", "/promises/customers"), ("claims", "/promises/claims"),
        ("order-unknown", "/promises/O-999"),
        ("pours", "/pours"), ("pour-class", "/pours/T-1"), ("pour", "/pours/T-5"), ("pour-soft", "/pours/Q-3"), ("pour-cannot", "/pours/T-8"), ("pour-mix", "/pours/T-1/mix"), ("pour-filled", "/pours/T-1/poured"),
        ("pour-out", "/pours/T-1/demould"), ("pour-move", "/pours/T-1/move"), ("shop", "/pours/shop"), ("resin", "/pours/resin"), ("pour-unknown", "/pours/T-99"),
        ("history-pack", "/history/P-118"), ("history-charge", "/history/C-61"), ("history-log", "/history/L-021"), ("history-unknown", "/history/X-1"),
        ("yard", "/yard"), ("house", "/house"), ("house-kiln", "/house/kilns?name=K1"), ("house-figure", "/house/settings?name=house_green_5_4"), ("house-person", "/house/people"), ("house-unknown", "/house/barns"), ("find", "/find"), ("found", "/find?text=cherry"), ("find-tag", "/find/tag/M-088"), ("find-tag-unproven", "/find/tag/S-13"), ("found-none", "/find?text=spoon+of+moon"), ("write", "/write"), ("write-casting", "/write?who=Wren"), ("write-entry", "/write/entry"),
        ("write-scan", "/write/entry/metal_scanned"), ("write-stopped", "/write/entry/equipment_down"), ("write-corrected", "/write/entry/species_corrected"), ("write-call", "/write/entry/phone_call_taken"),
        ("write-unknown", "/write/entry/moon_howled"),
        ("book", "/book"), ("book-entry", "/book/684"), ("book-beside", "/book/beside"), ("numbers", "/write/numbers"), ("day", "/day"), ("papers", "/papers"), ("sensors", "/sensors"), ("ask", "/ask"), ("ask-shrink", "/ask?q=shrink&species=black+cherry&size=8&from=12&to=7&grain=flat"), ("ask-heat", "/ask?q=heat&species=northern+red+oak&thickness=2&width=6&initial=60&core=133&medium=157&wet-bulb-depression=0&against=pests"), ("ask-refused", "/ask?q=meter&reading=much&temperature=68&species=black+cherry"), ("questions", "/questions"), ("tour", "/tour"), ("drawings", "/drawings"),
        .. Methods.Select(name => ($"method-{name}", $"/methods/{name}")), ("validation-air-times", "/methods/validation/air-times"), ("method-unknown", "/methods/moonlight"),
    ]);

    /// <summary>Pages seen at both sizes also in the dark and in sunlight: every drawing, and the page read most.</summary>
    public static TheoryData<string, string> OnEveryPaper => Data([("drawings", "/drawings"), ("morning", "/")]);

    /// <summary>Pages read in the dark of the morning, on a phone.</summary>
    public static TheoryData<string, string> AtDawn => Data(
    [
        ("morning-office", "/?who=Oda"), ("morning-kilns", "/?who=Pell"), ("morning-hands", "/?who=Tam"), ("pour", "/pours/T-5"), ("pour-soft", "/pours/Q-3"), ("pour-cannot", "/pours/T-8"), ("pour-mix", "/pours/T-1/mix"),
        ("pour-out", "/pours/T-1/demould"), ("shop", "/pours/shop"), ("resin", "/pours/resin"), ("found", "/find?text=cherry"), ("questions", "/questions"), ("tour", "/tour"), ("write-casting", "/write?who=Wren"),
    ]);

    private static TheoryData<string, string> Data(IEnumerable<(string Name, string Path)> rows)
    {
        var data = new TheoryData<string, string>();
        foreach (var (name, path) in rows)
        {
            data.Add(name, path);
        }

        return data;
    }
}
