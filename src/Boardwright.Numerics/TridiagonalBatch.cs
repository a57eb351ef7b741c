using System.Numerics;
using System.Runtime.InteropServices;

namespace Boardwright.Numerics;

/// <summary>Solves many tridiagonal systems of equal size at once, the systems side by side so that one vector instruction serves several.</summary>
/// <remarks>
/// <para>Layout: row-major, system fastest: coefficient of row r of system s stands at r * systems + s.</para>
/// <para>Elimination without exchange of rows (Thomas), exact for diagonally dominant systems such as implicit diffusion steps.</para>
/// <para>Shape: kernel; no allocation, no exceptions inside the loop; any number of systems (vector body and scalar tail).</para>
/// </remarks>
public static class TridiagonalBatch
{
    /// <summary>Solves lower[r] x[r-1] + diagonal[r] x[r] + upper[r] x[r+1] = rightSide[r] for every system.</summary>
    /// <param name="systems">Number of systems, at least 1.</param>
    /// <param name="lower">Coefficients of the row before; row 0 is not read.</param>
    /// <param name="diagonal">Coefficients of the row itself.</param>
    /// <param name="upper">Coefficients of the row after; the last row is not read.</param>
    /// <param name="rightSide">Right-hand sides on entry, solutions on return.</param>
    /// <param name="scratch">Working space of the same length; its content on entry does not matter.</param>
    /// <exception cref="ArgumentException">The spans do not hold the same whole number of rows.</exception>
    public static void Solve(
        int systems,
        ReadOnlySpan<double> lower,
        ReadOnlySpan<double> diagonal,
        ReadOnlySpan<double> upper,
        Span<double> rightSide,
        Span<double> scratch)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(systems, 1);
        var length = diagonal.Length;
        if (length == 0 || length % systems != 0 || lower.Length != length || upper.Length != length || rightSide.Length != length || scratch.Length != length)
        {
            throw new ArgumentException($"All spans must hold the same number of rows of {systems} systems; the diagonal holds {length} values.");
        }

        var vectorised = systems - systems % Vector<double>.Count;
        for (var s = 0; s < vectorised; s += Vector<double>.Count)
        {
            SolveLanes(systems, s, lower, diagonal, upper, rightSide, scratch);
        }

        for (var s = vectorised; s < systems; s++)
        {
            SolveOne(systems, s, lower, diagonal, upper, rightSide, scratch);
        }
    }

    private static void SolveLanes(
        int systems, int first, ReadOnlySpan<double> lower, ReadOnlySpan<double> diagonal, ReadOnlySpan<double> upper, Span<double> x, Span<double> ratio)
    {
        var pivot = Vector<double>.One / At(diagonal, first);
        var value = At(x, first) * pivot;
        var factor = At(upper, first) * pivot;
        value.CopyTo(x[first..]);
        factor.CopyTo(ratio[first..]);
        for (var i = first + systems; i < x.Length; i += systems)
        {
            var below = At(lower, i);
            pivot = Vector<double>.One / (At(diagonal, i) - below * factor);
            value = (At(x, i) - below * value) * pivot;
            factor = At(upper, i) * pivot;
            value.CopyTo(x[i..]);
            factor.CopyTo(ratio[i..]);
        }

        for (var i = x.Length - 2 * systems + first; i >= 0; i -= systems)
        {
            value = At(x, i) - At(ratio, i) * value;
            value.CopyTo(x[i..]);
        }
    }

    private static void SolveOne(
        int systems, int first, ReadOnlySpan<double> lower, ReadOnlySpan<double> diagonal, ReadOnlySpan<double> upper, Span<double> x, Span<double> ratio)
    {
        x[first] /= diagonal[first];
        ratio[first] = upper[first] / diagonal[first];
        for (var i = first + systems; i < x.Length; i += systems)
        {
            var pivot = 1.0 / (diagonal[i] - lower[i] * ratio[i - systems]);
            x[i] = (x[i] - lower[i] * x[i - systems]) * pivot;
            ratio[i] = upper[i] * pivot;
        }

        for (var i = x.Length - 2 * systems + first; i >= 0; i -= systems)
        {
            x[i] -= ratio[i] * x[i + systems];
        }
    }

    private static Vector<double> At(ReadOnlySpan<double> values, int index) =>
        MemoryMarshal.Read<Vector<double>>(MemoryMarshal.AsBytes(values[index..]));
}
