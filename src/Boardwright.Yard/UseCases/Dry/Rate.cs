using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The fastest safe drying of a wood.</summary>
public static class DryRate
{
    public static Command Command { get; } = Command.Of("dry", "rate", "Fastest loss of moisture in a day that does not check the wood", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "species, such as \"northern red oak\""),
            Option.Required("thickness", "L", "rough thickness, such as 6/4"),
        ],
        Examples = ["dry rate --species \"black walnut\" --thickness 6/4"],
    };

    public sealed record Answer(double SafeDailyLossPct, string Source, string Mark);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var thickness = ask.Length("thickness");
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(SafeRate.For(species!, thickness)).Then<Answer>(rate => new Answer(rate.DailyLossPercent, rate.Source, rate.Mark));
    }
}
