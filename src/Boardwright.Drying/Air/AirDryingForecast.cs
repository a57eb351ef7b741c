using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>One day of a drying curve: the mean moisture content of the stack, with the band it lies in eight times in ten.</summary>
/// <param name="Date">Evening of this day.</param>
/// <param name="P10">One time in ten it is drier.</param>
/// <param name="P50">As likely drier as wetter.</param>
/// <param name="P90">One time in ten it is wetter.</param>
/// <param name="Emc">What the air outdoors holds wood at: the mean over the hours where they are known, else of the day's mean air.</param>
public readonly record struct DryingDay(DateOnly Date, MoistureContent P10, MoistureContent P50, MoistureContent P90, MoistureContent Emc);

/// <summary>When a stack will be dry, as a band.</summary>
/// <method page="docs/methods/air-drying.md"/>
public sealed record AirDryingForecast
{
    /// <summary>Early day: one time in ten it is ready by then; null when it is not ready within the days looked ahead.</summary>
    public required DateOnly? ReadyP10 { get; init; }

    /// <summary>Likely day.</summary>
    public required DateOnly? ReadyP50 { get; init; }

    /// <summary>Late day: nine times in ten it is ready by then.</summary>
    public required DateOnly? ReadyP90 { get; init; }

    /// <summary>Days from the start to the likely day, with their fraction.</summary>
    public required double? DaysP50 { get; init; }

    /// <summary>Day by day; ends some days after the late day, or where the look ahead ends.</summary>
    public required IReadOnlyList<DryingDay> Curve { get; init; }

    /// <summary>The same days up to the last reading as they look with every reading known, also those that came later; empty without readings.</summary>
    /// <source id="evensen-van-leeuwen-2000"/>
    public required IReadOnlyList<DryingDay> Hindsight { get; init; }

    /// <summary>Fastest loss in one day of the likely curve, percent moisture content.</summary>
    public required double FastestDailyLossPercent { get; init; }

    /// <summary>How fast the stack dries against the usual rate of its wood, as the readings say; what was begun with where there are none.</summary>
    public required DryingRate Rate { get; init; }

    /// <summary>What the coefficient was fitted to.</summary>
    public required string Origin { get; init; }

    /// <summary>How sure the coefficient is: see <see cref="DryingCoefficients.Mark"/>.</summary>
    public required string Mark { get; init; }

    /// <summary>What to know: filled weather, wood without a published period, weather repeated from another year.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}
