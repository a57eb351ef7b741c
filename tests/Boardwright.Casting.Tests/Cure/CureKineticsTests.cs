using Boardwright.Casting.Cure;
using Boardwright.Testing;

namespace Boardwright.Casting.Tests.Cure;

public sealed class CureKineticsTests
{
    private const string Table = "casting-cure";

    public static IEnumerable<object[]> Rows(params string[] quantities) => PublishedTable.Theory(Table, quantities);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "isothermal_180c_resin" } })]
    public void Conversion_of_a_published_diffusion_limited_resin_is_reproduced(PublishedRow row)
    {
        var published = new AutocatalyticKinetics
        {
            FirstFactorPerSecond = 0.0,
            FirstActivationJoulesPerMole = 65_000.0,
            SecondFactorPerSecond = 7.0e4,
            SecondActivationJoulesPerMole = 65_000.0 * CureKinetics.GasConstant / row["R"],
            ReactionOrder = 0.5,
            DepletionOrder = 1.5,
            DiffusionSharpness = 30.0,
            DiffusionConversion = -1.5148,
            DiffusionConversionPerKelvin = 5.171e-3,
        };
        var cure = BatchCure.Isothermal(published, row["T_c"], row["alpha0"]);

        cure.RunToSeconds(row["t_s"]);

        Assert.InRange(cure.Conversion, row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "isothermal_177c_resin" } })]
    public void Conversion_of_a_published_two_stage_resin_is_reproduced(PublishedRow row)
    {
        var cure = BatchCure.Isothermal(new LeeLoosSpringerKinetics(), row["T_c"], row["alpha0"]);

        cure.RunToSeconds(row["t_s"]);

        Assert.InRange(cure.Conversion, row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "closed_form_m1_n1" } })]
    public void Conversion_follows_the_closed_form_for_orders_one_and_one(PublishedRow row) =>
        Conversion_is(row, Isothermal(row["k1"], row["k2"], 1.0, 1.0));

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "closed_form_order_n" } })]
    public void Conversion_follows_the_closed_form_of_order_n(PublishedRow row) =>
        Conversion_is(row, Isothermal(row["k"], 0.0, 1.0, row["n"]));

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "reference_isothermal" } })]
    public void Reference_resin_gels_at_one_temperature_when_it_should(PublishedRow row)
    {
        var cure = BatchCure.Isothermal(ResinTable.Reference.Curing!.Kinetics, row["T_c"]);

        Assert.True(cure.RunToConversion(row["conversion"] == 0.57735 ? GelPoint.Conversion(2.0, 4.0) : row["conversion"]));

        Assert.InRange(cure.Seconds / 3600.0, row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "reference_adiabatic_time", "reference_adiabatic_temperature" } })]
    public void Reference_resin_heats_itself_when_no_heat_leaves(PublishedRow row)
    {
        var cure = BatchCure.Adiabatic(ResinTable.Reference.Curing!, row["T0_c"]);

        Assert.True(cure.RunToConversion(row["conversion"]));

        Assert.InRange(row.Quantity == "reference_adiabatic_time" ? cure.Seconds / 3600.0 : cure.Kelvins - 273.15, row.Low - 1e-5, row.High + 1e-5);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "adiabatic_rise" } })]
    public void Adiabatic_rise_is_heat_over_specific_heat(PublishedRow row)
    {
        var resin = ResinTable.Reference.Curing! with { HeatJoulesPerKilogram = row["H_J_g"] * 1000.0, SpecificHeatJoulesPerKilogramKelvin = row["cp_J_gK"] * 1000.0 };

        Assert.InRange(resin.AdiabaticRiseKelvins, row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "rate_ratio_arrhenius" } })]
    public void Rate_rises_with_temperature_by_arrhenius(PublishedRow row)
    {
        var kinetics = new AutocatalyticKinetics
        {
            FirstFactorPerSecond = 1.0,
            FirstActivationJoulesPerMole = row["E_kJ_mol"] * 1000.0,
            SecondFactorPerSecond = 0.0,
            SecondActivationJoulesPerMole = 0.0,
            ReactionOrder = 1.0,
            DepletionOrder = 1.0,
        };

        Assert.InRange(kinetics.RatePerSecond(0.0, row["T2_c"] + 273.15) / kinetics.RatePerSecond(0.0, row["T1_c"] + 273.15), row.Low, row.High);
    }

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "gel_conversion" } })]
    public void Gel_conversion_follows_from_the_groups_per_molecule(PublishedRow row) =>
        Assert.InRange(GelPoint.Conversion(row["f_epoxy"], row["f_amine_H"]), row.Low, row.High);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "glass_transition" } })]
    public void Glass_transition_rises_with_conversion(PublishedRow row) =>
        Assert.InRange(new GlassTransition(row["Tg0_c"], row["Tginf_c"], row["lambda"]).CelsiusAt(row["alpha"]), row.Low, row.High);

    [Theory, MemberData(nameof(Rows), new object[] { new[] { "vitrification_conversion" } })]
    public void Vitrification_is_where_the_glass_transition_meets_the_cure(PublishedRow row) =>
        Assert.InRange(new GlassTransition(row["Tg0_c"], row["Tginf_c"], row["lambda"]).ConversionAt(row["T_cure_c"]), row.Low, row.High);

    [Fact]
    public void The_table_would_notice_a_one_percent_error() =>
        Assert.All(
            PublishedTable.Rows(Table).GroupBy(row => row.Quantity),
            quantity => Assert.Contains(quantity, row => Math.Abs(row.ExpectedNumber) * 0.01 > row.Tolerance));

    [Fact]
    public void A_cup_left_in_the_shop_heats_less_than_an_insulated_one()
    {
        var resin = ResinTable.Reference.Curing!;
        var cup = BatchCure.Cup(resin, kilograms: 0.14, celsius: 25.0);
        var insulated = BatchCure.Adiabatic(resin, 25.0);

        Assert.True(cup.RunToConversion(0.5) && insulated.RunToConversion(0.5));

        Assert.True(cup.Kelvins < insulated.Kelvins && cup.Seconds > insulated.Seconds);
    }

    private static BatchCure Isothermal(double k1, double k2, double m, double n) => BatchCure.Isothermal(
        new AutocatalyticKinetics
        {
            FirstFactorPerSecond = k1,
            FirstActivationJoulesPerMole = 0.0,
            SecondFactorPerSecond = k2,
            SecondActivationJoulesPerMole = 0.0,
            ReactionOrder = m,
            DepletionOrder = n,
        },
        20.0);

    private static void Conversion_is(PublishedRow row, BatchCure cure)
    {
        cure.RunToSeconds(row["t_s"]);

        Assert.InRange(cure.Conversion, row.Low, row.High);
    }
}
