using Boardwright.Quantities;

namespace Boardwright.Casting.Cure;

/// <summary>A forecast in words: what to change before pouring, and what to mind after.</summary>
/// <method page="docs/methods/resin-cure.md"/>
public static class PourAdvice
{
    private const double TightKelvins = 3.0;
    private const double TightMillimetres = 5.0;
    private const double SmokeCelsius = 120.0;
    private const double ColdCelsius = 15.0;
    private const double WarmRoomCelsius = 28.0;

    /// <summary>The usual cautions of a pour; the supplier's safety sheets of both parts and local rules come first.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Gloves of nitrile or laminate, ventilation, no solvent on skin: uncured resin and hardener can sensitise for life. Read the safety sheets of both parts.",
        "Pour mixed resin at once into the mould; leftovers go shallow into a metal can on metal, outdoors or ventilated, watched until cold.",
        "Never mop up hardener or mixed resin with sawdust or shavings, nor bin rags with them: they can heat up and burn by themselves.",
        "If it smokes: everybody out, doors shut, call the fire service.",
    ];

    /// <summary>Sentences in the order a person needs them; at least one.</summary>
    /// <param name="forecast">The pour.</param>
    /// <param name="label">What the can says.</param>
    public static IReadOnlyList<string> For(PourForecast forecast, ResinLabel label)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(label);
        var said = new List<string>();
        Heat(forecast, label, said);
        Edge(forecast, said);
        Layers(forecast, said);
        var deepest = forecast.Section.Layers.Max(layer => layer.Depth.Millimetres);
        if (label.DeepestPour is { } allowed && deepest > allowed.Millimetres)
        {
            said.Add($"The label allows {allowed.Millimetres:0} mm in one pour; this is {deepest:0} mm.");
        }

        if (forecast.Section.Resin.FittedTo is { } datum)
        {
            said.Add($"Cure speed is fitted to one figure of the data sheet ({datum}): treat the hours as rough.");
        }

        return said;
    }

    private static void Heat(PourForecast forecast, ResinLabel label, List<string> said)
    {
        var limit = forecast.Section.Resin.PeakCelsiusMax;
        var peak = $"{forecast.Centre.PeakCelsius:0} C after {forecast.Centre.PeakHour:0} h";
        var depth = forecast.Section.DepthMetres * 1000.0;
        if (!forecast.IsSafe)
        {
            var single = Math.Min(Math.Floor(depth + forecast.MarginMillimetres), label.DeepestPour?.Millimetres ?? double.PositiveInfinity);
            var isTooDeep = forecast.Section.Layers.Max(layer => layer.Depth.Millimetres) > (label.DeepestPour?.Millimetres ?? double.PositiveInfinity);
            said.Add($"Too hot: about {peak}, limit {limit:0} C.");
            said.Add(forecast.Section.Layers.Count > 1
                ? "Make the layers thinner or wait until each has peaked and cooled."
                : single >= 5.0
                    ? $"Split the pour: at these temperatures up to {single:0} mm stays under the limit and the label, so {Math.Ceiling(depth / single):0} pours, each after the one before has peaked and cooled."
                    : "Not at these temperatures: even a thin pour passes the limit.");
            if (forecast.MarginKelvins > -15.0 && !isTooDeep) // no cold makes a pour right that the label forbids
            {
                said.Add($"Or pour with resin, mould and shop {-forecast.MarginKelvins:0.#} C colder.");
            }

            if (forecast.Centre.PeakCelsius > SmokeCelsius)
            {
                said.Add("This is a runaway: it would crack, smoke and give off harmful gas. Do not pour it like this.");
            }

            return;
        }

        said.Add(forecast.MarginKelvins < TightKelvins || forecast.MarginMillimetres < TightMillimetres
            ? $"Peak about {peak}, but {forecast.MarginKelvins:0.#} C warmer at the pour, or {forecast.MarginMillimetres:0} mm deeper, would pass the limit of {limit:0} C. Do not warm the shop before the peak has passed, and measure the depth."
            : $"Peak about {peak}; up to {forecast.MarginKelvins:0.#} C warmer at the pour, or {forecast.MarginMillimetres:0} mm deeper, stays under the limit of {limit:0} C.");
    }

    private static void Edge(PourForecast forecast, List<string> said)
    {
        if (forecast.DemouldEdgeHour is not { } edge)
        {
            said.Add($"The slowest resin is not hard within 30 days: warm the room to {WarmRoomCelsius:0} C once the peak has passed, or do not pour this week.");
            return;
        }

        var centre = forecast.Centre.DemouldCentreHour ?? edge;
        var isCold = forecast.Section.Shop.Mean(Elapsed.FromHours(edge)).Celsius < ColdCelsius;
        if (edge - centre < 6.0 && !isCold)
        {
            said.Add($"Hard everywhere after {edge:0} h.");
            return;
        }

        var place = forecast.EdgeDepth is { } thin ? $"thin edge ({thin.Millimetres:0.#} mm)" : "slowest face";
        var from = Elapsed.FromHours(Math.Max(centre, forecast.Centre.PeakHour));
        var warmed = forecast.EdgeUnder(forecast.Section.Shop.Then(from, Temperature.FromCelsius(WarmRoomCelsius))).DemouldLastHour;
        var gain = warmed is { } hours && hours < edge - 2.0
            ? $" Holding {WarmRoomCelsius:0} C from hour {from.Hours:0}, after the peak, brings that to hour {hours:0}."
            : "";
        said.Add($"The {place} lags: centre hard after {centre:0} h, edge only after {edge:0} h. Demould by the edge.{gain}");
    }

    private static void Layers(PourForecast forecast, List<string> said)
    {
        foreach (var (before, next) in forecast.Section.Layers.Zip(forecast.Section.Layers.Skip(1)))
        {
            var then = forecast.Centre.Curve.LastOrDefault(point => point.Hour <= next.PouredAfter.Hours);
            if (then.LeastConversion < forecast.Section.Resin.GelConversion)
            {
                said.Add($"At hour {next.PouredAfter.Hours:0} the pour before has not gelled: both would heat as one.");
            }
            else if (then.CentreConversion > forecast.Section.Resin.DemouldConversion)
            {
                said.Add($"At hour {next.PouredAfter.Hours:0} the pour before is hard: sand and wipe it first, or the next will not bond.");
            }
        }
    }
}
