namespace Boardwright.Web.Drawings.Samples;

/// <summary>Invented data to look at drawings with. Nothing here is computed; no test of the computation may use it.</summary>
public static class SampleDrawings
{
    private static readonly DateTime Today = new(2026, 11, 2, 8, 0, 0);

    public static LogEndDrawing Quartersawn { get; } = new("L-012", "white oak", 22, 22)
    {
        PithHeightInches = 13,
        Turn = "then turn ¼",
        Pieces = [.. Level(), .. Upright(up: true), .. Upright(up: false), new("", -.75, -4.3, 1.5, 8.6, PieceKind.Waste)],
        Cuts = [.. Enumerable.Range(0, 7).Select(index => new BladeCut(((char)('A' + index)).ToString(), 4.26 - (1.43 * index), $"{17.26 - (1.43 * index):0.00}"))],
    };

    public static LogEndDrawing LiveSawn { get; } = new("L-018", "black cherry", 16, 15)
    {
        PithHeightInches = 8,
        Pieces = [.. Enumerable.Range(0, 11).Select(index => 5.9 - (1.18 * index)).Select((low, index) => (Low: low, Name: $"{index + 1}", Half: Math.Min(Half(16, 15, low), Half(16, 15, low + 1.125)) - .1)).Select(board => new LogPiece(board.Name, -board.Half, board.Low, 2 * board.Half, 1.125))],
        Cuts = [.. Enumerable.Range(0, 12).Select(index => new BladeCut($"{index + 1}", 7.08 - (1.18 * index), $"{15.08 - (1.18 * index):0.00}"))],
    };

    public static IReadOnlyList<LogEndDrawing> Ends { get; } =
        [.. WoodLook.All.Keys.Select((species, index) => new LogEndDrawing($"L-{index + 1:000}", species, 16 + (index % 2), 16)
        {
            HeartRotInches = species == "American beech" ? 5 : 0,
        }), new("L-033", "unknown", 22, 22) { Unproven = true }];

    public static StackSideDrawing Stack { get; } = new("S-07", "black cherry",
        [12, 14, 12, 12, 14, 14, 14, 14, 14, 12, 11.8, 14, 12, 14, 14, 10, 12, 14, 14], 1.125, StackCover.Shed)
    { Place = "shed B" };

    public static StackSideDrawing Boule { get; } = new("S-19", "American elm", [12.5, 12.5, 12.5, 12.5, 12.5], 2.625, StackCover.PileCover) { LiveEdge = true, Place = "row 2" };

    public static KilnDoorDrawing Charge { get; } = new("K1", [new("S-10", "northern red oak", 11, 1.125)])
    {
        Samples = [new("1", "14.4", .07, .05), new("2", "16.5", .47, .32, true), new("3", "12.4", .88, .13), new("4", "14.7", .16, .6), new("5", "11.6", .92, .68), new("6", "15.8", .56, .78)],
    };

    public static KilnDoorDrawing Mixed { get; } = new("K2",
        [new("S-07", "black cherry", 8, 1.125), new("S-01", "white ash", 8, 1.125), new("S-05", "sugar maple", 3, 1.375), new("S-16", "hackberry", 5, 1.625)])
    { PlacesWide = 2 };

    public static WoodWayDrawing Way { get; } = new(
        "History of S-07, black cherry: three logs, then 905 bf on stickers, then 887 bf out of the kiln, then a pack and the rest.",
        [
            new("three logs, 905 bf sawn", [new("M-1", "M-051", "black cherry", 300, "/logs/M-051", false), new("M-2", "M-052", "black cherry", 225, "/logs/M-052", false), new("M-3", "M-053", "black cherry", 380, "/logs/M-053", false)]),
            new("S-07 boards on stickers, 905 bf, 15.0 %", [new("S-07", "S-07", "black cherry", 905, "/stacks/S-07", true)]),
            new("S-07 out of charge D-41, 887 bf, 7.1 %", [new("S-07 dry", "S-07", "black cherry", 887, "/stacks/S-07", true)]),
            new("two packs, 422 bf", [new("P-1", "P-118", "black cherry", 218, "/tally/P-118", false), new("P-2", "P-119", "black cherry", 204, "/tally/P-119", false)]),
        ],
        [new("M-1", "S-07", 300), new("M-2", "S-07", 225), new("M-3", "S-07", 380), new("S-07", "S-07 dry", 905), new("S-07 dry", "P-1", 218), new("S-07 dry", "P-2", 204)]);

