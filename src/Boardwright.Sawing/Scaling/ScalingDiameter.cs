using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>The scaling diameter from two readings at right angles, to the inch.</summary>
/// <remarks>
/// The convention is part of the contract: on an oval log the shortest reading alone is an inch or more below the mean, and a half inch after averaging moves
/// a 12 ft log of 15.5 in from 108 to 91 bf Doyle.
/// </remarks>
/// <source id="maine-7103" locator="average of two diameters"/>
/// <method page="docs/methods/log-scale.md"/>
public static class ScalingDiameter
{
    /// <summary>How two readings become one.</summary>
    public enum Convention
    {
        /// <summary>Mean of the two readings, each rounded to the inch; a half that is left goes up.</summary>
        MeanHalfUp,

        /// <summary>Mean of the two readings, each rounded to the inch; a half that is left goes down.</summary>
        MeanHalfDown,

        /// <summary>The shorter reading, rounded down to the inch.</summary>
        Shortest,
    }

    /// <summary>Whole inches.</summary>
    public static Length Of(Length first, Length second, Convention convention) => Length.FromInches(convention switch
    {
        Convention.MeanHalfUp => TradeRounding.NearestHalfUp(RoundedMean(first, second)),
        Convention.MeanHalfDown => TradeRounding.IsHalf(RoundedMean(first, second)) ? Math.Floor(RoundedMean(first, second)) : TradeRounding.NearestHalfUp(RoundedMean(first, second)),
        Convention.Shortest => TradeRounding.WholeDown(Math.Min(first.Inches, second.Inches)),
        _ => throw new ArgumentOutOfRangeException(nameof(convention), convention, "Accepted: a convention of the list."),
    });

    private static double RoundedMean(Length first, Length second) =>
        (TradeRounding.NearestHalfUp(first.Inches) + TradeRounding.NearestHalfUp(second.Inches)) / 2.0;
}
