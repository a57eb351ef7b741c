using Boardwright.Testing;
using Boardwright.Yard.Tests.Plan;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

/// <summary>What a stack gives once dry, and what an order leaves of it, is the same on its page, on the order's, on the sheet and in the plan.</summary>
public sealed class FootageAgreesTests
{
    private static readonly PlanMade Made = DemonstrationPlan.Made();

    [Fact]
    public void Stack_gives_the_same_on_its_page_and_in_the_plan()
    {
        var state = DemonstrationBook.Yard;
        var shown = 0;
        foreach (var (tag, yield) in Made.Yard.Yields)
        {
            if (Sheet(tag).Figures.FirstOrDefault(figure => figure.Label.StartsWith("Net once dry", StringComparison.Ordinal)) is not { } net)
                continue;
            Assert.Equal($"{yield.Likely:#,0}", net.Value);
            shown++;
        }

        Assert.True(shown > 10);
        Assert.Equal("Net once dry at 8 %", Sheet("S-03").Figures.Single(figure => figure.Label.StartsWith("Net", StringComparison.Ordinal)).Label); // its order takes 8 %
        Assert.Equal(state.Stacks["S-02"].Footage.Count, StackYield.Of(state, state.Stacks["S-02"])!.Shrunk, 1e-9); // stays out of kilns
    }

    [Fact]
    public void Order_dressed_leaves_as_much_of_its_stack_on_every_page()
    {
        // 480 bf S2S of S-11: what skips and is trimmed in dressing has to be there too.
        var parts = Sheet("S-11").Parts!;
        var promise = SeasonSheet.Of(DemonstrationBook.Yard, Made).Promises.Single(one => one.Line.Id == "O-302");

        Assert.Equal(480.0, parts.Sold, 1e-6);
        Assert.InRange(parts.Dressing, 5.0, 60.0);
        Assert.Equal(promise.SpareBf!.Value, parts.Spare, 0.5);
        Assert.Equal(Made.Yard.Yields["S-11"].Likely, parts.Sold + parts.Dressing + parts.Spare, 1e-6);
        Assert.Equal(DemonstrationBook.Yard.Stacks["S-11"].Footage.Count, parts.Sold + parts.Dressing + parts.Spare + parts.Falldown + parts.Shrunk, 1e-6);
    }

    [Fact]
    public void Volume_of_a_promise_on_the_sheet_is_that_of_the_plan()
    {
        var tasks = MorningSheet.For(DemonstrationBook.Yard, null, SeasonNow.Of(DemonstrationBook.Yard, Made)).Tasks.Where(task => task.Band is not null).ToList();

        Assert.NotEmpty(tasks);
        foreach (var task in tasks)
        {
            var line = Made.Yard.Lines.Single(line => line.Id == task.At);
            Assert.Equal(Made.Order(line.Id).Quantity.Count, task.Band!.Sold, 1e-6);
            Assert.Equal(line.Asked.Stacks.Sum(tag => Made.Yard.Yields[tag].Likely), task.Band.Likely, 1e-6);
            Assert.Equal(line.Asked.Stacks.Sum(tag => Made.Yard.Yields[tag].Low), task.Band.Low, 1e-6);
        }
    }

    private static StackSheet Sheet(string tag) => Assert.IsType<Quantities.Outcome<StackSheet>.Done>(StackSheet.Of(DemonstrationBook.Yard, tag)).Value;
}
