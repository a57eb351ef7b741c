using Boardwright.Yard.Book;

namespace Boardwright.Web.Pages;

/// <summary>The scale a blade height is set by: inches in the mill's own steps, or millimetres.</summary>
/// <param name="StepInches">The mill sets in steps of this.</param>
/// <param name="Metric">Millimetres instead.</param>
public sealed record MillScale(double StepInches, bool Metric)
{
    /// <summary>Of a log that is not scanned clear the face is scanned before the first cut and after every so many (common practice).</summary>
    public const int CutsPerScan = 3;

    private const double UsualStepInches = 1.0 / 16.0;

    /// <summary>The house's (settings <c>mill_step</c> and <c>mill_in_millimetres</c>), or the other where it is asked for.</summary>
    public static MillScale Of(YardState state, string? asked) => new(
        state.Setting("mill_step") is { } set and >= 1.0 / 64.0 and <= 1.0 ? set : UsualStepInches, asked == "mm" || (asked != "in" && state.Setting("mill_in_millimetres") is > 0.0));

    /// <summary>Name of the unit in a sentence.</summary>
    public string Unit => Metric ? "millimetres" : "inches";

    /// <summary>A height as it is set, without its unit.</summary>
    public string Figure(double millimetres) => Metric ? $"{millimetres:0}" : LogPictures.OnTheRule(millimetres / 25.4, StepInches);

    /// <summary>A height as it is set.</summary>
    public string Height(double millimetres) => $"{Figure(millimetres)} {(Metric ? "mm" : "in")}";

    /// <summary>How near that is.</summary>
    public string Nearness => Metric ? ", to the millimetre" : $", to the nearest {LogPictures.OnTheRule(StepInches, StepInches)} in the mill sets; a board is up to half of that off";
}
