using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Casting.Tests;

public sealed class MixTests
{
    public static IEnumerable<object[]> Rows() => PublishedTable.Theory("casting-mix");

    [Theory, MemberData(nameof(Rows))]
    public void Published_mixing_figures_are_reproduced(PublishedRow row) => Assert.InRange(
        row.Quantity switch
        {
            "hardener_per_hundred" => 100.0 * Resin.StoichiometricRatio(row["EEW"], row["AHEW"]),
            "reaction_heat" => ResinFit.HeatJoulesPerKilogram(row["EEW"], row["AHEW"], row["kJ_per_eq"]) / 1000.0,
            "volume_ratio" => VolumeRatio(row),
            "mass_from_volume_ratio" => MassOfB(row),
            "off_ratio_index" => 1.0 + Off(row),
            "prism_volume" => Prism(row),
            _ => double.NaN,
        },
        row.Low, row.High);

    [Fact]
    public void The_table_would_notice_a_one_percent_error() =>
        Assert.All(PublishedTable.Rows("casting-mix"), row => Assert.True(Math.Abs(row.ExpectedNumber) * 0.01 > row.Tolerance));

    [Fact]
    public void Parts_keep_their_ratio_and_fill_the_volume_whatever_the_resin() =>
        Gen.Select(Gen.Double[0.1, 1.2], Gen.Double[900, 1300], Gen.Double[900, 1200], Gen.Double[0.1, 100.0], Gen.Double[0.0, 0.3]).Always((ratio, a, b, litres, waste) =>
        {
            var resin = Of(ratio, a, b);
            var mix = Mix.For(resin, Volume.FromLitres(litres), Share.FromFraction(waste));

            Assert.Equal(ratio, mix.PartB / mix.PartA, 1e-9);
            Assert.Equal(litres * (1.0 + waste), mix.VolumeA.Litres + mix.VolumeB.Litres, 1e-6);
            Assert.Equal(0.0, ClassTables.Done(MixCheck.Of(resin, mix.PartA, mix.PartB)).OffShare, 1e-9);
        });

    [Theory]
    [InlineData(100.0, 38.7, MixVerdict.Good)]
    [InlineData(100.0, 39.5, MixVerdict.Borderline)]
    [InlineData(100.0, 36.5, MixVerdict.Borderline)]
    [InlineData(100.0, 40.1, MixVerdict.Wrong)]
    [InlineData(38.0, 100.0, MixVerdict.Wrong)]
    public void A_weighing_is_judged_by_how_far_it_is_off(double a, double b, MixVerdict expected) =>
        Assert.Equal(expected, ClassTables.Done(MixCheck.Of(ResinTable.Class, Mass.FromKilograms(a), Mass.FromKilograms(b))).Verdict);

    [Fact]
    public void A_missing_weighing_is_refused() =>
        Assert.IsType<Outcome<MixCheck>.Refused>(MixCheck.Of(ResinTable.Class, Mass.FromKilograms(5.0), default));

    private static Resin Of(double ratio, double densityA, double densityB)
    {
        var (a, b) = (Density.FromKilogramsPerCubicMetre(densityA), Density.FromKilogramsPerCubicMetre(densityB));
        return new("test", ratio, a, b, Resin.AdditiveDensity(ratio, a, b), new(), null, "test", "I");
    }

    private static double VolumeRatio(PublishedRow row)
    {
        var mix = Mix.For(Of(row["mass_ratio"], row["rho_A"], row["rho_B"]), Volume.FromLitres(1.0), default);
        return 100.0 * (mix.VolumeB / mix.VolumeA);
    }

    private static double MassOfB(PublishedRow row)
    {
        var (a, b) = (Density.FromKilogramsPerCubicMetre(row["rho_A"]), Density.FromKilogramsPerCubicMetre(row["rho_B"]));
        return Mix.For(Of(Resin.RatioByMass(row["volume_ratio"], a, b), row["rho_A"], row["rho_B"]), Volume.FromLitres(row["V_total_L"]), default).PartB.Kilograms;
    }

    private static double Off(PublishedRow row) => ClassTables.Done(MixCheck.Of(
        Of(row["ratio"], 1130.0, 980.0), Mass.FromKilograms(row["part_a_kg"]), Mass.FromKilograms(row["part_b_kg"]))).OffShare;

    private static double Prism(PublishedRow row)
    {
        var width = Length.FromMetres(row["W_mean_m"]);
        var length = Length.FromMetres(row["L_m"]);
        var river = ClassTables.Done(PourVolume.Between(length, Length.FromMetres(row["depth_m"]), [new(default, width), new(length, width)], ReadingAllowance.Usual));
        return river.Volume.Litres * (1.0 + row["waste"]);
    }
}
