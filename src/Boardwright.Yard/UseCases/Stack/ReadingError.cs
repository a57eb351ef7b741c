using Boardwright.Drying;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How far a moisture reading may be believed, for the forecast.</summary>
/// <remarks>Points of moisture content by method, common practice; a meter says its own. Unusable readings stay in the book and are not used.</remarks>
public static class ReadingError
{
    private const double EstimateShare = 0.15;

    // Points are how far off the method is nine times in ten; the forecast takes a standard error.
    internal const double StandardErrorsInBand = 1.645;

    /// <summary>The reading for the forecast; null when it has no figure or lies outside what its meter can read.</summary>
    public static StackReading? For(MoistureReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading is { Mean: { } mean } && reading.Meter is not { Usable: false }
            ? ReadingErrorModel.Of(Kind(reading.Method)).Reading(reading.At.Day(), mean, reading.SdPct ?? 0.0, reading.Boards ?? 1, reading.Weighed is null ? Points(reading, mean.Percent) / StandardErrorsInBand : null)
            : null;
    }

    /// <summary>How far the method itself may be off, points of moisture content either way, nine times in ten.</summary>
    public static double Points(MoistureReading reading, double meanPercent)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Meter?.ErrorPoints ?? reading.Method switch
        {
            MoistureMethod.OvenSections or MoistureMethod.SampleBoards => 0.5,
            MoistureMethod.AtUnloading => 1.0,
            MoistureMethod.PackWeight => StandardErrorsInBand * ReadingErrorModel.Of(ReadingKind.PackWeight).ErrorAt(meanPercent),
            MoistureMethod.CorePins or MoistureMethod.InKiln or MoistureMethod.Pin => 2.0,
            _ => EstimateShare * meanPercent,
        };
    }

    private static ReadingKind Kind(MoistureMethod method) => method switch
    {
        MoistureMethod.OvenSections => ReadingKind.OvenSection,
        MoistureMethod.SampleBoards => ReadingKind.SampleBoard,
        MoistureMethod.Estimate => ReadingKind.Estimate,
        MoistureMethod.PackWeight => ReadingKind.PackWeight,
        _ => ReadingKind.PinMeter,
    };
}
