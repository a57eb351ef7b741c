using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Thickness the hardwood rule asks of rough and surfaced lumber.</summary>
/// <remarks>Green and air-dried lumber must hold its nominal thickness in the graded area. Standard surfaced sizes are grading standards; much 4/4 is sold thinner.</remarks>
/// <source id="nhla-rules" locator="2023 edition p. 56, as quoted in 2025; table of surfaced sizes"/>
/// <method page="docs/methods/green-target.md"/>
public static class RoughThickness
{
    private static readonly (double NominalIn, double SurfacedIn)[] SurfacedTwoSides =
    [
        (0.375, 0.1875), (0.5, 0.3125), (0.625, 0.4375), (0.75, 0.5625), (1.0, 0.8125), (1.25, 1.0625), (1.5, 1.3125), (1.75, 1.5), (2.0, 1.75), (3.0, 2.75), (3.5, 3.25), (4.0, 3.75),
    ];

    /// <summary>Least thickness of kiln-dried rough lumber: 1/16 in scant from 3/8 to 1-3/4 in, 1/8 in from 2 in up.</summary>
    public static Length KilnDriedMinimum(Length nominal) => nominal - Length.FromInches(nominal.Inches < 2.0 - 1e-9 ? 0.0625 : 0.125);

    /// <summary>Least width of kiln-dried rough lumber for a grade whose least width is given: 1/4 in scant.</summary>
    public static Length KilnDriedMinimumWidth(Length gradeMinimum) => gradeMinimum - Length.FromInches(0.25);

    /// <summary>Standard thickness surfaced on two sides; null for a nominal thickness the table does not list.</summary>
    public static Length? Surfaced(Length nominal)
    {
        foreach (var (nominalIn, surfacedIn) in SurfacedTwoSides)
        {
            if (Math.Abs(nominal.Inches - nominalIn) < 1e-6)
                return Length.FromInches(surfacedIn);
        }

        return null;
    }

    /// <summary>True when a board is miscut: over 1/4 in between its thickest and thinnest.</summary>
    /// <source id="wengert-woodweb-thickness" locator="4/4"/>
    /// <method page="docs/methods/size-control.md"/>
    public static bool IsMiscut(Length thickest, Length thinnest) => thickest.Inches - thinnest.Inches > 0.25 + 1e-9;
}