    public static KilnDoorDrawing Vessel { get; } = new("K3", [new("V-19", "black cherry", 7, 2.625)]) { Vacuum = true, Samples = [new("gauge", "16.0", .5, .45, true)] };

    public static LayoutDrawing Layout { get; } = new("K1", 2, 48, 32.2,
        [[new("S-05", "sugar maple", 3, 2.0, 1.25), new("S-07", "black cherry", 12, 1.75, 1)], [new("S-07", "black cherry", 5, 1.75, 1), new("S-01", "white ash", 10, 1.75, 1)], [new("S-01", "white ash", 6, 1.75, 1)], []]);

    public static KilnDoorDrawing EmptyKiln { get; } = new("K2", []) { EmptyWords = "empty, swept, new wick" };

    public static PackEndDrawing Pack { get; } = new("P-118", "black cherry",
        [7.25, 5.5, 8.75, 6, 9.5, 4.75, 6.5, 10.25, 5, 7.75, 8, 6.25, 5.5, 11, 4.5, 7, 9, 6.75, 5.25, 8.5, 7.5, 6, 4.25, 9.25, 8.25, 5.5, 7.25, 6.5, 10])
    {
        EnteringInches = 4.75,
        TierInches = 40.5,
        Marked = new HashSet<int> { 9, 14 },
    };

    public static DryingCurveDrawing Drying { get; } = new("stack S-07", new(2026, 5, 28), new(2027, 1, 20), Today)
    {
        Past = [[.. Curve(0, 90)], [.. Curve(104, 158)]],
        Ahead = [.. Enumerable.Range(0, 27).Select(index => (Day: 158 + (index * 3), Value: 15 + (1.3 * Math.Sin(index / 13.0))))
            .Select(point => new MoisturePoint(new DateTime(2026, 5, 28).AddDays(point.Day), point.Value - .5 - (.01 * (point.Day - 158)), point.Value, point.Value + .6 + (.022 * (point.Day - 158))))],
        Air = [.. Enumerable.Range(0, 80).Select(index => (new DateTime(2026, 5, 28).AddDays(index * 3), 12.6 + (index * .07) - (index > 66 ? (index - 66) * .12 : 0)))],
        Readings = [new(new(2026, 10, 30), 15.0, 13.6), new(new(2026, 11, 2), 15.0, 12.9)],
    };

    public static DryingCurveDrawing KilnRun { get; } = new("charge C-61", new(2026, 10, 21), new(2026, 11, 16), Today)
    {
        Past = [[.. Enumerable.Range(0, 13).Select(day => (Day: day, Value: 24.1 - (day * 1.0))).Select(point => new MoisturePoint(new DateTime(2026, 10, 21).AddDays(point.Day), point.Value - 1.8, point.Value, point.Value + 2.2))]],
        Ahead = [.. Enumerable.Range(0, 12).Select(day => (Day: day, Value: 7 + (5.1 * Math.Exp(-day / 5.0)))).Select(point => new MoisturePoint(Today.AddDays(point.Day), Math.Max(6.2, point.Value - 1.6), point.Value, point.Value + 1.8))],
        Air = [(new(2026, 10, 21), 13), (new(2026, 10, 24), 13), (new(2026, 10, 24), 10.5), (new(2026, 10, 27), 10.5), (new(2026, 10, 27), 7.6), (new(2026, 10, 29), 7.6), (new(2026, 10, 29), 6.4), (new(2026, 11, 2), 6.4), (new(2026, 11, 2), 5.4), (new(2026, 11, 16), 5.4)],
        AirWords = "what the kiln’s air holds",
        AheadWords = "ahead",
        TargetPercent = 7,
        Readings = [new(new(2026, 10, 24), 21.2), new(new(2026, 10, 27), 18.4), new(new(2026, 10, 29), 16.5), new(new(2026, 10, 31), 14.4), new(Today, 12.1)],
    };

    public static SeasonDrawing Season { get; } = SampleSeason.Drawing;

    public static PartsBarDrawing Parts { get; } = new("What 905 bf turns into", "bf",
        [new("sold to O-301", 620, PartUse.Wood, "black cherry"), new("spare", 196, PartUse.Spare), new("falls down", 71, PartUse.Lost), new("shrinks", 18, PartUse.Aside)]);

    public static ValueBandDrawing Sold { get; } = new("Red oak out of C-61", "bf", 2843, 2903, 2963) { Mark = 2900 };

    public static ValueBandDrawing Worth { get; } = new("Worth at the mill", "money", 480, 530, 583);

