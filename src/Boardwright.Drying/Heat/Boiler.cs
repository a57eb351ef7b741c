using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>A boiler and the days it stands still.</summary>
/// <param name="Name">As in the yard.</param>
/// <param name="SteadyOutput">What it gives hour after hour, stoked as usual.</param>
/// <param name="Outages">Days without it, from the first to before the last; an outage without end stays out.</param>
public sealed record Boiler(string Name, Power SteadyOutput, IReadOnlyList<(DateOnly From, DateOnly? Until)> Outages)
{
    /// <summary>True when it runs all that day.</summary>
    public bool RunsOn(DateOnly day) => !Outages.Any(outage => day >= outage.From && (outage.Until is not { } until || day < until));

    /// <summary>Output of several boilers on a day, kW.</summary>
    public static double CapacityKilowatts(IEnumerable<Boiler> boilers, DateOnly day) =>
        boilers.Where(boiler => boiler.RunsOn(day)).Sum(boiler => boiler.SteadyOutput.Kilowatts);
}
