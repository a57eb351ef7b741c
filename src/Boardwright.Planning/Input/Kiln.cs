using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>A kiln as the planner sees it.</summary>
/// <param name="Id">Its name in the yard.</param>
/// <param name="Kind">Which drying times of a stack hold for it, such as <c>conventional</c> or <c>vacuum</c>.</param>
/// <param name="Capacity">Board feet it takes of 4/4 boards on the usual stickers; thicker wood counts less (see <see cref="Stack.Load"/>).</param>
/// <param name="LongestPiece">Longest board or slab it takes.</param>
/// <param name="Hottest">Highest temperature it can give the wood.</param>
/// <param name="Coil">Most heat its coil draws from the boilers; null for a kiln heated by electricity, which does not load them.</param>
/// <param name="Loading">Crew time to load it; at least one step.</param>
/// <param name="Unloading">Crew time to unload it; at least one step.</param>
/// <param name="WarmUps">The warm-up times a plan may choose from; a slow warm-up asks less heat at once. At least one.</param>
/// <param name="StructureHeat">Heat that warms the empty kiln, trucks and stickers at each start.</param>
/// <param name="Holding">Heat through walls and leaks while warm, one value for each heat period of the plan.</param>
/// <param name="MoneyPerDay">Money for each day a charge stands in it.</param>
/// <param name="MoneyPerKwh">Price of its heat: fuel for a coil, electricity otherwise.</param>
/// <param name="Outages">When it cannot be used at all.</param>
public sealed record Kiln(
    string Id, string Kind, BoardFeet Capacity, Length LongestPiece, Temperature Hottest, Power? Coil, Elapsed Loading, Elapsed Unloading,
    IReadOnlyList<Elapsed> WarmUps, Energy StructureHeat, IReadOnlyList<Power> Holding, decimal MoneyPerDay, decimal MoneyPerKwh,
    IReadOnlyList<StepRange> Outages)
{
    /// <summary>Most weight its floor, truck or rails carry; null where nobody says.</summary>
    public Mass? MostWeight { get; init; }
}
