using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>Every stack and charge of the season has its sheet, whatever has happened to it.</summary>
public sealed class SeasonSheetTests
{
    [Theory]
    [InlineData(11, 2)]
    [InlineData(11, 6)]
    [InlineData(11, 11)]
    [InlineData(11, 20)]
    [InlineData(12, 4)]
    [InlineData(12, 31)]
    public void Every_stack_and_charge_has_a_sheet(int month, int dayOfMonth)
    {
        var day = new DateOnly(2026, month, dayOfMonth);
        var state = DemonstrationBook.On(day);
        var now = day.ToDateTime(new TimeOnly(9, 0));

        foreach (var tag in state.Stacks.Keys)
            Assert.IsType<Outcome<StackSheet>.Done>(StackSheet.Of(state, tag));
        foreach (var tag in state.Charges.Keys)
            Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(state, tag, now));
        Assert.IsType<Outcome<StackList>.Done>(StackList.Of(state));
        Assert.Equal(state.Kilns.Count, ChargeList.Of(state, now).Kilns.Count);
    }

    [Fact]
    public void Red_oak_comes_near_its_end_as_the_days_go_by()
    {
        // Each later forecast of the same charge is surer than the one before it.
        var widths = new List<double>();
        foreach (var day in new DateOnly[] { new(2026, 11, 2), new(2026, 11, 5), new(2026, 11, 8) })
        {
            var state = DemonstrationBook.On(day);
            if (!state.Charges["C-61"].IsRunning || ChargeRun.Of(state, state.Charges["C-61"], day.ToDateTime(new TimeOnly(9, 0))) is not Outcome<ChargeRun>.Done({ Forecast: Outcome<KilnForecast>.Done(var forecast) }))
                break;
            widths.Add(forecast.HoursP90 - forecast.HoursP10);
        }

        Assert.True(widths.Count >= 2);
        Assert.Equal(widths.OrderDescending(), widths);
    }
}
