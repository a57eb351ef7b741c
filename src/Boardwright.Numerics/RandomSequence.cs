namespace Boardwright.Numerics;

/// <summary>A repeatable sequence of random numbers: the same seed gives the same stream on every machine and version.</summary>
/// <remarks>
/// xoshiro256** seeded by SplitMix64 (Blackman and Vigna 2018, public domain), chosen because the platform's own generator
/// does not promise the same stream for ever. Not for secrets. Not safe for use by several threads; give each its own stream.
/// </remarks>
public sealed class RandomSequence
{
    private ulong s0;
    private ulong s1;
    private ulong s2;
    private ulong s3;
    private double? spareNormal;

    /// <summary>A stream for a seed; <paramref name="branch"/> gives independent streams for one seed.</summary>
    public RandomSequence(ulong seed, ulong branch = 0)
    {
        var state = seed ^ (branch * 0xD1342543DE82EF95UL);
        s0 = SplitMix(ref state);
        s1 = SplitMix(ref state);
        s2 = SplitMix(ref state);
        s3 = SplitMix(ref state);
    }

    /// <summary>Uniform in [0, 1), 53 bits.</summary>
    public double NextUniform() => (NextBits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Uniform whole number in [0, bound).</summary>
    public int NextIndex(int bound)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(bound, 1);
        return (int)Math.BigMul(NextBits(), (ulong)bound, out _);
    }

    /// <summary>Standard normal deviate (polar method of Marsaglia).</summary>
    public double NextNormal()
    {
        if (spareNormal is { } spare)
        {
            spareNormal = null;
            return spare;
        }

        while (true)
        {
            var u = 2.0 * NextUniform() - 1.0;
            var v = 2.0 * NextUniform() - 1.0;
            var s = u * u + v * v;
            if (s is > 0.0 and < 1.0)
            {
                var scale = Math.Sqrt(-2.0 * Math.Log(s) / s);
                spareNormal = v * scale;
                return u * scale;
            }
        }
    }

    /// <summary>64 random bits.</summary>
    public ulong NextBits()
    {
        var result = ulong.RotateLeft(s1 * 5, 7) * 9;
        var t = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = ulong.RotateLeft(s3, 45);
        return result;
    }

    private static ulong SplitMix(ref ulong state)
    {
        var z = state += 0x9E3779B97F4A7C15UL;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
