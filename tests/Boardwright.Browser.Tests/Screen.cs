namespace Boardwright.Browser.Tests;

/// <summary>A size every page is looked at in.</summary>
public sealed record Screen(int Width, int Height)
{
    public static Screen Phone { get; } = new(360, 740);

    public static Screen Desktop { get; } = new(1280, 800);

    public bool IsPhone => Width < 900;
}

/// <summary>The paper a page is shown on.</summary>
public enum Paper
{
    /// <summary>The usual one.</summary>
    Day,

    /// <summary>The phone asks for dark.</summary>
    Dawn,

    /// <summary>The Sun key was pressed.</summary>
    Noon,
}
