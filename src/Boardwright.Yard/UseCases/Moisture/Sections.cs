using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Moisture of a sample board by the sections cut beside it, and its calculated dry weight.</summary>
public static class MoistureSections
{
    public static Command Command { get; } = Command.Of("moisture", "sections", "Moisture of a sample board by its oven-dried sections, and its calculated dry weight", Run) with
    {
        Options =
        [
            Option.Required("wet", "W,W", "section weights when cut, parted by commas, such as 119.9g,122.5g"),
            Option.Required("dry", "W,W", "the same sections out of the oven, in the same order"),
            Option.Required("sample", "W", "weight of the sample board when the sections were cut, such as 3540g"),
        ],
        Examples = ["moisture sections --wet 119.9g,122.5g --dry 96.3g,98.5g --sample 3540g"],
    };

    public sealed record Answer(IReadOnlyList<double> SectionMcPct, double AverageMcPct, double CalculatedDryWeightG);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var wet = ask.List("wet", Read.Mass);
        var dry = ask.List("dry", Read.Mass);
        var sample = ask.Mass("sample");
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(SampleBoard.Cut(wet, dry, sample)).Then<Answer>(cut =>
                new Answer([.. cut.Sections.Select(section => section.Percent)], cut.Average.Percent, cut.CalculatedDry.Grams));
    }
}
