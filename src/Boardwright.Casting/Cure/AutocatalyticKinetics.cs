namespace Boardwright.Casting.Cure;

/// <summary>Autocatalytic cure: da/dt = (k1 + k2 a^m)(1 − a)^n, ki = Ai exp(−Ei/RT), with an optional limit by diffusion.</summary>
/// <remarks>
/// <para>Diffusion limit (Chern and Poehlein form): divided by 1 + exp(C (a − aC0 − aCT T)).</para>
/// <para>Validity: the constants of one resin over the temperatures it was fitted at. A resin without the first term
/// (A1 = 0) never starts from zero conversion; give it a small one.</para>
/// </remarks>
/// <source id="kamal-sourour-1973" locator="autocatalytic rate law"/>
/// <source id="hubert-2001" locator="diffusion-limited form"/>
/// <method page="docs/methods/resin-cure.md"/>
public sealed record AutocatalyticKinetics : CureKinetics
{
    /// <summary>A1, 1/s.</summary>
    public required double FirstFactorPerSecond { get; init; }

    /// <summary>E1, J/mol.</summary>
    public required double FirstActivationJoulesPerMole { get; init; }

    /// <summary>A2, 1/s.</summary>
    public required double SecondFactorPerSecond { get; init; }

    /// <summary>E2, J/mol.</summary>
    public required double SecondActivationJoulesPerMole { get; init; }

    /// <summary>m.</summary>
    public required double ReactionOrder { get; init; }

    /// <summary>n.</summary>
    public required double DepletionOrder { get; init; }

    /// <summary>C; zero when diffusion never limits.</summary>
    public double DiffusionSharpness { get; init; }

    /// <summary>aC0: conversion at which diffusion takes over, at zero kelvin.</summary>
    public double DiffusionConversion { get; init; }

    /// <summary>aCT, 1/K: how that conversion rises with temperature.</summary>
    public double DiffusionConversionPerKelvin { get; init; }

    /// <summary>Both rate factors scaled, for fitting to a gel time.</summary>
    public AutocatalyticKinetics Scaled(double factor) => this with
    {
        FirstFactorPerSecond = FirstFactorPerSecond * factor,
        SecondFactorPerSecond = SecondFactorPerSecond * factor,
    };

    /// <inheritdoc/>
    public override double RatePerSecond(double conversion, double kelvins)
    {
        var left = 1.0 - conversion;
        if (left <= 0.0)
        {
            return 0.0;
        }

        var inverse = -1.0 / (GasConstant * kelvins);
        var second = Math.Exp(SecondActivationJoulesPerMole * inverse);
        var first = FirstActivationJoulesPerMole == SecondActivationJoulesPerMole ? second : Math.Exp(FirstActivationJoulesPerMole * inverse);
        var accelerated = conversion > 0.0 ? Math.Pow(conversion, ReactionOrder) : 0.0;
        var rate = (FirstFactorPerSecond * first + SecondFactorPerSecond * second * accelerated) * Math.Pow(left, DepletionOrder);
        return DiffusionSharpness == 0.0
            ? rate
            : rate / (1.0 + Math.Exp(DiffusionSharpness * (conversion - DiffusionConversion - DiffusionConversionPerKelvin * kelvins)));
    }
}
