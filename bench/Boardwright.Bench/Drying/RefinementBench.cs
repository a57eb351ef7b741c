using System.Globalization;
using Boardwright.Drying.Board;

namespace Boardwright.Bench.Drying;

/// <summary>The table of the method page: days of 1 in sugar maple from 68 to 20 % in steady 18 C and 70 %, by cells, steps and passes.</summary>
internal static class RefinementBench
{
    private const double HalfMetres = 0.0127;
    private const double M2PerS = 68.1e-12;
    private const double SurfaceMetresPerSecond = 6e-8;
    private const double SpecificGravity = 0.56;
    private const double Celsius = 18.0;
    private const double Equilibrium = 0.1296;
    private const double SecondsPerDay = 86400.0;

    public static void Run()
    {
        int[] steps = [2, 8, 24, 96];
        foreach (var passes in new[] { 1, 3 })
        {
            Console.WriteLine($"| cells, passes {passes} | {string.Join(" | ", steps)} |");
            Console.WriteLine("| --- | ---: | ---: | ---: | ---: |");
            foreach (var cells in new[] { 6, 12, 16, 24, 48 })
            {
                Console.WriteLine($"| {cells} | {string.Join(" | ", steps.Select(perDay => Days(cells, perDay, passes).ToString("0.00", CultureInfo.InvariantCulture)))} |");
            }
        }
    }

    private static double Days(int cells, int perDay, int passes)
    {
        var board = new BoardEnsemble(1, cells, BoardPhysics.Law) { Passes = passes };
        board.SetUniform([0.68]);
        var seconds = SecondsPerDay / perDay;
        board.DiffusionNumber[0] = M2PerS * BoardPhysics.DiffusionFactor(Celsius) * seconds / (HalfMetres * HalfMetres);
        board.SurfaceNumber[0] = SurfaceMetresPerSecond * BoardPhysics.SurfaceFactor(Celsius, SpecificGravity) * seconds / HalfMetres;
        board.Equilibrium[0] = Equilibrium;
        for (var step = 0; ; step++)
        {
            var before = board.Average[0];
            board.Step();
            if (board.Average[0] <= 0.20)
                return (step + (before - 0.20) / (before - board.Average[0])) / perDay;
        }
    }
}
