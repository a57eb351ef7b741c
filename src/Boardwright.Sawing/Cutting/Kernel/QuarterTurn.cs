namespace Boardwright.Sawing;

/// <summary>The log a quarter turn on from a turn, seen in a lie that is worked out anyway.</summary>
/// <param name="Lie">A lie with the same heights and values.</param>
/// <param name="IsNegated">Left and right in it are the log's heights seen from above down.</param>
/// <param name="TrueTurn">Turn the log is really given, degrees.</param>
/// <param name="IsTrueNegated">The same of that turn.</param>
internal readonly record struct QuarterTurn(LogLie Lie, bool IsNegated, double TrueTurn, bool IsTrueNegated)
{
    /// <summary>Two heights of the log as upright lines of the lie.</summary>
    public FlitchClip Seen(FlitchClip heights) => IsNegated ? heights.TurnedOver : heights;

    /// <summary>The true lie and its upright lines.</summary>
    public (LogLie Lie, FlitchClip Clip) True(CuttingSpace space, FlitchClip heights) => (space.Lie(TrueTurn), IsTrueNegated ? heights.TurnedOver : heights);
}
