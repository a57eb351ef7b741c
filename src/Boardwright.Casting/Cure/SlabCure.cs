namespace Boardwright.Casting.Cure;

/// <summary>Cure through the depth of a pour: heat conduction in one direction with the heat of the reaction in every cell.</summary>
/// <remarks>
/// <para>rho cp dT/dt = d/dz(k dT/dz) + rho H da/dt; mould wall in perfect contact; surface coefficients to the shop's air.
/// Strang splitting: half a step of reaction, a step of conduction, half a step of reaction; steps follow the fastest cell.</para>
/// <para>Validity: pours wider than about five times their depth. A narrow river is cooled by its wood, and this overpredicts.
/// Properties constant; no vitrification unless the kinetics hold it. In runaway the front is grid-sensitive: read the peak as
/// "far too hot".</para>
/// </remarks>
/// <method page="docs/methods/resin-cure.md"/>
public static class SlabCure
{
    private const double ShortestStepSeconds = 0.1;

    /// <summary>Runs a section until it can be demoulded everywhere and all is poured, or until the hours are up.</summary>
    /// <param name="section">What is poured into what, and the shop's air.</param>
    /// <param name="hoursMax">Longest run.</param>
    /// <param name="hoursMin">Run at least this long.</param>
    /// <param name="stopAboveCelsius">Stop as soon as any resin is hotter, for searches that ask no more.</param>
    public static CureRun Run(CureSection section, double hoursMax = 720.0, double hoursMin = 0.0, double stopAboveCelsius = double.PositiveInfinity)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentOutOfRangeException.ThrowIfZero(section.Layers.Count);
        var cells = section.Layers.Sum(layer => CureColumn.CellsOf(layer.Depth.Metres, section.CellMetres))
            + CureColumn.CellsOf(section.Wall?.Thickness.Metres ?? 0.0, section.CellMetres);
        var column = new CureColumn(section, cells);
        var record = new CureRecord(section, column, cells);
        if (section.Wall is { } wall)
        {
            column.AddWall(wall, AirKelvins(section, 0.0));
        }

        var seconds = 0.0;
        var poured = 0;
        while (true)
        {
            while (poured < section.Layers.Count && section.Layers[poured].PouredAfter.Seconds <= seconds)
            {
                var layer = section.Layers[poured++];
                column.AddResin(layer.Depth.Metres, layer.PouredAt?.Kelvins ?? AirKelvins(section, seconds));
            }

            var isDone = poured == section.Layers.Count && record.IsDemoulded && seconds >= hoursMin * 3600.0;
            var isLast = isDone || seconds >= hoursMax * 3600.0 || record.PeakCelsius > stopAboveCelsius;
            record.Look(seconds, isLast);
            if (isLast)
            {
                return record.Result();
            }

            var until = Math.Min(record.NextLookSeconds, hoursMax * 3600.0);
            if (poured < section.Layers.Count)
            {
                until = Math.Min(until, section.Layers[poured].PouredAfter.Seconds);
            }

            seconds = Step(section, column, seconds, until);
            record.Step(seconds);
        }
    }

    private static double Step(CureSection section, CureColumn column, double seconds, double until)
    {
        var wanted = Math.Clamp(section.ConversionPerStep / Math.Max(column.MaximumRatePerSecond(), 1e-12), ShortestStepSeconds, section.StepSecondsMax);
        var left = until - seconds;
        var isLast = wanted >= left;
        var step = isLast ? left : Math.Min(wanted, left / 2.0 < wanted ? left / 2.0 : wanted);
        column.React(step / 2.0);
        column.Conduct(
            step, AirKelvins(section, seconds), AirKelvins(section, seconds + CureColumn.MiddleOf(step)), AirKelvins(section, seconds + step));
        column.React(step / 2.0);
        return isLast ? until : seconds + step;
    }

    private static double AirKelvins(CureSection section, double seconds) => section.Shop.CelsiusAt(seconds / 3600.0) + 273.15;
}
