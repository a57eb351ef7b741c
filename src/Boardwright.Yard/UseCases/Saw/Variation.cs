using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How evenly a saw cuts, from thicknesses read on its boards.</summary>
public static class SawVariationCommand
{
    public static Command Command { get; } = Command.Of("saw", "variation", "How evenly a saw cuts, from thicknesses read on its boards", Run) with
    {
        Argument = new("FILE", $"a table with the header {ThicknessFile.Header}, one reading a line"),
        Examples = ["saw variation demo/examples/thickness-readings.csv"],
    };

    public sealed record Answer(
        double MeanMm, double WithinSdMm, double BetweenSdMm, double BetweenComponentMm, double TotalSdMm, int Boards, int Points, double ExpectedSdMm, double MeanIn, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        return ask.Refuses ? ask.Refused<Answer>() : ThicknessFile.Read(ask, text).Then(SawVariation.Of).Then<Answer>(Show);
    }

    private static Outcome<Answer> Show(SawVariation variation) => new Answer(
        variation.Mean.Millimetres, variation.Within.Millimetres, variation.BetweenMeans.Millimetres, variation.BetweenComponent.Millimetres, variation.Total.Millimetres,
        variation.Boards, variation.Points, variation.Expected.Millimetres, variation.Mean.Inches,
        "For saw target: within_sd as --within, between_component as --between. total_sd is the deviation of the readings; expected_sd = sqrt(within² + component²)");
}
