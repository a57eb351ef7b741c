using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Sawing.Tests.Grading;

public sealed class CuttingSearchTests
{
    private const long Step = 1000;

    private static readonly CuttingSize[] Sizes =
    [
        new(0L, (1 * Step, 1 * Step)), new(0L, (1 * Step, 2 * Step)), new(0L, (2 * Step, 2 * Step)), new(0L, (2 * Step, 2 * Step), (1 * Step, 3 * Step)), new(0L, (2 * Step, 3 * Step), (1 * Step, 4 * Step)),
    ];

    private static readonly Gen<FaceBox[]> Defects = Gen.Select(Gen.Int[0, 6], Gen.Int[1, 2], Gen.Int[0, 4], Gen.Int[1, 2])
        .Select((x, length, y, width) => new FaceBox(x * Step, (x + length) * Step, y * Step, (y + width) * Step)).Array[0, 4];

    [Fact]
    public void Search_takes_what_trying_every_set_takes() => Gen.Select(Gen.Int[3, 7], Gen.Int[2, 5], Defects, Gen.Int[0, Sizes.Length - 1], Gen.Int[1, 3]).Always(
        (columns, rows, defects, size, count) => Agrees(columns, rows, defects, Sizes[size], count, Step), draws: 2000);

    [Fact]
    public void Search_takes_what_trying_every_set_of_four_takes() => Gen.Select(Defects, Gen.Int[1, Sizes.Length - 1]).Always(
        (defects, size) => Agrees(6, 4, defects, Sizes[size], 4, Step), draws: 60);

    // Nothing better lies between the lines of the grid.
    [Fact]
    public void Half_steps_find_no_more() => Gen.Select(Defects, Gen.Int[1, Sizes.Length - 1], Gen.Int[1, 2]).Always(
        (defects, size, count) => Agrees(6, 4, defects, Sizes[size], count, Step / 2), draws: 60);

    // Four cuttings round a knot, like the vanes of a mill: no straight line parts them.
    [Theory, InlineData(false), InlineData(true)]
    public void Four_cuttings_round_a_knot_are_found(bool mirrored)
    {
        FaceBox[] defects = [new(2 * Step, 3 * Step, 2 * Step, 3 * Step)];
        var face = new FaceBox(0, 5 * Step, 0, 5 * Step);
        // A corner of the face is out of reach unless the vanes turn one way.
        FaceBox[] corner = mirrored ? [new(0, 1, 2 * Step, 2 * Step + 1)] : [new(2 * Step, 2 * Step + 1, 0, 1)];

        var found = Found(face, [.. defects, .. corner], new CuttingSize(0L, (2 * Step, 2 * Step)), 4);

        Assert.True(found.Area >= 4 * 6 * Step * Step - 20 * Step, $"{found.Area}");
    }

    [Fact]
    public void Cuttings_are_admitted_clear_and_apart() => Gen.Select(Defects, Gen.Int[0, Sizes.Length - 1], Gen.Int[1, 6]).Always(
        (defects, size, count) =>
        {
            var found = Found(new(0, 8 * Step, 0, 6 * Step), defects, Sizes[size], count);

            Assert.True(found.Cuttings.Count <= count);
            Assert.Equal(found.Area, found.Cuttings.Sum(cutting => cutting.Area));
            Assert.All(found.Cuttings, cutting => Assert.True(Sizes[size].Admits(cutting.Width, cutting.Length) && !defects.Any(cutting.Overlaps)));
            Assert.All(found.Cuttings, one => Assert.Equal(1, found.Cuttings.Count(one.Overlaps)));
        },
        draws: 300);

    private static void Agrees(int columns, int rows, FaceBox[] defects, CuttingSize size, int count, long step)
    {
        var face = new FaceBox(0, columns * Step, 0, rows * Step);

        Assert.Equal(PlainCuttings.Best(face, defects, size, count, step), Found(face, defects, size, count).Area);
    }

    private static CuttingSet Found(FaceBox face, FaceBox[] defects, CuttingSize size, int count)
    {
        var effort = new SearchEffort(long.MaxValue);
        return new CuttingSearch(face, new FaceObstacles(defects.Select(defect => defect.Within(face)).Where(box => box.Length > 0 && box.Width > 0), size, effort), size, effort).Best(face, count);
    }
}
