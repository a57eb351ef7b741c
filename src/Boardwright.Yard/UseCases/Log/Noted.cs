using System.Globalization;
using System.Text.RegularExpressions;
using Boardwright.Quantities;
using LogState = Boardwright.Yard.Book.State.Log;

namespace Boardwright.Yard.UseCases;

/// <summary>Sweep and heart rot as the intake noted them in words: sweep 2 in; heart shake 4 in.</summary>
public static partial class LogNoted
{
    /// <summary>Greatest departure from a straight line; zero where none is noted.</summary>
    public static Length Sweep(LogState log) => Inches(SweepForm().Match(Words(log)));

    /// <summary>Diameter of rot or shake at the heart; zero where none is noted.</summary>
    public static Length HeartRot(LogState log) => Inches(HeartForm().Match(Words(log)));

    private static string Words(LogState log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.Defect ?? "";
    }

    private static Length Inches(Match noted) => noted.Success ? Length.FromInches(double.Parse(noted.Groups[1].Value, CultureInfo.InvariantCulture)) : default;

    [GeneratedRegex(@"sweep (\d+(?:\.\d+)?) in", RegexOptions.CultureInvariant)]
    private static partial Regex SweepForm();

    [GeneratedRegex(@"heart (?:rot|shake) (\d+(?:\.\d+)?) in", RegexOptions.CultureInvariant)]
    private static partial Regex HeartForm();
}
