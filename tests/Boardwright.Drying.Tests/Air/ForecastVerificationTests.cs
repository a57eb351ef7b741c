using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Air;

public class ForecastVerificationTests
{
    private static readonly Lazy<IReadOnlyList<SyntheticScore>> Scores = new(() => new SyntheticYard(Maple, ReadingKind.PinMeter, 192, [12, 24, 36], 50, 2026).Scores());

    private static AirDryingInput Maple => new()
    {
        Species = Given.Species("sugar maple"),
        Thickness = Length.FromInches(1.0),
        From = MoistureContent.FromPercent(68.0),
        To = MoistureContent.FromPercent(20.0),
        Start = new DateOnly(2026, 5, 1),
        Weather = Climate.North,
    };

    [Fact]
    public void Eight_outcomes_in_ten_lie_in_the_band_of_eight_in_ten() =>
        Assert.InRange(Scores.Value.Average(score => 0.5 * (score.MoistureInBand + score.ReadyInBand)), 0.75, 0.85);

    [Fact]
    public void Score_of_the_moisture_improves_with_every_reading() =>
        Assert.All(Scores.Value.Zip(Scores.Value.Skip(1)), pair => Assert.True(pair.Second.MoistureCrps < pair.First.MoistureCrps, $"{pair.First} then {pair.Second}"));

    [Fact]
    public void Score_of_the_ready_day_improves_with_every_reading() =>
        Assert.All(Scores.Value.Zip(Scores.Value.Skip(1)), pair => Assert.True(pair.Second.ReadyCrps < pair.First.ReadyCrps, $"{pair.First} then {pair.Second}"));

    [Fact]
    public void Forecast_beats_the_straight_line_and_the_rule_of_a_year_an_inch()
    {
        Assert.All(Scores.Value.Skip(1), score => Assert.True(2.0 * score.ReadyCrps < score.StraightLineDays, $"{score}"));
        Assert.All(Scores.Value, score => Assert.True(20.0 * score.ReadyCrps < score.RuleDays, $"{score}"));
    }
}
