using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

/// <summary>What the newest reading did to a stack's forecast, on the small yard (invented).</summary>
public sealed class LastReadingTests
{
    [Fact]
    public void Wetter_reading_makes_the_evening_wetter_than_it_was_thought()
    {
        var effect = Of(Read(48.0), SeasonNow.NotAsked)!;

        Assert.True(effect.With > effect.Without);
        Assert.Contains("48.0 %: ", effect.Words, StringComparison.Ordinal);
        Assert.Contains("% without it; dry enough", effect.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_reading_the_forecast_is_the_one_before_it_was_written()
    {
        var before = Assert.IsType<Outcome<StackForecast>.Done>(StackForecast.Of(SmallBook.Open().State, "S-07")).Value;

        var effect = Of(Read(48.0), SeasonNow.NotAsked)!;

        Assert.Equal(before.Now.P50, effect.Without);
        Assert.Equal(before.ReadyWords, effect.ReadyWithout);
    }

    [Fact]
    public void Reading_of_days_ago_tells_nothing_new()
    {
        var book = SmallBook.Open();
        book.Write("Pell", new MoistureRead("S-07", MoistureMethod.OvenSections, MeanPct: 40.0, SdPct: 1.0, Boards: 12), book.Now.AddDays(-3));

        Assert.Null(Of(book.State, SeasonNow.NotAsked));
    }

    [Fact]
    public void Reading_above_the_range_of_its_meter_moves_no_forecast()
    {
        var book = SmallBook.Open();
        book.Write("Pell", new MoistureRead("S-07", MoistureMethod.Pin, RawPct: 60.0, Boards: 12, SpeciesSetting: "Black cherry", WoodC: 10.0));

        Assert.Null(Of(book.State, SeasonNow.NotAsked));
    }

    [Fact]
    public void Promises_of_its_wood_are_named_and_no_others()
    {
        static PromiseMoved Moved(string order, string stack) => new(order, order, DemonstrationBook.FirstDay, null, null, null, [], [], [], [stack]);
        var season = SeasonNow.NotAsked with { Changes = new(DemonstrationBook.FirstDay, 1, [], [Moved("O-301", "S-07"), Moved("O-302", "S-11")], [], 0m, 0m) };

        Assert.Equal("O-301", Assert.Single(Of(Read(48.0), season)!.Promises).Order);
    }

    private static YardState Read(double percent)
    {
        var book = SmallBook.Open();
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new MoistureRead("S-07", MoistureMethod.OvenSections, MeanPct: percent, SdPct: 1.0, Boards: 12)));
        return book.State;
    }

    private static LastReading? Of(YardState state, SeasonNow season) => LastReading.Of(state, Assert.IsType<Outcome<StackForecast>.Done>(StackForecast.Of(state, "S-07")).Value, season);
}
