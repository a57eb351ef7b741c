using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>How dry rough lumber is fed through the planer to one finished thickness: the opening of each pass.</summary>
/// <param name="Thickest">The first board in a thousand is thicker.</param>
/// <param name="Openings">Distance of the heads pass by pass, the last the finished thickness; none where nothing has to come off.</param>
/// <remarks>
/// The thickest place is taken as mean + 3.09 sqrt(within² + between²). What is above the finish there is taken off in as few equal passes as the most one pass may take allows, both faces together.
/// Sorted by thickness first, thin boards skip the first passes: they would go through untouched.
/// </remarks>
/// <method page="docs/methods/dressing.md"/>
public sealed record FeedPlan(Length Thickest, IReadOnlyList<Length> Openings)
{
    private const double OneInThousand = 3.09;

    /// <summary>The plan.</summary>
    /// <param name="lumber">Dry lumber and its scatter.</param>
    /// <param name="finished">Finished thickness.</param>
    /// <param name="mostPerPass">The most one pass takes off both faces together; above zero.</param>
    public static FeedPlan Of(Dressing lumber, Length finished, Length mostPerPass)
    {
        ArgumentNullException.ThrowIfNull(lumber);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(mostPerPass.Metres);
        var thickest = Length.FromMetres(lumber.Dry.Metres + (OneInThousand * Math.Sqrt((lumber.Within.Metres * lumber.Within.Metres) + (lumber.Between.Metres * lumber.Between.Metres))));
        var off = Math.Max(0.0, thickest.Metres - finished.Metres);
        var passes = (int)Math.Ceiling((off / mostPerPass.Metres) - 1e-9);
        return new(thickest, [.. Enumerable.Range(1, passes).Select(pass => Length.FromMetres(thickest.Metres - (off * pass / passes)))]);
    }
}
