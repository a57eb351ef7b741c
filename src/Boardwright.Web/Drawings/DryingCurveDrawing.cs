namespace Boardwright.Web.Drawings;

/// <summary>Moisture of a stack, sample or charge over time, on a ratio scale. Moisture in percent of oven-dry mass.</summary>
/// <param name="Subject">Stack S-07.</param>
/// <param name="From">Left end.</param>
/// <param name="To">Right end.</param>
/// <param name="Now">Past is solid, future dashed.</param>
public sealed record DryingCurveDrawing(string Subject, DateTime From, DateTime To, DateTime Now)
{
    /// <summary>What the model makes of the past: one list per unbroken run. A gap between runs stays a gap.</summary>
    public IReadOnlyList<IReadOnlyList<MoisturePoint>> Past { get; init; } = [];

    /// <summary>The forecast from now on.</summary>
    public IReadOnlyList<MoisturePoint> Ahead { get; init; } = [];

    public IReadOnlyList<MoistureReading> Readings { get; init; } = [];

    /// <summary>Equilibrium moisture content of the air (or of the kiln's setting).</summary>
    public IReadOnlyList<(DateTime At, double Percent)> Air { get; init; } = [];

    public string AirWords { get; init; } = "what outdoor air holds";

    public string AheadWords { get; init; } = "if left";

    /// <summary>The moisture asked for; null leaves the line out.</summary>
    public double? TargetPercent { get; init; }
}
