namespace Boardwright.Yard.Book.Facts;

/// <summary>A casting class: its days, seats and price.</summary>
public sealed record ClassPlanned(string Class, DateOnly PourOn, DateOnly DemouldOn, int Seats, decimal SeatMoney, IReadOnlyList<string> People) : Fact;

/// <summary>A casting resin as its label gives it.</summary>
public sealed record ResinListed(
    string Resin, double RatioAByMass, double RatioBByMass, double DensityAKgM3, double DensityBKgM3, double DensityMixedKgM3, double DepthMaxMm,
    double GelHours, double DemouldHours, double LabelC, double LabelDepthMm, double DoublesPerKelvin, string? Kinetics = null, string? Note = null) : SetupFact;

public enum ResinPart
{
    A,
    B,
}

/// <summary>Stock of one part of a resin.</summary>
public sealed record ResinCounted(string Resin, ResinPart Part, double Kg, string? Lot = null, DateOnly? ExpiresOn = null) : Fact;

public enum MouldShape
{
    Rectangle,
    Hexagon,
    Circle,
}

/// <summary>Inside of a mould: length and width of a rectangle, side of a hexagon, diameter of a circle.</summary>
public sealed record Mould(MouldShape Shape, double? LengthMm = null, double? WidthMm = null, double? SideMm = null, double? DiameterMm = null);

/// <summary>A piece of wood in a mould; widths at equal spacing along it, the first and last at its ends.</summary>
public sealed record WoodPiece(string Species, double McPct, double ThicknessMm, double LengthMm, IReadOnlyList<double> WidthsMm, string? Stack = null);

/// <summary>A table to be cast. The thinnest resin is named where it is thinner than the pour.</summary>
public sealed record PourPlanned(
    string Pour, string Resin, Mould Mould, double DepthMm, double WasteShare, IReadOnlyList<WoodPiece> Pieces, DateOnly PourOn, DateOnly DemouldOn,
    string? Class = null, string? Owner = null, double? ThinnestMm = null, string? Note = null) : Fact;

/// <summary>Another day for a pour.</summary>
public sealed record PourMoved(string Pour, DateOnly PourOn, DateOnly DemouldOn, string Why) : Fact;

/// <summary>Whose table it is was told what is wrong with its wood and wants it poured all the same; the warning stays as it was read.</summary>
public sealed record PourRiskSigned(string Pour, string SignedBy, string Warning) : Fact;

/// <summary>Resin weighed and mixed for a pour.</summary>
public sealed record ResinMixed(string Pour, double PartAKg, double PartBKg, int Buckets, double MinutesEach, string? LotA = null, string? LotB = null) : Fact;

/// <summary>Resin went into the mould.</summary>
public sealed record Poured(string Pour, double? DepthMm = null) : Fact;

/// <summary>Temperature of the shop, in order of time.</summary>
public sealed record ShopTemperatureRead(IReadOnlyList<ShopTemperature> Readings) : Fact;

/// <summary>One reading.</summary>
public sealed record ShopTemperature(DateTime At, double ShopC);

/// <summary>A table came out of its mould, and what was seen.</summary>
public sealed record Demoulded(string Pour, string Seen) : Fact;
