using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A pin meter reading corrected for the temperature and the species of the wood.</summary>
public static class MoistureMeter
{
    private const string OnePer20F = "one-per-20f";
    private const string PfaffGarrahan = "pfaff-garrahan";

    public static Command Command { get; } = Command.Of("moisture", "meter", "A pin meter reading corrected for the temperature and the species of the wood", Run) with
    {
        Options =
        [
            Option.Required("reading", "MC", "what the meter shows, such as 13.6%"),
            Option.Required("temperature", "T", "temperature of the wood, not of the air, such as 42F"),
            Option.Required("species", "S", "the wood, by common or scientific name"),
            Option.Optional("calibrated-for", "S", "the wood the meter is set to; douglas-fir is known too (default: the wood itself)"),
            Option.Optional("equation", "NAME", $"{OnePer20F} (default, counted from 70F) or {PfaffGarrahan}"),
        ],
        Examples =
        [
            "moisture meter --reading 13.6% --temperature 42F --species \"black cherry\"",
            "moisture meter --reading 12% --temperature 70F --species \"white oak\" --calibrated-for douglas-fir",
            "moisture meter --reading 12% --temperature 0C --species \"sugar maple\" --equation pfaff-garrahan",
        ],
    };

    public sealed record Answer(double TemperatureCorrectedPct, double? CorrectedMcPct, bool Usable, double ErrorPct, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var reading = ask.Moisture("reading");
        var temperature = ask.Temperature("temperature");
        var species = ask.Species("species");
        var setTo = ask.TextOrNull("calibrated-for") is { } text ? ask.Take("--calibrated-for", MeterSetting.Find("--calibrated-for", text))
            : species is null ? null
            : MeterSetting.For(species);
        var rule = ask.Choice("equation", OnePer20F, OnePer20F, PfaffGarrahan) == PfaffGarrahan ? MeterTemperatureRule.PfaffGarrahan : MeterTemperatureRule.OnePerTwentyFahrenheit;
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(MeterReading.Correct(reading, temperature, species!, setTo!, rule)).Then<Answer>(read =>
                new Answer(read.TemperatureCorrected.Percent, read.Corrected?.Percent, read.Usable, read.ErrorPoints, read.Note));
    }
}
