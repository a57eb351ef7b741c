using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>How thick a nominal thickness is sawn green at this mill.</summary>
/// <param name="Nominal">Thickness sold, in quarters of an inch.</param>
/// <param name="Green">Thickness off the saw.</param>
public sealed record GreenSetting(NominalThickness Nominal, Length Green)
{
    /// <summary>Common green settings: an eighth over the nominal thickness.</summary>
    /// <remarks>The trade's usual targets for hardwood; a mill with little sawing variation sets less (docs/methods/green-target.md).</remarks>
    /// <source id="wengert-woodweb-thickness" locator="averages of sawn thickness"/>
    public static IReadOnlyList<GreenSetting> Usual { get; } =
        [.. new[] { 4, 5, 6, 8, 10, 12, 16 }.Select(quarters => new GreenSetting(NominalThickness.FromQuarters(quarters), Length.FromInches((quarters / 4.0) + 0.125)))];
}
