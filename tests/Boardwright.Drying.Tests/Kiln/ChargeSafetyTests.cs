using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Kiln;

/// <summary>Steps held against the printed safe rates (Conners, FOR-128, table 9 after GTR-118).</summary>
public sealed class ChargeSafetyTests
{
    [Fact]
    public void Listed_schedules_keep_the_safe_rate_of_their_own_wood()
    {
        foreach (var (wood, thickness, from) in new[] { ("northern red oak", "4/4", 75.0), ("white oak", "4/4", 70.0), ("northern red oak", "8/4", 75.0), ("sugar maple", "4/4", 68.0), ("black walnut", "4/4", 81.0), ("white ash", "4/4", 45.0), ("black cherry", "4/4", 58.0) })
        {
            var listed = Given.Done(KilnSchedule.For(Given.Species(wood), Given.Thickness(thickness)));
            Assert.All(Steps(listed, Boards(wood, thickness, from)), step => Assert.True(step.Over.Count == 0, $"{wood}: step {step.Step + 1}"));
        }
    }

    [Fact]
    public void Harder_air_is_over_by_the_share_by_which_it_pulls_harder()
    {
        // Against 110/106 F, the listed start of red oak: p(115)(0.30 - E(115/108)) / p(110)(0.30 - E(110/106)), worked out beside the code from the printed air.
        var steps = Steps(Own((null, 24.0, 110, 106), (null, 36.0, 115, 108), (null, null, 150, 112)), Boards("northern red oak", "4/4", 75.0));
        var (mild, hard) = (Air(110, 106), Air(115, 108));
        var ratio = SaturationPressure.Pascals(hard.DryBulb.Celsius) * (0.30 - hard.Emc!.Value.Fraction) / (SaturationPressure.Pascals(mild.DryBulb.Celsius) * (0.30 - mild.Emc!.Value.Fraction));
        var over = Assert.Single(steps[1].Over);

        Assert.Empty(steps[0].Over);
        Assert.Equal(1.0, over.Share);
        Assert.Equal(3.8, over.SafePercent, 0.4); // of boards 5 % thinner or thicker: 3.8 · 1.05^±1.33
        Assert.InRange(over.Times, ratio, ratio * Math.Pow(1.06, 0.33));
        Assert.True(steps[2].Over[0].Times > over.Times);
    }

    [Fact]
    public void Gentler_air_named_for_a_step_keeps_its_boards()
    {
        var boards = Boards("northern red oak", "4/4", 75.0);
        var own = Own((50.0, null, 115, 106), (40.0, null, 118, 104), (null, null, 120, 100));
        var gentler = Steps(own, boards).Select(step => step.Gentler ?? step.Held).ToList();
        Assert.Contains(Steps(own, boards), step => step.Over.Count > 0);

        // Step after step in its gentler air: what is left are boards that run into the next step while wetter than those that lead.
        var kept = Steps(own with { Steps = gentler }, boards);
        Assert.All(kept, step => Assert.All(step.Over, over => Assert.True(over.Times < 1.12, $"step {step.Step + 1}: {over.Times:0.00}")));
        Assert.All(own.Steps.Zip(gentler), pair => Assert.True(pair.Second.WetBulbFahrenheit >= pair.First.WetBulbFahrenheit || pair.Second.DryBulbFahrenheit < pair.First.DryBulbFahrenheit));
    }

    [Fact]
    public void Mixed_charge_names_the_stack_that_cannot_bear_the_other_s_schedule()
    {
        var maple = Given.Done(KilnSchedule.For(Given.Species("sugar maple"), Given.Thickness("4/4")));
        var first = Steps(maple, Boards("sugar maple", "4/4", 68.0), Boards("northern red oak", "4/4", 68.0))[0];

        Assert.Equal("northern red oak", Assert.Single(first.Over).Name);
        Assert.True(first.Over[0].Times > 1.5);
    }

    [Fact]
    public void Wetter_charge_at_the_same_hour_is_never_less_in_danger()
    {
        var own = Own((null, 96.0, 110, 106), (null, 48.0, 120, 100), (null, null, 150, 112));
        var before = 0.0;
        foreach (var from in new[] { 40.0, 50.0, 60.0, 70.0, 80.0 })
        {
            var share = Steps(own, Boards("northern red oak", "4/4", from)).Skip(1).SelectMany(step => step.Over).Sum(over => over.Share);
            Assert.True(share >= before - 0.02, $"{from}: {share} after {before}");
            before = share;
        }
    }

    [Fact]
    public void Wood_without_a_printed_rate_has_no_answer_and_dry_wood_is_not_guarded()
    {
        Assert.IsType<Outcome<IReadOnlyList<StepSafety>>.NoAnswer>(ChargeSafety.Of([Boards("hackberry", "4/4", 60.0)], Own((null, null, 150, 112))));
        Assert.All(Steps(Own((null, null, 150, 112)), Boards("northern red oak", "4/4", 20.0)), step => Assert.Empty(step.Over));
    }

    private static IReadOnlyList<StepSafety> Steps(KilnSchedule schedule, params SafetyBoards[] boards) => Given.Done(ChargeSafety.Of(boards, schedule));

    private static SafetyBoards Boards(string wood, string thickness, double from) => new(wood, Given.Species(wood), Given.Thickness(thickness), Given.Moisture(from));

    private static AirState Air(double dry, double wet) => Given.Done(AirState.FromWetBulb(Temperature.FromFahrenheit(dry), Temperature.FromFahrenheit(wet), AirState.StandardPressure));

    private static KilnSchedule Own(params (double? Above, double? Hours, double Dry, double Wet)[] rows) =>
        Given.Done(OwnSchedule.Of("ours", [.. rows.Select(row => new OwnStep(SchedulePhase.Dry, row.Above, row.Hours, Temperature.FromFahrenheit(row.Dry), Temperature.FromFahrenheit(row.Wet)))]));
}