    public static CureDrawing Cure { get; } = new("table T-5", 84,
    [
        new("centre", [.. Set(22, .85, 40, 21)]),
        new("rim, 6 mm", [.. Set(9, .70, 20.5, 40)]),
    ])
    {
        Air = [(0, 20), (6, 19), (12, 15), (18, 14), (24, 18), (30, 20), (36, 18), (42, 15), (48, 14), (54, 18), (60, 20), (66, 18), (72, 17), (84, 18)],
        DemouldHour = 60,
        GelShare = .577,
    };

    public static MouldDrawing River { get; } = new("T-1", MouldShape.Rectangle(1000, 420), "hackberry",
        [new(1000, [150, 138, 160, 171, 149], true, "1"), new(1000, [132, 145, 128, 119, 140], false, "2")])
    { ResinWords = "5.91 L, 40 mm deep" };

    public static MouldDrawing Hexagon { get; } = new("T-6", MouldShape.Hexagon(300), "sycamore",
        [new(560, [118, 149, 171, 152, 120], true, "1"), new(540, [96, 122, 137, 119, 93], false, "2")])
    { ResinWords = "3.79 L" };

    public static MouldDrawing Round { get; } = new("T-7", MouldShape.Circle(560), "black cherry",
        [new(430, [135, 168, 177, 160, 129], true, "1"), new(300, [84, 101, 97, 90, 78], false, "2")])
    { ResinWords = "6.39 L" };

    public static BoardFacesDrawing Board { get; } = new("A board", "northern red oak", 146, 8.25,
    [
        new("Face a", [new("1", 34, 2.5, 2, 1.5, true), new("2", 108, 7.5, 38, .75)], []),
        new("Face b: decides", [new("3", 34, 2.25, 2.5, 2, true)], [new("A", 0, 0, 34, 8.25), new("B", 36.5, 0, 109.5, 8.25)]),
    ]);

    public static SizeChartDrawing Sizes { get; } = new("northern red oak, 4/4",
        [.. new[] { 1.128, 1.131, 1.119, 1.14, 1.125, 1.122, 1.136, 1.117, 1.129, 1.196, 1.133, 1.127 }.Select((mean, index) => ($"{index + 1}", mean, mean > 1.18))], 1.1336, 1.079, 1.188)
    { Target = 1.0625 };

    private static IEnumerable<LogPiece> Level() =>
        Enumerable.Range(0, 6).SelectMany(index =>
        {
            var low = 2.83 - (1.43 * index);
            var half = Math.Min(Half(22, 22, low), Half(22, 22, low + 1.375)) - .1;
            return new[] { new LogPiece($"{(2 * index) + 1}", -half, low, half - .75, 1.375), new LogPiece($"{(2 * index) + 2}", .75, low, half - .75, 1.375) };
        });

    private static IEnumerable<LogPiece> Upright(bool up) =>
        Enumerable.Range(0, 10).Select(index =>
        {
            var left = -7.15 + (1.43 * index);
            var reach = Math.Min(Half(22, 22, left), Half(22, 22, left + 1.375)) - .1;
            return new LogPiece($"{(up ? 13 : 23) + index}", left, up ? 4.33 : -reach, 1.375, reach - 4.33, index is 0 or 1 or 8 or 9 ? PieceKind.Lesser : PieceKind.First);
        });

    private static double Half(double wide, double high, double at) => wide / 2 * Math.Sqrt(Math.Max(0, 1 - Math.Pow(at / (high / 2), 2)));

    private static IEnumerable<MoisturePoint> Curve(int from, int to) =>
        Enumerable.Range(0, ((to - from) / 2) + 1).Select(index => from + (index * 2)).Select(day => (Day: day, Value: 14 + (44 * Math.Exp(-day / 21.0)) + (day * .0063)))
            .Select(point => new MoisturePoint(new DateTime(2026, 5, 28).AddDays(point.Day), point.Value * (1 - Math.Min(.12, point.Day / 500.0)), point.Value, point.Value * (1 + Math.Min(.1, point.Day / 600.0))));

    private static IEnumerable<CurePoint> Set(double speed, double share, double peak, double hour) =>
        Enumerable.Range(0, 85).Select(at => new CurePoint(at, 17.5 + (2.2 * Math.Sin((at / 24.0 * Math.Tau) + 1.2)) + ((peak - 18) * Math.Exp(-Math.Pow((at - hour) / speed * 1.6, 2))), share / (1 + Math.Exp((hour - at) / 5.5))));
}
