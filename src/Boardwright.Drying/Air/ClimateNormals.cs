using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Twelve monthly means of the outdoor air, joined by straight lines from middle to middle of the months.</summary>
/// <remarks>Stands in for days nobody has observed or forecast. Accepted: -40 to 50 C, 0 to 100 %.</remarks>
public sealed class ClimateNormals
{
    private const int Months = 12;
    private const double DaysPerYear = 365.0;
    private const double MiddleOfJanuary = 15.0;

    private readonly (double Celsius, double HumidityPercent)[] months;

    private ClimateNormals((double Celsius, double HumidityPercent)[] months) => this.months = months;

    /// <summary>From January to December.</summary>
    /// <param name="what">The field, for refusals.</param>
    /// <param name="months">Mean temperature in C and mean relative humidity in percent, twelve of them.</param>
    public static Outcome<ClimateNormals> From(string what, IReadOnlyList<(double Celsius, double HumidityPercent)> months)
    {
        ArgumentNullException.ThrowIfNull(months);
        if (months.Count != Months)
            return new Refusal(what, months.Count.ToString(CultureInfo.InvariantCulture) + " months", "all twelve months");

        return months.Any(month => month.Celsius is not (>= -40.0 and <= 50.0) || month.HumidityPercent is not (>= 0.0 and <= 100.0))
            ? new Refusal(what, "a month outside the range", "-40 to 50 C and 0 to 100 % in every month")
            : new ClimateNormals([.. months]);
    }

    /// <summary>The usual air of a day; the wind is not known.</summary>
    public DailyWeather On(DateOnly date)
    {
        var place = (date.DayOfYear - 1 - MiddleOfJanuary) / DaysPerYear * Months;
        var month = (int)Math.Floor(place);
        var share = place - month;
        var (one, next) = (months[(month + Months) % Months], months[(month + 1 + Months) % Months]);
        return new DailyWeather(date, one.Celsius + share * (next.Celsius - one.Celsius), one.HumidityPercent + share * (next.HumidityPercent - one.HumidityPercent), null);
    }
}
