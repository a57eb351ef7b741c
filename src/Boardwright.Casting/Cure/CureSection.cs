namespace Boardwright.Casting.Cure;

/// <summary>A vertical line through mould and resin, from the air below to the air above.</summary>
public sealed record CureSection
{
    /// <summary>What cures.</summary>
    public required CuringResin Resin { get; init; }

    /// <summary>Pours from the bottom up, in rising order of time; the first at time zero.</summary>
    public required IReadOnlyList<PourLayer> Layers { get; init; }

    /// <summary>The mould's bottom; null when the resin's lower face itself meets the air or a held temperature.</summary>
    public MouldWall? Wall { get; init; }

    /// <summary>Surface coefficient below, W/(m²K): still air, convection and radiation, facing down. Infinite holds the face at the air's temperature.</summary>
    public double BelowWattsPerSquareMetreKelvin { get; init; } = 5.0;

    /// <summary>Surface coefficient above, W/(m²K): still air, facing up.</summary>
    public double AboveWattsPerSquareMetreKelvin { get; init; } = 10.0;

    /// <summary>Air below and above.</summary>
    public required ShopTemperature Shop { get; init; }

    /// <summary>Aimed-at height of a cell; thin layers get at least eight.</summary>
    public double CellMetres { get; init; } = 0.5e-3;

    /// <summary>Conversion the fastest cell may gain in one step; with <see cref="StepSecondsMax"/> it sets the step.</summary>
    public double ConversionPerStep { get; init; } = 2e-3;

    /// <summary>Longest step, s.</summary>
    public double StepSecondsMax { get; init; } = 120.0;

    internal double DepthMetres => Layers.Sum(layer => layer.Depth.Metres);

    internal CureSection Shifted(double kelvins) => this with { Shop = Shop.Shifted(Quantities.TemperatureDifference.FromKelvins(kelvins)) };

    internal CureSection Deeper(double factor) => this with
    {
        Layers = [.. Layers.Select(layer => layer with { Depth = layer.Depth * factor })],
    };
}
