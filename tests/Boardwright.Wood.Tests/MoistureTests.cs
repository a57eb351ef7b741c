using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Wood.Tests;

public sealed class MoistureTests
{
    [Fact]
    public void A_sample_is_at_its_average_when_its_sections_are_cut() => Gen.Select(Gen.Double[20.0, 90.0], Gen.Double[20.0, 90.0], Gen.Double[500.0, 5000.0]).Always(
        (first, second, sample) =>
        {
            var cut = Expect.Done(SampleBoard.Cut(Masses(100.0 + first, 100.0 + second), Masses(100.0, 100.0), Quantities.Mass.FromGrams(sample)));
            Assert.Equal((first + second) / 2.0, cut.Average.Percent, 1e-9);
            Assert.Equal(cut.Average.Percent, Expect.Done(SampleBoard.Current(cut.CalculatedDry, Quantities.Mass.FromGrams(sample))).Percent, 1e-9);
        },
        draws: 500);

    [Fact]
    public void A_sample_that_lost_wood_keeps_its_moisture() => Gen.Select(Gen.Double[1000.0, 3000.0], Gen.Double[1.0, 2.0], Gen.Double[0.5, 1.0]).Always(
        (dry, wetness, kept) =>
        {
            var calculated = Quantities.Mass.FromGrams(dry);
            var before = calculated * wetness;
            var after = before * kept;
            var rescaled = Expect.Done(SampleBoard.AfterLoss(calculated, before, after));
            Assert.Equal(Expect.Done(SampleBoard.Current(calculated, before)).Percent, Expect.Done(SampleBoard.Current(rescaled, after)).Percent, 1e-8);
        },
        draws: 500);

    [Fact]
    public void An_error_of_the_section_passes_on_in_the_documented_proportion()
    {
        var sample = Quantities.Mass.FromGrams(2486);
        var now = Quantities.Mass.FromGrams(1875);
        double Later(double section) => Expect.Done(SampleBoard.Current(OvenMoisture.DryMass(sample, MoistureContent.FromPercent(section)), now)).Percent;

        Assert.Equal((1.0 + Later(71.4) / 100.0) / 1.714, Later(72.4) - Later(71.4), 1e-9);
    }

    [Theory]
    [InlineData(100.0, 0.0, "dry")]
    [InlineData(90.0, 100.0, "wet")]
    [InlineData(700.0, 100.0, "wet")]
    public void Weights_that_cannot_be_are_refused(double wet, double dry, string what) =>
        Assert.Equal(what, Expect.Refused(OvenMoisture.Of("wet", Quantities.Mass.FromGrams(wet), "dry", Quantities.Mass.FromGrams(dry))).What);

    [Fact]
    public void Sections_without_their_dry_weights_are_refused()
    {
        Assert.Equal("dry", Expect.Refused(SampleBoard.Cut(Masses(120, 130), Masses(80), Quantities.Mass.FromGrams(2000))).What);
        Assert.Equal("dry", Expect.Refused(SampleBoard.Cut([], [], Quantities.Mass.FromGrams(2000))).What);
        Assert.Equal("sample", Expect.Refused(SampleBoard.Cut(Masses(120), Masses(80), default)).What);
    }

    [Fact]
    public void Every_impossible_section_is_named()
    {
        var refused = Assert.IsType<Outcome<SampleBoardCut>.Refused>(SampleBoard.Cut(Masses(70, 130, 60), Masses(80, 80, 80), Quantities.Mass.FromGrams(2000)));

        Assert.Equal(["70 g", "60 g"], refused.Reasons.Select(reason => reason.Given));
    }

    [Fact]
    public void A_sample_that_gained_wood_in_a_fall_is_refused() =>
        Assert.Equal("after-loss", Expect.Refused(SampleBoard.AfterLoss(Quantities.Mass.FromGrams(2800), Quantities.Mass.FromGrams(3200), Quantities.Mass.FromGrams(3300))).What);

    private static Mass[] Masses(params double[] grams) => [.. grams.Select(Quantities.Mass.FromGrams)];
}
