using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Wood of a stack as it is, not as it is named: boards are sawn thicker than their name.</summary>
/// <method page="docs/methods/density.md"/>
internal static class SawnWood
{
    private const double UnreadPercent = 30.0;

    /// <summary>Sawn over named thickness: as written, else the house's green size.</summary>
    public static double Thicker(YardState state, Stack stack) =>
        (stack.SawnThickness ?? Length.FromInches(state.Setting($"house_green_{stack.Thickness.Quarters}_4") ?? stack.Thickness.Inches)) / stack.Thickness.Length;

    /// <summary>Cubic metres of footage of it.</summary>
    public static Volume Volume(YardState state, Stack stack, BoardFeet footage) => Quantities.Volume.FromCubicMetres(footage.NominalVolume.CubicMetres * Thicker(state, stack));

    /// <summary>Weight of footage of it, as last read; at 30 % where nobody read it.</summary>
    public static Mass Weight(YardState state, Stack stack, BoardFeet footage) => Weight(state, stack, footage, stack.Moisture?.Mean ?? MoistureContent.FromPercent(UnreadPercent));

    /// <summary>Weight of footage of it at a moisture.</summary>
    public static Mass Weight(YardState state, Stack stack, BoardFeet footage, MoistureContent moisture) =>
        Mass.FromKilograms(Volume(state, stack, footage).CubicMetres * WoodDensity.At(stack.Species, moisture).KilogramsPerCubicMetre);
}
