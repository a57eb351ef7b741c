using Boardwright.Testing;

namespace Boardwright.Drying.Tests.Air;

public class OutdoorEquilibriumTests
{
    public static IEnumerable<object[]> Months => PublishedTable.Theory("outdoor-emc").Where(row => ((PublishedRow)row[0]).Has("hourly_pct"));

    [Theory, MemberData(nameof(Months))]
    public void Wood_in_the_hours_of_a_month_settles_over_the_equilibrium_of_its_mean_air(PublishedRow row) =>
        Assert.InRange(row["hourly_pct"] - OfMeans(row), 0.3, 2.6);

    [Fact]
    public void Year_and_scatter_agree_with_the_published_months()
    {
        var misses = PublishedTable.Rows("outdoor-emc").Select(row => OfMeans(row) - row.ExpectedNumber).ToList();

        Assert.InRange(misses.Average(), -0.5, 0.5);
        Assert.InRange(Math.Sqrt(misses.Average(miss => miss * miss)), 0.0, 1.0);
    }

    private static double OfMeans(PublishedRow row) => 100.0 * new DailyWeather(new DateOnly(2013, 1, 1), row["t_c"], row["rh_pct"], null).EquilibriumFraction;
}
