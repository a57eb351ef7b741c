using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>One way a face can yield enough for a grade: how much, in how many cuttings.</summary>
/// <param name="UnitsPerSurfaceMeasure">Cutting units asked for each foot of surface measure.</param>
/// <param name="Cuttings">Most cuttings; null for no limit.</param>
/// <param name="Way">How the units may be taken.</param>
public sealed record GradeYield(double UnitsPerSurfaceMeasure, int? Cuttings, CuttingWay Way = CuttingWay.Rectangles)
{
    /// <summary>Units asked of a board.</summary>
    public double Required(int surfaceMeasure) => UnitsPerSurfaceMeasure * surfaceMeasure;
}

/// <summary>How the cuttings of a yield are taken.</summary>
public enum CuttingWay
{
    /// <summary>Any rectangles of the grade's sizes.</summary>
    Rectangles,

    /// <summary>The board's full width, of any length.</summary>
    FullWidth,

    /// <summary>The whole face.</summary>
    WholeFace,
}

/// <summary>What a grade asks of a face: sizes of board and cutting, and how much they must yield.</summary>
/// <remarks>Cutting units: 1 in by 1 ft; width and length with their fractions. Surface measure (SM) as tallied.</remarks>
/// <source id="nhla-rules" locator="summary chart of standard grades; 2019 edition paragraphs 57 to 72 as quoted"/>
/// <method page="docs/methods/board-grade.md"/>
public sealed record GradeRule(LumberGrade Grade, double BoardWidthMinIn, int BoardLengthMinFt, bool Clear)
{
    internal CuttingSize Size { get; private init; } = Inches(0.0, (3.0, 24.0));

    /// <summary>FAS, and the better face of FAS one face.</summary>
    public static GradeRule Fas { get; } = new(LumberGrade.Fas, 6.0, 8, true) { Size = Inches(0.0, (4.0, 60.0), (3.0, 84.0)) };

    /// <summary>The better face of Selects: the cuttings of FAS from a smaller board.</summary>
    public static GradeRule Selects { get; } = Fas with { Grade = LumberGrade.Selects, BoardWidthMinIn = 4.0, BoardLengthMinFt = 6 };

    /// <summary>The grades judged from the poor face, best first.</summary>
    public static IReadOnlyList<GradeRule> PoorFace { get; } =
    [
        Fas,
        new(LumberGrade.No1Common, 3.0, 4, true) { Size = Inches(0.0, (4.0, 24.0), (3.0, 36.0)) },
        new(LumberGrade.No2ACommon, 3.0, 4, true),
        new(LumberGrade.No2BCommon, 3.0, 4, false),
        new(LumberGrade.No3ACommon, 3.0, 4, true),
        new(LumberGrade.No3BCommon, 3.0, 4, false) { Size = Inches(36.0, (1.5, 0.0)) },
    ];

    /// <summary>The ways a face may yield enough, the plain one first; empty where the board is too small for any.</summary>
    /// <param name="sm">Surface measure.</param>
    /// <param name="width">Width of the board.</param>
    public IReadOnlyList<GradeYield> Yields(int sm, Length width) => [.. All(sm, width.Inches).Where(way => way.Cuttings is not 0)];

    private IEnumerable<GradeYield> All(int sm, double widthIn) => Grade switch
    {
        LumberGrade.Selects when sm is 2 or 3 => [new(12.0, 1, CuttingWay.WholeFace), new(11.0, 1)],
        LumberGrade.Fas or LumberGrade.Selects => OfFas(sm, widthIn),
        LumberGrade.No1Common => sm switch
        {
            < 1 => [],
            1 => [new(12.0, 1, CuttingWay.WholeFace)],
            2 => [new(9.0, 1)],
            _ => With(new(8.0, Math.Min(5, (sm + 1) / 3)), sm <= 10, 9.0),
        },
        LumberGrade.No2ACommon or LumberGrade.No2BCommon => sm switch
        {
            < 1 => [],
            1 => [new(8.0, 1)],
            _ => With(new(6.0, Math.Min(7, sm / 2)), sm <= 7, 8.0),
        },
        LumberGrade.No3ACommon => [new(4.0, null)],
        _ => [new(3.0, null)],
    };

    private static IEnumerable<GradeYield> OfFas(int sm, double widthIn)
    {
        var plain = new GradeYield(10.0, Math.Min(4, sm / 4));
        var ways = With(plain, sm is >= 6 and <= 15, 11.0);
        return sm is >= 6 and <= 12 && widthIn >= 6.0 - 1e-9 ? ways.Append(new(11.64, 2, CuttingWay.FullWidth)) : ways;
    }

    private static IEnumerable<GradeYield> With(GradeYield plain, bool extra, double unitsWithExtra) => extra ? [plain, new(unitsWithExtra, plain.Cuttings + 1)] : [plain];

    private static CuttingSize Inches(double areaMin, params (double Width, double Length)[] pairs) =>
        new((long)(areaMin * Nanometres * Nanometres), [.. pairs.Select(pair => ((long)(pair.Width * Nanometres), (long)(pair.Length * Nanometres)))]);

    private const double Nanometres = 25_400_000.0;
}
