using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>How long a stack dries in one kind of kiln, and what heat it takes there.</summary>
/// <remarks>
/// The times begin when the warm-up is over. They are given by the day the kiln is loaded, because wood that waits goes on drying in
/// the yard; the last value holds for all later days.
/// </remarks>
/// <param name="KilnKind">The kind of kiln these values hold for.</param>
/// <param name="HalfByDay">By load day: the time that is enough as often as not (p50).</param>
/// <param name="MostByDay">By load day: the time that is enough nine times in ten (p90); never below p50.</param>
/// <param name="WarmUpHeat">Heat that brings this wood and its water to kiln temperature.</param>
/// <param name="Running">Heat drawn while drying on top of the kiln's holding heat.</param>
/// <param name="DryingHeat">Heat of the whole drying after warm-up, on top of the holding heat, for the cost.</param>
public sealed record DryingTime(
    string KilnKind, IReadOnlyList<Elapsed> HalfByDay, IReadOnlyList<Elapsed> MostByDay, Energy WarmUpHeat, Power Running, Energy DryingHeat);
