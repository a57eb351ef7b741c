using Boardwright.Casting.Cure;
using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>Resins the program knows by itself. Neither is a product: one is for checking solvers, one is the demonstration's.</summary>
public static class ResinTable
{
    private static readonly AutocatalyticKinetics ReferenceKinetics = new()
    {
        FirstFactorPerSecond = 6.5e3,
        FirstActivationJoulesPerMole = 56_000.0,
        SecondFactorPerSecond = 1.95e5,
        SecondActivationJoulesPerMole = 56_000.0,
        ReactionOrder = 0.8,
        DepletionOrder = 1.7,
    };

    /// <summary>A synthetic slow casting resin with round constants, so that solvers can be compared.</summary>
    public static Resin Reference { get; } = new(
        "ref-slow", 0.38, Density.FromKilogramsPerCubicMetre(1140.0), Density.FromKilogramsPerCubicMetre(990.0), Density.FromKilogramsPerCubicMetre(1100.0),
        new() { At = Temperature.FromCelsius(20.0) },
        new(ReferenceKinetics, 350_000.0, 1100.0, 1900.0, 0.20),
        "synthetic constants for comparing solvers; not a product", "I");

    /// <summary>The slow casting resin of the demonstration's class; its label and the model are kept apart.</summary>
    public static Resin Class { get; } = new(
        "class", 0.38, Density.FromKilogramsPerCubicMetre(1140.0), Density.FromKilogramsPerCubicMetre(990.0),
        Resin.AdditiveDensity(0.38, Density.FromKilogramsPerCubicMetre(1140.0), Density.FromKilogramsPerCubicMetre(990.0)),
        new()
        {
            DeepestPour = Length.FromMillimetres(50.0),
            At = Temperature.FromCelsius(20.0),
            Depth = Length.FromMillimetres(40.0),
            Gel = Elapsed.FromHours(22.0),
            Demould = Elapsed.FromHours(60.0),
        },
        new(ReferenceKinetics, 350_000.0, 1094.3, 1900.0, 0.20),
        "invented for the demonstration; not a product", "I");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Resin> All { get; } = [Class, Reference];

    /// <summary>A resin by name, in any case.</summary>
    /// <param name="what">The field, for the refusal.</param>
    /// <param name="name">Its name.</param>
    public static Outcome<Resin> Find(string what, string name) => All.FirstOrDefault(resin => string.Equals(resin.Name, name, StringComparison.OrdinalIgnoreCase)) is { } found
        ? found
        : new Refusal(what, name, $"{string.Join(" or ", All.Select(resin => resin.Name))}, or a file that describes a resin");
}
