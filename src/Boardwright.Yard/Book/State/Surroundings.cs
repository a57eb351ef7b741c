using System.Collections.Immutable;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>Outside air of one day, and how it is known.</summary>
public sealed record WeatherDay(DateOnly Date, double MeanC, double MeanRhPct, double? WindMeanMS, double? MinC, double? MaxC, bool Observed);

/// <summary>When people work.</summary>
public sealed record WorkCalendar(
    ImmutableDictionary<DayOfWeek, WorkDaySet> Week, ImmutableSortedDictionary<DateOnly, DayClosed> Closed, ImmutableList<PersonAway> Away)
{
    /// <summary>Working hours of a day; 0 on a day off. A day that closes early counts up to the hour it closes.</summary>
    public double HoursOn(DateOnly day)
    {
        if (!Week.TryGetValue(day.DayOfWeek, out var usual))
            return 0.0;
        if (!Closed.TryGetValue(day, out var closed))
            return usual.Hours;
        return closed.From is { } from ? Math.Clamp((from - usual.From).TotalHours, 0.0, usual.Hours) : 0.0;
    }

    /// <summary>Who works on a day.</summary>
    public IEnumerable<string> PeopleOn(DateOnly day) => HoursOn(day) > 0.0
        ? Week[day.DayOfWeek].People.Where(person => !Away.Any(a => a.Day == day && a.Person == person))
        : [];
}

/// <summary>An editable figure of the house.</summary>
public sealed record HouseSetting(string Name, double Value, string Unit, long Entry);

/// <summary>A telephone call.</summary>
public sealed record Call(long Entry, DateTime At, string By, PhoneCallTaken Fact);

/// <summary>A remark.</summary>
public sealed record Note(long Entry, DateTime At, string By, string Text, string? About);

/// <summary>What is in the planer's shavings bin since it was last emptied.</summary>
public sealed record ShavingsBin(DateTime? EmptiedAt, ImmutableSortedSet<string> Species, double LooseM3);

/// <summary>Thickness readings from the mill.</summary>
public sealed record ThicknessSet(long Entry, DateTime At, ThicknessMeasured Fact);

/// <summary>An entry the book cannot place: what it is about is not there, or not in that condition at that time.</summary>
public sealed record Misfit(long Entry, Boardwright.Quantities.Refusal Why);
