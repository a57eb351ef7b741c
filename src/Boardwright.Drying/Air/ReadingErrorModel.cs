using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>How far a kind of reading may be off, and how much of that comes again in the next reading of the kind.</summary>
/// <remarks>
/// Standard errors of the method in percent moisture content. A reading of a weight has an error in proportion to 1 + M: an error of the dry weight moves the
/// moisture content by that share of the whole weight. Scatter between the boards read comes on top, over the root of their number; with sample boards it comes
/// again too, as they are the same boards. All figures are common practice but the sources named.
/// </remarks>
/// <param name="Kind">The kind.</param>
/// <param name="MethodPercent">Error of the method at any moisture, percent moisture content.</param>
/// <param name="WetShare">At least this share of the value: of wet wood a meter or an eye tells little.</param>
/// <param name="DryWeightShare">Error of the dry weight it is worked out with, share of it.</param>
/// <param name="SharedShare">Part of the method's variance that comes again in every reading of the kind on the stack, 0 to 1.</param>
/// <param name="SameBoards">True when the boards read are the same every time.</param>
/// <source id="james-1988"/>
/// <source id="wengert-drying-oak"/>
/// <method page="docs/methods/air-drying.md"/>
public sealed record ReadingErrorModel(ReadingKind Kind, double MethodPercent, double WetShare, double DryWeightShare, double SharedShare, bool SameBoards)
{
    private static readonly Dictionary<ReadingKind, ReadingErrorModel> Models = new ReadingErrorModel[]
    {
        new(ReadingKind.Stated, 0.0, 0.0, 0.0, 0.0, false),
        new(ReadingKind.PinMeter, 1.0, 0.05, 0.0, 0.7, false),
        new(ReadingKind.SampleBoard, 0.3, 0.0, 0.01, 0.9, true),
        new(ReadingKind.OvenSection, 0.3, 0.0, 0.0, 0.0, false),
        new(ReadingKind.PackWeight, 0.3, 0.0, 0.05, 0.98, false),
        new(ReadingKind.Condensate, 0.5, 0.0, 0.04, 0.9, false),
        new(ReadingKind.Estimate, 1.0, 0.15, 0.0, 0.5, false),
    }.ToDictionary(model => model.Kind);

    /// <summary>The model of a kind.</summary>
    public static ReadingErrorModel Of(ReadingKind kind) => Models[kind];

    /// <summary>A reading of this kind.</summary>
    /// <param name="date">The day.</param>
    /// <param name="mean">Mean moisture content read.</param>
    /// <param name="deviationPercent">Standard deviation between the boards, percent moisture content; 0 where unknown.</param>
    /// <param name="boards">Boards read, at least 1.</param>
    /// <param name="methodPercent">Error of the method where this instrument's own is known, percent moisture content.</param>
    public StackReading Reading(DateOnly date, MoistureContent mean, double deviationPercent = 0.0, int boards = 1, double? methodPercent = null)
    {
        var variance = Math.Pow(ErrorAt(mean.Percent, methodPercent), 2.0);
        var sampling = deviationPercent * deviationPercent / Math.Max(boards, 1);
        return new StackReading(
            date,
            mean,
            Math.Sqrt((1.0 - SharedShare) * variance + (SameBoards ? 0.0 : sampling)),
            Math.Sqrt(SharedShare * variance + (SameBoards ? sampling : 0.0)),
            Kind);
    }

    /// <summary>Error of the method at a moisture, percent moisture content.</summary>
    /// <remarks>An error that grows with the moisture goes by the moisture there is, not by the one read: else what was read too low would be believed more than what was read too high.</remarks>
    /// <param name="percent">Moisture content.</param>
    /// <param name="methodPercent">Error of the method where this instrument's own is known.</param>
    public double ErrorAt(double percent, double? methodPercent = null)
    {
        var method = Math.Max(methodPercent ?? MethodPercent, WetShare * percent);
        var weight = DryWeightShare * (100.0 + percent);
        return Math.Sqrt(method * method + weight * weight);
    }
}
