using System.Numerics;

namespace Boardwright.Bench.Drying;

/// <summary>What the machine can do at best with the operations and the bytes of a cell-step.</summary>
internal static class MachineLimit
{
    public const int CellsPerCall = 1 << 16;

    // Of a vector of cells: counted in the compiled inner loop, the way back, and a sixteenth of the surface.
    private const int Multiplies = 24;
    private const int Adds = 15;
    private const int Divisions = 2;

    private static readonly double[] From = new double[1 << 23];
    private static readonly double[] To = new double[1 << 23];
    private static int place;

    /// <summary>Kept so that the work is not left out.</summary>
    public static Vector<double> Sink { get; private set; }

    /// <summary>The multiplications, additions and divisions of so many cells on registers: nothing loaded, nothing stored, ten chains that do not wait for each other.</summary>
    public static void Arithmetic()
    {
        var vectors = CellsPerCall / Vector<double>.Count;
        var (a, b) = (new Vector<double>(0.999), new Vector<double>(1e-3));
        Vector<double> x0 = a, x1 = a, x2 = a, x3 = a, x4 = a, x5 = a, x6 = a, x7 = a, y0 = b, y1 = b, y2 = b, y3 = b, y4 = b, d0 = a, d1 = a;
        for (var i = 0; i < vectors; i++)
        {
            for (var round = 0; round < Multiplies / 8; round++)
            {
                x0 = Vector.FusedMultiplyAdd(x0, a, b);
                x1 = Vector.FusedMultiplyAdd(x1, a, b);
                x2 = Vector.FusedMultiplyAdd(x2, a, b);
                x3 = Vector.FusedMultiplyAdd(x3, a, b);
                x4 = Vector.FusedMultiplyAdd(x4, a, b);
                x5 = Vector.FusedMultiplyAdd(x5, a, b);
                x6 = Vector.FusedMultiplyAdd(x6, a, b);
                x7 = Vector.FusedMultiplyAdd(x7, a, b);
                y0 += b;
                y1 += b;
                y2 += b;
                y3 += b;
                y4 += b;
            }

            d0 = a / x0;
            d1 = a / x1;
        }

        Sink = x0 + x1 + x2 + x3 + x4 + x5 + x6 + x7 + y0 + y1 + y2 + y3 + y4 + d0 + d1 + new Vector<double>(Adds + Divisions);
    }

    /// <summary>Reads and writes the moisture of so many cells, from and to memory outside the caches.</summary>
    public static void Memory()
    {
        place = (place + CellsPerCall) % From.Length;
        From.AsSpan(place, CellsPerCall).CopyTo(To.AsSpan(place, CellsPerCall));
    }
}
