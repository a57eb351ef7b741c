using System.Globalization;
using CsCheck;

namespace Boardwright.Testing;

/// <summary>
/// Property tests on draws that are the same at every run: what passes today passes tomorrow, and what fails can be looked at again.
/// (The library's own sampling fixes the first draw only.)
/// </summary>
public static class FixedDraws
{
    private const uint Stream = 1;
    private const ulong Seed = 20261102;

    /// <summary>Runs <paramref name="check"/> on each of the first <paramref name="draws"/> values of the fixed sequence; a failure names the draw and its value.</summary>
    public static void Always<T>(this Gen<T> gen, Action<T> check, int draws = 100)
    {
        var chance = new PCG(Stream, Seed);
        for (var draw = 1; draw <= draws; draw++)
        {
            var value = gen.Generate(chance, null, out _);
            try
            {
                check(value);
            }
            catch (Exception error)
            {
                throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"Draw {draw} of {draws}, {Check.Print(value)}: {error.Message}"), error);
            }
        }
    }

    /// <summary>Demands that <paramref name="holds"/> is true of each of the first <paramref name="draws"/> values of the fixed sequence; a failure names the draw and its value.</summary>
    public static void Always<T>(this Gen<T> gen, Func<T, bool> holds, int draws = 100) =>
        gen.Always(value => { if (!holds(value)) { throw new InvalidOperationException("does not hold"); } }, draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Action{T}, int)"/>
    public static void Always<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> check, int draws = 100) => gen.Always(drawn => check(drawn.Item1, drawn.Item2), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Func{T, bool}, int)"/>
    public static void Always<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, int draws = 100) => gen.Always(drawn => holds(drawn.Item1, drawn.Item2), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Action{T}, int)"/>
    public static void Always<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> check, int draws = 100) => gen.Always(drawn => check(drawn.Item1, drawn.Item2, drawn.Item3), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Func{T, bool}, int)"/>
    public static void Always<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, int draws = 100) => gen.Always(drawn => holds(drawn.Item1, drawn.Item2, drawn.Item3), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Action{T}, int)"/>
    public static void Always<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> check, int draws = 100) => gen.Always(drawn => check(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Func{T, bool}, int)"/>
    public static void Always<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> holds, int draws = 100) => gen.Always(drawn => holds(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Action{T}, int)"/>
    public static void Always<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> check, int draws = 100) => gen.Always(drawn => check(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4, drawn.Item5), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Func{T, bool}, int)"/>
    public static void Always<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Func<T1, T2, T3, T4, T5, bool> holds, int draws = 100) => gen.Always(drawn => holds(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4, drawn.Item5), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Action{T}, int)"/>
    public static void Always<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Action<T1, T2, T3, T4, T5, T6> check, int draws = 100) => gen.Always(drawn => check(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4, drawn.Item5, drawn.Item6), draws);

    /// <inheritdoc cref="Always{T}(Gen{T}, Func{T, bool}, int)"/>
    public static void Always<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Func<T1, T2, T3, T4, T5, T6, bool> holds, int draws = 100) => gen.Always(drawn => holds(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4, drawn.Item5, drawn.Item6), draws);
}
