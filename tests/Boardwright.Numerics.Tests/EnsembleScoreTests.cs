namespace Boardwright.Numerics.Tests;

public class EnsembleScoreTests
{
    [Fact]
    public void Single_value_scores_its_absolute_error() => Assert.Equal(3.0, EnsembleScore.Crps([5.0], 8.0), 1e-12);

    [Fact]
    public void Order_of_members_does_not_matter_and_the_double_sum_agrees()
    {
        double[] members = [3.0, -1.0, 4.0, 1.5];
        var pairs = members.SelectMany(one => members.Select(other => Math.Abs(one - other))).Average();

        Assert.Equal(members.Average(one => Math.Abs(one - 2.0)) - 0.5 * pairs, EnsembleScore.Crps(members, 2.0), 1e-12);
    }

    [Fact]
    public void Normal_ensemble_scores_as_the_normal_distribution()
    {
        // Closed form for a standard normal forecast and outcome 0: (sqrt(2) - 1)/sqrt(pi).
        double[] members = [.. Enumerable.Range(0, 4000).Select(i => Distributions.NormalQuantile((i + 0.5) / 4000))];

        Assert.Equal((Math.Sqrt(2.0) - 1.0) / Math.Sqrt(Math.PI), EnsembleScore.Crps(members, 0.0), 1e-3);
    }

    [Fact]
    public void Sharper_forecast_of_the_right_value_scores_less() =>
        Assert.True(EnsembleScore.Crps([-1.0, 0.0, 1.0], 0.0) < EnsembleScore.Crps([-2.0, 0.0, 2.0], 0.0));
}
