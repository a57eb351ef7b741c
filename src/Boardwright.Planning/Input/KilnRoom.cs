using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>Room in a kiln: its capacity is told in 4/4 boards on stickers; thicker wood wastes less height on stickers, so more of it goes in.</summary>
public static class KilnRoom
{
    /// <summary>Board feet of a thickness that take the room of one board foot of 4/4: t/(t + s) over 1/(1 + s), in inches.</summary>
    /// <param name="thickness">Nominal thickness t.</param>
    /// <param name="sticker">Sticker thickness s.</param>
    public static double PerFourQuarter(NominalThickness thickness, Length sticker)
    {
        var inches = thickness.Inches;
        return inches / (inches + sticker.Inches) * (1.0 + sticker.Inches);
    }

    /// <summary>The 4/4 that would take the same room.</summary>
    public static BoardFeet FourQuarter(BoardFeet footage, NominalThickness thickness, Length sticker) =>
        BoardFeet.From(footage.Count / PerFourQuarter(thickness, sticker));
}
