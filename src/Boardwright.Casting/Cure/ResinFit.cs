using Boardwright.Quantities;

namespace Boardwright.Casting.Cure;

/// <summary>Cure constants of a resin from the little its data sheet says.</summary>
/// <remarks>
/// <para>Fixed: E1 = E2 = 56 kJ/mol, m 0.8, n 1.7, k1/k2 = 1/30: a slow aliphatic casting system. Heat of reaction from the sheet, or
/// 103 kJ per epoxide over EEW + AHEW. One unknown, the speed, from one datum: the gel time of a stated mass in a cup, simulated as
/// a well-stirred cylinder in still air.</para>
/// <para>Validity: a first estimate. One datum leaves no residual to judge it by; pours deeper than the sheet allows carry a warning.</para>
/// </remarks>
/// <source id="epoxy-formulation-notes" locator="equivalent weights"/>
/// <method page="docs/methods/resin-cure.md"/>
public static class ResinFit
{
    /// <summary>Heat set free by one mole of epoxide groups: 98 to 110 kJ in the literature, from memory.</summary>
    public const double KilojoulesPerEpoxide = 103.0;

    private static readonly AutocatalyticKinetics Shape = new()
    {
        FirstFactorPerSecond = 6.5e3,
        FirstActivationJoulesPerMole = 56_000.0,
        SecondFactorPerSecond = 1.95e5,
        SecondActivationJoulesPerMole = 56_000.0,
        ReactionOrder = 0.8,
        DepletionOrder = 1.7,
    };

    /// <summary>Heat of the whole reaction of a mix in ratio, J/kg.</summary>
    /// <param name="epoxyEquivalentGrams">EEW.</param>
    /// <param name="hydrogenEquivalentGrams">AHEW.</param>
    /// <param name="kilojoulesPerEpoxide">Heat of one mole of epoxide groups.</param>
    public static double HeatJoulesPerKilogram(double epoxyEquivalentGrams, double hydrogenEquivalentGrams, double kilojoulesPerEpoxide = KilojoulesPerEpoxide) =>
        kilojoulesPerEpoxide * 1e6 / (epoxyEquivalentGrams + hydrogenEquivalentGrams);

    /// <summary>Constants that make a cup of the mix gel when the data sheet says it does.</summary>
    /// <param name="heatJoulesPerKilogram">Of the whole reaction.</param>
    /// <param name="density">Of the mix.</param>
    /// <param name="cupGel">Gel time.</param>
    /// <param name="cupMass">Of that mass.</param>
    /// <param name="cupAt">At that temperature.</param>
    public static Outcome<CuringResin> FromCup(double heatJoulesPerKilogram, Density density, Elapsed cupGel, Mass cupMass, Temperature cupAt)
    {
        var resin = new CuringResin(Shape, heatJoulesPerKilogram, density.KilogramsPerCubicMetre, 1900.0, 0.20)
        {
            FittedTo = $"{cupMass.Grams:0} g gel in {cupGel.Minutes:0} min at {cupAt.Celsius:0} C",
        };
        var speed = Numerics.Root.Between(
            logarithm => Math.Log(GelSeconds(resin, Math.Exp(logarithm), cupMass, cupAt) / cupGel.Seconds), Math.Log(1e-3), Math.Log(1e4), 1e-9);
        return speed is { } found
            ? resin with { Kinetics = Shape.Scaled(Math.Exp(found)) }
            : new Refusal("gel_min", $"{cupGel.Minutes:0.#} min", "a gel time that a casting resin of this kind can have");
    }

    private static double GelSeconds(CuringResin resin, double speed, Mass mass, Temperature at)
    {
        var cup = BatchCure.Cup(resin with { Kinetics = Shape.Scaled(speed) }, mass.Kilograms, at.Celsius);
        return cup.RunToConversion(resin.GelConversion, 1e9) ? cup.Seconds : 1e9;
    }
}
