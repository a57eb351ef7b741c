using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>The question of an air-drying forecast.</summary>
public sealed record AirDryingInput
{
    /// <summary>The wood.</summary>
    public required Species Species { get; init; }

    /// <summary>Rough thickness, 0.25 to 6 in.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Mean moisture content at the start.</summary>
    public required MoistureContent From { get; init; }

    /// <summary>Moisture content asked for, 4 % or more.</summary>
    public required MoistureContent To { get; init; }

    /// <summary>Day the stack stands.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>Weather; its own days are used as they are up to the start, the last reading or the last day observed, and scattered after it.</summary>
    public required WeatherSeries Weather { get; init; }

    /// <summary>Where the stack stands.</summary>
    public StackPlace Place { get; init; } = StackPlace.Row;

    /// <summary>Seasons of past years that stand for what may come after the days known; null for the usual air with chance departures.</summary>
    public PastSeasons? PastSeasons { get; init; }

    /// <summary>How fast stacks like this one have dried before, see <see cref="RateHistory"/>; null for the usual rate of the wood.</summary>
    public DryingRate? Rate { get; init; }

    /// <summary>Later places with the first day in each, in any order; before the first of them the stack stands in <see cref="Place"/>.</summary>
    public IReadOnlyList<StackMove> Moves { get; init; } = [];

    /// <summary>Last day whose weather was observed: it is used as it is up to this day too. Null where none beyond the readings is known.</summary>
    public DateOnly? WeatherKnownThrough { get; init; }

    /// <summary>Day on whose evening the forecast is asked: a board counts as ready by then only if it still is, so that the ready days and the moisture of that evening cannot contradict. Null where nobody stands before the stack.</summary>
    public DateOnly? AskedOn { get; init; }

    /// <summary>Day the curve reaches at least, as far as the look ahead goes. Null ends it some days after the late day.</summary>
    public DateOnly? CurveThrough { get; init; }

    /// <summary>Readings on the stack, in any order; those before the start are not used.</summary>
    public IReadOnlyList<StackReading> Readings { get; init; } = [];

    /// <summary>Days looked ahead, 1 to 1500; a stack not dry by then has no ready day.</summary>
    public int HorizonDays { get; init; } = 730;

    /// <summary>Boards of the ensemble, whole sixteens from 16 to 4096: time and the smoothness of the band grow with them.</summary>
    public int Members { get; init; } = 128;

    /// <summary>Seed of the ensemble: the same seed gives the same forecast.</summary>
    public ulong Seed { get; init; } = 1;
}
