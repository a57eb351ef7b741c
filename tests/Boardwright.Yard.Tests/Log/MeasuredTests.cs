using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.LogCommands;

public sealed class MeasuredTests
{
    private static readonly YardState State = DemonstrationBook.Yard;
    private static readonly Boardwright.Yard.Book.State.Log Oak = State.Logs.Values.First(log => log is { IsSawn: false, Proven: true });
    private static readonly double Feet = Oak.ActualLength.Feet;

    [Fact]
    public void Radii_of_a_round_log_give_about_its_plan_by_diameters_and_smaller_ones_less()
    {
        var ends = Done(null, null);
        var (small, large) = (Oak.ScalingDiameter.Inches / 2.0, Oak.LargeEnd.Inches / 2.0);

        Assert.InRange(Done(Lines(small, large), null).Plan.Footage.Count / ends.Plan.Footage.Count, 0.85, 1.1);
        Assert.True(Done(Lines(small - 1.0, large - 1.0), null).Plan.ValueMoney < Done(Lines(small, large), null).Plan.ValueMoney);
    }

    [Fact]
    public void Wane_that_is_allowed_never_makes_it_worth_less_and_stands_in_its_prices()
    {
        var waned = Done(null, "30");

        Assert.True(waned.Plan.ValueMoney >= Done(null, null).Plan.ValueMoney);
        Assert.Contains(waned.Prices, row => row.Wane == Share.FromPercent(30));
    }

    [Theory]
    [InlineData("0 8 8 8 8 8 8 8 8", "line 1", "a distance, a colon and the radii")]
    [InlineData("0: 8 8 8", "line 1", "8 or more")]
    [InlineData("0: 8 8 8 8 8 8 8 8\n4: 8 8 8 eight 8 8 8 8", "line 2, radius 4", "")]
    [InlineData("0: 8 8 8 8 8 8 8 80", "line 1, radius 8", "half of the diameter")]
    [InlineData("0: 8 8 8 8 8 8 8 8\n2: 8 8 8 8 8 8 8 8", "line 2, distance", "the large end")]
    public void What_cannot_be_read_is_named_by_line_and_radius(string sections, string what, string accepted)
    {
        var refusal = Assert.IsType<Outcome<LogCutting>.Refused>(LogMeasured.Of(State, Oak, sections, null, null)).Reasons[0];

        Assert.Equal(what, refusal.What);
        Assert.Contains(accepted, refusal.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Places_out_of_order_unequal_counts_and_too_much_wane_are_refused()
    {
        Assert.Equal("cross-sections", What(FormattableString.Invariant($"1: 8 8 8 8 8 8 8 8\n{Feet}: 8 8 8 8 8 8 8 8"), null));
        Assert.Equal("line 2", What(FormattableString.Invariant($"0: 8 8 8 8 8 8 8 8\n{Feet}: 8 8 8 8 8 8 8 8 8"), null));
        Assert.Equal("wane of smaller boards", What(null, "95"));
    }

    private static string What(string? sections, string? small) => Assert.IsType<Outcome<LogCutting>.Refused>(LogMeasured.Of(State, Oak, sections, null, small)).Reasons[0].What;

    private static LogCutting Done(string? sections, string? wane) => Assert.IsType<Outcome<LogCutting>.Done>(LogMeasured.Of(State, Oak, sections, wane, wane)).Value;

    private static string Lines(double small, double large)
    {
        string Radii(double inches) => string.Join(' ', Enumerable.Repeat(inches.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture), 24));
        return FormattableString.Invariant($"0: {Radii(small)}\n{Feet}ft: {Radii(large)}");
    }
}
