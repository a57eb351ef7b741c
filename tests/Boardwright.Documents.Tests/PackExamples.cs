using Boardwright.Documents.Packs;
using Boardwright.Quantities;

namespace Boardwright.Documents.Tests;

/// <summary>Pack P-118 of the demonstration yard board by board, and packing lists made of it; all invented.</summary>
internal static class PackExamples
{
    private static readonly (int Number, double WidthIn, double LengthFt, int SurfaceMeasure)[] Boards =
    [
        (1, 7.25, 8, 5), (2, 5.5, 10, 5), (3, 8.75, 12, 9), (4, 6, 8, 4), (5, 9.5, 10, 8), (6, 4.75, 12, 5),
        (7, 6.5, 8, 4), (8, 10.25, 10, 9), (9, 5, 12, 5), (10, 7.75, 14, 9), (11, 8, 8, 5), (12, 6.25, 10, 5),
        (13, 5.5, 12, 6), (14, 11, 8, 7), (15, 4.5, 10, 4), (16, 7, 12, 7), (17, 9, 8, 6), (18, 6.75, 10, 6),
        (19, 5.25, 12, 5), (20, 8.5, 8, 6), (21, 7.5, 10, 6), (22, 6, 12, 6), (23, 4.25, 14, 5), (24, 9.25, 8, 6),
        (25, 8.25, 10, 7), (26, 5.5, 12, 5), (27, 7.25, 8, 5), (28, 6.5, 10, 5), (29, 10, 12, 10), (30, 4.75, 8, 3),
        (31, 6.25, 10, 5), (32, 7.75, 12, 8), (33, 5, 8, 3), (34, 8.75, 10, 7), (35, 9.75, 12, 10), (36, 6, 14, 7),
    ];

    public static PackTally Tally { get; } = Of("P-118", [.. Boards.Select(b => new TallyBoard(b.Number, Length.FromInches(b.WidthIn), Length.FromFeet(b.LengthFt), b.SurfaceMeasure))]);

    public static PackingListContent List { get; } = new()
    {
        Yard = Examples.Yard,
        Order = "O-301",
        Customer = "Brindle Toad Cabinet Shop",
        DeliverTo = "Old creamery, back door, Ollenwhin",
        Promised = new DateOnly(2026, 11, 13),
        Date = new DateOnly(2026, 11, 12),
        Packs = [Tally, Of("P-119", [.. Tally.Boards.Take(34)]), Of("P-120", [.. Tally.Boards.Take(33)]) with { Weight = null }],
    };

    /// <summary>A pack of many boards, to see the sheets turn.</summary>
    public static PackTally Many(int boards) => Of("P-200", [.. Enumerable.Range(1, boards).Select(n => Tally.Boards[(n - 1) % Tally.Boards.Count] with { Number = n })]);

    /// <summary>An export pack in millimetres and metres with a grade on every board.</summary>
    public static PackTally Metric { get; } = MetricPack();

    public static PackingListContent LongList { get; } = List with
    {
        Yard = Examples.LongName,
        Order = "O-301 " + Examples.LongName,
        Customer = Examples.LongName,
        DeliverTo = Examples.LongName,
        Packs = [Tally with { Pack = Examples.LongName, Species = Examples.LongName, Grade = Examples.LongName, MoistureBasis = Examples.LongName, TalliedBy = Examples.LongName, Charge = Examples.LongName }],
    };

    public static PackTally Of(string pack, IReadOnlyList<TallyBoard> boards) => new()
    {
        Pack = pack,
        Species = "black cherry",
        Thickness = "4/4",
        Surface = "rough",
        Grade = "No. 1 Common and better",
        Boards = boards,
        ByLength = [.. boards.GroupBy(b => b.Length).OrderBy(g => g.Key).Select(g => new LengthSubtotal(g.Key, g.Count(), g.Sum(b => b.SurfaceMeasure), BoardFeet.From(g.Sum(b => b.SurfaceMeasure ?? 0))))],
        Footage = BoardFeet.From(boards.Sum(b => b.SurfaceMeasure ?? 0)),
        FootageUnrounded = BoardFeet.From(boards.Sum(b => b.Width.Inches * b.Length.Feet / 12.0)),
        Basis = FootageBasis.Net,
        FootageRule = "surface measure, board by board",
        Volume = BoardFeet.From(boards.Sum(b => b.SurfaceMeasure ?? 0)).NominalVolume,
        Weight = Mass.FromKilograms(285),
        MoistureLow = MoistureContent.FromPercent(6.4),
        MoistureHigh = MoistureContent.FromPercent(7.8),
        MoistureBasis = "pin meter, 20 boards, 11 Nov",
        Charge = "D-41",
        HeatTreatment = HeatTreatment.Yes,
        HeatTreatmentProof = "coldest core 56 °C or more for 3 h 10 min, 10 Nov",
        TalliedBy = "Bram",
        TalliedOn = new DateOnly(2026, 11, 12),
    };

    private static PackTally MetricPack()
    {
        TallyBoard[] boards = [.. Enumerable.Range(1, 40).Select(n =>
        {
            var (width, length) = (Length.FromMillimetres(120 + (n * 7 % 90)), Length.FromMetres(n % 3 == 0 ? 2.4 : 3.0));
            return new TallyBoard(n, width, length, null, Volume.FromCubicMetres(width.Metres * length.Metres * 0.027), n % 4 == 0 ? "No. 1 Common" : "FAS");
        })];
        return Of("P-140", boards) with
        {
            Species = "sugar maple",
            Thickness = "27 mm",
            Units = TallyUnits.MillimetresAndMetres,
            Volume = Volume.FromCubicMetres(boards.Sum(b => b.Volume!.Value.CubicMetres)),
            VolumeBasis = "actual size",
            FootageUnrounded = null,
            Footage = BoardFeet.From(Math.Round(boards.Sum(b => b.Volume!.Value.CubicMetres) / BoardFeet.CubicMetresNominal)),
            FootageRule = "actual volume",
            ByLength = [.. boards.GroupBy(b => b.Length).OrderBy(g => g.Key).Select(g => new LengthSubtotal(g.Key, g.Count(), null, null, Volume.FromCubicMetres(g.Sum(b => b.Volume!.Value.CubicMetres))))],
        };
    }
}
