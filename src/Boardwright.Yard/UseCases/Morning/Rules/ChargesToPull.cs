using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Kilns to empty: the day has come, or the wettest sample is at the target.</summary>
internal static class ChargesToPull
{
    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var charge in state.Charges.Values.Where(charge => charge.IsRunning))
        {
            var dry = IsDry(charge);
            if (!dry && !(charge.ExpectedOutOn is { } due && due <= state.Today))
                continue;

            var margin = (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * charge.FootageIn.Count / 1000.0);
            yield return new(charge.Kiln, $"Check whether {charge.Tag} may come out.", dry ? "Even the wettest sample is at the target. A kiln full of dry wood earns nothing." : $"It was expected out on {DayWords.Of(charge.ExpectedOutOn, state.Today)} when it was loaded. Driest, wettest and spread decide, not the day.",
                new("Wood in it", $"{charge.FootageIn.Count:#,0}", "bf", ChargeEnd.OutDay(state, charge) is { } day ? $"out from about {DayWords.Of(day, state.Today)}" : "no day known")
                {
                    Source = $"loaded {charge.LoadedAt:d MMM yyyy}",
                    Inputs = [("wettest sample", charge.Wettest is { } sample ? $"{sample.Moisture.Percent:0.0} %" : "none"), ("target", $"{charge.Target.Percent:0.#} %")],
                },
                new(margin, 1, $"{state.Setting("kiln_day_margin") ?? 0.0:0} for 1,000 bf a day of kiln"), Duties.Kilns, $"/charges/{charge.Tag}", $"See {charge.Tag}")
            { Charge = charge.Tag };
        }
    }

    /// <summary>Even the wettest sample is at the target.</summary>
    internal static bool IsDry(Book.State.Charge charge) => charge.Wettest is { } wettest && wettest.Moisture <= charge.Target;
}
