namespace Boardwright.Yard.Book.Facts;

/// <summary>Mean outside air of a calendar month.</summary>
public sealed record ClimateNormalSet(int Month, double MeanC, double MeanRhPct) : SetupFact;

/// <summary>Outside air of one day, as observed.</summary>
public sealed record WeatherObserved(DateOnly Date, double MeanC, double MeanRhPct, double? WindMeanMS = null, double? MinC = null, double? MaxC = null) : Fact;

/// <summary>Outside air of one day, as forecast; a later forecast of the same day replaces it, an observation ends it.</summary>
public sealed record WeatherForecast(DateOnly Date, double MeanC, double MeanRhPct, double? WindMeanMS = null, double? MinC = null, double? MaxC = null) : Fact;

/// <summary>Working hours of a weekday and who works.</summary>
public sealed record WorkDaySet(DayOfWeek Day, TimeOnly From, TimeOnly To, double Hours, IReadOnlyList<string> People) : SetupFact;

/// <summary>A day off for everybody, from an hour on when one is given.</summary>
public sealed record DayClosed(DateOnly Day, string Why, TimeOnly? From = null) : Fact;

/// <summary>Someone is not to be had on a day.</summary>
public sealed record PersonAway(string Person, DateOnly Day, string Why) : Fact;
