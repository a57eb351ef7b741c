namespace Boardwright.Web.Drawings;

/// <summary>A pour over time: how warm it gets, and how far it has set. Hours from the pour, °C, share of full cure.</summary>
/// <param name="Subject">Table T-5.</param>
/// <param name="Hours">Right end.</param>
public sealed record CureDrawing(string Subject, double Hours, IReadOnlyList<CureLine> Lines)
{
    /// <summary>Air of the shop.</summary>
    public IReadOnlyList<(double Hour, double Celsius)> Air { get; init; } = [];

    /// <summary>Planned hour of demoulding; null for none.</summary>
    public double? DemouldHour { get; init; }

    /// <summary>Share of cure from which it no longer dents; under it is hatched.</summary>
    public double HardShare { get; init; } = .85;

    /// <summary>Share of cure at which it gels; null leaves the line out.</summary>
    public double? GelShare { get; init; }

    /// <summary>Warmest the resin may get; null leaves the line out.</summary>
    public double? CelsiusMax { get; init; }
}

/// <summary>One place in the pour, such as the centre or the thin rim.</summary>
public sealed record CureLine(string Where, IReadOnlyList<CurePoint> Points);

/// <summary>State of a place at an hour.</summary>
public readonly record struct CurePoint(double Hour, double Celsius, double Share);
