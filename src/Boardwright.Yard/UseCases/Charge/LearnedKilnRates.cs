using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What the samples of earlier charges tell the next one of its rate: see <see cref="RateHistory"/>.</summary>
/// <remarks>By the setting learn_kiln_rates_since, as <see cref="LearnedRates"/>: charges loaded on and after that day teach. A charge teaches with samples weighed twice or more.</remarks>
/// <method page="docs/methods/kiln-time.md"/>
public static class LearnedKilnRates
{
    internal const string Setting = "learn_kiln_rates_since";

    /// <summary>Every charge whose samples tell a rate, begun with the printed one, and the number of its weighings since the first.</summary>
    internal static IEnumerable<(Charge Charge, RateFound Rate, int Readings)> Shown(YardState state)
    {
        foreach (var charge in state.Charges.Values)
        {
            var weighings = charge.SoundSamples.Sum(sample => sample.Weighings.Count - 1);
            if (weighings > 0 && charge.SampleMean is { } mean && ChargeRun.Slowest(state, charge) is { } wood
                && ChargeRun.Learned(charge, wood, mean, null) is Outcome<KilnRate>.Done(var rate))
                yield return (charge, new RateFound(charge.Tag, wood.Species.CommonName, charge.Kiln, new DryingRate(rate.Factor, rate.Spread)), weighings);
        }
    }

    /// <summary>What a charge is begun with: what charges loaded before it taught; null for the printed rate of its wood.</summary>
    internal static (DryingRate Rate, IReadOnlyList<RateFound> From)? Before(YardState state, Charge charge, Wood.Species species)
    {
        if (LearnedRates.Since(state, Setting) is not { } since)
            return null;

        IReadOnlyList<RateFound> found = [.. Shown(state).Where(shown => shown.Charge.LoadedAt < charge.LoadedAt && shown.Charge.LoadedAt.Day() >= since).Select(shown => shown.Rate)];
        return found.Count > 0 ? (RateHistory.InKiln(species, charge.Kiln, found), found) : null;
    }
}
