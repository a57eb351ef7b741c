namespace Boardwright.Sawing;

/// <summary>Blade positions that are tried.</summary>
internal static class SawGrid
{
    /// <summary>Coarsest step used unless asked for: 1/64 in.</summary>
    public const double TargetMm = 25.4 / 64.0;

    private const double UnitMm = 0.0005;
    private const double FinestMm = 0.1;

    /// <summary>The coarsest step up to 1/64 in of which every pitch (thickness and kerf) is a whole multiple; 1/64 in where only a needlessly fine one would do.</summary>
    public static double StepFor(IEnumerable<double> pitchesMm)
    {
        var common = 0L;
        foreach (var pitch in pitchesMm)
        {
            var units = Math.Round(pitch / UnitMm);
            if (Math.Abs((units * UnitMm) - pitch) > 1e-6)
                return TargetMm;
            common = Greatest(common, (long)units);
        }

        var exact = common * UnitMm;
        return exact < FinestMm ? TargetMm : exact / Math.Ceiling((exact / TargetMm) - 1e-9);
    }

    /// <summary>Whole steps that cover a distance.</summary>
    public static int Cover(double distanceMm, double stepMm) => Math.Max(1, (int)Math.Ceiling((distanceMm / stepMm) - 1e-6));

    private static long Greatest(long a, long b) => b == 0 ? a : Greatest(b, a % b);
}
