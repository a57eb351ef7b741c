using Boardwright.Drying;
using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What the samples of earlier charges tell the next one of its rate: see <see cref="RateHistory"/>.</summary>
/// <remarks>By the setting learn_kiln_rates_since, as <see cref="LearnedRates"/>: charges loaded on and after that day teach. A charge teaches with samples weighed twice or more, a vacuum charge with
/// its condensate and the moisture read in the kiln. A wood or a kiln may have a day of its own, see <see cref="LearnedRates"/>.</remarks>
/// <method page="docs/methods/kiln-time.md"/>
public static class LearnedKilnRates
{
    internal const string Setting = "learn_kiln_rates_since";

    /// <summary>Every charge whose samples or condensate tell a rate, begun with the printed one, the number of readings it took, and the spread of the printed one.</summary>
    internal static IEnumerable<(Charge Charge, RateFound Rate, int Readings, double Usual)> Shown(YardState state)
    {
        foreach (var charge in state.Charges.Values)
        {
            if (Vacuum(state, charge))
            {
                if (ChargeVacuum.Of(state, charge, false) is Outcome<ChargeVacuum>.Done({ Standing: { } standing } run))
                    yield return (charge, new RateFound(charge.Tag, run.Slowest.Species.CommonName, charge.Kiln, standing.Rate), charge.Gauges.Count(gauge => gauge.CondensateL is not null) + run.ReadInside, CondensateFilter.UsualRate(run.Forecast).Spread);
                continue;
            }

            var weighings = charge.SoundSamples.Sum(sample => sample.Weighings.Count - 1);
            if (weighings > 0 && charge.SampleMean is { } mean && ChargeRun.Slowest(state, charge) is { } wood
                && ChargeRun.Learned(charge, wood, mean, null) is Outcome<KilnRate>.Done(var rate))
                yield return (charge, new RateFound(charge.Tag, wood.Species.CommonName, charge.Kiln, new DryingRate(rate.Factor, rate.Spread)), weighings, DryingCoefficients.For(wood.Species).KilnSpread);
        }
    }

    /// <summary>What a charge is begun with: what charges loaded before it taught; null for the printed rate of its wood.</summary>
    internal static (DryingRate Rate, IReadOnlyList<RateFound> From)? Before(YardState state, Charge charge, Wood.Species species) =>
        Found(state, charge, species, false) is { Count: > 0 } found ? (RateHistory.InKiln(species, charge.Kiln, found), found) : null;

    /// <summary>The same of a vacuum charge, by vacuum charges.</summary>
    internal static (DryingRate Rate, IReadOnlyList<RateFound> From)? BeforeVacuum(YardState state, Charge charge, Wood.Species species, VacuumForecast forecast) =>
        Found(state, charge, species, true) is { Count: > 0 } found ? (RateHistory.InVacuum(CondensateFilter.UsualRate(forecast).Spread, species, charge.Kiln, found), found) : null;

    /// <summary>A kiln under vacuum: its charges teach their like only.</summary>
    internal static bool Vacuum(YardState state, Charge charge) => state.Kilns[charge.Kiln].Installed.Type == KilnType.RadioFrequencyVacuum;

    private static List<RateFound> Found(YardState state, Charge charge, Wood.Species species, bool vacuum) => LearnedRates.Since(state, Setting) is not null && LearnedRates.Begins(state, Setting, species.CommonName, charge.Kiln)
        ? [.. Shown(state).Where(shown => shown.Charge.LoadedAt < charge.LoadedAt && LearnedRates.Teaches(state, Setting, shown.Rate.Species, shown.Rate.Place, shown.Charge.LoadedAt.Day()) && Vacuum(state, shown.Charge) == vacuum && RateHistory.Teaches(shown.Usual, shown.Rate.Found)).Select(shown => shown.Rate)]
        : [];
}
