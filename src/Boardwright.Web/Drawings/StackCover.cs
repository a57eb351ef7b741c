namespace Boardwright.Web.Drawings;

/// <summary>What stands over a stack.</summary>
public enum StackCover
{
    /// <summary>Nothing.</summary>
    Open,

    /// <summary>A roof on posts, sides open.</summary>
    Shed,

    /// <summary>A sheet-metal pile cover, held down.</summary>
    PileCover,
}
