using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>Whether wood is dry enough to be cast in.</summary>
/// <remarks>
/// The wood shrinks, the bar of resin beside it does not: wood above the equilibrium of the room it will stand in pulls away or
/// cups. Sources disagree on the number (8 to 12 % in several guides, 6 to 8 % in others); 6 to 8 % is the equilibrium of a
/// heated room and is the target here; up to 12 % is shown as what the other guides allow.
/// </remarks>
/// <source id="casting-guides-wood-moisture" locator="8 to 12 % and 6 to 8 %"/>
/// <method page="docs/methods/resin-volume.md"/>
/// <param name="IsTooWet">Above what any guide allows.</param>
/// <param name="IsInTarget">6 to 8.5 %, the equilibrium of a heated room.</param>
/// <param name="Advice">In words.</param>
public sealed record WoodForPour(bool IsTooWet, bool IsInTarget, string Advice)
{
    /// <summary>Judges a moisture content.</summary>
    public static WoodForPour Of(MoistureContent moisture) => moisture.Percent switch
    {
        > 12.0 => new(true, false, $"{moisture.Percent:0.0} % is too wet for an indoor table: dry it to 6 to 8 % first"),
        > 8.5 => new(false, false, $"{moisture.Percent:0.0} %: some guides allow up to 12 %, but indoors it will still shrink; 6 to 8 % is better"),
        >= 6.0 => new(false, true, $"{moisture.Percent:0.0} % suits a heated room"),
        _ => new(false, false, $"{moisture.Percent:0.0} % is drier than a heated room: let it take up water, or it will swell against the resin"),
    };
}
