using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.Tests.Scenario;

/// <summary>
/// Expected answers of the demonstration yard, X-01 to X-31. Each is asked of the demonstration's own tables through the book, the use cases and the core;
/// beside each stands what is expected, how near, and on what basis. Yard, wood and people are invented (mark I); the formulas carry their own marks.
/// </summary>
internal static class Expected
{
    /// <summary>The yard on 2 November.</summary>
    public static YardState Yard => DemonstrationBook.Yard;

    public static YardState On(int month, int day) => DemonstrationBook.On(new DateOnly(2026, month, day));

    public static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;

    public static MoistureContent Mc(double percent) => MoistureContent.FromPercent(percent);
}
