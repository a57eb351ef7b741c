using System.Globalization;

namespace Boardwright.Yard.UseCases;

/// <summary>Days in words for a person: the year is said only where it is not this one.</summary>
public static class DayWords
{
    public static string Of(DateOnly day, DateOnly today) =>
        day.ToString(day.Year == today.Year ? "d MMM" : "d MMM yyyy", CultureInfo.InvariantCulture);

    public static string Of(DateTime time, DateOnly today) => Of(time.Day(), today);

    /// <summary>Nothing for no day.</summary>
    public static string Of(DateOnly? day, DateOnly today) => day is { } known ? Of(known, today) : "";

    public static string Of(DateTime? time, DateOnly today) => time is { } known ? Of(known.Day(), today) : "";

    /// <summary>With its day of the week: "Mon 16 Nov", "Tue 2 Feb 2027".</summary>
    public static string Weekday(DateOnly day, DateOnly today) => $"{day.ToString("ddd", CultureInfo.InvariantCulture)} {Of(day, today)}";

    public static string Weekday(DateOnly? day, DateOnly today) => day is { } known ? Weekday(known, today) : "";

    public static string Weekday(DateTime time, DateOnly today) => Weekday(time.Day(), today);

    /// <summary>A band, such as "26 Apr to 20 May 2027"; an end that is not known stays open.</summary>
    public static string Band(DateOnly? early, DateOnly? late, DateOnly today) => (early, late) switch
    {
        ({ } from, { } to) when from == to => Of(from, today),
        ({ } from, { } to) when from.Year == to.Year && from.Month == to.Month => $"{from.Day} to {Of(to, today)}",
        ({ } from, { } to) when from.Year == to.Year => $"{from.ToString("d MMM", CultureInfo.InvariantCulture)} to {Of(to, today)}",
        ({ } from, { } to) => $"{Of(from, today)} to {Of(to, today)}",
        ({ } from, null) => $"not before {Of(from, today)}",
        _ => "not in sight",
    };

    /// <summary>A temperature in whole degrees, its minus a true one; never "minus nought".</summary>
    public static string Celsius(double celsius) => $"{Whole(celsius)} °C";

    /// <summary>A whole number, its minus a true one; never "minus nought".</summary>
    public static string Whole(double number) => (Math.Round(number) + 0.0).ToString("0", CultureInfo.InvariantCulture).Replace('-', '−');

    public static DateOnly Day(this DateTime time) => DateOnly.FromDateTime(time);
}
