using Boardwright.Drying.Board;
using Boardwright.Numerics;
using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Air;

/// <summary>How forecasts made with so many readings came out.</summary>
/// <param name="Readings">Readings each forecast had.</param>
/// <param name="MoistureInBand">Share of stacks whose moisture on the day of verification lay in the band of eight in ten.</param>
/// <param name="ReadyInBand">Share of stacks that were ready within theirs.</param>
/// <param name="MoistureCrps">Mean score of the moisture on that day, percent moisture content.</param>
/// <param name="ReadyCrps">Mean score of the ready day, days.</param>
/// <param name="StraightLineDays">Mean absolute error of the ready day by a straight line through the last two of start and readings; null without one.</param>
/// <param name="RuleDays">Mean absolute error of one year per inch.</param>
internal sealed record SyntheticScore(
    int Readings, double MoistureInBand, double ReadyInBand, double MoistureCrps, double ReadyCrps, double? StraightLineDays, double RuleDays);

/// <summary>A yard of stacks whose truth is known to us and hidden from the forecast: other chance, other weather, instruments with errors of their own.</summary>
/// <remarks>Each stack is forecast with a seed of its own, as the yard does by its tag.</remarks>
internal sealed class SyntheticYard
{
    private const int HorizonDays = 400;
    private const double DaysPerInch = 365.0;

    private readonly AirDryingInput stack;
    private readonly ReadingErrorModel model;
    private readonly int[] readingDays;
    private readonly int verifiedOn;
    private readonly List<double[]> moisture = [];
    private readonly List<DailyWeather[]> weather = [];
    private readonly double[] ready;
    private readonly ulong seed;

    /// <summary>Lets the hidden stacks dry.</summary>
    /// <param name="stack">What is known of each stack, and the usual weather.</param>
    /// <param name="kind">How it is read.</param>
    /// <param name="stacks">Number of hidden stacks.</param>
    /// <param name="readingDays">Days after the start on which each is read.</param>
    /// <param name="verifiedOn">Day after the start whose moisture is verified.</param>
    /// <param name="seed">Seed of the truth, not that of the forecasts.</param>
    public SyntheticYard(AirDryingInput stack, ReadingKind kind, int stacks, int[] readingDays, int verifiedOn, ulong seed)
    {
        (this.stack, this.readingDays, this.verifiedOn, this.seed) = (stack, readingDays, verifiedOn, seed);
        model = ReadingErrorModel.Of(kind);
        var truth = new AirDryingRun(stack with { Seed = seed }, stacks, stacks);
        for (var day = 0; day < HorizonDays; day++)
        {
            truth.Advance(day);
            moisture.Add(truth.Averages.ToArray());
            weather.Add(truth.Outdoors.ToArray());
        }

        ready = [.. truth.ReadyDays.ToArray().Select(days => Math.Min(days, HorizonDays))];
    }

    /// <summary>Scores of the forecasts with none, one, two and all readings.</summary>
    public IReadOnlyList<SyntheticScore> Scores() => [.. Enumerable.Range(0, readingDays.Length + 1).Select(Score)];

    private SyntheticScore Score(int count)
    {
        var results = new Result[ready.Length];
        Parallel.For(0, ready.Length, i => results[i] = Forecast(i, count));
        return new SyntheticScore(
            count,
            results.Average(one => one.MoistureInBand ? 1.0 : 0.0),
            results.Average(one => one.ReadyInBand ? 1.0 : 0.0),
            results.Average(one => one.MoistureCrps),
            results.Average(one => one.ReadyCrps),
            count == 0 ? null : results.Average(one => one.StraightLine),
            ready.Average(days => Math.Abs(DaysPerInch * stack.Thickness.Inches - days)));
    }

    private Result Forecast(int i, int count)
    {
        var readings = Readings(i).Take(count).ToList();
        var knownDay = count == 0 ? 0 : readingDays[count - 1];
        var series = ((Outcome<WeatherSeries>.Done)WeatherSeries.From("weather", Enumerable.Range(0, HorizonDays).Select(day =>
            day <= knownDay ? weather[day][i] : stack.Weather.On(stack.Start.AddDays(day))!.Value))).Value;
        var run = new AirDryingRun(stack with { Seed = (ulong)(1 + i), Weather = series, WeatherKnownThrough = stack.Start.AddDays(knownDay), Readings = readings }, stack.Members, AirDrying.Scenarios);
        double[] then = [];
        for (var day = 0; day < HorizonDays && (day <= verifiedOn || run.ReadyDays.IndexOf(double.PositiveInfinity) >= 0); day++)
        {
            run.Advance(day);
            if (day == verifiedOn)
                then = [.. run.Averages.ToArray().Select(fraction => 100.0 * fraction)];
        }

        double[] days = [.. run.ReadyDays.ToArray().Select(one => Math.Min(one, HorizonDays))];
        var truth = 100.0 * moisture[verifiedOn][i];
        return new Result(
            InBand(then, truth), InBand(days, ready[i]), EnsembleScore.Crps(then, truth), EnsembleScore.Crps(days, ready[i]),
            count == 0 ? 0.0 : Math.Abs(StraightLine(readings) - ready[i]));
    }

    // What the instrument has wrong with this stack stays; the rest is new every time.
    private IEnumerable<StackReading> Readings(int i)
    {
        var chance = new RandomSequence(seed, 1000 + (ulong)i);
        var shared = chance.NextNormal();
        foreach (var day in readingDays)
        {
            var truth = 100.0 * moisture[day][i];
            var errors = model.Reading(stack.Start.AddDays(day), MoistureContent.FromPercent(truth));
            var read = truth + shared * errors.SharedErrorPercent + chance.NextNormal() * errors.ErrorPercent;
            yield return model.Reading(stack.Start.AddDays(day), MoistureContent.FromPercent(Math.Max(read, 2.0)));
        }
    }

    private double StraightLine(List<StackReading> readings)
    {
        var (day, percent) = (readings[^1].Date.DayNumber - stack.Start.DayNumber + 1.0, readings[^1].Mean.Percent);
        var (dayBefore, percentBefore) = readings.Count > 1 ? (readings[^2].Date.DayNumber - stack.Start.DayNumber + 1.0, readings[^2].Mean.Percent) : (0.0, stack.From.Percent);
        var perDay = (percentBefore - percent) / (day - dayBefore);
        return perDay > 0.0 ? Math.Clamp(day + (percent - stack.To.Percent) / perDay, 0.0, HorizonDays) : HorizonDays;
    }

    private static bool InBand(double[] members, double outcome)
    {
        double[] sorted = [.. members.Order()];
        return Scatter.Quantile(sorted, 0.1) <= outcome && outcome <= Scatter.Quantile(sorted, 0.9);
    }

    private readonly record struct Result(bool MoistureInBand, bool ReadyInBand, double MoistureCrps, double ReadyCrps, double StraightLine);
}
