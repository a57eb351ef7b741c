using System.Globalization;
using System.Text.RegularExpressions;
using Boardwright.Quantities;

namespace Boardwright.Yard.Book.State;

/// <summary>Sweep and heart rot as they were seen, else as the intake noted them in words: sweep 2 in; heart shake 4 in.</summary>
public static partial class LogNoted
{
    /// <summary>Greatest departure from a straight line; zero where none is noted.</summary>
    public static Length Sweep(Log log) => Seen(log).SweepMm is { } seen ? Length.FromMillimetres(seen) : Inches(SweepForm().Match(Words(log)));

    /// <summary>Diameter of rot or shake at the heart; zero where none is noted.</summary>
    public static Length HeartRot(Log log) => Seen(log).HeartRotMm is { } seen ? Length.FromMillimetres(seen) : Inches(HeartForm().Match(Words(log)));

    private static Facts.LogSeen Seen(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.Seen;
    }

    private static string Words(Log log) => log.Defect ?? "";

    private static Length Inches(Match noted) => noted.Success ? Length.FromInches(double.Parse(noted.Groups[1].Value, CultureInfo.InvariantCulture)) : default;

    [GeneratedRegex(@"sweep (\d+(?:\.\d+)?) in", RegexOptions.CultureInvariant)]
    private static partial Regex SweepForm();

    [GeneratedRegex(@"heart (?:rot|shake) (\d+(?:\.\d+)?) in", RegexOptions.CultureInvariant)]
    private static partial Regex HeartForm();
}
