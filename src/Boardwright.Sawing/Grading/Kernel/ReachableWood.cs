namespace Boardwright.Sawing;

/// <summary>The part of a face that an admitted cutting can reach: the union of the cuttings that cannot grow.</summary>
internal sealed class ReachableWood(FaceBox board, FaceObstacles obstacles)
{
    private readonly IReadOnlyList<FaceBox> pieces = BoxUnion.Parts([.. obstacles.Ungrowable(board).Distinct()]);

    /// <summary>Reachable area inside a window.</summary>
    public long Area(FaceBox window)
    {
        var area = 0L;
        foreach (var piece in pieces)
        {
            if (piece.Overlaps(window))
                area += piece.Within(window).Area;
        }

        return area;
    }
}
