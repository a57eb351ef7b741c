using Boardwright.Quantities;

namespace Boardwright.Casting.Cure;

/// <summary>What a pour will do: how hot, when firm, when out of the mould, and how near it is to going wrong.</summary>
/// <remarks>
/// The risk is a margin in kelvins and millimetres, not a yes or no at the label's depth: near the limit three kelvins of shop
/// temperature or ten millimetres of depth are the difference between a warm pour and a smoking one.
/// </remarks>
/// <method page="docs/methods/resin-cure.md"/>
public sealed record PourForecast
{
    private const double SearchKelvins = 15.0;
    private const double SearchDepthFactor = 3.0;

    /// <summary>What was simulated.</summary>
    public required CureSection Section { get; init; }

    /// <summary>Through the full depth.</summary>
    public required CureRun Centre { get; init; }

    /// <summary>Depth of a thin edge, such as a lip over bark; null when there is none.</summary>
    public required Length? EdgeDepth { get; init; }

    /// <summary>Through the thin edge; null when there is none.</summary>
    public required CureRun? Edge { get; init; }

    /// <summary>How much warmer shop and pour may be before the peak passes the limit; negative when it already does. Within ±15 K.</summary>
    public required double MarginKelvins { get; init; }

    /// <summary>How much deeper the pour may be before the peak passes the limit; negative when it already does.</summary>
    public required double MarginMillimetres { get; init; }

    /// <summary>The peak stays at or below the resin's limit.</summary>
    public bool IsSafe => Centre.PeakCelsius <= Section.Resin.PeakCelsiusMax;

    /// <summary>Gel of the slowest place: the thin edge, else the slowest resin of the full depth.</summary>
    public double? GelEdgeHour => (Edge ?? Centre).GelLastHour;

    /// <summary>Demould of the slowest place.</summary>
    public double? DemouldEdgeHour => Edge is null ? Centre.DemouldLastHour
        : Edge.DemouldLastHour is { } edge && Centre.DemouldLastHour is { } centre ? Math.Max(edge, centre) : null;

    /// <summary>Simulates a pour and its thin edge, and searches for both margins.</summary>
    /// <param name="section">The full depth.</param>
    /// <param name="edgeDepth">The thinnest part that matters; null when the pour is even.</param>
    /// <param name="hoursMin">Run at least this long.</param>
    public static Outcome<PourForecast> Of(CureSection section, Length? edgeDepth = null, double hoursMin = 0.0)
    {
        ArgumentNullException.ThrowIfNull(section);
        if (Fault(section, edgeDepth) is { } fault)
        {
            return fault;
        }

        var centre = SlabCure.Run(section, hoursMin: hoursMin);
        return new PourForecast
        {
            Section = section,
            Centre = centre,
            EdgeDepth = edgeDepth,
            Edge = edgeDepth is { } depth ? SlabCure.Run(Thin(section, depth), hoursMin: hoursMin) : null,
            MarginKelvins = Largest(-SearchKelvins, SearchKelvins, kelvins => StaysCool(section.Shifted(kelvins))),
            MarginMillimetres = (Largest(0.05, SearchDepthFactor, factor => StaysCool(section.Deeper(factor))) - 1.0)
                * section.DepthMetres * 1000.0,
        };
    }

    /// <summary>The thin edge under another course of shop temperature, such as a warm room later.</summary>
    public CureRun EdgeUnder(ShopTemperature shop) =>
        SlabCure.Run((EdgeDepth is { } depth ? Thin(Section, depth) : Section) with { Shop = shop });

    private static Refusal? Fault(CureSection section, Length? edgeDepth)
    {
        if (section.Layers.Count == 0 || section.Layers[0].PouredAfter.Seconds > 0.0
            || section.Layers.Zip(section.Layers.Skip(1)).Any(pair => pair.Second.PouredAfter <= pair.First.PouredAfter))
        {
            return new("layers", string.Join(' ', section.Layers.Select(layer => $"{layer.PouredAfter.Hours:0.##} h")), "one layer or more, the first poured at 0 h and each later than the one before");
        }

        if (section.Layers.FirstOrDefault(layer => layer.Depth.Millimetres is < 0.5 or > 300.0, new PourLayer(Length.FromMillimetres(1.0), default)) is { Depth.Millimetres: var depth } && depth is < 0.5 or > 300.0)
        {
            return new("depth", $"{depth:0.##} mm", "a pour of 0.5 to 300 mm");
        }

        return edgeDepth is { } edge && (edge.Millimetres < 0.5 || edge.Metres > section.DepthMetres)
            ? new("edge_mm", $"{edge.Millimetres:0.##} mm", $"a thin edge of 0.5 to {section.DepthMetres * 1000.0:0.#} mm")
            : null;
    }

    private static CureSection Thin(CureSection section, Length depth) => section with { Layers = [section.Layers[0] with { Depth = depth }] };

    // A coarse grid: within 0.2 K of the fine one, far inside what a shop thermometer knows.
    private static bool StaysCool(CureSection section)
    {
        var limit = section.Resin.PeakCelsiusMax;
        var coarse = section with { CellMetres = 2e-3, StepSecondsMax = 480.0, ConversionPerStep = 8e-3 };
        return SlabCure.Run(coarse, stopAboveCelsius: limit).PeakCelsius <= limit;
    }

    // The peak rises with temperature and with depth, so halving finds where the answer turns.
    private static double Largest(double low, double high, Func<double, bool> holds)
    {
        if (!holds(low))
        {
            return low;
        }

        if (holds(high))
        {
            return high;
        }

        for (var halving = 0; halving < 9; halving++)
        {
            var middle = (low + high) / 2.0;
            (low, high) = holds(middle) ? (middle, high) : (low, middle);
        }

        return low;
    }
}
