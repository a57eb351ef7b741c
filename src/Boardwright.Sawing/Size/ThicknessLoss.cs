using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Money lost in a year by a wrong green size.</summary>
/// <param name="TooThickLow">Yield given away by sawing over the target, at 2 % a thirty-second of an inch.</param>
/// <param name="TooThickHigh">The same at 3 %.</param>
/// <param name="Skipped">Boards that do not plane clean, sold as the lesser.</param>
/// <param name="SkippedFeet">Their footage.</param>
/// <source id="wengert-woodweb-thickness" locator="each extra 1/32 in costs 2 to 3 % of the yield"/>
/// <method page="docs/methods/dressing.md"/>
public sealed record ThicknessLoss(double TooThickLow, double TooThickHigh, double Skipped, BoardFeet SkippedFeet)
{
    private const double LowPerThirtySecond = 0.02;
    private const double HighPerThirtySecond = 0.03;

    /// <summary>The losses of a year.</summary>
    /// <param name="over">Mean green thickness over the target; 0 where it is not.</param>
    /// <param name="cleanUp">Share that planes clean.</param>
    /// <param name="perYear">Footage of a year.</param>
    /// <param name="price">Money per board foot.</param>
    /// <param name="lesser">Money per board foot of what skips.</param>
    public static ThicknessLoss Of(Length over, Share cleanUp, BoardFeet perYear, double price, double lesser)
    {
        var (steps, value) = (over.Inches * 32.0, perYear.Count * price);
        var skipped = BoardFeet.From(perYear.Count * (1.0 - cleanUp.Fraction));
        return new(value * steps * LowPerThirtySecond, value * steps * HighPerThirtySecond, skipped.Count * Math.Max(0.0, price - lesser), skipped);
    }
}
