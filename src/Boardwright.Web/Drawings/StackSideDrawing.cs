namespace Boardwright.Web.Drawings;

/// <summary>A stack seen from the side.</summary>
/// <param name="Tag">S-07.</param>
/// <param name="Species">Common name.</param>
/// <param name="CourseLengthsFeet">Length of the boards that show in each course, from the top down.</param>
/// <param name="ThicknessInches">Rough thickness of the boards.</param>
/// <param name="Cover">What keeps the rain off.</param>
public sealed record StackSideDrawing(string Tag, string Species, IReadOnlyList<double> CourseLengthsFeet, double ThicknessInches, StackCover Cover)
{
    public double StickerInches { get; init; } = .75;

    /// <summary>Distance of stickers along the boards.</summary>
    public double StickerSpacingFeet { get; init; } = 2;

    /// <summary>Live-edge slabs or a boule: the bark edge shows.</summary>
    public bool LiveEdge { get; init; }

    /// <summary>Where it stands, such as "shed B".</summary>
    public string? Place { get; init; }

    /// <summary>Course lengths when only the number of boards is on record: courses of a usual width, ends flush.</summary>
    /// <param name="pieces">Boards in the stack.</param>
    /// <param name="lengthFeet">Their usual length.</param>
    /// <param name="piecesPerCourse">Boards side by side; 8 fill a 48 in stack with 6 in boards.</param>
    public static IReadOnlyList<double> Courses(int pieces, double lengthFeet, int piecesPerCourse = 8) =>
        [.. Enumerable.Repeat(lengthFeet, Math.Max(1, (pieces + piecesPerCourse - 1) / piecesPerCourse))];
}
