using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Morning;

/// <summary>What the sheet says of a thing is what the thing's own page says.</summary>
public sealed class SheetAgreesTests
{
    [Fact]
    public void Log_to_open_is_counted_by_what_its_page_expects_from_the_saw()
    {
        var state = DemonstrationBook.Yard;
        var tasks = MorningSheet.For(state, null).Tasks.Where(task => task.Do.StartsWith("Open L-", StringComparison.Ordinal)).ToList();

        Assert.NotEmpty(tasks);
        foreach (var task in tasks)
        {
            var log = state.Logs[task.Log!];
            var cutting = Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(state, log)).Value;

            Assert.Contains($"the {LogExpected.Of(state, log, cutting).Single().Value} bf likely from the saw", task.Stake.Basis, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(13, "D-42")]
    [InlineData(16, "C-62")]
    public void Charge_without_samples_in_an_air_kiln_is_asked_for_what_its_page_asks_for(int day, string tag)
    {
        var state = DemonstrationBook.On(new(2026, 11, day));
        Assert.DoesNotContain(state.Charges[tag].SoundSamples, _ => true);
        var next = Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(state, tag, state.Today.ToDateTime(TimeOnly.MinValue))).Value.Next;
        var task = MorningSheet.For(state, null).Tasks.First(one => one.Charge == tag);

        Assert.Equal(next.Path, task.Path);
        Assert.EndsWith(next.Do[1..], task.Do, StringComparison.Ordinal);
        Assert.DoesNotContain("no samples can be weighed inside", task.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_is_asked_to_come_for_wood_that_may_fall_short_once_sorted()
    {
        // Out of C-61 on 13 November with 2,990 bf: 3 % likely falls down, 6 % at most, for 2,900.
        var state = DemonstrationBook.On(new(2026, 11, 13));
        var yield = StackYield.Of(state, state.Stacks["S-10"])!;
        var tasks = MorningSheet.For(state, null).Tasks;

        Assert.True(yield.Low < 2900.0 && yield.High > 2900.0);
        Assert.DoesNotContain(tasks, task => task.At == "O-303" && task.Do.StartsWith("Ask", StringComparison.Ordinal));
        Assert.Contains(tasks, task => task.At == "S-10" && task.Do.StartsWith("Sort and count", StringComparison.Ordinal)
            && task.Why.Contains($"{yield.Low:#,0} to {yield.High:#,0} once sorted and trimmed, for 2,900", StringComparison.Ordinal));
        Assert.Contains(tasks, task => task.At == "O-307" && task.Do.StartsWith("Ask", StringComparison.Ordinal));
    }
}
