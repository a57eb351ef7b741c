using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

/// <summary>What a move, a cover or the kiln would change for a stack.</summary>
public sealed class StackWhatIfTests
{
    private static readonly YardState Yard = DemonstrationBook.Yard;

    [Fact]
    public void Every_choice_is_the_stack_s_own_forecast_from_today_on()
    {
        var what = Of("S-07");
        var own = Assert.IsType<Outcome<StackForecast>.Done>(StackForecast.Of(Yard, "S-07")).Value;

        Assert.Equal("left where it lies", what.Places[0].What);
        Assert.Equal(own.Now, what.Places[0].Forecast.Now);
        Assert.True(what.Places.Count >= 3);
        Assert.All(what.Places, one => Assert.Equal(own.Past.SkipLast(1).Select(day => day.P50), one.Forecast.Past.SkipLast(1).Select(day => day.P50)));
        Assert.False(string.IsNullOrWhiteSpace(what.Says));
    }

    [Fact]
    public void Without_a_cover_no_stack_is_drier_in_the_damp_months()
    {
        foreach (var tag in Yard.Stacks.Values.Where(stack => stack.Stage == StackStage.AirDrying && stack.Proven).Take(4).Select(stack => stack.Tag))
        {
            var what = Of(tag);
            if (what.Places.FirstOrDefault(one => one.What.Contains("cover", StringComparison.Ordinal) && one.What != "moved to an open row, under a cover") is { } open)
                Assert.True(open.Forecast.Ahead[^1].P50.Percent >= what.Places[0].Forecast.Ahead[^1].P50.Percent - 1.5, tag);
        }
    }

    [Fact]
    public void Kilning_wetter_wood_now_takes_more_days_of_kiln_than_waiting()
    {
        var both = Yard.Stacks.Values.Where(stack => stack.Stage == StackStage.AirDrying && stack is { Proven: true, NeverKiln: false }).Select(stack => Of(stack.Tag)).FirstOrDefault(what => what.Kilns.Count == 2);

        Assert.True(both is null || both.Kilns[0].Hours.Likely > both.Kilns[1].Hours.Likely);
        Assert.Empty(Of("S-02").Kilns); // never kiln
        Assert.IsType<Outcome<StackWhatIf>.NoAnswer>(StackWhatIf.Of(Yard, "S-10"));
    }

    private static StackWhatIf Of(string tag) => Assert.IsType<Outcome<StackWhatIf>.Done>(StackWhatIf.Of(DemonstrationBook.Yard, tag)).Value;
}
