using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Casting.Tests;

/// <summary>The eight tables of the demonstration's class (invented), with the answers expected of them.</summary>
internal static class ClassTables
{
    public static IReadOnlyList<ClassTable> All { get; } =
    [
        new("T-1", () => Rectangle(1000, 420), 40, "hackberry", 8.1, 38, [(1000, "150 138 160 171 149"), (1000, "132 145 128 119 140")], 5.91, 6.98, [2.99, 2.55]),
        new("T-2", () => Rectangle(1000, 420), 40, "hackberry", 7.8, 38, [(980, "170 155 148 162 175"), (990, "120 133 141 127 116")], 5.98, 7.07, [3.03, 2.49]),
        new("T-3", () => Rectangle(1100, 450), 40, "American elm", 8.4, 38, [(1100, "182 166 151 173 190"), (1060, "141 150 163 148 137")], 6.69, 7.91, [3.87, 3.31]),
        new("T-4", () => Rectangle(900, 400), 40, "American elm", 8.0, 38, [(860, "262 241 228 250 271")], 6.35, 7.50, [4.42]),
        new("T-5", () => Rectangle(950, 400), 45, "sycamore", 8.3, 40, [(930, "150 166 158 144 152"), (930, "128 117 125 136 131")], 6.62, 7.83, [3.15, 2.59]),
        new("T-6", () => Done(Outline.RegularHexagon("mould", Mm(300))), 40, "sycamore", 7.9, 38, [(560, "118 149 171 152 120"), (540, "96 122 137 119 93")], 3.79, 4.47, [1.73, 1.33]),
        new("T-7", () => Done(Outline.Circle("mould", Mm(560))), 40, "black cherry", 7.6, 36, [(430, "135 168 177 160 129"), (300, "84 101 97 90 78")], 6.39, 7.55, [1.32, 0.53]),
        new("T-8", () => Rectangle(1000, 400), 60, "white ash", 13.8, 57, [(1000, "146 139 152 160 148"), (980, "125 131 122 118 127")], 8.54, 10.09, [3.54, 2.88]),
    ];

    public static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    public static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;

    private static Outline Rectangle(double length, double width) => Done(Outline.Rectangle("mould", Mm(length), Mm(width)));
}

internal sealed record ClassTable(
    string Name, Func<Outline> MakeMould, double DepthMm, string Species, double MoisturePercent, double WoodThicknessMm,
    (double LengthMm, string Widths)[] Wood, double ExpectedLitres, double ExpectedMixedKg, double[] ExpectedHoldDownKg)
{
    public Length Depth => ClassTables.Mm(DepthMm);

    public Outline Mould => MakeMould();

    public IReadOnlyList<WoodPiece> Pieces
    {
        get
        {
            var density = WoodDensity.At(ClassTables.Done(SpeciesTable.Find("species", Species)), MoistureContent.FromPercent(MoisturePercent));
            return [.. Wood.Select((piece, index) => new WoodPiece(
                $"piece {index + 1}",
                ClassTables.Done(Outline.Strip("piece", ClassTables.Mm(piece.LengthMm), [.. piece.Widths.Split(' ').Select(width => ClassTables.Mm(int.Parse(width, System.Globalization.CultureInfo.InvariantCulture)))])),
                ClassTables.Mm(WoodThicknessMm), density))];
        }
    }

    public PourVolume Volume => ClassTables.Done(PourVolume.Around(Mould, Depth, Pieces, ReadingAllowance.Usual));

    public Mix Mix => Casting.Mix.For(ResinTable.Class, Volume.Volume, Share.FromPercent(8.0));
}
