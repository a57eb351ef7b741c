namespace Boardwright.Web.Drawings;

/// <summary>Heat wanted on one day, kW, by use in the drawing's order.</summary>
public sealed record HeatWanted(DateOnly Day, IReadOnlyList<double> KilowattsByUse)
{
    public double Total => KilowattsByUse.Sum();
}
