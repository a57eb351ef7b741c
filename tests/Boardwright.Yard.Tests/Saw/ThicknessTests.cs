using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Saw;

/// <summary>How thick to saw, with the demonstration mill's own readings (invented; X-27).</summary>
public sealed class ThicknessTests
{
    private static readonly YardState Yard = DemonstrationBook.Yard;

    // target 1.0029 in for 13/16 in flatsawn at 7 %, within 0.001.
    [Fact]
    public void Target_is_that_of_the_mills_own_readings()
    {
        var answer = Ask("northern red oak", "4/4", "13/16", "7");

        Assert.Equal(1.0029, answer.Target.Target.Inches, 0.001);
        Assert.Equal(1.0625, answer.Setting.Inches, 1e-9);
        Assert.Contains("12 boards", answer.Figures[0].Inputs.Single(input => input.Name == "measured on").Value, StringComparison.Ordinal);
    }

    // The house sets 1-1/8 in: 2/32 over the next setting, 4 to 6 % of the yield (Wengert: each 1/32 in costs 2 to 3 %).
    [Fact]
    public void The_houses_own_setting_is_named_with_what_it_costs()
    {
        var answer = Ask("northern red oak", "4/4", "13/16", "7");

        Assert.Equal("Set 1‑1/16 in for this, not 1‑1/8.", answer.NextDo);
        Assert.Contains("4 to 6 %", answer.NextWhy, StringComparison.Ordinal);
        Assert.Equal([1.0, 1.0625, 1.125], answer.Choices.Select(choice => choice.Setting.Inches));
    }

    [Fact]
    public void Share_too_thin_is_what_was_accepted_at_the_target_and_falls_with_thickness()
    {
        var answer = Ask("northern red oak", "4/4", "13/16", "7");

        Assert.InRange(answer.Choices[0].ThinShare, 0.05, 0.10);   // 1.000 in lies just under the target of 5 %
        Assert.True(answer.Choices[1].ThinShare < 0.001);
        Assert.Equal(0.0, answer.Choices[0].YieldHighPct);
        Assert.Equal((1.0625 - answer.Target.Target.Inches) * 32.0 * 3.0, answer.Choices[1].YieldHighPct, 1e-6);
    }

    [Fact]
    public void Quartersawn_wants_more_because_its_thickness_shrinks_tangentially() =>
        Assert.True(Ask("northern red oak", "4/4", "13/16", "7", quartersawn: true).Target.Target > Ask("northern red oak", "4/4", "13/16", "7").Target.Target + Length.FromInches(0.02));

    // National Hardwood Lumber Association rules: standard surfaced two sides.
    [Theory]
    [InlineData(4, "13/16in")]
    [InlineData(5, "1-1/16in")]
    [InlineData(6, "1-5/16in")]
    [InlineData(8, "1-3/4in")]
    [InlineData(12, "2-3/4in")]
    public void Standard_surfaced_size_stands_where_none_is_typed(int quarters, string dressed)
    {
        Assert.Equal(dressed, SawThickness.Surfaced(quarters));
        Assert.Equal(Ask("white oak", $"{quarters}/4", dressed, "7").Target.Target, Ask("white oak", $"{quarters}/4", null, null).Target.Target);
    }

    [Fact]
    public void A_mill_without_readings_is_told_so()
    {
        var answer = Assert.IsType<Outcome<SawThickness>.Done>(SawThickness.Of(YardState.Of([], new(2026, 11, 2)), "white ash", "4/4", null, null, false)).Value;

        Assert.Contains("no readings of this mill", answer.Figures[0].Inputs.Single(input => input.Name == "measured on").Value, StringComparison.Ordinal);
        Assert.Null(answer.House);
    }

    [Theory]
    [InlineData("plastic", "4/4", "13/16", "7", "Species")]
    [InlineData("white ash", "thick", "13/16", "7", "Thickness")]
    [InlineData("white ash", "4/4", "1-1/8", "7", "Dressed to")]
    [InlineData("white ash", "10/4", "", "7", "Dressed to")]
    [InlineData("white ash", "4/4", "13/16", "dry", "Moisture when dressed")]
    public void A_wrong_field_is_refused_under_its_name(string species, string thickness, string dressed, string moisture, string what) =>
        Assert.Equal(what, Assert.IsType<Outcome<SawThickness>.Refused>(SawThickness.Of(Yard, species, thickness, dressed, moisture, false)).Reasons[0].What);

    private static SawThickness Ask(string species, string thickness, string? dressed, string? moisture, bool quartersawn = false) =>
        Assert.IsType<Outcome<SawThickness>.Done>(SawThickness.Of(Yard, species, thickness, dressed, moisture, quartersawn)).Value;
}
