using Boardwright.Quantities;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Insects die at a core of 56 °C held for 30 minutes. Only what was measured may be claimed; an official mark needs an accredited scheme.</summary>
/// <remarks>Wood Handbook, FPL-GTR-282, insect kill (P).</remarks>
public static class HeatTreatmentRule
{
    private static readonly Temperature Core = Temperature.FromCelsius(56.0);
    private static readonly Elapsed Held = Elapsed.FromMinutes(30.0);

    /// <summary>Whether a record meets it.</summary>
    public static bool IsMet(Treatment treatment)
    {
        ArgumentNullException.ThrowIfNull(treatment);
        return treatment.Core >= Core && treatment.Held >= Held;
    }
}
