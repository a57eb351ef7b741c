namespace Boardwright.Sawing;

/// <summary>A rectangle on a board's face, in whole nanometres: x along the board from its left end, y across from its lower edge.</summary>
/// <remarks>Whole numbers, so that a cutting of exactly 4 in is one: a sixty-fourth of an inch is 396,875 nm. Areas fit: 6 m by 1 m is 6e18 nm².</remarks>
internal readonly record struct FaceBox(long Left, long Right, long Bottom, long Top)
{
    public long Length => Right - Left;

    public long Width => Top - Bottom;

    public long Area => Length * Width;

    public bool Overlaps(FaceBox other) => Left < other.Right && other.Left < Right && Bottom < other.Top && other.Bottom < Top;

    /// <summary>The part inside another box; empty (no positive side) where they do not overlap.</summary>
    public FaceBox Within(FaceBox other) => new(Math.Max(Left, other.Left), Math.Min(Right, other.Right), Math.Max(Bottom, other.Bottom), Math.Min(Top, other.Top));
}
