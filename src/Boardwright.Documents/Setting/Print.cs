using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Documents.Setting;

/// <summary>How numbers, days and sizes are written on paper.</summary>
internal static class Print
{
    private const int RuleParts = 32;

    public static string Number(double value, int decimals = 0)
    {
        var text = Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("N" + decimals, CultureInfo.InvariantCulture);
        return text.Replace("-", "−", StringComparison.Ordinal);
    }

    /// <summary>As short as the value allows, at most the given decimals: 7.25, 5.5, 8.</summary>
    public static string Short(double value, int decimals) => value.ToString("#,0." + new string('#', decimals), CultureInfo.InvariantCulture);

    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    public static string ShortDay(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);

    public static string Moment(DateTime moment) => moment.ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    public static string Percent(MoistureContent moisture) => Number(moisture.Percent, 1) + " %";

    /// <summary>Range of moisture, one number when both ends print alike.</summary>
    public static string Range(MoistureContent low, MoistureContent high) =>
        Number(low.Percent, 1) == Number(high.Percent, 1) ? Percent(low) : $"{Number(low.Percent, 1)} to {Percent(high)}";

    /// <summary>Inches as read off a rule: whole inches and the nearest thirty-second, in lowest terms.</summary>
    public static string OnTheRule(Length length)
    {
        var parts = (long)Math.Round(length.Inches * RuleParts, MidpointRounding.AwayFromZero);
        var (whole, rest, of) = (parts / RuleParts, parts % RuleParts, RuleParts);
        while (rest > 0 && rest % 2 == 0)
            (rest, of) = (rest / 2, of / 2);

        return (whole, rest) switch
        {
            (_, 0) => Number(whole),
            (0, _) => $"{rest}/{of}",
            _ => $"{Number(whole)} {rest}/{of}",
        };
    }
}
