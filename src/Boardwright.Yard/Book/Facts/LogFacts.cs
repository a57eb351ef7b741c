namespace Boardwright.Yard.Book.Facts;

public enum MetalScan
{
    NotScanned,
    FenceLineNotScanned,
    Clear,
    HitsDugOut,
    HitsNotDug,
}

/// <summary>A log came in, was numbered and measured. Small-end diameters are inside bark, at right angles; the actual length includes trim.</summary>
public sealed record LogReceived(
    string Log, string Source, string Species, double SmallEndAMm, double SmallEndBMm, double LargeEndMm, double ScaleLengthM, double ActualLengthM,
    MetalScan MetalScan, int MetalHits, bool EndCoated, string Owner, string? Defect = null, string? PlannedFor = null,
    decimal? PaidMoney = null, DateOnly? FelledOn = null) : Fact;

/// <summary>Log grades of the US Forest Service for factory lumber, by clear cuttings on the three best faces.</summary>
public enum LogGrade
{
    F1,
    F2,
    F3,
    Below,
}

/// <summary>What was seen on a log beyond its two ends: when it came in, or later. What is left open stays as it was seen before.</summary>
/// <remarks>Directions are hours of a clock face on the small end, 12 up as the log lay when its small end was measured, its first diameter level.</remarks>
public sealed record LogSeen(
    string Log, double? MidDibMm = null, double? SweepMm = null, double? SweepTowardsHour = null, double? HeartRotMm = null, double? PithOffMm = null, double? PithTowardsHour = null,
    double? SplitSmallEndM = null, double? SplitLargeEndM = null, double? BarkMm = null, LogGrade? Grade = null, bool MetalMarks = false) : Fact;

/// <summary>A log's cross-sections were measured by radii from its heart, from the small end to the large. Until it is measured again it is planned, drawn and weighed by them; it is scaled by its diameters all the same.</summary>
public sealed record LogRadiiMeasured(string Log, IReadOnlyList<RadiiPlace> Places) : Fact;

/// <summary>One place along a log: eight or more radii inside bark at equal angles, the first upright, then clockwise looking at the small end.</summary>
public sealed record RadiiPlace(double AtM, IReadOnlyList<double> RadiiMm);

/// <summary>The detector was passed over a log.</summary>
public sealed record MetalScanned(string Log, MetalScan MetalScan, int MetalHits = 0) : Fact;

/// <summary>The band hit metal in a log; what it cost and who pays.</summary>
public sealed record BladeStruck(string Log, decimal CostMoney, string? ChargedTo = null) : Fact;

/// <summary>The ends of a log were sealed.</summary>
public sealed record EndCoated(string Log) : Fact;

/// <summary>A log was sawn; what went to which stack. The stack's card is open before. Boards where they were counted by size, the plan as it stood that day, and who sawed where somebody else wrote it down.</summary>
public sealed record LogSawn(
    string Log, IReadOnlyList<SawnInto> Into, double? MillHours = null, string? Pattern = null, IReadOnlyList<SawnBoards>? Boards = null, SawnPlan? Plan = null, string? Sawyer = null) : Fact;

/// <summary>Boards of one size off a log.</summary>
public sealed record SawnBoards(int ThicknessQuarters, double WidthIn, double LengthFt, int Pieces);

/// <summary>What the plan of a log promised, and what its boards as sawn bring at the same prices.</summary>
public sealed record SawnPlan(string Pattern, IReadOnlyList<SawnPlanPart> Parts, double SawnMoney);

/// <summary>Planned boards of one thickness.</summary>
public sealed record SawnPlanPart(int ThicknessQuarters, int Pieces, double Bf, double Money);

/// <summary>What logs gave over their scale is learned anew from here: logs sawn before teach no more. Null for every wood or every sawyer.</summary>
public sealed record YieldReset(string Why, string? Species = null, string? Sawyer = null) : Fact;

/// <summary>Boards of one log on one stack: footage, pieces, and moisture where it was measured.</summary>
public sealed record SawnInto(string Stack, double Bf, int Pieces, double? McPct = null);

/// <summary>Thickness of boards from the mill, several points a board.</summary>
public sealed record ThicknessMeasured(string Species, int ThicknessQuarters, double SetMm, IReadOnlyList<BoardThickness> Boards) : Fact;

/// <summary>Readings along one board.</summary>
public sealed record BoardThickness(int Board, IReadOnlyList<double> PointsMm);

/// <summary>A tag is gone or doubtful: the item is of unproven species until it is proven again. Others it may be confused with are named.</summary>
public sealed record TagLost(string Item, IReadOnlyList<string> ConfusedWith, string? Note = null) : Fact;

/// <summary>An item is known again, and how.</summary>
public sealed record TagProven(string Item, string How) : Fact;

/// <summary>A log, stack or pack is of another species than its tag said, and how that was seen.</summary>
public sealed record SpeciesCorrected(string Item, string Species, string How) : Fact;
