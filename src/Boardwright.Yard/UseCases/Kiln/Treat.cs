using Boardwright.Drying.Treatment;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How long a heat treatment takes.</summary>
public static class KilnTreatCommand
{
    public static Command Command { get; } = Command.Of("kiln", "treat", "Time for the core of stickered green wood to be heat-treated", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "species, such as \"sugar maple\""),
            Option.Required("thickness", "L", "actual thickness, such as 2in"),
            Option.Optional("width", "L", "actual width (default: much wider than thick)"),
            Option.Required("initial", "T", "temperature of the wood at the start"),
            Option.Required("core", "T", "temperature the core must reach, such as 133F"),
            Option.Required("medium", "T", "temperature of the air between the layers"),
            Option.Optional("against", "pests|beetles|fungi", "what the wood is heated against: pests by the international rule (default), powderpost beetles, fungi"),
            Option.Optional("wet-bulb-depression", "D", "dryness of that air, 0F (default) to 12F"),
        ],
        Examples = ["kiln treat --species \"sugar maple\" --thickness 2in --width 6in --initial 60F --core 133F --medium 157F", "kiln treat --species \"white ash\" --thickness 2in --initial 60F --core 130F --medium 145F --against beetles"],
    };

    public sealed record Answer(double HeatingMin, double? HoldMin, double? TotalMin, double HeatingUpperMin, string Source, string Mark, string? HoldSource, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var thickness = ask.Length("thickness");
        var width = ask.LengthOrNull("width");
        var initial = ask.Temperature("initial");
        var core = ask.Temperature("core");
        var medium = ask.Temperature("medium");
        var depression = ask.TemperatureDifference("wet-bulb-depression", default(TemperatureDifference));
        var against = ask.Choice("against", "pests", "pests", "beetles", "fungi") switch { "beetles" => HeatAgainst.PowderpostBeetles, "fungi" => HeatAgainst.Fungi, _ => HeatAgainst.Pests };
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(HeatTreatment.For(species!, thickness, width, initial, core, medium, depression, against)).Then<Answer>(treatment => new Answer(
                treatment.Heating.Minutes, treatment.Hold?.Minutes, treatment.Total?.Minutes, treatment.HeatingUpper.Minutes, treatment.Source, treatment.Mark, treatment.HoldSource,
                "an estimate: treatment is proved by probes in the coldest cores, and packaging needs the mark of an accredited body"));
    }
}
