using Boardwright.Documents.Logs;
using Boardwright.Quantities;

namespace Boardwright.Documents.Tests;

/// <summary>Log L-012 of the demonstration yard opened for quartersawn 5/4; the pattern is drawn for the test only.</summary>
internal static class LogExamples
{
    private const double Inch = 25.4;
    private const double RadiusIn = 11.0;
    private const double PitchIn = 1.43;
    private const double BoardIn = 1.375;
    private const double HeightIn = 13.0;

    public static CuttingSheetContent Quartered { get; } = new()
    {
        Yard = Examples.Yard,
        Log = "L-012",
        Title = "White oak, quartersawn 5/4",
        Description = "22 in inside bark at the small end, 26 in at the large, 8 ft scale (8 ft 4 in). Tree-service load T-19.",
        Date = new DateOnly(2026, 11, 2),
        Outline = Circle(RadiusIn),
        Kerf = Length.FromInches(0.055),
        Boards = [.. Middle(), .. Outer()],
        Openings = [new("the middle third", 0, Length.FromInches(HeightIn), Cuts(7, HeightIn)), new("the outer thirds, on edge", 90, Length.FromInches(10.2), Cuts(11, 10.2))],
        Metal = MetalScan.Clear,
        MetalNote = "Scanned by Bram, 5 Oct.",
    };

    public static CuttingSheetContent Metal { get; } = Quartered with
    {
        Log = "L-011",
        Title = "Northern red oak, live sawn 4/4",
        Description = "25 in inside bark at the small end, 29 in at the large, 8 ft scale (8 ft 4 in). Tree-service load T-19.",
        Outline = Circle(12.5),
        Boards = [.. Enumerable.Range(0, 19).Select(i => Live(i))],
        Openings = [new("all boards", 0, Length.FromInches(13.1), [.. Enumerable.Range(0, 20).Select(i => new BladeCut(((char)('A' + i)).ToString(), Length.FromInches(13.1 + (1.18 * (10 - i))), i == 0 ? "slab" : $"{i}"))])],
        Metal = MetalScan.Found,
        MetalNote = "3 hits, not dug out; blue-black stain at 5 ft.",
        MetalHits = [new(40, Length.FromFeet(2.5), "stain"), new(90, Length.FromFeet(5), "strong signal"), new(235, Length.FromFeet(5.2), "strong signal")],
    };

    public static CuttingSheetContent Long { get; } = Metal with
    {
        Yard = Examples.LongName,
        Log = Examples.LongName,
        Title = Examples.LongName,
        Description = Examples.LongName,
        MetalNote = Examples.LongName,
        Boards = [.. Metal.Boards.Select(board => board with { Size = Examples.LongName })],
        Openings = [new(Examples.LongName, 30, Length.FromInches(14), [.. Metal.Openings[0].Cuts.Select(cut => cut with { Frees = Examples.LongName })])],
    };

    private static PointMm[] Circle(double radiusIn) =>
        [.. Enumerable.Range(0, 180).Select(i => new PointMm(radiusIn * Inch * Math.Cos(i * Math.PI / 90.0), radiusIn * Inch * Math.Sin(i * Math.PI / 90.0)))];

    private static BladeCut[] Cuts(int count, double middleIn) =>
        [.. Enumerable.Range(0, count).Select(i => new BladeCut(((char)('A' + i)).ToString(), Length.FromInches(middleIn + (PitchIn * (((count - 1) / 2.0) - i))), i == 0 ? "slab" : $"row {i}"))];

    private static SawnBoard Live(int i)
    {
        var bottom = (1.18 * (9 - i)) + 0.055;
        var half = Math.Sqrt(Math.Max(1.0, (12.5 * 12.5) - Math.Pow(Math.Max(Math.Abs(bottom), Math.Abs(bottom + 1.125)), 2)));
        return new(i + 1, -half * Inch, bottom * Inch, 2 * half * Inch, 1.125 * Inch, 0, $"4/4, {2 * half:0.0} in, 8 ft", i is > 2 and < 16);
    }

    private static IEnumerable<SawnBoard> Middle()
    {
        for (var row = 0; row < 6; row++)
        {
            var bottom = PitchIn * (2 - row);
            var half = Math.Sqrt((RadiusIn * RadiusIn) - Math.Pow(Math.Max(Math.Abs(bottom), Math.Abs(bottom + BoardIn)), 2));
            yield return new((2 * row) + 1, -half * Inch, bottom * Inch, (half - 0.72) * Inch, BoardIn * Inch, 0, $"5/4, {half - 0.72:0.0} in, 8 ft", true);
            yield return new((2 * row) + 2, 0.72 * Inch, bottom * Inch, (half - 0.72) * Inch, BoardIn * Inch, 0, $"5/4, {half - 0.72:0.0} in, 8 ft", true);
        }
    }

    private static IEnumerable<SawnBoard> Outer()
    {
        for (var i = 0; i < 20; i++)
        {
            var left = PitchIn * ((i % 10) - 5);
            var top = Math.Sqrt((RadiusIn * RadiusIn) - Math.Pow(Math.Max(Math.Abs(left), Math.Abs(left + BoardIn)), 2));
            var width = top - 4.3;
            yield return new(13 + i, left * Inch, (i < 10 ? 4.3 : -top) * Inch, BoardIn * Inch, width * Inch, 1, $"5/4, {width:0.0} in, 8 ft", i % 10 is > 1 and < 8);
        }
    }
}
