using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Moisture of a stack as it is taken to be now, and by what: in a kiln by its samples or its condensate, outdoors as is likely this evening, else as last read. List, page, weight and pours read it here.</summary>
/// <param name="Mean">The moisture.</param>
/// <param name="How">"mean of samples", "by condensate", "likely this evening", "read 30 Oct".</param>
public sealed record StackNow(MoistureContent Mean, string How)
{
    /// <summary>The moisture now; null for wood that was never read.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="stack">The stack.</param>
    /// <param name="drying">Its forecast outdoors where it is at hand; null to ask for it.</param>
    public static StackNow? Of(YardState state, Stack stack, StackForecast? drying = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(stack);
        if (stack.Stage == StackStage.InKiln && state.Charges.GetValueOrDefault(stack.Charge ?? "") is { } charge)
        {
            if (charge.SampleMean is { } samples && charge.Samples.Any(sample => (sample.Stack ?? stack.Tag) == stack.Tag))
                return new(samples, "mean of samples");
            if (ChargeVacuum.Of(state, charge) is Outcome<ChargeVacuum>.Done({ ByCondensate: { } caught }))
                return new(caught, "by condensate");
        }
        else if ((drying ?? (StackForecast.Of(state, stack.Tag) as Outcome<StackForecast>.Done)?.Value) is { } known)
        {
            return new(known.Now.P50, "likely this evening");
        }

        return stack.Moisture?.Mean is { } mean ? new(mean, $"read {DayWords.Of(stack.Moisture.At.Day(), state.Today)}") : null;
    }
}
