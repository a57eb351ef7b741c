namespace Boardwright.Sawing;

/// <summary>Scribner by its table of factors per foot of length, and the Decimal C form of it.</summary>
/// <remarks>
/// <para>Board feet = factor(D, class of length) x L. Diameters of 6 to 11 in have a factor each for logs under 16 ft, 16 to 31 ft and 32 to 40 ft; wider
/// logs have one. Nothing lies between the whole inches: the rule was drawn, not calculated.</para>
/// <para>Decimal C: the same to the nearest ten, written in tens, with printed exceptions of one ten. The exceptions held here are those of the lengths 8 to
/// 16 ft in steps of 2 ft and one of 15 ft; for other odd lengths and for logs over 16 ft the list is not held.</para>
/// </remarks>
/// <source id="usfs-scribner-factors" locator="factor list and Decimal C exceptions"/>
/// <method page="docs/methods/log-scale.md"/>
public static class ScribnerRule
{
    /// <summary>Smallest diameter of the table, inches.</summary>
    public const int DiameterMinIn = 6;

    /// <summary>Largest diameter of the table, inches.</summary>
    public const int DiameterMaxIn = 40;

    /// <summary>Longest log of the table, feet.</summary>
    public const double LengthMaxFt = 40.0;

    // From 6 in: logs under 16 ft for 6 to 11 in, any length from 12 in.
    private static readonly double[] Factors =
    [
        1.160, 1.400, 1.501, 2.084, 3.126, 3.749, 4.900, 6.043, 7.140, 8.880, 10.000, 11.528, 13.290, 14.990, 17.499, 18.990, 20.880, 23.510,
        25.218, 28.677, 31.249, 34.220, 36.376, 38.040, 41.060, 44.376, 45.975, 48.990, 50.000, 54.688, 57.660, 64.319, 66.730, 70.000, 75.240,
    ];

    private static readonly double[] FactorsFrom16Ft = [1.249, 1.608, 1.854, 2.410, 3.542, 4.167];
    private static readonly double[] FactorsFrom32Ft = [1.570, 1.800, 2.200, 2.900, 3.815, 4.499];

    /// <summary>Factor per foot of length.</summary>
    /// <param name="diameterIn">Whole inches, 6 to 40.</param>
    /// <param name="lengthFt">Length of the log, feet; it decides the class for 6 to 11 in.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter outside the table.</exception>
    public static double Factor(int diameterIn, double lengthFt)
    {
        if (diameterIn is < DiameterMinIn or > DiameterMaxIn)
            throw new ArgumentOutOfRangeException(nameof(diameterIn), diameterIn, "Accepted: whole inches, 6 to 40.");

        var index = diameterIn - DiameterMinIn;
        if (index >= FactorsFrom16Ft.Length || lengthFt < 16.0)
            return Factors[index];

        return lengthFt < 32.0 ? FactorsFrom16Ft[index] : FactorsFrom32Ft[index];
    }

    /// <summary>Board feet before rounding.</summary>
    public static double BoardFeet(int diameterIn, double lengthFt) => Factor(diameterIn, lengthFt) * lengthFt;

    /// <summary>The Decimal C figure in board feet: nearest ten, then the printed exception.</summary>
    public static double DecimalC(int diameterIn, double lengthFt) =>
        TradeRounding.NearestHalfUp(BoardFeet(diameterIn, lengthFt), 10.0) + 10.0 * Exception(diameterIn, lengthFt);

    /// <summary>True when the printed exceptions of this length are held, so that the Decimal C figure is the table's.</summary>
    public static bool HoldsExceptions(double lengthFt) =>
        TradeRounding.IsWhole(lengthFt) && lengthFt is > 7.5 and < 16.5 && (int)Math.Round(lengthFt) % 2 == 0;

    // In tens. "28 in x 15 ft" is the one odd length known.
    private static int Exception(int diameterIn, double lengthFt) => !TradeRounding.IsWhole(lengthFt) ? 0 : (diameterIn, (int)Math.Round(lengthFt)) switch
    {
        (9, 10) or (24, 8) or (29, 8) or (38, 8) => 1,
        (10, 12) or (23, 10) or (28, 15) => -1,
        _ => 0,
    };
}
