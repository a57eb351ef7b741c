using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Room that stickered wood takes in a kiln, counted as board feet of 4/4 boards on 3/4 in stickers.</summary>
/// <remarks>Thicker boards waste less height on stickers: of thickness t on stickers s a kiln takes (t/(t+s)) / (1/(1+s)) times its 4/4 capacity, t and s in inches.</remarks>
public static class KilnRoom
{
    private const double NominalInches = 1.0;

    /// <summary>Stickers that kiln capacities are stated for: common practice.</summary>
    public static Length UsualSticker { get; } = Length.FromInches(0.75);

    /// <summary>How many times its 4/4 capacity a kiln takes of another thickness.</summary>
    /// <param name="thickness">Rough thickness by name.</param>
    public static double Factor(NominalThickness thickness)
    {
        var sticker = UsualSticker.Inches;
        return thickness.Inches / (thickness.Inches + sticker) * (NominalInches + sticker) / NominalInches;
    }

    /// <summary>Footage of 4/4 that would take the same room.</summary>
    /// <param name="footage">As tallied.</param>
    /// <param name="thickness">Rough thickness by name.</param>
    public static BoardFeet AsFourQuarter(BoardFeet footage, NominalThickness thickness) => BoardFeet.From(footage.Count / Factor(thickness));
}
