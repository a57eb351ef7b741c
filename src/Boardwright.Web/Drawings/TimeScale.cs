using System.Globalization;

namespace Boardwright.Web.Drawings;

/// <summary>Days to positions, with ticks that suit the span: months, weeks from Monday, or days.</summary>
public readonly record struct TimeScale(DateTime From, DateTime To, double Left, double Right)
{
    public double At(DateTime time) => Left + ((time - From) / (To - From) * (Right - Left));

    public double At(DateOnly day) => At(day.ToDateTime(TimeOnly.MinValue));

    /// <summary>Width of one day.</summary>
    public double Day => (Right - Left) / (To - From).TotalDays;

    /// <summary>Tick positions; <c>LabelAt</c> is the middle of a month, or the tick itself.</summary>
    public IEnumerable<(double X, double LabelAt, string Label)> Ticks()
    {
        var days = (To - From).TotalDays;
        return days > 75 ? Months() : Every(Day >= 46 ? 1 : Day >= 25 && days < 21 ? 2 : Day >= 5.4 ? 7 : 14);
    }

    private IEnumerable<(double, double, string)> Months()
    {
        for (var month = new DateTime(From.Year, From.Month, 1); month < To; month = month.AddMonths(1))
        {
            var (from, to) = (month < From ? From : month, month.AddMonths(1) > To ? To : month.AddMonths(1));
            var name = month.ToString("MMM", CultureInfo.InvariantCulture);
            if (At(to) - At(from) >= (Day * 30 < 32 ? 12 : 27))
            {
                yield return (At(from), (At(from) + At(to)) / 2, Day * 30 < 32 ? name[..1] : name);
            }
        }
    }

    private IEnumerable<(double, double, string)> Every(int step)
    {
        var first = From.TimeOfDay == TimeSpan.Zero ? From : From.Date.AddDays(1);
        if (step >= 7)
        {
            first = first.AddDays((8 - (int)first.DayOfWeek) % 7);
        }

        var month = 0;
        for (var day = first; day <= To; day = day.AddDays(step))
        {
            var label = day.ToString(day.Month == month && Day * step < 44 ? "%d" : "d MMM", CultureInfo.InvariantCulture);
            month = day.Month;
            yield return (At(day), At(day), label);
        }
    }
}
