namespace Boardwright.Sawing;

/// <summary>International: sections of 4 ft, each half an inch wider than the one above it.</summary>
/// <remarks>
/// <para>Equation: 0.22 d² - 0.71 d board feet in each section of 4 ft, d = D, D + 0.5, D + 1 ... in (1/8 in kerf, 1/16 in shrinkage);
/// times 0.904762 for a kerf of 1/4 in. Rounded to 5, halves up, never under 5.</para>
/// <para>A length that is no multiple of 4 ft has its part section at the butt, which is straight interpolation between the two whole lengths and
/// reproduces the printed table. A routine of the Forest Service takes it at the top and differs by up to 11.7 bf at 40 in.</para>
/// <para>The closed forms in circulation (0.44 D² - 1.20 D - 0.30 for 8 ft, ...) belong to 1/8 in kerf; under the name of the 1/4 in rule they are 10.5 % high.</para>
/// </remarks>
/// <source id="michigan-290-401" locator="formula and factor"/>
/// <method page="docs/methods/log-scale.md"/>
public static class InternationalRule
{
    /// <summary>Factor of the 1/4 in kerf against the 1/8 in kerf: (1 + 1/16 + 1/8) over (1 + 1/16 + 1/4), which is 19/21.</summary>
    public const double QuarterInchKerf = 0.904762;

    /// <summary>Factor of the 1/8 in kerf.</summary>
    public const double EighthInchKerf = 1.0;

    private const double SectionFt = 4.0;
    private const double TaperInPerSection = 0.5;

    /// <summary>Board feet before rounding.</summary>
    /// <param name="diameterIn">Small-end diameter inside bark, inches.</param>
    /// <param name="lengthFt">Length, feet.</param>
    /// <param name="kerf"><see cref="QuarterInchKerf"/> or <see cref="EighthInchKerf"/>.</param>
    public static double BoardFeet(double diameterIn, double lengthFt, double kerf)
    {
        var total = 0.0;
        var diameter = diameterIn;
        for (var left = lengthFt; left > 0.0; left -= SectionFt)
        {
            total += (0.22 * diameter - 0.71) * diameter * Math.Min(1.0, left / SectionFt);
            diameter += TaperInPerSection;
        }

        return Math.Max(0.0, total * kerf);
    }

    /// <summary>The figure of the table: to the nearest 5, halves up, at least 5.</summary>
    public static double Rounded(double boardFeet) => Math.Max(5.0, TradeRounding.NearestHalfUp(boardFeet, 5.0));
}
