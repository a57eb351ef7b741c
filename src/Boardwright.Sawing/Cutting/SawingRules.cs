using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>What the mill does: kerf, thicknesses, and how boards are edged and trimmed.</summary>
public sealed record SawingRules
{
    /// <summary>Wood the blade turns to dust at each cut. Thin-kerf bands take 0.045 to 0.09 in.</summary>
    public Length Kerf { get; init; } = Length.FromInches(0.055);

    /// <summary>Green thickness of each nominal thickness that may be sawn.</summary>
    public IReadOnlyList<GreenSetting> Settings { get; init; } = GreenSetting.Usual;

    /// <summary>Boards are edged down to a multiple of this.</summary>
    public Length WidthStep { get; init; } = Length.FromInches(0.25);

    /// <summary>Boards are trimmed down to a multiple of this; whole feet are what hardwood is measured in.</summary>
    public Length LengthStep { get; init; } = Length.FromFeet(1.0);

    /// <summary>Distance of the blade positions that are tried; null lets the plan take the coarsest step up to 1/64 in that every thickness with its kerf is a multiple of.</summary>
    public Length? GridStep { get; init; }

    /// <summary>A flitch may be cut across into several boards, one behind the other; without it each flitch is trimmed to one length.</summary>
    public bool CutsAcross { get; init; }

    /// <summary>Wood lost where a flitch is cut across into two boards.</summary>
    public Length TrimKerf { get; init; } = Length.FromMillimetres(6.0);

    /// <summary>Turns tried round a log that is not round and straight, at equal angles.</summary>
    public int TurnCount { get; init; } = 36;

    /// <summary>The only turn tried, clockwise looking at the small end; null for all.</summary>
    public Angle? Turn { get; init; }

    /// <summary>Width of the heart taken out of the middle block when quartersawing.</summary>
    public Length HeartOut { get; init; } = Length.FromInches(1.5);

    /// <summary>Smallest cant; larger ones are tried at whole steps of <see cref="CantStep"/>.</summary>
    public Length CantMin { get; init; } = Length.FromInches(4.0);

    /// <summary>Step of the cant's size.</summary>
    public Length CantStep { get; init; } = Length.FromInches(1.0);

    /// <summary>Step of the place of a cant's lower face, and of the faces of the outer parts when quartersawing. A quarter inch is worth 0.02 % more and takes three times as long (bench/results/sawing.md).</summary>
    public Length FaceStep { get; init; } = Length.FromInches(1.0);

    /// <summary>Everything in the rules that cannot be sawn.</summary>
    internal IEnumerable<Refusal> Wrong()
    {
        if (Kerf.Millimetres is < 0.3 or > 12.0)
            yield return new("kerf", Text(Kerf), "0.3 to 12 mm (0.012 to 0.47 in)");
        if (GridStep is { } grid && (grid.Millimetres is < 0.02 or > 25.4))
            yield return new("grid", Text(grid), "0.02 to 25.4 mm");
        if (WidthStep.Millimetres is < 0.02 or > 150.0)
            yield return new("width_step", Text(WidthStep), "0.02 to 150 mm");
        if (LengthStep.Millimetres is < 50.0 or > 3000.0)
            yield return new("length_step", Text(LengthStep), "50 to 3000 mm");
        if (TurnCount is < 1 or > 360)
            yield return new("turns", TurnCount.ToString(CultureInfo.InvariantCulture), "1 to 360");
        foreach (var setting in Settings.Where(one => one.Green.Millimetres is < 5.0 or > 400.0))
            yield return new($"green thickness of {setting.Nominal}", Text(setting.Green), "5 to 400 mm");
    }

    private static string Text(Length length) => string.Create(CultureInfo.InvariantCulture, $"{length.Millimetres:0.###} mm");
}
