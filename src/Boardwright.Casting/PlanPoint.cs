namespace Boardwright.Casting;

/// <summary>A point of a plan drawing, seen from above; x along the mould's length, y across it.</summary>
/// <param name="XMetres">Along the length, in metres.</param>
/// <param name="YMetres">Across, in metres.</param>
public readonly record struct PlanPoint(double XMetres, double YMetres)
{
    /// <summary>From millimetres, as a drawing gives them.</summary>
    public static PlanPoint FromMillimetres(double x, double y) => new(x * 0.001, y * 0.001);
}
