namespace Boardwright.Drying;

/// <summary>Where a stack stands, as far as it bears on the air between its layers.</summary>
/// <remarks>Values are common practice, settings of the yard. Stickers, foundation and spacing are taken to be sound.</remarks>
/// <param name="Name">For a person.</param>
/// <param name="SurfaceMetresPerSecond">Surface coefficient at 20 C, basic specific gravity 0.55 and an open wind of 3 m/s, m/s.</param>
/// <param name="Covered">A roof or pile cover keeps rain off; without one the surface is wetted on damp days.</param>
/// <param name="Fan">A yard fan runs above 4 C and speeds drying by a fifth.</param>
public sealed record StackPlace(string Name, double SurfaceMetresPerSecond, bool Covered, bool Fan)
{
    /// <summary>Open yard under a pile cover, the case the published air-drying periods are fitted with.</summary>
    public static StackPlace Row { get; } = new("row, covered", 6e-8, true, false);

    /// <summary>Roofed shed with open sides: less wind.</summary>
    public static StackPlace Shed { get; } = new("shed", 4.8e-8, true, false);

    /// <summary>Open yard without a cover.</summary>
    public static StackPlace OpenRow { get; } = new("row, uncovered", 6e-8, false, false);
}
