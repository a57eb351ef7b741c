namespace Boardwright.Casting.Cure;

/// <summary>What a simulated cure came to. An hour that was not reached within the run is null.</summary>
public sealed record CureRun
{
    /// <summary>Hottest the resin got, °C.</summary>
    public required double PeakCelsius { get; init; }

    /// <summary>When, in hours after the first pour.</summary>
    public required double PeakHour { get; init; }

    /// <summary>Where, above the bottom of the resin, m.</summary>
    public required double PeakHeightMetres { get; init; }

    /// <summary>Gel half way up.</summary>
    public required double? GelCentreHour { get; init; }

    /// <summary>Gel of the slowest resin.</summary>
    public required double? GelLastHour { get; init; }

    /// <summary>Hard and cool half way up, for good.</summary>
    public required double? DemouldCentreHour { get; init; }

    /// <summary>Hard and cool everywhere, for good.</summary>
    public required double? DemouldLastHour { get; init; }

    /// <summary>Hour by hour.</summary>
    public required IReadOnlyList<CurePoint> Curve { get; init; }

    /// <summary>Heat that went missing, as a share of the heat the reaction made: the check on the scheme.</summary>
    public required double BalanceError { get; init; }

    /// <summary>State at an hour, between the hours of the curve by straight lines; the last one after the end.</summary>
    public CurePoint At(double hour)
    {
        var next = Curve.TakeWhile(point => point.Hour < hour).Count();
        if (next == 0 || next == Curve.Count)
        {
            return Curve[Math.Min(next, Curve.Count - 1)];
        }

        var (a, b) = (Curve[next - 1], Curve[next]);
        var share = (hour - a.Hour) / (b.Hour - a.Hour);
        double Between(double from, double to) => from + share * (to - from);
        return new(
            hour, Between(a.ShopCelsius, b.ShopCelsius), Between(a.CentreCelsius, b.CentreCelsius), Between(a.HottestCelsius, b.HottestCelsius),
            Between(a.TopCelsius, b.TopCelsius), Between(a.CentreConversion, b.CentreConversion), Between(a.LeastConversion, b.LeastConversion));
    }
}
