using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>The question of a kiln time.</summary>
public sealed record KilnDryingInput
{
    /// <summary>The wood.</summary>
    public required Species Species { get; init; }

    /// <summary>Rough thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Mean moisture content of the charge now.</summary>
    public required MoistureContent From { get; init; }

    /// <summary>Mean moisture content wanted, 4 % or more.</summary>
    public required MoistureContent To { get; init; }

    /// <summary>The kiln.</summary>
    public KilnEquipment Kiln { get; init; } = KilnEquipment.Conventional;

    /// <summary>Schedule to follow; null for the one listed for the wood and thickness.</summary>
    public KilnSchedule? Schedule { get; init; }

    /// <summary>Which samples lead it through the schedule.</summary>
    public StepRule StepsBy { get; init; } = StepRule.WettestHalf;

    /// <summary>How fast this charge has dried so far against its wood; null for wood of which nothing is known but its name.</summary>
    public KilnRate? Rate { get; init; }

    /// <summary>Seed of the ensemble: the same seed gives the same forecast.</summary>
    public ulong Seed { get; init; } = 1;
}
