using System.Globalization;
using System.Numerics;
using Boardwright.Drying.Board;
using MathNet.Numerics.OdeSolvers;
using Dense = MathNet.Numerics.LinearAlgebra.Vector<double>;

namespace Boardwright.Bench.Drying;

/// <summary>An hour of many boards, per cell: ours against the machine's limits, the same scheme written plainly, and a general solver of differential equations.</summary>
internal static class BoardStepBench
{
    private const int Cells = 16;
    private const double HalfMetres = 0.0127;
    private const double Diffusion = 5e-11 * 3600.0 / (HalfMetres * HalfMetres);
    private const double Surface = 6e-8 * 3600.0 / HalfMetres;
    private const double Equilibrium = 0.12;
    private const double Start = 0.6;

    public static void Run()
    {
        Console.WriteLine("| boards | arithmetic limit | memory limit | ours | plainly written | general solver | ours over arithmetic | plain over ours | general over ours |");
        Console.WriteLine("| ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (var boards in new[] { 16, 64, 256, 1024, 4096 })
        {
            var plain = new PlainBoards(Math.Min(boards, 64), Cells, Start, Diffusion, Surface, Equilibrium);
            var ns = Slices.NanosecondsPerUnit(
            [
                (MachineLimit.Arithmetic, MachineLimit.CellsPerCall),
                (MachineLimit.Memory, MachineLimit.CellsPerCall),
                (Ours(boards).Step, boards * Cells),
                (plain.Step, plain.Boards * Cells),
                (GeneralHour, Cells),
            ]);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {boards} | {ns[0]:0.00} | {ns[1]:0.00} | {ns[2]:0.00} | {ns[3]:0.0} | {ns[4]:0} | {ns[2] / ns[0]:0.00} | {ns[3] / ns[2]:0.0} | {ns[4] / ns[2]:0} |"));
        }

        Console.WriteLine($"nanoseconds a cell and hour on one core; vectors of {Vector<double>.Count}");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"one day from {Start}: ours {Day(Ours(1)):0.00000}, general {GeneralDay():0.00000}"));
    }

    private static BoardEnsemble Ours(int boards)
    {
        var ensemble = new BoardEnsemble(boards, Cells, BoardPhysics.Law) { Passes = 1 };
        ensemble.SetUniform([.. Enumerable.Range(0, boards).Select(m => Start + 1e-4 * m)]);
        ensemble.DiffusionNumber.Fill(Diffusion);
        ensemble.SurfaceNumber.Fill(Surface);
        ensemble.Equilibrium.Fill(Equilibrium);
        return ensemble;
    }

    private static double Day(BoardEnsemble ensemble)
    {
        for (var hour = 0; hour < 24; hour++)
        {
            ensemble.Step();
        }

        return ensemble.Average[0];
    }

    // Explicit Runge-Kutta of fourth order, as many steps an hour as its stability asks on this grid.
    private const int StepsPerHour = 24;

    private static void GeneralHour() => RungeKutta.FourthOrder(GreenBoard(), 0.0, 1.0, StepsPerHour + 1, Rates);

    private static double GeneralDay()
    {
        var end = RungeKutta.FourthOrder(GreenBoard(), 0.0, 24.0, 24 * StepsPerHour + 1, Rates)[^1];
        return Enumerable.Range(0, Cells).Sum(cell => PlainBoards.Width(cell, Cells) * end[cell]);
    }

    private static Dense GreenBoard() => Dense.Build.Dense(Cells, Start);

    private static Dense Rates(double hours, Dense moisture) => Dense.Build.Dense(PlainBoards.Rates(moisture.AsArray(), Diffusion, Surface, Equilibrium));
}
