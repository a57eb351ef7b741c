using System.Diagnostics.CodeAnalysis;

using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>A stack as the planner sees it: never split, in one charge or in none.</summary>
/// <param name="Id">Its tag.</param>
/// <param name="Family">What must be the same for all wood of a charge.</param>
/// <param name="Thickness">Thickness as sawn.</param>
/// <param name="LongestPiece">Longest board or slab in it.</param>
/// <param name="Volume">Board feet on its tag.</param>
/// <param name="Load">Room it takes in a kiln, as board feet of 4/4.</param>
/// <param name="Yield">Board feet it gives once dry, after shrinkage and falldown.</param>
/// <param name="Moisture">Its mean moisture content now.</param>
/// <param name="Mildness">Numbers of its schedule.</param>
/// <param name="Owner">Whose wood it is.</param>
/// <param name="OwnerShares">The owner agrees to share a charge with other owners' wood.</param>
/// <param name="NeverKiln">It must stay out of every kiln.</param>
/// <param name="MatchedSet">Stacks of one name go together, in one charge or in none; null for none.</param>
/// <param name="AvailableFrom">First day it can be loaded or used.</param>
/// <param name="HeatedTo">It must go through a kiln that reaches at least this; null for no such wish.</param>
/// <param name="DryingTimes">One for each kind of kiln that suits it; other kinds are closed to it.</param>
/// <param name="GainWhenDry">Money its value rises by when it is dried inside the plan.</param>
/// <param name="WaitingMoneyPerDay">Money that each day costs until it is out of a kiln, such as interest; to the plan's end for a stack that is not dried.</param>
[SuppressMessage("Naming", "CA1711", Justification = "A stack of boards, not a collection type.")]
public sealed record Stack(
    string Id, string Family, Length Thickness, Length LongestPiece, BoardFeet Volume, BoardFeet Load, BoardFeet Yield, MoistureContent Moisture,
    ScheduleMildness Mildness, string Owner, bool OwnerShares, bool NeverKiln, string? MatchedSet, DateOnly AvailableFrom, Temperature? HeatedTo,
    IReadOnlyList<DryingTime> DryingTimes, decimal GainWhenDry, decimal WaitingMoneyPerDay)
{
    /// <summary>What it weighs now, water and all: on the safe side for later days, since wood that waits grows lighter.</summary>
    public Mass Weight { get; init; }
}
