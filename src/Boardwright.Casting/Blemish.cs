namespace Boardwright.Casting;

/// <summary>What is seen in a casting besides soft resin.</summary>
public enum Blemish
{
    /// <summary>Bubbles, foam, pinholes.</summary>
    Bubbles,

    /// <summary>The surface sank.</summary>
    Sinking,
}
